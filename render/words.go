package render

import (
	"strings"

	"sawbill/layout"
)

// words prints the lengths of a shop.
type words struct{ shop *layout.Shop }

// reading is a length without its unit, which the head of the sheet gives once.
func (w words) reading(l layout.Length) string {
	text := l.Format(w.shop.Units, w.shop.Fraction)
	return strings.TrimSuffix(strings.TrimSuffix(text, `"`), " mm")
}

// size is several lengths: 24 x 1-1/2.
func (w words) size(lengths ...layout.Length) string {
	var list []string
	for _, l := range lengths {
		list = append(list, w.reading(l))
	}
	return strings.Join(list, " x ")
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
	word := string(d.Kind)
	if d.Kind == layout.Loose {
		word = "loose knot"
	}
	if d.Kind == layout.Pin {
		word = "pin knot"
	}
	if d.Face != layout.Through {
		word += ", face " + d.Face.String()
	}
	return word
}
