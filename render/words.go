package render

import (
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// words prints the lengths of a shop.
type words struct{ shop *layout.Shop }

// reading is a length without its unit, which the head of the sheet gives once.
func (w words) reading(l layout.Length) string {
	return steps.Reading(w.shop, l)
}

// size is several lengths: 24 x 1-1/2.
func (w words) size(lengths ...layout.Length) string {
	var list []string
	for _, l := range lengths {
		list = append(list, w.reading(l))
	}
	return held(strings.Join(list, " x "))
}

// down is a length rounded down to what a rule shows, for a width that must be
// there; up is the same for one that must pass.
func (w words) down(l layout.Length) layout.Length { return l - l%w.finest() }

func (w words) up(l layout.Length) layout.Length { return w.down(l + w.finest() - 1) }

// round is a length in whole inches or centimetres.
func (w words) round(l layout.Length) layout.Length {
	if w.shop.Units == layout.Millimetres {
		return l - l%layout.Centimetre
	}
	return l - l%layout.Inch
}

func (w words) finest() layout.Length {
	if w.shop.Units == layout.Millimetres {
		return layout.Millimetre / 2
	}
	return layout.Inch / layout.Length(w.shop.Fraction)
}

// unit is what readings count.
func (w words) unit() string {
	if w.shop.Units == layout.Millimetres {
		return "millimetres"
	}
	return "inches"
}

// defect is the word for a kind, and the face where it shows on one only.
func defectWord(d layout.Defect) string {
	word := steps.Word(d.Kind)
	if d.Face != layout.Through {
		word += ", face " + d.Face.String()
	}
	return word
}
