package check

import "sawbill/layout"

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
