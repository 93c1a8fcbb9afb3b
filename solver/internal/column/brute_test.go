package column

import (
	"math"
	"slices"

	"sawbill/layout"
)

// brute is the most that one board can be worth, by trying every position of a
// grid of whole millimetres at every level, from the rules alone. It knows
// nothing of zones, profiles or useful heights. With limits, it keeps every
// vector of counts; without, only the best value.
type brute struct {
	p      *layout.Problem
	s      *layout.Shop
	b      *layout.Board
	price  []Value
	limits []int // nil: none
	L, W   int
	lies   [][]bruteLie            // by row of the bill
	needs  []layout.Length         // of any way, each once
	bevels []bruteBevel            // the first is none
	strips map[stripAt]stripFronts // worked out already
	known  map[layout.Length][]layout.Rect
}

// stripAt is all that a strip depends on: its node's ends, itself, a thickness.
type stripAt struct {
	x1, x2, thickness layout.Length
	strip             layout.Rect
	lean              layout.Length
}

type stripFronts struct{ with, without front }

const unit = layout.Millimetre

// counts is how often each part is made, as a key.
type counts [4]int8

// front is the best value for every vector of counts.
type front map[counts]Value

func (f front) add(c counts, v Value) {
	if old, ok := f[c]; !ok || v > old {
		f[c] = v
	}
}

func (f front) merge(g front) {
	for c, v := range g {
		f.add(c, v)
	}
}

// join adds every sum of one of f and one of g to into.
func (x *brute) join(into, f, g front) {
	for c, v := range f {
	next:
		for d, u := range g {
			var sum counts
			for i := range c {
				sum[i] = c[i] + d[i]
				if x.limits != nil && i < len(x.limits) && int(sum[i]) > x.limits[i] {
					continue next
				}
			}
			if x.limits == nil {
				sum = counts{}
			}
			into.add(sum, v+u)
		}
	}
}

func newBrute(p *layout.Problem, b *layout.Board, price []Value, limits []int) *brute {
	x := &brute{p: p, s: p.Shop, b: b, price: price, limits: limits, strips: map[stripAt]stripFronts{},
		L: int(b.Length / unit), W: int(b.FullWidth() / unit)}
	x.known = map[layout.Length][]layout.Rect{}
	x.setBevels()
	for i := range p.Bill {
		x.lies = append(x.lies, x.liesOf(&p.Bill[i]))
		for _, l := range x.lies[i] {
			if !slices.Contains(x.needs, l.need) {
				x.needs = append(x.needs, l.need)
			}
		}
	}
	return x
}

// shift is how far the wood of a rough crosscut blank begins from y = 0, in
// floating point, rounded up.
func (x *brute) shift(blank layout.Length) layout.Length {
	share := float64(blank) / float64(x.b.Length)
	return layout.Length(math.Ceil(float64(x.b.Crook)*share*share - 1e-6))
}

// reach is where a defect is to be reckoned with, in a blank of a length.
func (x *brute) reach(i int, blank layout.Length) layout.Rect {
	all := x.known[blank]
	if all == nil {
		for _, d := range x.b.Defects {
			c := x.s.Clearance[d.Kind]
			r := d.Rect.Grow(c.Along, c.Across)
			r.Y2 += x.shift(blank)
			all = append(all, r)
		}
		x.known[blank] = all
	}
	return all[i]
}

// available is what a trued node finishes to, rounded down.
func (x *brute) available(r layout.Rect) layout.Length {
	avail := float64(x.b.Thickness)
	if x.b.Faces == layout.FacesRough {
		avail -= 2 * float64(x.s.FaceSkim)
	}
	along, across := float64(r.Length())/float64(x.b.Length), float64(x.woodWidth(r))/float64(x.b.FullWidth())
	avail -= float64(x.b.Bow)*along*along + float64(x.b.Cup)*across*across + float64(x.b.Twist)/2*along*across
	return layout.Length(math.Floor(avail + 1e-6))
}

// woodWidth is how wide the machines meet a node.
func (x *brute) woodWidth(r layout.Rect) layout.Length {
	return min(r.Y2, max(x.b.Far(r.X1), x.b.Far(r.X2))) - r.Y1
}

// tooWide reports whether a node is wider than a machine takes.
func (x *brute) tooWide(r layout.Rect) bool {
	w := x.woodWidth(r)
	return x.s.JointerWidth > 0 && w > x.s.JointerWidth || x.s.PlanerWidth > 0 && w > x.s.PlanerWidth
}

func mmRect(x1, x2, y1, y2 int) layout.Rect {
	return layout.Rect{X1: layout.Length(x1) * unit, X2: layout.Length(x2) * unit, Y1: layout.Length(y1) * unit, Y2: layout.Length(y2) * unit}
}

// sequence is the best way to put children between lo and hi, a kerf apart:
// child(i, j) is the front of one child from i to j.
func (x *brute) sequence(lo, hi, kerf int, child func(i, j int) front) front {
	best := make([]front, hi+kerf+2) // best[i]: from i on
	for i := hi + kerf + 1; i >= lo; i-- {
		best[i] = front{counts{}: 0}
		if i+1 < len(best) {
			best[i].merge(best[i+1])
		}
		for j := i + 1; j <= hi; j++ {
			if f := child(i, j); len(f) > 0 {
				x.join(best[i], f, best[min(j+kerf, len(best)-1)])
			}
		}
	}
	return best[min(lo, len(best)-1)]
}

// metal reports whether a rectangle meets metal, in a blank of a length.
func (x *brute) metal(r layout.Rect, blank layout.Length) bool {
	for i, d := range x.b.Defects {
		if d.Kind == layout.Metal && x.reach(i, blank).Overlaps(r) {
			return true
		}
	}
	return false
}

// best is the front of the whole board.
func (x *brute) best() front {
	kerf := int(x.s.CrosscutKerf / unit)
	return x.sequence(0, x.L, kerf, func(i, j int) front {
		long := layout.Length(j-i) * unit
		if i > 0 && x.metal(mmRect(max(0, i-kerf), i, 0, x.W), long) || j < x.L && x.metal(mmRect(j, min(x.L, j+kerf), 0, x.W), long) {
			return nil
		}
		f := x.offcut(mmRect(i, j, 0, x.W), long)
		trim := int(x.s.EndTrim / unit)
		if i >= trim && j <= x.L-trim {
			f.merge(x.trued(mmRect(i, j, 0, x.W)))
			f.merge(x.rough(i, j))
		}
		return f
	})
}

// offcut is the front of a leaf that is kept, in a rough crosscut blank of a length.
func (x *brute) offcut(r layout.Rect, blank layout.Length) front {
	f := front{}
	clean := r
	clean.Y1 = max(clean.Y1, x.shift(blank))
	clean.Y2 = min(clean.Y2, x.b.Far(r.X1), x.b.Far(r.X2))
	if clean.Length() < x.s.MinOffcutLength || clean.Width() < x.s.MinOffcutWidth || clean.Empty() || x.s.OffcutCredit == 0 {
		return f
	}
	sound := 0
	for i := clean.X1; i < clean.X2; i += unit {
		for j := clean.Y1 / unit * unit; j < clean.Y2; j += unit {
			cell := layout.Rect{X1: i, X2: i + unit, Y1: max(j, clean.Y1), Y2: min(j+unit, clean.Y2)}
			if !slices.ContainsFunc(x.b.Defects, func(d layout.Defect) bool { return d.Rect.Overlaps(cell) }) {
				sound += int(cell.Width())
			}
		}
	}
	rate := float64(x.s.OffcutCredit) / float64(layout.CreditUnity) * float64(FromMoney(x.b.Cost)) /
		(float64(x.L) * (float64(x.b.Width+x.b.TipWidth) / 2 / float64(unit)))
	f.add(counts{}, Value(float64(sound)/float64(unit)*rate+0.5))
	return f
}

// rough rips a crosscut piece before it is trued.
func (x *brute) rough(i, j int) front {
	if layout.Length(j-i)*unit < x.s.MinRipLength {
		return nil
	}
	kerf := int(x.s.RoughRipKerf / unit)
	return x.sequence(0, x.W, kerf, func(k, l int) front {
		r := mmRect(i, j, k, l)
		if k > 0 && x.metal(mmRect(i, j, max(0, k-kerf), k), r.Length()) || l < x.W && x.metal(mmRect(i, j, l, min(x.W, l+kerf)), r.Length()) {
			return nil
		}
		f := x.offcut(r, r.Length())
		f.merge(x.trued(r))
		return f
	})
}

// trued is a trued node, for every set of thicknesses that it may hold.
func (x *brute) trued(r layout.Rect) front {
	f := front{}
	if x.metal(r, r.Length()) || x.tooWide(r) {
		return f
	}
	u := r
	u.Y1 = max(u.Y1, x.shift(r.Length()))
	jointed, straight := false, x.b.Edges != layout.EdgesRough && x.b.Crook == 0
	if r.Y1 > 0 || !straight {
		u.Y1, jointed = u.Y1+x.s.EdgeJoint, true
	}
	if r.Y2 < x.b.FullWidth() || x.b.Edges != layout.EdgesBoth {
		u.Y2, jointed = u.Y2-x.s.EdgeJoint, true
	}
	if !straight {
		u.X1, u.X2 = u.X1+x.s.EndSquare, u.X2-x.s.EndSquare
	}
	if u.Empty() {
		return f
	}
	fits := r.Length() >= x.s.MinBlank && (x.s.MaxBlank == 0 || r.Length() <= x.s.MaxBlank)
	avail := x.available(r)
	for _, planed := range x.needs {
		asIs := x.b.Faces == layout.FacesPlaned && !jointed && planed == x.b.Thickness
		if planed > avail || !fits && !asIs {
			continue
		}
		if r == u { // it may be a part itself, and is not ripped then
			f.merge(x.part(r, r, planed, x.bevels[0]))
		}
		if r.Length() >= x.s.MinRipLength {
			if len(x.bevels) > 1 {
				f.merge(x.leaningNode(r, u, planed))
			} else {
				f.merge(x.node(r, u, planed))
			}
		}
	}
	return f
}

// from is where a strip at position i begins: an offcut along the near edge begins
// where the wood does, between two positions.
func (x *brute) from(i, lo int, near layout.Length) layout.Length {
	if i == lo {
		return near
	}
	return layout.Length(i) * unit
}

// bruteLie is one way to cut a part: what it needs of thickness, how wide it is, how
// many pieces it gives.
type bruteLie struct {
	need, width layout.Length
	layers      int
}

// liesOf lists the ways to cut a part out of the board's thickness.
func (x *brute) liesOf(p *layout.Part) []bruteLie {
	layers := 1
	if p.Resaw && p.Length >= x.s.MinBlank {
		layers = int(x.b.Thickness / p.Thickness)
	}
	var lies []bruteLie
	for n := layout.Length(1); n <= layout.Length(layers); n++ {
		sawn := (n - 1) * (x.s.ResawKerf + 2*x.s.FaceSkim)
		lies = append(lies, bruteLie{n*p.Thickness + sawn, p.Width, int(n)})
		if p.OnEdge && n*p.Width+sawn <= x.b.Thickness {
			lies = append(lies, bruteLie{n*p.Width + sawn, p.Thickness, int(n)})
		}
	}
	return lies
}

// node rips a trued node planed to a thickness that at least one strip has.
func (x *brute) node(r, u layout.Rect, planed layout.Length) front {
	type state struct{ with, without front }
	lo, hi, kerf := int((u.Y1+unit-1)/unit), int(u.Y2/unit), int(x.s.RipKerf/unit)
	best := make([]state, hi+kerf+2)
	for i := hi + kerf + 1; i >= lo; i-- {
		best[i] = state{front{}, front{counts{}: 0}}
		if i+1 < len(best) {
			best[i].with.merge(best[i+1].with)
			best[i].without.merge(best[i+1].without)
		}
		for j := i + 1; j <= hi; j++ {
			strip := layout.Rect{X1: u.X1, X2: u.X2, Y1: layout.Length(i) * unit, Y2: layout.Length(j) * unit}
			next := best[min(j+kerf, len(best)-1)]
			off := x.offcut(layout.Rect{X1: u.X1, X2: u.X2, Y1: x.from(i, lo, u.Y1), Y2: strip.Y2}, r.Length())
			x.join(best[i].with, off, next.with)
			x.join(best[i].without, off, next.without)
			for _, t := range x.needs {
				if t > planed || t < planed && u.Length() < x.s.MinBlank {
					continue
				}
				f, bare := x.strip(r, strip, t, x.bevels[0])
				x.join(best[i].with, bare, next.with)
				x.join(best[i].without, bare, next.without)
				if t == planed {
					x.join(best[i].with, f, next.with)
					x.join(best[i].with, f, next.without)
				} else {
					x.join(best[i].with, f, next.with)
					x.join(best[i].without, f, next.without)
				}
			}
		}
	}
	return best[min(lo, len(best)-1)].with
}

// strip crosscuts a strip, with at least one part in it or with none. A part may
// also be the whole strip.
func (x *brute) strip(r, strip layout.Rect, t layout.Length, v bruteBevel) (with, without front) {
	at := stripAt{r.X1, r.X2, t, strip, v.by}
	known, ok := x.strips[at]
	if !ok {
		known.with, known.without = x.crosscut(r, strip, t, v)
		x.strips[at] = known
	}
	return known.with, known.without
}

// crosscut works a strip out.
func (x *brute) crosscut(r, strip layout.Rect, t layout.Length, v bruteBevel) (with, without front) {
	kerf := int(x.s.CrosscutKerf / unit)
	lo, hi := int(strip.X1/unit), int(strip.X2/unit)
	type state struct{ with, without front }
	best := make([]state, hi+kerf+2)
	for i := hi + kerf + 1; i >= lo; i-- {
		best[i] = state{front{}, front{counts{}: 0}}
		if i+1 < len(best) {
			best[i].with.merge(best[i+1].with)
			best[i].without.merge(best[i+1].without)
		}
		for j := i + 1; j <= hi; j++ {
			cell := layout.Rect{X1: layout.Length(i) * unit, X2: layout.Length(j) * unit, Y1: strip.Y1, Y2: strip.Y2}
			next := best[min(j+kerf, len(best)-1)]
			off := x.offcut(cell, r.Length())
			x.join(best[i].with, off, next.with)
			x.join(best[i].without, off, next.without)
			if f := x.cell(r, cell, t, v); len(f) > 0 {
				x.join(best[i].with, f, next.with)
				x.join(best[i].with, f, next.without)
			}
		}
	}
	all := best[min(lo, len(best)-1)]
	return all.with, all.without
}

// cell is one part, or parts ripped from the cell again; at least one.
func (x *brute) cell(r, cell layout.Rect, t layout.Length, v bruteBevel) front {
	f := x.part(r, cell, t, v)
	if !x.s.RipAgain || cell.Length() < x.s.MinRipLength {
		return f
	}
	if !x.holdsAny(cell, t) {
		return f
	}
	kerf := int((v.kerf + unit - 1) / unit)
	g := x.sequence(int(cell.Y1/unit), int(cell.Y2/unit), kerf, func(i, j int) front {
		piece := layout.Rect{X1: cell.X1, X2: cell.X2, Y1: layout.Length(i) * unit, Y2: layout.Length(j) * unit}
		h := front{}
		if v.by == 0 {
			h = x.offcut(piece, r.Length())
		}
		h.merge(x.part(r, piece, t, v))
		return h
	})
	// A cell that holds no part at all has no thickness to be planed to; the
	// strip's own offcut is worth as much.
	f.merge(g)
	return f
}

// holdsAny reports whether a part is as long as a cell in some way that needs a
// thickness.
func (x *brute) holdsAny(cell layout.Rect, t layout.Length) bool {
	for i := range x.p.Bill {
		if x.p.Bill[i].Length == cell.Length() && slices.ContainsFunc(x.lies[i], func(l bruteLie) bool { return l.need == t }) {
			return true
		}
	}
	return false
}

// part is the front of a leaf that is exactly one part.
func (x *brute) part(r, leaf layout.Rect, t layout.Length, v bruteBevel) front {
	f := front{}
	loss := layout.Length(0)
	if x.b.Edges != layout.EdgesBoth || r.Y2 < x.b.FullWidth() {
		loss = x.s.EdgeJoint
	}
	far := min(x.b.Far(leaf.X1), x.b.Far(leaf.X2)) - loss
	wood := leaf
	wood.Y2 += v.by
	if wood.Y2 > far || leaf.X1 < r.X1+x.s.Snipe || leaf.X2 > r.X2-x.s.Snipe {
		return f
	}
	for i := range x.p.Bill {
		p := &x.p.Bill[i]
		if p.Length != leaf.Length() || x.bevelOf(p) != v || !x.sound(p, wood, r.Length()) || x.price[i] <= 0 {
			continue
		}
		for _, l := range x.lies[i] {
			var c counts
			if l.need != t || l.width != leaf.Width() || x.limits != nil && l.layers > x.limits[i] {
				continue
			}
			if x.limits != nil {
				c[i] = int8(l.layers)
			}
			f.add(c, Value(l.layers)*x.price[i])
		}
	}
	return f
}

// sound reports whether a part meets its grade with one face or the other
// showing, in a blank of a length.
func (x *brute) sound(p *layout.Part, leaf layout.Rect, blank layout.Length) bool {
	g := x.s.Grades[p.Grade]
	good := func(show, back layout.Face) bool {
		for i, d := range x.b.Defects {
			if !x.reach(i, blank).Overlaps(leaf) {
				continue
			}
			if d.On(show) && !slices.Contains(g.Show, d.Kind) || d.On(back) && !slices.Contains(g.Back, d.Kind) {
				return false
			}
		}
		return true
	}
	return good(layout.FaceA, layout.FaceB) || good(layout.FaceB, layout.FaceA)
}
