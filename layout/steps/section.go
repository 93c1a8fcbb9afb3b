package steps

import "sawbill/layout"

// Section is a piece across the grain: how far it reaches on face A and on face B,
// in the board's frame. Of an edge that leans the two differ.
type Section struct{ A, B layout.Span }

// Square reports whether neither edge leans.
func (s Section) Square() bool { return s.A == s.B }

// width is that of the wider face, 0 where there is no wood.
func (s Section) width() layout.Length { return max(0, s.A.Len(), s.B.Len()) }

func (p piece) section() Section {
	return sectionOf(p.rect.Across(), p.near, p.far)
}

// sectionOf is a section by its extent on face A and the leans of its edges.
func sectionOf(a layout.Span, near, far layout.Length) Section {
	return Section{a, layout.Span{Lo: a.Lo + near, Hi: a.Hi + far}}
}

// under is the section where the wood reaches to far only.
func (s Section) under(far layout.Length) Section {
	s.A.Hi, s.B.Hi = min(s.A.Hi, far), min(s.B.Hi, far)
	return s
}

// sawn gives what a rip that takes a kerf of face A makes of a section: what lies
// on the side of the reference edge, and beyond the kerf.
func (s Section) sawn(kerf layout.Span, lean layout.Length) (near, beyond Section) {
	near, beyond = s, s
	near.A.Hi, near.B.Hi = kerf.Lo, kerf.Lo+lean
	beyond.A.Lo, beyond.B.Lo = kerf.Hi, kerf.Hi+lean
	return near, beyond
}
