package render

import (
	"fmt"
	"slices"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// assumptions are the things that the plan took for granted and a person should
// know before the first cut.
func (d *boardSheet) assumptions() *block {
	b := newBlock(d.types)
	s := d.shop
	text := []string{fmt.Sprintf("Kerfs: rip %s, crosscut %s, rough rip %s%s.",
		d.reading(s.RipKerf), d.reading(s.CrosscutKerf), d.reading(s.RoughRipKerf), d.resawKerf())}
	if s.JointerWidth == 0 || s.PlanerWidth == 0 {
		text = append(text, "No machine widths given; widest blank "+d.reading(d.up(d.widestBlank()))+".")
	}
	if warp := d.warp(); warp != "" {
		text = append(text, "Over the whole board: "+warp+".")
	} else {
		text = append(text, "No warp marked: taken as flat and straight.")
	}
	if d.about() {
		text = append(text, "~ means about: to the nearest mark of the rule.")
	}
	if over := d.allowances(); len(over) > 0 {
		text = append(text, "Parts are cut over: "+strings.Join(over, ", ")+".")
	}
	y := b.lines(strings.Join(text, " "), 0, textCap+0.5, d.width(), plain())
	b.height = y + 4
	return b
}

// resawKerf is the kerf of the bandsaw, where the board needs it.
func (d *boardSheet) resawKerf() string {
	for _, s := range d.work.Steps {
		if s.Operation == steps.Resaw {
			return ", resaw " + d.reading(d.shop.ResawKerf)
		}
	}
	return ""
}

// allowances are what parts are cut larger than finished by.
func (d *boardSheet) allowances() []string {
	var over []string
	for _, a := range []struct {
		by   layout.Length
		what string
	}{{d.shop.LengthAllowance, " long"}, {d.shop.WidthAllowance, " wide"}, {d.shop.ThicknessAllowance, " thick"}} {
		if a.by > 0 {
			over = append(over, held(d.reading(a.by)+a.what))
		}
	}
	return over
}

// about reports whether a setting or a size of the sheet is no mark of the rule.
func (d *boardSheet) about() bool {
	return slices.ContainsFunc(d.work.Steps, func(s steps.Step) bool {
		return slices.ContainsFunc([]layout.Length{
			s.Setting, s.OffTape.Length, s.RestTape.Length, s.OffSize.Width, s.OffTape.Butt, s.RestTape.Butt,
		}, func(l layout.Length) bool { return strings.HasPrefix(d.reading(l), "~") })
	})
}

// widestBlank is the widest wood that goes over the machines.
func (d *boardSheet) widestBlank() layout.Length {
	var widest layout.Length
	for _, blank := range d.work.Blanks {
		r := blank.Node.Rect
		widest = max(widest, min(r.Y2, max(d.board.Far(r.X1), d.board.Far(r.X2)))-r.Y1)
	}
	return widest
}
