package glueup

import (
	"fmt"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Say writes a length for people as a rule shows it, in the units of the design; ~
// means about.
func (w *Work) Say(l layout.Length) string {
	return steps.Reading(w.Shop, l) + w.mark()
}

// sayUp writes a length that must be there at least: rounded up to what a rule shows.
func (w *Work) sayUp(l layout.Length) string {
	step := layout.Millimetre / 2
	if w.Design.Units == layout.Inches {
		step = layout.Inch / layout.Length(w.Shop.Fraction)
	}
	return w.Say((l + step - 1) / step * step)
}

// Fine writes a length for a gauge: hundredths of a millimetre or thousandths of an
// inch beside what a rule shows, where that is not exact.
func (w *Work) Fine(l layout.Length) string {
	text := w.Say(l)
	switch {
	case !strings.HasPrefix(text, "~"):
		return text
	case w.Design.Units == layout.Inches:
		return fmt.Sprintf(`%s (%.3f")`, text, float64(l)/float64(layout.Inch))
	}
	return fmt.Sprintf("%.2f mm", float64(l)/float64(layout.Millimetre))
}

func (w *Work) mark() string {
	if w.Design.Units == layout.Inches {
		return `"`
	}
	return " mm"
}

// listOf joins words: a, b and c.
func listOf(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + words[len(words)-1]
}
