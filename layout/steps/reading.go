package steps

import (
	"strings"

	"sawbill/layout"
)

// Reading is a length as a person reads it off a rule, without its unit: a
// fraction of an inch, or tenths of a millimetre. With ~ in front it means
// about: the length is no mark of the rule, and the nearest one is given.
func Reading(shop *layout.Shop, l layout.Length) string {
	if shop.Units == layout.Inches {
		return strings.TrimSuffix(l.Format(layout.Inches, shop.Fraction), `"`)
	}
	const tenth = layout.Millimetre / 10
	near := (l + tenth/2) / tenth * tenth
	text := strings.TrimSuffix(near.Format(layout.Millimetres, shop.Fraction), " mm")
	if near != l {
		return "~" + text
	}
	return text
}
