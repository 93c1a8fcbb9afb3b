package render

import "strings"

// column is one column of a table: where it begins and how wide it may be.
type column struct {
	x, width float64
	head     string
	amounts  bool // set to the right
}

// amounts sets the last n columns to the right.
func amounts(cols []column, n int) []column {
	for i := len(cols) - n; i < len(cols); i++ {
		cols[i].amounts = true
	}
	return cols
}

// left is where the text of a cell begins.
func (c column) left(t *typesetter, text string, look style) float64 {
	if c.amounts {
		return max(c.x, c.x+c.width-2-t.width(text, look))
	}
	return c.x
}

// columns lays columns out side by side over a width, in shares of it.
func columns(width float64, heads []string, shares []float64) []column {
	var sum, x float64
	for _, s := range shares {
		sum += s
	}
	var list []column
	for i, h := range heads {
		w := width * shares[i] / sum
		list = append(list, column{x: x, width: w, head: h})
		x += w
	}
	return list
}

// table sets rows under a heading, on as many pages as they take.
func (s *sheet) table(heading string, cols []column, rows [][]string) {
	head := newBlock(s.types)
	head.lines(heading, 0, textCap+1.5, s.width(), style{textCap + 0.7, true})
	y := textCap + 1.5 + lineStep + 0.8
	for _, c := range cols {
		text := s.types.cut(c.head, c.width-2, plain())
		head.text(text, c.left(s.types, text, plain()), y, plain())
	}
	head.line(Point{0, y + 1.6}, Point{s.width(), y + 1.6}, middleLine)
	head.height = y + 2.2
	for i, r := range rows {
		row := s.tableRow(cols, r)
		if i == 0 {
			s.add(head, row.height)
		} else if !s.room(row.height) {
			s.newPage()
			s.put(head)
		}
		s.put(row)
	}
	s.y += 2
}

func (s *sheet) tableRow(cols []column, cells []string) *block {
	b := newBlock(s.types)
	base := textCap + 1.3
	bottom := base
	for i, c := range cols {
		look := plain()
		if i == 0 {
			look = strong()
		}
		if strings.HasPrefix(cells[i], tickCell) || strings.HasPrefix(cells[i], doneCell) {
			bottom = max(bottom, b.tickBoxes(cells[i], c.x, base, c.width-2))
			continue
		}
		bottom = max(bottom, b.lines(cells[i], c.left(s.types, cells[i], look), base, c.width-2, look))
	}
	b.height = bottom + 1.6
	b.line(Point{0, b.height}, Point{s.width(), b.height}, hairline)
	return b
}

// tickCell is the text of a cell that is a box to tick; several boxes are so many of
// it.
const tickCell = "\u2610"

// doneCell is a box that is crossed off.
const doneCell = "\u2612"

// tickBoxes draws the boxes of a cell, in rows as wide as there is room, and gives
// the y of the lowest baseline.
func (b *block) tickBoxes(cell string, x, base, width float64) float64 {
	const step = tickSize + 1.6
	across := max(1, int((width+1.6)/step))
	n := 0
	for _, mark := range cell {
		left, low := x+float64(n%across)*step, base+0.4+float64(n/across)*step
		box := Box{left, low - tickSize, left + tickSize, low}
		b.box(box, White, Black, middleLine)
		if string(mark) == doneCell {
			b.tick(box)
		}
		n++
	}
	return base + float64((n-1)/across)*step
}
