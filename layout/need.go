package layout

// FlatThickness is the thickness to which the wood of so many layers of a part is
// planed, before they are resawn; 1 layer is the part itself:
//
//	n * (thickness + thickness_allowance) + (n-1) * (resaw_kerf + 2 * face_skim)
//
// Each resaw takes its kerf and leaves two sawn faces to clean. layers is at
// least 1.
func (p *Part) FlatThickness(s *Shop, layers int) Length {
	return stacked(s, p.Thickness, layers)
}

// EdgeThickness is the same for a part that is cut standing on edge: its width
// takes the place of its thickness.
func (p *Part) EdgeThickness(s *Shop, layers int) Length {
	return stacked(s, p.Width, layers)
}

func stacked(s *Shop, thick Length, layers int) Length {
	n := Length(max(layers, 1))
	return n*(thick+s.ThicknessAllowance) + (n-1)*(s.ResawKerf+2*s.FaceSkim)
}

// EdgeWidth is the width that a piece of the part is cut to when it stands on
// edge.
func (p *Part) EdgeWidth(s *Shop) Length { return p.Thickness + s.WidthAllowance }

// NeedOf is the thickness that a leaf of part p needs: on edge or flat, for all
// of its layers.
func (s *Shop) NeedOf(leaf *Node, p *Part) Length {
	if leaf.OnEdge {
		return p.EdgeThickness(s, leaf.Pieces())
	}
	return p.FlatThickness(s, leaf.Pieces())
}

// LayerOf is the thickness of one piece of a leaf of part p as it lies: that of
// the part or, on edge, its width, with the allowance.
func (s *Shop) LayerOf(leaf *Node, p *Part) Length {
	if leaf.OnEdge {
		return p.EdgeThickness(s, 1)
	}
	return p.FlatThickness(s, 1)
}
