package column

import "sawbill/layout"

// mode is a choice of thicknesses that one trued blank allows its strips.
type mode struct {
	only int           // the one thickness allowed, or -1 for any
	must int           // a thickness that one strip must have, or -1
	most layout.Length // no strip is thicker
	// ripped says that the node was ripped rough at its far side, where that makes a
	// difference.
	ripped bool
}

// modes lists what a trued piece of the board may hold. Strips of several
// thicknesses need planing one by one, so they are at least min_blank long. A
// node outside the machines' lengths may only stay as it is: planed faces, no
// edge jointed, as thick as its board.
func (w *Board) modes(blank layout.Rect, jointed bool) []mode {
	modes := w.modesOf(blank, jointed)
	for i := range modes {
		modes[i].ripped = w.rippedLies > 0 && blank.Y2 < w.wood.FullWidth()
	}
	return modes
}

func (w *Board) modesOf(blank layout.Rect, jointed bool) []mode {
	l := blank.Length()
	used := l - 2*w.end
	if l < w.shop.MinRipLength || used <= 0 {
		return nil
	}
	most, kinds := w.thinner(w.availableIn(blank))
	short := used < w.shop.MinBlank
	if w.machinesTake(l) {
		switch {
		case kinds == 0:
			return nil
		case !short || kinds == 1:
			return []mode{{only: -1, must: -1, most: most}}
		}
		return w.eachThickness(most)
	}
	if jointed || w.wood.Faces == layout.FacesRough {
		return nil
	}
	for t := range w.thicks {
		if thick := w.thicks[t].thickness; thick == w.wood.Thickness && thick <= most {
			if short || kinds == 1 {
				return []mode{{only: t, must: -1, most: most}}
			}
			return []mode{{only: -1, must: t, most: most}}
		}
	}
	return nil
}

// thinner is the largest thickness of parts that is at most avail, and of how many
// thicknesses there are parts up to it.
func (w *Board) thinner(avail layout.Length) (most layout.Length, kinds int) {
	for i := range w.thicks {
		if t := w.thicks[i].thickness; t <= avail {
			most = max(most, t)
			kinds++
		}
	}
	return most, kinds
}

func (w *Board) eachThickness(most layout.Length) []mode {
	var modes []mode
	for t := range w.thicks {
		if w.thicks[t].thickness <= most {
			modes = append(modes, mode{only: t, must: -1, most: most})
		}
	}
	return modes
}

// jointed reports whether truing a blank of the board's full width joints an
// edge.
func (w *Board) jointed() bool { return !w.wood.Straight() || w.wood.Edges != layout.EdgesBoth }

// allows reports whether strip s may lie in a node of mode m.
func (w *Board) allows(m mode, s int) bool {
	t := w.strips[s].thick
	return (m.only < 0 || t == m.only) && w.thicks[t].thickness <= m.most
}
