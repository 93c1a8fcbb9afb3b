package check

import "sawbill/layout"

// v5: what the machines take, and what thickness the faces clean up to.
func v5(s *sawn, wrong report) {
	for _, at := range s.spots {
		if !at.Trued {
			continue
		}
		v5Length(s, at, wrong)
		v5Width(s, at, wrong)
		v5Thickness(s, at, wrong)
		v5Leaf(s, at, wrong)
		for _, kid := range at.kids {
			v5Strip(s, at, kid, wrong)
		}
	}
}

// v5Length holds a blank that goes over a machine against the machine's limits.
func v5Length(s *sawn, at *spot, wrong report) {
	if !s.machined(at) {
		return
	}
	shop := s.job.shop
	if at.Length() < shop.MinBlank {
		wrong(at, "the blank is %v long; the machines take no less than %v", at.Length(), shop.MinBlank)
	}
	if shop.MaxBlank > 0 && at.Length() > shop.MaxBlank {
		wrong(at, "the blank is %v long; the machines take no more than %v", at.Length(), shop.MaxBlank)
	}
}

// machined reports whether a trued node meets jointer or planer at all.
func (s *sawn) machined(at *spot) bool {
	near, far := s.jointed(at)
	thinner := at.Thickness > 0 && at.Thickness < s.wood.Thickness
	return s.wood.Faces == layout.FacesRough || near || far || thinner
}

func v5Width(s *sawn, at *spot, wrong report) {
	w, shop := s.woodWidth(at), s.job.shop
	if shop.JointerWidth > 0 && w > shop.JointerWidth {
		wrong(at, "the blank is %v wide; the jointer takes %v", w, shop.JointerWidth)
	}
	if shop.PlanerWidth > 0 && w > shop.PlanerWidth {
		wrong(at, "the blank is %v wide; the planer takes %v", w, shop.PlanerWidth)
	}
}

func v5Thickness(s *sawn, at *spot, wrong report) {
	left, slack := s.available(at), s.warpSlack()
	for _, leaf := range at.parts() {
		if need := s.need(leaf); need > left+slack {
			wrong(leaf, "it needs %v of thickness; its blank cleans up to %v", need, left)
		}
	}
	most := s.thickest(at)
	switch {
	case most > 0 && at.Thickness != most:
		wrong(at, "thickness says %v; the thickest of its parts needs %v", at.Thickness, most)
	case most == 0 && at.Thickness > left+slack:
		wrong(at, "thickness says %v; the blank cleans up to %v", at.Thickness, left)
	}
}

// v5Leaf: a trued node that is a part itself may use no more than is usable.
func v5Leaf(s *sawn, at *spot, wrong report) {
	in := s.usable(at)
	if at.Part != "" && (at.X1 < in.X1 || at.X2 > in.X2 || at.Y1 < in.Y1-at.slack || at.Y2 > in.Y2) {
		wrong(at, "the part is the whole blank, but truing leaves only %v", in)
	}
}

// v5Strip: the parts of one strip have one thickness, and a strip that is
// planed thinner than its node is long enough for the planer.
func v5Strip(s *sawn, at, strip *spot, wrong report) {
	leaves := strip.parts()
	if len(leaves) == 0 {
		return
	}
	need := s.need(leaves[0])
	for _, leaf := range leaves[1:] {
		if other := s.need(leaf); other != need {
			wrong(leaf, "it needs a thickness of %v in a strip planed to %v", other, need)
		}
	}
	if need >= s.thickest(at) {
		return
	}
	if strip.Length() < s.job.shop.MinBlank {
		wrong(strip, "the strip is planed thinner, to %v, and is %v long; the planer takes no less than %v",
			need, strip.Length(), s.job.shop.MinBlank)
	}
	if leaning(strip) {
		wrong(strip, "a bevelled strip cannot be planed thinner")
	}
}
