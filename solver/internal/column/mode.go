package column

import "sawbill/layout"

// mode is a choice of thicknesses that one trued blank allows its strips.
type mode struct {
	only int // the one thickness allowed, or -1 for any
	must int // a thickness that one strip must have, or -1
}

// modes lists what a trued node from a to e may hold. Strips of several
// thicknesses need planing one by one, so they are at least min_blank long. A
// node outside the machines' lengths may only stay as it is: planed faces, no
// edge jointed, as thick as its board.
func (w *Board) modes(a, e int, jointed bool) []mode {
	l := w.x.at(e) - w.x.at(a)
	used := l - 2*w.end
	if l < w.shop.MinRipLength || used <= 0 {
		return nil
	}
	short := used < w.shop.MinBlank
	if w.machinesTake(l) {
		if !short || len(w.thicks) == 1 {
			return []mode{{-1, -1}}
		}
		return w.eachThickness()
	}
	if jointed || w.wood.Faces == layout.FacesRough {
		return nil
	}
	for t := range w.thicks {
		if w.thicks[t].thickness == w.wood.Thickness {
			if short || len(w.thicks) == 1 {
				return []mode{{t, -1}}
			}
			return []mode{{-1, t}}
		}
	}
	return nil
}

func (w *Board) eachThickness() []mode {
	modes := make([]mode, len(w.thicks))
	for t := range modes {
		modes[t] = mode{t, -1}
	}
	return modes
}

// jointed reports whether truing a blank of the board's full width joints an
// edge.
func (w *Board) jointed() bool { return w.wood.Edges != layout.EdgesBoth }

// allows reports whether strip s may lie in a node of mode m.
func (w *Board) allows(m mode, s int) bool { return m.only < 0 || w.strips[s].thick == m.only }
