package check

import "sawbill/layout"

// need is the thickness that a part leaf asks of its trued node. A part on edge
// stands on its thickness; layers are resawn and then cleaned on both faces.
func (s *sawn) need(leaf *spot) layout.Length {
	shop, thick := s.job.shop, leaf.part.Thickness
	if leaf.OnEdge {
		thick = leaf.part.Width
	}
	n := layout.Length(leaf.pieces())
	return n*(thick+shop.ThicknessAllowance) + (n-1)*(shop.ResawKerf+2*shop.FaceSkim)
}

// parts lists the leaves of known parts at or below a node.
func (at *spot) parts() []*spot {
	if at.part != nil {
		return []*spot{at}
	}
	var list []*spot
	for _, kid := range at.kids {
		list = append(list, kid.parts()...)
	}
	return list
}

// thickest is the largest need at or below a node; 0 without parts.
func (s *sawn) thickest(at *spot) layout.Length {
	var most layout.Length
	for _, leaf := range at.parts() {
		most = max(most, s.need(leaf))
	}
	return most
}
