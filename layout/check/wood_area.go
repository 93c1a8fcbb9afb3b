package check

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

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
