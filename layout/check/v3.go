package check

// v3: trued nodes, and nodes with a part in them except the root, stay clear of
// the end trims.
func v3(s *sawn, wrong report) {
	trim := s.job.shop.EndTrim
	lo, hi := trim, s.wood.Length-trim
	for _, at := range s.spots {
		if !at.Trued && (at.parent == nil || !at.holds) {
			continue
		}
		if at.X1 < lo || at.X2 > hi {
			wrong(at, "it runs from x %v to %v; with %v trimmed off each end the board gives %v to %v",
				at.X1, at.X2, trim, lo, hi)
		}
	}
}
