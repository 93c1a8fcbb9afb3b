package check

import "sawbill/layout"

// v10: what counts of an offcut is large enough to keep.
func v10(s *sawn, wrong report) {
	shop := s.job.shop
	for _, at := range s.spots {
		if at.Offcut == "" {
			continue
		}
		counts := s.clean(at)
		long, wide := counts.X2-counts.X1, counts.Y2-counts.Y1
		switch {
		case wide <= 0:
			wrong(at, "there is no clean rectangle of wood in it")
		case long < shop.MinOffcutLength || wide < shop.MinOffcutWidth:
			wrong(at, "what counts of it is %v by %v; the shop keeps nothing under %v by %v",
				long, wide, shop.MinOffcutLength, shop.MinOffcutWidth)
		}
	}
}

// clean is the largest rectangle of wood in an offcut leaf:
//
//	[x1, x2] by [max(y1, s), min(y2, far(x1), far(x2))]
func (s *sawn) clean(at *spot) layout.Rect {
	r := at.Rect
	r.Y1 = max(r.Y1, at.shift)
	r.Y2 = min(r.Y2, s.narrow(at.Rect))
	return r
}
