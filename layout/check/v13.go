package check

// v13: only a part that may be resawn has layers, and layers are long enough
// for the planer. The thickness that they need belongs to V5.
func v13(s *sawn, wrong report) {
	least := s.job.shop.MinBlank
	for _, at := range s.spots {
		if at.part == nil || at.Layers <= 1 {
			continue
		}
		if !at.part.Resaw {
			wrong(at, "it is resawn into %d layers, which the bill does not allow", at.Layers)
		}
		if at.part.Bevel != 0 {
			wrong(at, "a bevelled part cannot be resawn")
		}
		if at.Length() < least {
			wrong(at, "its layers are %v long; the planer takes no less than %v", at.Length(), least)
		}
	}
}
