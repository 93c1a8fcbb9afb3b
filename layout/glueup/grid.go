package glueup

import (
	"fmt"
	"slices"
	"strconv"

	"sawbill/layout"
)

// Grid is a face drawn as rows of letters, one letter a cell: checkers, stripes,
// borders, pictures; staggered bricks are cells of half a brick that are joined.
type Grid struct {
	Rows []string // from the far side of the face to the near one, as they are read
	// CellWidths are the widths of the cells of a row, one for all or one for each.
	CellWidths []layout.Length
	// RowHeights are those of the rows, one for all or one for each, in their order.
	RowHeights []layout.Length
	// Join makes neighbours of one wood in a row one wider strip.
	Join bool
}

// Name is the word of the design file.
func (g *Grid) Name() string { return "grid" }

func (g *Grid) check(c *checker) {
	c.noFace("a grid has its size from its cells, less the trim: leave it out")
	if len(g.Rows) == 0 || len(g.Rows) > MaxCells {
		c.fault("grid.rows", "", fmt.Sprintf("want 1 to %d rows of letters", MaxCells))
		return
	}
	columns := len([]rune(g.Rows[0]))
	if columns > MaxCells {
		c.fault("grid.rows", g.Rows[0], fmt.Sprintf("want at most %d cells", MaxCells))
	}
	for i, row := range g.Rows {
		key := fmt.Sprintf("grid.rows[%d]", i+1)
		if n := len([]rune(row)); n != columns {
			c.fault(key, row, fmt.Sprintf("want %d letters, as in the first row", columns))
		}
		c.letters(key, row)
	}
	if g.counted(c, "grid.cell_width", g.CellWidths, columns) && g.counted(c, "grid.row_height", g.RowHeights, len(g.Rows)) {
		g.trimmed(c, columns)
	}
}

// counted checks a list of sizes: one for all, or one for each of n.
func (g *Grid) counted(c *checker, key string, list []layout.Length, n int) bool {
	if len(list) > 1 && len(list) != n {
		c.fault(key, strconv.Itoa(len(list))+" lengths", fmt.Sprintf("want one for all, or %d", n))
		return false
	}
	return c.sizes(key, list)
}

// trimmed checks that the trim leaves something of the outermost cells.
func (g *Grid) trimmed(c *checker, columns int) {
	widths, heights := each(g.CellWidths, columns), each(g.RowHeights, len(g.Rows))
	outer := min(widths[0], widths[columns-1], heights[0], heights[len(heights)-1])
	if t := c.design.Trim; t > 0 && (t >= outer || 2*t >= min(sum(widths), sum(heights))) {
		c.fault("trim", t.Format(c.design.Units, 64), "want so little that something of the outermost cells is left")
	}
	if sum(widths) > layout.MaxLength || sum(heights) > layout.MaxLength {
		c.fault("grid.rows", "", "want a face of at most 30 m")
	}
}

// each is one length for each of n.
func each(list []layout.Length, n int) []layout.Length {
	if len(list) == 1 {
		return slices.Repeat(list, n)
	}
	return list
}

func sum(list []layout.Length) layout.Length {
	var total layout.Length
	for _, l := range list {
		total += l
	}
	return total
}

// lay makes a panel of each kind of row. Rows that are equal, or equal when turned
// round, come from one panel if they are equally high.
func (g *Grid) lay(w *Work) {
	d := w.Design
	heights := each(g.RowHeights, len(g.Rows))
	widths := each(g.CellWidths, len([]rune(g.Rows[0])))
	w.Face.Finished = layout.Rect{X2: sum(widths) - 2*d.Trim, Y2: sum(heights) - 2*d.Trim}
	w.Face.Sawn = w.Face.Finished.Grow(d.Trim, d.Trim)
	y := w.Face.Sawn.Y1
	for i := len(g.Rows) - 1; i >= 0; i-- { // from the near side
		cells := g.cells(g.Rows[i], widths, heights[i]+d.PanelFlatten)
		row := w.rowOf(cells, heights[i])
		w.Rows = append(w.Rows, row)
		w.Panels[row.Panel].Slices++
		x := w.Face.Sawn.X1
		for _, cell := range cells {
			w.Face.Blocks = append(w.Face.Blocks, upright(layout.Rect{X1: x, X2: x + cell.Width, Y1: y, Y2: y + heights[i]}, cell.Wood))
			x += cell.Width
		}
		y += heights[i]
	}
	w.noteEven()
}

// cells are the strips that a row of letters needs.
func (g *Grid) cells(row string, widths []layout.Length, thick layout.Length) []Strip {
	var strips []Strip
	for i, r := range []rune(row) {
		if n := len(strips); g.Join && n > 0 && strips[n-1].Wood == string(r) {
			strips[n-1].Width += widths[i]
			continue
		}
		strips = append(strips, Strip{Wood: string(r), Thickness: thick, Width: widths[i]})
	}
	return strips
}

// rowOf finds the panel that gives a row, or begins one.
func (w *Work) rowOf(strips []Strip, height layout.Length) Row {
	turned := slices.Clone(strips)
	slices.Reverse(turned)
	for i, p := range w.Panels {
		switch {
		case p.Height != height:
		case slices.Equal(p.Strips, strips):
			return Row{Panel: i}
		case slices.Equal(p.Strips, turned):
			return Row{Panel: i, Turned: true}
		}
	}
	w.Panels = append(w.Panels, Panel{Name: panelName(len(w.Panels)), Strips: strips, Height: height})
	return Row{Panel: len(w.Panels) - 1}
}

// panelName is A, B, … Z, AA, AB, …
func panelName(i int) string {
	name := ""
	for i++; i > 0; i = (i - 1) / 26 {
		name = string(rune('A'+(i-1)%26)) + name
	}
	return name
}

// upright is a block that is a rectangle.
func upright(r layout.Rect, wood string) Block {
	return Block{Corners: []Corner{{r.X1, r.Y1}, {r.X2, r.Y1}, {r.X2, r.Y2}, {r.X1, r.Y2}}, Wood: wood}
}

// noteEven says where an even number of strips would save a panel: a slice of an
// odd checker is the same when it is turned round, so its other rows need a panel
// of their own.
func (w *Work) noteEven() {
	for i := range w.Panels {
		for j := range w.Panels[:i] {
			if a, b := &w.Panels[j], &w.Panels[i]; a.Height == b.Height && oddChecker(a.Strips, b.Strips) {
				w.Notes = append(w.Notes, fmt.Sprintf(
					"Panels %s and %s: with an even number of strips in a row one panel would do, for its slices turned round give the other rows. With %d strips a turned slice is the same again.",
					a.Name, b.Name, len(a.Strips)))
			}
		}
	}
}

// oddChecker reports whether two rows are those of a checker with an odd number
// of strips: two woods that alternate, the one row beginning with the one, the
// other with the other.
func oddChecker(a, b []Strip) bool {
	if len(a)%2 == 0 || len(a) < 3 || len(a) != len(b) || a[0].Wood == a[1].Wood {
		return false
	}
	for i := range a {
		if a[i].Wood != a[i%2].Wood || b[i].Wood != a[(i+1)%2].Wood {
			return false
		}
	}
	return true
}
