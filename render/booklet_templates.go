package render

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"sawbill/layout"
)

// template is a section of a strip, as it is ripped, and the parts that have it.
type template struct {
	width, thickness layout.Length // face A
	bevel            layout.Angle
	parts            []string
}

// sectionHead is more paper than stands above a section on its page.
const sectionHead = 40.0

// paperMM is a length at its true size on paper.
func paperMM(l layout.Length) float64 { return float64(l) / float64(layout.Millimetre) }

// templates are the sections of the strips at their true size, those that fit on
// the paper: to lay on the end of a strip, never to set a machine by.
func (b *booklet) templates() []Page {
	s := b.newSheet()
	s.put(b.scaleBar(s))
	fit := slices.DeleteFunc(b.sections(), func(t template) bool {
		w, h := t.size()
		return w > s.width() || h > s.bottom()-margin-sectionHead
	})
	if len(fit) == 0 {
		return nil
	}
	for len(fit) > 0 {
		var row *block
		row, fit = b.templateRow(s, fit)
		s.add(row, 0)
	}
	return s.finish("sections")
}

// sections are those of the parts that are made, each once, the widest first.
func (b *booklet) sections() []template {
	var list []template
	for i := range b.plan.Problem.Bill {
		p := &b.plan.Problem.Bill[i]
		t := template{width: p.CutWidth(b.shop), thickness: p.CutThickness(b.shop), bevel: p.Bevel}
		k := slices.IndexFunc(list, func(o template) bool {
			return o.width == t.width && o.thickness == t.thickness && o.bevel == t.bevel
		})
		switch {
		case !b.made(p.Name):
		case k >= 0:
			list[k].parts = append(list[k].parts, p.Name)
		default:
			t.parts = []string{p.Name}
			list = append(list, t)
		}
	}
	slices.SortStableFunc(list, func(x, y template) int { return int(min(1, max(-1, y.width-x.width))) })
	return list
}

func (b *booklet) made(part string) bool {
	for _, bp := range b.plan.Boards {
		for _, leaf := range bp.Root.Leaves() {
			if leaf.Part == part {
				return true
			}
		}
	}
	return false
}

// size is the paper that a section covers.
func (t template) size() (w, h float64) {
	return paperMM(t.width + t.bevel.Lean(t.thickness)), paperMM(t.thickness)
}

// scaleBar tells whether the printer kept the size.
func (b *booklet) scaleBar(s *sheet) *block {
	t := newBlock(s.types)
	y := t.lines("Sections of the strips at their true size, as ripped. Lay them on the end of a strip to check it; set machines by a rule, "+
		"and a bevel by a gauge.", 0, textCap+1, s.width(), strong())
	long, text := 100.0, "This line is 100 mm long"
	if b.shop.Units == layout.Inches {
		long, text = 4*25.4, `This line is 4" long`
	}
	y += 8
	t.line(Point{0, y}, Point{long, y}, middleLine)
	for _, x := range []float64{0, long} {
		t.line(Point{x, y - 2.5}, Point{x, y + 2.5}, middleLine)
	}
	t.height = t.lines(text+" if the print has its size: print at 100%, not fitted to the page.", long+5, y+1.5, s.width()-long-5, plain()) + 6
	return t
}

// templateRow sets as many sections side by side as there is room for, and gives
// the others.
func (b *booklet) templateRow(s *sheet, list []template) (row *block, rest []template) {
	row = newBlock(s.types)
	x := 0.0
	for i, t := range list {
		w, _ := t.size()
		w = max(w, leastTemplate)
		if i > 0 && x+w > s.width() {
			return row, list[i:]
		}
		row.height = max(row.height, b.template(row, t, x, w))
		x += w + 8
	}
	return row, nil
}

// leastTemplate is the width that the words above a section have at least.
const leastTemplate = 58.0

// template draws a section with face A up, as one looks at its butt end with the
// reference edge to the left, and gives its height.
func (b *booklet) template(out *block, t template, x, wide float64) float64 {
	text := fmt.Sprintf("%s  %s", b.size(t.width, t.thickness), strings.Join(t.parts, ", "))
	if t.bevel > 0 {
		text += ", bevel " + degrees(t.bevel) + ", width on face A"
	}
	y := out.lines(text, x, textCap+2, wide, plain()) + 3
	w, h := t.size()
	lean := w - paperMM(t.width)
	out.polygon([]Point{{x, y}, {x + w - lean, y}, {x + w, y + h}, {x + lean, y + h}}, White, Black, thinLine)
	if word := "face A"; out.types.width(word, plain()) < w-lean-4 && h > 1.6*textCap {
		out.text(word, x+math.Max(2, lean), y+textCap+1.2, plain())
	}
	return y + h + 5
}
