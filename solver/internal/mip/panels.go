package mip

import (
	"slices"

	"sawbill/layout"
)

// Panels states a job in two dimensions by single cuts (Dyckhoff 1981; for
// guillotine cuts in stages Silva, Alvelos & Valério de Carvalho 2010): a cut
// takes a rectangle of one stage and gives what is cut off, a rectangle of the
// next stage, and the rest, a rectangle of the same stage. The stages are those
// of a board: crosscut into blanks, ripped into strips, crosscut into cells,
// ripped into parts (without a last rip, a cell is a part). For every rectangle
// at least as many are made as are cut up, and of every part as many as the bill
// asks.
//
// A rest counts as the largest sum of part sizes and kerfs that it can hold
// (Herz 1972), which loses nothing and keeps the rectangles few.
func Panels(p *layout.Problem) *Model {
	c := &cutting{p: p, model: &Model{}, states: map[rect]int{}}
	var wide layout.Board
	for i := range p.Stock {
		wide.Length, wide.Width = max(wide.Length, p.Stock[i].Length), max(wide.Width, p.Stock[i].Width)
	}
	c.lengths = sums(wide.Length, p.Shop.CrosscutKerf, p.Bill, func(p *layout.Part) layout.Length { return p.Length })
	c.widths = sums(wide.Width, p.Shop.RipKerf, p.Bill, func(p *layout.Part) layout.Length { return p.Width })
	for i := range p.Stock {
		b := &p.Stock[i]
		y := c.model.variable(int64(b.Cost), 1)
		c.yield(rect{blanks, b.Length, b.Width}, y)
	}
	for n := 0; n < len(c.queue); n++ {
		c.cut(c.queue[n])
	}
	for _, r := range c.flow {
		c.model.atLeast(0, r...)
	}
	made := c.made()
	for i := range p.Bill {
		c.model.atLeast(int64(p.Bill[i].Quantity), made[i]...)
	}
	return c.model
}

// rect is a rectangle that is to be cut: into what, and its size.
type rect struct {
	into          stage
	length, width layout.Length
}

// stage says what a rectangle is cut into.
type stage uint8

const (
	blanks stage = iota
	strips
	cells
	parts
)

type cutting struct {
	p               *layout.Problem
	model           *Model
	lengths, widths []layout.Length // sums of part sizes and kerfs, ascending
	states          map[rect]int    // rows of flow
	queue           []rect
	flow            [][]term
	pieces          []piece
}

// piece is a cut that makes a piece of a part.
type piece struct{ row, variable int }

func (c *cutting) made() [][]term {
	made := make([][]term, len(c.p.Bill))
	for _, p := range c.pieces {
		made[p.row] = append(made[p.row], term{1, p.variable})
	}
	return made
}

// yield notes that a cut makes a rectangle, if anything can come of it.
func (c *cutting) yield(r rect, variable int) {
	r.length, r.width = floor(c.lengths, r.length), floor(c.widths, r.width)
	if r.length == 0 || r.width == 0 {
		return
	}
	c.flow[c.state(r)] = append(c.flow[c.state(r)], term{1, variable})
}

// state is the row of a rectangle.
func (c *cutting) state(r rect) int {
	n, known := c.states[r]
	if !known {
		n = len(c.queue)
		c.states[r], c.queue, c.flow = n, append(c.queue, r), append(c.flow, nil)
	}
	return n
}

// cut adds all cuts of a rectangle.
func (c *cutting) cut(r rect) {
	kx, ky := c.p.Shop.CrosscutKerf, c.p.Shop.RipKerf
	switch r.into {
	case blanks:
		for _, l := range upTo(c.lengths, r.length) {
			x := c.use(r)
			c.yield(rect{strips, l, r.width}, x)
			c.yield(rect{blanks, r.length - l - kx, r.width}, x)
		}
	case strips:
		for _, w := range upTo(c.widths, r.width) {
			x := c.use(r)
			c.yield(rect{cells, r.length, w}, x)
			c.yield(rect{strips, r.length, r.width - w - ky}, x)
		}
	case cells:
		for _, l := range c.cellLengths(r) {
			x := c.use(r)
			c.yield(rect{parts, l, r.width}, x)
			c.yield(rect{cells, r.length - l - kx, r.width}, x)
		}
	case parts:
		c.cutParts(r)
	}
}

// cellLengths are the lengths of parts that fit a strip.
func (c *cutting) cellLengths(r rect) []layout.Length {
	var lengths []layout.Length
	for i := range c.p.Bill {
		if part := &c.p.Bill[i]; part.Length <= r.length && part.Width <= r.width {
			lengths = append(lengths, part.Length)
		}
	}
	slices.Sort(lengths)
	return slices.Compact(lengths)
}

func (c *cutting) cutParts(r rect) {
	for i := range c.p.Bill {
		part := &c.p.Bill[i]
		if part.Length != r.length || part.Width > r.width || !c.p.Shop.RipAgain && part.Width != r.width {
			continue
		}
		x := c.use(r)
		c.pieces = append(c.pieces, piece{i, x})
		c.yield(rect{parts, r.length, r.width - part.Width - c.p.Shop.RipKerf}, x)
	}
}

// use adds a cut of a rectangle.
func (c *cutting) use(r rect) int {
	x := c.model.variable(0, -1)
	n := c.states[r]
	c.flow[n] = append(c.flow[n], term{-1, x})
	return x
}

// sums are all sums of sizes with a kerf between them, up to most, ascending.
func sums(most, kerf layout.Length, bill []layout.Part, size func(*layout.Part) layout.Length) []layout.Length {
	found := map[layout.Length]bool{}
	queue := []layout.Length{-kerf}
	for n := 0; n < len(queue); n++ {
		for i := range bill {
			s := queue[n] + kerf + size(&bill[i])
			if s <= most && !found[s] {
				found[s] = true
				queue = append(queue, s)
			}
		}
	}
	queue = queue[1:]
	slices.Sort(queue)
	return queue
}

// upTo are the sums that are at most l.
func upTo(sums []layout.Length, l layout.Length) []layout.Length {
	n, found := slices.BinarySearch(sums, l)
	if found {
		n++
	}
	return sums[:n]
}

// floor is the largest sum that is at most l, 0 where there is none.
func floor(sums []layout.Length, l layout.Length) layout.Length {
	if s := upTo(sums, l); len(s) > 0 {
		return s[len(s)-1]
	}
	return 0
}
