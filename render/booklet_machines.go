package render

import (
	"slices"

	"sawbill/layout/steps"
)

// settingsColumns is how many columns of settings stand side by side on a page.
const settingsColumns = 2

// settingsGutter parts them, in millimetres.
const settingsGutter = 8.0

// settingsTable sets how the machines are set on as many pages as that takes. The
// cautions stand in full on each page that has a setting which needs them, once; the
// settings point to them by letters.
func (b *booklet) settingsTable(s *sheet) {
	list := b.settings()
	key := keyOf(list)
	for first := true; len(list) > 0; first = false {
		if !first || s.bottom()-s.y < settingsLeast || !b.fits(s, key, list[:1]) {
			s.newPage()
		}
		n := 1
		for n < len(list) && b.fits(s, key, list[:n+1]) {
			n++
		}
		b.settingsPage(s, key, list[:n])
		list = list[n:]
	}
}

// settingsLeast is the least height in which settings are begun.
const settingsLeast = 40.0

func (b *booklet) fits(s *sheet, key cautionKey, list []setting) bool {
	head := b.settingsHead(s, key, list)
	_, fits := b.stacked(s, key, list, s.bottom()-s.y-head.height)
	return fits
}

// settingsPage sets settings on the page at hand, in columns as short as may be.
func (b *booklet) settingsPage(s *sheet, key cautionKey, list []setting) {
	head := b.settingsHead(s, key, list)
	s.put(head)
	most := s.bottom() - s.y
	height := most
	for h := lineStep; h < most; h += lineStep {
		if _, fits := b.stacked(s, key, list, h); fits {
			height = h
			break
		}
	}
	body, _ := b.stacked(s, key, list, height)
	s.put(body)
	s.y += 2
}

// settingsHead is the heading with the cautions that settings need.
func (b *booklet) settingsHead(s *sheet, key cautionKey, list []setting) *block {
	head := newBlock(s.types)
	title := "Settings, machine by machine"
	if b.o.Order == steps.BySetup {
		title = "Settings of fence, stop and planer, in order"
	}
	y := head.lines(title, 0, textCap+1.5, s.width(), style{textCap + 0.7, true})
	here := keyOf(list)
	for _, c := range key {
		if !slices.Contains(here, c) {
			continue
		}
		y += lineStep + 0.4
		head.warningSign(0, y)
		head.text(key.letter(c), 6, y, strong())
		y = head.lines(string(c), 14, y, s.width()-14, plain())
	}
	head.height = y + 3
	head.line(Point{0, head.height}, Point{s.width(), head.height}, middleLine)
	head.height += 0.6
	return head
}

// stacked sets settings one below the other in columns of a height, and reports
// whether there is room for all.
func (b *booklet) stacked(s *sheet, key cautionKey, list []setting, height float64) (*block, bool) {
	width := (s.width() - (settingsColumns-1)*settingsGutter) / settingsColumns
	out := newBlock(s.types)
	column, y, machine := 0, 0.0, ""
	for _, set := range list {
		row := b.settingRow(s, key, set, width)
		over := 0.0
		if set.machine != machine {
			over = machineHeight
		}
		if y > 0 && y+over+row.height > height {
			column, y, over = column+1, 0, machineHeight
		}
		x := float64(column) * (width + settingsGutter)
		if over > 0 {
			out.text(set.machine, x, y+textCap+2.2, strong())
			out.line(Point{x, y + over}, Point{x + width, y + over}, middleLine)
		}
		machine = set.machine
		y += over
		row.moved(&out.Scene, x, y)
		y += row.height
		out.height = max(out.height, y)
	}
	return out, column < settingsColumns && out.height <= height
}

// machineHeight is the height of a line that names a machine.
const machineHeight = textCap + 4.0

// settingRow is one setting: what the machine is set to, its steps, and the letters of
// its cautions beside a sign.
func (b *booklet) settingRow(s *sheet, key cautionKey, set setting, width float64) *block {
	const setWide, signWide = 24.0, 6.0
	row := newBlock(s.types)
	base := textCap + 1.2
	cautions := key.of(set)
	side := 0.0
	if cautions != "" {
		side = min(s.types.width(cautions, strong())+signWide+1, width*0.4)
	}
	bottom := row.lines(b.set(set), 0, base, setWide-2, strong())
	bottom = max(bottom, row.lines(b.serves(set), setWide, base, width-setWide-side-3, plain()))
	if cautions != "" {
		row.warningSign(width-side, base)
		bottom = max(bottom, row.lines(cautions, width-side+signWide, base, side-signWide, strong()))
	}
	row.height = bottom + 1.4
	row.line(Point{0, row.height}, Point{width, row.height}, hairline)
	return row
}
