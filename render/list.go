package render

import (
	"fmt"
	"slices"

	"sawbill/layout/steps"
)

// The list of steps is a table: tick box and number, the piece to take, what to
// do, the distance to set, what comes off, what is left.
const (
	tableHead = 7.0
	rowHeight = 6.5
	tickSize  = 4.4

	numberColumn = 6.5
	pieceColumn  = 18.5
	doColumn     = 45.4
	setColumn    = 96.0
	offColumn    = 124.0
	leftColumn   = 199.0
)

// list sets a list of steps under a heading, over as many pages as it takes.
func (d *boardSheet) list(heading string, list []steps.Step) {
	for i := 0; i < len(list); {
		head := d.listHead(heading)
		group := d.group(list[i:])
		first, _ := d.row(list[i:])
		warning := d.warning(group)
		if i == 0 || !d.room(warning.height+first.height) {
			if i > 0 {
				d.newPage()
			}
			d.add(head, warning.height+first.height)
		}
		d.put(warning)
		for j, n := 0, 0; j < len(group); j += n {
			var row *block
			if row, n = d.row(group[j:]); j > 0 && !d.room(row.height) {
				group = group[:j]
				break
			}
			d.put(row)
		}
		i += len(group)
	}
	d.y += 3
}

// listHeight is the height of a list of steps on one page.
func (d *boardSheet) listHeight(heading string, list []steps.Step) float64 {
	h := d.listHead(heading).height
	for len(list) > 0 {
		group := d.group(list)
		h += d.warning(group).height
		for i, n := 0, 0; i < len(group); i += n {
			var row *block
			row, n = d.row(group[i:])
			h += row.height
		}
		list = list[len(group):]
	}
	return h
}

func (d *boardSheet) listHead(heading string) *block {
	b := newBlock(d.types)
	y := textCap + 1
	if heading != "" {
		b.lines(heading, 0, y, d.width(), style{textCap + 0.5, true})
		y += lineStep + 1
	}
	right := d.width() - leftColumn
	for _, c := range []struct {
		x    float64
		text string
	}{
		{0, "step"}, {pieceColumn, "take"}, {doColumn, "do, measured from"},
		{setColumn, "set"}, {offColumn, "comes off"}, {leftColumn, d.types.cut("is left", right, plain())},
	} {
		b.text(c.text, c.x, y, plain())
	}
	b.line(Point{0, y + 1.6}, Point{d.width(), y + 1.6}, middleLine)
	b.height = y + 2.2
	return b
}

// group is the run of steps at the head of a list that need the same cautions.
func (d *boardSheet) group(list []steps.Step) []steps.Step {
	n := 1
	for n < len(list) && (slices.Equal(list[n].Cautions, list[0].Cautions) || folds(&list[n-1], &list[n])) {
		n++
	}
	return list[:n]
}

// warning sets the cautions of a group of steps right above them.
func (d *boardSheet) warning(group []steps.Step) *block {
	b := newBlock(d.types)
	which := fmt.Sprintf("Step %d: ", group[0].Number)
	if last := group[len(group)-1].Number; last != group[0].Number {
		which = fmt.Sprintf("Steps %d–%d: ", group[0].Number, last)
	}
	y := 0.0
	for _, c := range group[0].Cautions {
		base := y + textCap + 1.6
		b.warningSign(numberColumn, base)
		x := b.text(which, numberColumn+6, base, strong()) + 1
		base = b.lines(string(c), x, base, d.width()-x, plain())
		y = base
		which = ""
		if len(group[0].Cautions) > 1 {
			y += 0.8
		}
	}
	if y > 0 {
		b.height = y + 1.4
	}
	return b
}

// warningSign is a black triangle with a white stroke in it.
func (s *Scene) warningSign(x, base float64) {
	s.polygon([]Point{{x, base + 0.3}, {x + 4.6, base + 0.3}, {x + 2.3, base - 3.9}}, Black, NoInk, 0)
	s.box(Box{x + 2.05, base - 2.5, x + 2.55, base - 1.0}, White, NoInk, 0)
	s.box(Box{x + 2.05, base - 0.7, x + 2.55, base - 0.2}, White, NoInk, 0)
}
