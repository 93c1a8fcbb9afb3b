package column

import (
	"slices"

	"sawbill/layout"
)

// lie is how the wood lies in rough crosscut blanks of about one length. In a
// blank of a crooked board the wood begins some way from y = 0, by the blank's
// shift, and a defect may lie anywhere between where it is marked and that much
// further from the reference edge. Shorter blanks shift less.
type lie struct {
	shift     layout.Length // at least that of every blank that lies so
	ripped    layout.Length // what the far edge loses to a joint because the piece was ripped rough
	grown     []layout.Rect // the defects, with their clearance and the shift
	metal     []layout.Rect // of these the metal
	hitsOf    map[layout.Length][]set
	profileAt [][]int32 // by strip, by y position: the profile; -1 where none fits
	// anew lists, by y position, the strips that have a profile there which they had not
	// one position before, lowest first.
	anew [][]int32
}

// mostLies is the most lies that are told apart where not every position is
// tried. Shifts between two are rounded up.
const mostLies = 8

// setLies works out how far the blanks of every length shift, and which of them
// lie alike. Where no defects are marked, all do.
//
// The far edge of a board with both edges straight loses nothing, but for that of a
// piece that was ripped rough. Where the board tapers, so that such a piece may
// reach beyond the wood, those lie differently; their lies follow the others.
func (w *Board) setLies() {
	w.setShifts()
	if w.far < w.shop.EdgeJoint && w.slants() && (w.cfg.RoughRips || len(w.metal) > 0 || w.ripsFirst()) {
		w.rippedLies = len(w.lies)
		for _, l := range w.lies[:w.rippedLies] {
			l.ripped = w.shop.EdgeJoint - w.far
			w.lies = append(w.lies, l)
		}
	}
}

func (w *Board) setShifts() {
	if w.wood.Crook == 0 {
		w.addLie(0)
		return
	}
	w.shifts = make([]layout.Length, w.x.n+1)
	for l := range w.shifts {
		w.shifts[l] = w.wood.Shift(w.x.at(l))
	}
	if len(w.grown) == 0 {
		w.addLie(0)
		return
	}
	w.lieBy = make([]int, w.x.n+1)
	step := w.lieStep()
	for l, shift := range w.shifts {
		shift = (shift + step - 1) / step * step
		if n := len(w.lies); n == 0 || w.lies[n-1].shift < shift {
			w.addLie(shift)
		}
		w.lieBy[l] = len(w.lies) - 1
	}
}

// lieStep is what shifts are rounded up to. Every strip stands on the grid, so
// that rounding to the grid loses nothing.
func (w *Board) lieStep() layout.Length {
	step := w.y.unit
	for !w.exact() && step*mostLies < w.wood.Crook {
		step += w.y.unit
	}
	return step
}

func (w *Board) addLie(shift layout.Length) {
	w.lies = append(w.lies, lie{
		shift: shift, grown: shifted(w.grown, shift), metal: shifted(w.metal, shift), hitsOf: map[layout.Length][]set{},
	})
}

// shifted is rectangles grown toward the far edge.
func shifted(rects []layout.Rect, by layout.Length) []layout.Rect {
	if by == 0 {
		return rects
	}
	grown := slices.Clone(rects)
	for i := range grown {
		grown[i].Y2 += by
	}
	return grown
}

// lieOf is the lie of blanks from position a to e.
func (w *Board) lieOf(a, e int) *lie { return &w.lies[w.lieIndex(a, e)] }

// lieIn is the index of the lie of trued nodes of a mode in blanks from position a
// to e.
func (w *Board) lieIn(a, e int, m mode) int {
	if m.ripped {
		return w.rippedLies + w.lieIndex(a, e)
	}
	return w.lieIndex(a, e)
}

func (w *Board) lieIndex(a, e int) int {
	if w.lieBy == nil {
		return 0
	}
	return w.lieBy[e-a]
}

// shiftOf is how far the wood of blanks from position a to e begins from y = 0.
func (w *Board) shiftOf(a, e int) layout.Length {
	if w.shifts == nil {
		return 0
	}
	return w.shifts[e-a]
}

// nearOf is where what is usable of a trued node begins that starts at y1 across,
// in a blank from position a to e.
func (w *Board) nearOf(a, e int, y1 layout.Length) layout.Length {
	if y1 == 0 {
		return w.shiftOf(a, e) + w.near
	}
	return max(y1, w.shiftOf(a, e)) + w.shop.EdgeJoint
}

// hits is the set of defects, grown, that meet a span across the board.
func (l *lie) hits(across layout.Span) set {
	s := newSet(len(l.grown))
	for i, g := range l.grown {
		if g.Across().Overlaps(across) {
			s.add(i)
		}
	}
	return s
}

// hitsAt is the defects that a piece of a width meets across, by lie, by y
// position.
func (w *Board) hitsAt(width layout.Length) [][]set {
	all := make([][]set, len(w.lies))
	for i := range w.lies {
		l := &w.lies[i]
		if l.hitsOf[width] == nil {
			hits := make([]set, w.y.n+1)
			for j := range hits {
				hits[j] = l.hits(layout.Span{Lo: w.y.at(j), Hi: w.y.at(j) + width})
			}
			l.hitsOf[width] = hits
		}
		all[i] = l.hitsOf[width]
	}
	return all
}
