package ceiling

import (
	"sort"

	"sawbill/layout"
)

// way is how a part may lie in the wood: flat or on edge, by itself or in layers
// that are resawn. A leaf cut in a way is worth as many pieces as it has layers.
type way struct {
	row, layers              int
	onEdge                   bool
	lean                     lean
	thickness, width, length layout.Length // of the leaf, allowances included
}

// lean is how much further from the reference edge a strip lies on face B, and what
// a rip at that bevel takes of a face.
type lean struct{ by, kerf layout.Length }

// inset is how far a strip stays from the edges of a parent that is square, beside
// its wedge.
func (l lean) inset() layout.Length {
	if l.by == 0 {
		return 0
	}
	return l.kerf
}

// across is what a piece of a way takes of a board across at least.
func (v *way) across() layout.Length { return v.width + v.lean.by + 2*v.lean.inset() }

// fitting lists the ways of the bill's parts that the board may hold by size.
func (w *Board) fitting(p *layout.Problem) []way {
	var ways []way
	for row := range p.Bill {
		if part := &p.Bill[row]; p.Allows(part, w.wood) {
			ways = append(ways, w.waysOf(row, part)...)
		}
	}
	return ways
}

func (w *Board) waysOf(row int, part *layout.Part) []way {
	s := w.shop
	flat := way{row: row, lean: lean{kerf: s.RipKerf}, width: part.CutWidth(s), length: part.CutLength(s)}
	if part.Bevel != 0 {
		flat.lean = lean{part.Lean(), s.BevelKerf(part.Bevel)}
	}
	ways := w.layersOf(part, flat, part.FlatThickness)
	if part.OnEdge && part.Bevel == 0 && part.Thickness != part.Width {
		flat.width, flat.onEdge = part.EdgeWidth(s), true
		ways = append(ways, w.layersOf(part, flat, part.EdgeThickness)...)
	}
	return ways
}

// layersOf lists a way with one layer and, where the part may be resawn, with as
// many as the board is thick enough for.
func (w *Board) layersOf(part *layout.Part, v way, need func(*layout.Shop, int) layout.Length) []way {
	var ways []way
	for n := 1; n == 1 || part.Resaw && part.Bevel == 0 && v.length >= w.shop.MinBlank; n++ {
		v.layers, v.thickness = n, need(w.shop, n)
		if !w.holds(&v) || n > 1 && v.thickness <= ways[0].thickness {
			break
		}
		ways = append(ways, v)
	}
	return ways
}

// holds reports whether some blank of the board could hold a part lying in a way.
func (w *Board) holds(v *way) bool {
	most := w.shop.MachineWidth()
	return v.length <= w.to-w.from-2*w.inset && v.across() <= w.wood.FullWidth()-w.near-w.far &&
		(most == 0 || v.across() <= most) && v.thickness <= w.available(v, w.briefestOf(v.length))
}

// briefestOf is the shortest blank that holds a part of a length.
func (w *Board) briefestOf(length layout.Length) layout.Length {
	return max(w.least, length+2*w.inset)
}

// available is no less than what a blank so long finishes to where it holds a part
// that lies in a way. A piece that was ripped rough loses a joint beside the part.
func (w *Board) available(v *way, blank layout.Length) layout.Length {
	wide := min(v.width+w.shop.EdgeJoint, min(w.wood.Width, w.wood.TipWidth))
	return w.shop.AvailableIn(w.wood, layout.Rect{X2: blank, Y2: max(wide, v.width)})
}

// longest is the longest blank, or somewhat more, that is thick enough for a part
// that lies in a way.
func (w *Board) longest(v *way) layout.Length {
	if w.wood.Flat() {
		return w.wood.Length
	}
	n := sort.Search(w.x.n+1, func(i int) bool { return w.available(v, w.x.at(i)) < v.thickness })
	return w.x.at(n)
}
