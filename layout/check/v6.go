package check

import "sawbill/layout"

// v6: parts have their exact size and keep out of the snipe; nothing short is
// ripped.
func v6(s *sawn, wrong report) {
	for _, at := range s.spots {
		if at.part != nil {
			v6Size(s, at, wrong)
			v6Snipe(s, at, wrong)
		}
		least := s.job.shop.MinRipLength
		if len(at.kids) > 0 && at.Cut == layout.Rip && at.Length() < least {
			wrong(at, "it is ripped, but only %v long; nothing shorter than %v is ripped", at.Length(), least)
		}
	}
}

func v6Size(s *sawn, at *spot, wrong report) {
	shop := s.job.shop
	long, wide := s.cutLength(at), at.part.Width+shop.WidthAllowance
	if at.OnEdge {
		wide = at.part.Thickness + shop.WidthAllowance
		if !at.part.OnEdge {
			wrong(at, "it stands on edge, which the bill does not allow")
		}
	}
	if at.Length() != long {
		wrong(at, "it is %v long; the part is cut to %v", at.Length(), long)
	}
	if at.Width() != wide {
		wrong(at, "it is %v wide; the part is cut to %v", at.Width(), wide)
	}
}

// cutLength is the length that a part leaf must have. A strip of a glue-up of k
// slices is
//
//	k * slice_thickness + (k - 1) * crosscut_kerf + 2 * panel_square
func (s *sawn) cutLength(at *spot) layout.Length {
	shop, p := s.job.shop, at.part
	if p.Set == "" {
		return p.Length + shop.LengthAllowance
	}
	k := layout.Length(max(at.Slices, 1))
	return k*p.SliceThickness + (k-1)*shop.CrosscutKerf + 2*shop.PanelSquare
}

func v6Snipe(s *sawn, at *spot, wrong report) {
	snipe := s.job.shop.Snipe
	if at.trued == nil || snipe == 0 {
		return
	}
	if near := min(at.X1-at.trued.X1, at.trued.X2-at.X2); near < snipe {
		wrong(at, "it is %v from an end of its blank; snipe reaches %v", near, snipe)
	}
}
