package glueup

import "sawbill/layout"

// Strip is one strip of a glue-up.
type Strip struct {
	Part             string // its name in the bill
	Wood             string // its letter
	Thickness, Width layout.Length
	Bevel            layout.Angle
}

// Form is how the strips of a glue-up lie together.
type Form uint8

// The forms.
const (
	SideBySide Form = iota // a panel, edge to edge
	Hexagon                // three bevelled strips around a common edge
	Alone                  // one strip that is sliced without gluing
)

// Panel is a glue-up: strips that are glued along the grain and then sliced. It is
// a set of the bill.
type Panel struct {
	Name   string // of the set
	Form   Form
	Strips []Strip // from left to right as a slice lies that is not turned
	// Height is the thickness of a panel after planing: how high one slice stands in
	// the face.
	Height layout.Length
	// Slices are needed for the face; Spare are cut beyond that.
	Slices, Spare int
	// Sections are how many strips, from the left, are glued and planed together
	// before the panel is glued as a whole. One section is the whole panel.
	Sections []int
}

// Width is the width of a panel.
func (p *Panel) Width() layout.Length {
	var w layout.Length
	for _, s := range p.Strips {
		w += s.Width
	}
	return w
}

// sections divides strips, from the left, so that none is wider than the planer,
// where that can be; a planer width of 0 is no limit.
func sections(strips []Strip, planer layout.Length) []int {
	var list []int
	var width layout.Length
	for _, s := range strips {
		if len(list) == 0 || planer > 0 && width+s.Width > planer {
			list, width = append(list, 0), 0
		}
		list[len(list)-1]++
		width += s.Width
	}
	return list
}
