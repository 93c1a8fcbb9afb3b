package column

import (
	"slices"

	"sawbill/layout"
)

// mode is a choice of thicknesses that one trued blank allows its strips.
type mode struct {
	only layout.Length // the one thickness allowed, or 0 for any
	must layout.Length // a thickness that one strip must have, or 0
	most layout.Length // no strip is thicker, and leaning ones, which are not planed thinner, are as thick
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
			return append([]mode{{most: most}}, w.leaningBelow(most)...)
		}
		return w.eachThickness(most)
	}
	if jointed || w.wood.Faces == layout.FacesRough {
		return nil
	}
	for t := range w.thicks {
		if thick := w.thicks[t].thickness; thick == w.wood.Thickness && thick <= most {
			if short || kinds == 1 {
				return []mode{{only: thick, most: thick}}
			}
			return []mode{{must: thick, most: thick}}
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
			if !slices.ContainsFunc(w.thicks[:i], func(o thick) bool { return o.thickness == t }) {
				kinds++
			}
		}
	}
	return most, kinds
}

// leaningBelow lists the modes of nodes that are planed thinner than they could be
// for the sake of leaning strips.
func (w *Board) leaningBelow(most layout.Length) []mode {
	var modes []mode
	for i := range w.thicks {
		t := &w.thicks[i]
		if m := (mode{most: t.thickness}); t.lean > 0 && t.thickness < most && !slices.Contains(modes, m) {
			modes = append(modes, m)
		}
	}
	return modes
}

func (w *Board) eachThickness(most layout.Length) []mode {
	var modes []mode
	for t := range w.thicks {
		if w.thicks[t].thickness <= most {
			if m := (mode{only: w.thicks[t].thickness, most: w.thicks[t].thickness}); !slices.Contains(modes, m) {
				modes = append(modes, m)
			}
		}
	}
	return modes
}

// jointed reports whether truing a blank of the board's full width joints an
// edge.
func (w *Board) jointed() bool { return !w.wood.Straight() || w.wood.Edges != layout.EdgesBoth }

// allows reports whether strip s may lie in a node of mode m.
func (w *Board) allows(m mode, s int) bool {
	t := w.thicks[w.strips[s].thick].thickness
	return (m.only == 0 || t == m.only) && (t == m.most || t < m.most && w.strips[s].lean == 0)
}
