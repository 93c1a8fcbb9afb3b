package check

import (
	"cmp"
	"math"
	"slices"

	"sawbill/layout"
)

// accountShare is what a figure of an account may be missed by, as a share of
// the volume of the board.
const accountShare = 1e-6

// account: every figure of a board's account is what became of its wood, and
// all of them add up to the board.
func account(s *sawn, wrong report) {
	got, want := s.plan.Account, s.accounted()
	whole := s.volume()
	sum := got.Parts + got.Planing + got.Kerf + got.Edges + got.Offcuts + got.Defects + got.Scrap
	for _, f := range []struct {
		name      string
		got, want float64
	}{
		{"parts", got.Parts, want.Parts}, {"planing", got.Planing, want.Planing},
		{"kerf", got.Kerf, want.Kerf}, {"edges", got.Edges, want.Edges},
		{"offcuts", got.Offcuts, want.Offcuts}, {"defects", got.Defects, want.Defects},
		{"scrap", got.Scrap, want.Scrap}, {"sum", sum, whole},
	} {
		if !(math.Abs(f.got-f.want) <= accountShare*whole) { // so that NaN is wrong
			wrong(nil, "%s is %.3f mm³ in the account; it is %.3f of %.3f", f.name, f.got, f.want, whole)
		}
	}
}

// accounted works out the account of a board from the regions of its wood.
func (s *sawn) accounted() layout.Account {
	area := s.regionAreas(s.regions())
	thick := mm(s.wood.Thickness)
	acc := layout.Account{
		Parts:   s.finished(),
		Offcuts: area[1] * thick, Kerf: area[2] * thick, Edges: area[3] * thick, Defects: area[4] * thick,
	}
	acc.Planing = area[0]*thick - acc.Parts
	acc.Scrap = s.volume() - area[0]*thick - acc.Offcuts - acc.Kerf - acc.Edges - acc.Defects
	return acc
}

// regions are the rectangles of the board that become parts (with what planing
// takes), offcuts, kerf, edges and defects. Wood that lies in two of them
// belongs to the first.
func (s *sawn) regions() [5][]layout.Rect {
	trim, w, l := s.job.shop.EndTrim, s.full(), s.wood.Length
	var parts, offcuts, kerfs, defects []layout.Rect
	edges := []layout.Rect{{X1: 0, X2: trim, Y1: 0, Y2: w}, {X1: l - trim, X2: l, Y1: 0, Y2: w}}
	for _, at := range s.spots {
		switch {
		case at.Part != "":
			parts = append(parts, at.Rect)
		case at.Offcut != "":
			offcuts = append(offcuts, s.clean(at))
		}
		if at.Trued {
			edges = append(edges, s.truedAway(at)...)
		}
		if at.parent != nil {
			beside := s.kerfs(at, s.usable(at.parent))
			kerfs = append(kerfs, beside[:]...)
		}
	}
	for _, d := range s.wood.Defects {
		defects = append(defects, d.Rect)
	}
	return [5][]layout.Rect{parts, offcuts, kerfs, edges, defects}
}

// truedAway is what truing takes from the edges and ends of a node.
func (s *sawn) truedAway(at *spot) []layout.Rect {
	in, r := s.usable(at), at.Rect
	return []layout.Rect{
		{X1: r.X1, X2: in.X1, Y1: r.Y1, Y2: r.Y2}, {X1: in.X2, X2: r.X2, Y1: r.Y1, Y2: r.Y2},
		{X1: r.X1, X2: r.X2, Y1: r.Y1, Y2: in.Y1}, {X1: r.X1, X2: r.X2, Y1: in.Y2, Y2: r.Y2},
	}
}

// regionAreas measures the wood of each region that no earlier one holds, in
// square millimetres: slab by slab between the ends of all rectangles, it
// measures how much more wood is covered as region after region is laid on.
func (s *sawn) regionAreas(regions [5][]layout.Rect) [5]float64 {
	xs := []layout.Length{0, s.wood.Length}
	for _, region := range regions {
		for _, r := range region {
			xs = append(xs, held(r.X1, 0, s.wood.Length), held(r.X2, 0, s.wood.Length))
		}
	}
	slices.Sort(xs)
	xs = slices.Compact(xs)
	var area [5]float64
	for i := range xs[1:] {
		var laid []layout.Span
		var before float64
		for u, region := range regions {
			laid = append(laid, across(region, xs[i], xs[i+1])...)
			covered := s.woodIn(laid, xs[i], xs[i+1])
			area[u] += covered - before
			before = covered
		}
	}
	return area
}

// across lists the extents, across the board, of the rectangles that span a
// slab and are not empty.
func across(region []layout.Rect, x1, x2 layout.Length) []layout.Span {
	var list []layout.Span
	for _, r := range region {
		if r.X1 <= x1 && x2 <= r.X2 && r.Y1 < r.Y2 {
			list = append(list, layout.Span{Lo: r.Y1, Hi: r.Y2})
		}
	}
	return list
}

// woodIn is the area of wood of a slab that the spans cover together.
func (s *sawn) woodIn(spans []layout.Span, x1, x2 layout.Length) float64 {
	slices.SortFunc(spans, func(a, b layout.Span) int { return cmp.Compare(a.Lo, b.Lo) })
	var sum float64
	reached := layout.Length(0)
	for _, sp := range spans {
		if lo := max(sp.Lo, reached); lo < sp.Hi {
			sum += s.woodBetween(x1, x2, lo, sp.Hi)
			reached = sp.Hi
		}
	}
	return sum
}

// woodBetween is the area of the wood in [x1, x2] by [y1, y2]. Its depth, far(x)
// held between y1 and y2, less y1, is linear between the places where far
// crosses y1 and y2, so that trapezoids measure it exactly.
func (s *sawn) woodBetween(x1, x2, y1, y2 layout.Length) float64 {
	w, slope := mm(s.wood.Width), (mm(s.wood.TipWidth)-mm(s.wood.Width))/mm(s.wood.Length)
	depth := func(x float64) float64 { return min(max(w+slope*x, mm(y1)), mm(y2)) - mm(y1) }
	xs := []float64{mm(x1), mm(x2)}
	if slope != 0 {
		for _, y := range []float64{mm(y1), mm(y2)} {
			xs = append(xs, min(max((y-w)/slope, mm(x1)), mm(x2)))
		}
		slices.Sort(xs)
	}
	var sum float64
	for i := range xs[1:] {
		sum += (xs[i+1] - xs[i]) * (depth(xs[i]) + depth(xs[i+1])) / 2
	}
	return sum
}
