package check

// v7: a part lies inside the outline, less what its edges lose in truing.
func v7(s *sawn, wrong report) {
	for _, at := range s.spots {
		if at.Part == "" {
			continue
		}
		var lost losses
		if at.trued != nil {
			lost = s.lossesOf(at.trued)
		}
		if lo := at.shift + lost.near; at.Y1 < lo-at.slack {
			wrong(at, "it starts at y %v; sound edge to work from is at %v", at.Y1, lo)
		}
		if hi := s.narrow(at.Rect) - lost.far; at.Y2+at.Lean > hi+s.taperSlack() {
			wrong(at, "it reaches to y %v; the far edge, less what is lost to straighten it, is at %v",
				at.Y2+at.Lean, hi)
		}
	}
}
