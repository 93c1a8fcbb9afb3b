package glueup

import (
	"fmt"
	"math"

	"sawbill/layout"
)

// Herringbone is a face of blocks, each so many times as long as it is wide, that
// lie and stand in turn. No joint runs straight across it, so it is laid from single
// blocks, sliced off strips.
type Herringbone struct {
	BlockWidth, BlockLength layout.Length
	// Lying and Standing are the letters of the blocks that lie along the face and
	// across it, in turn from row to row and from column to column.
	Lying, Standing string
	// Diagonal turns the pattern by 45 degrees, so that its points run along the face.
	Diagonal bool
}

// maxRatio is how long a block may be for its width.
const maxRatio = 12

// Name is the word of the design file.
func (h *Herringbone) Name() string { return "herringbone" }

func (h *Herringbone) check(c *checker) {
	c.letters("herringbone.lying", h.Lying)
	c.letters("herringbone.standing", h.Standing)
	if !c.size("herringbone.block_width", h.BlockWidth) || !c.size("herringbone.block_length", h.BlockLength) {
		return
	}
	if r := h.BlockLength / h.BlockWidth; h.BlockLength%h.BlockWidth != 0 || r < 2 || r > maxRatio {
		c.fault("herringbone.block_length", h.BlockLength.Format(c.design.Units, 64),
			fmt.Sprintf("want 2 to %d times block_width, so that the blocks close", maxRatio))
	}
	if c.face() {
		c.pieces("herringbone.block_width", h.BlockWidth, float64(c.design.Length)*float64(c.design.Width)/2)
	}
}

// lay covers the face with the fewest blocks.
func (h *Herringbone) lay(w *Work) {
	w.Face.Finished = layout.Rect{X2: w.Design.Length, Y2: w.Design.Width}
	w.Face.Sawn = w.Design.sawn()
	t := courses{unit: float64(h.BlockWidth), ratio: int(h.BlockLength / h.BlockWidth), of: h}
	c := cover{tiling: t, over: areaOf(w.Face.Sawn)}
	c.origin, c.tiles = fewest(t, c.over)
	w.Face.Blocks = c.blocks()
	count := map[string]int{}
	for _, b := range w.Face.Blocks {
		count[b.Wood]++
	}
	for _, letter := range w.Design.Letters() {
		if count[letter] == 0 {
			continue
		}
		w.Panels = append(w.Panels, Panel{
			Name: panelName(len(w.Panels)), Form: Alone, Height: h.BlockWidth, Slices: count[letter],
			Strips: []Strip{{Wood: letter, Thickness: h.BlockWidth, Width: h.BlockLength}},
		})
	}
	w.Notes = append(w.Notes, fmt.Sprintf("%d blocks cover the face; no other place of the pattern takes fewer.", len(c.tiles)))
}

// courses is the tiling of a herringbone: its nodes are the corners of a square grid
// as wide as a block. In row j blocks lie from node j + 2*ratio*k on; in column i
// blocks stand from node i + 1 + 2*ratio*k on.
type courses struct {
	unit  float64
	ratio int
	of    *Herringbone
}

func (h courses) at(n node) vec {
	if !h.of.Diagonal {
		return vec{float64(n.i) * h.unit, float64(n.j) * h.unit}
	}
	g := h.unit / math.Sqrt2
	return vec{float64(n.i-n.j) * g, float64(n.i+n.j) * g}
}

// period: one row up and one column right the pattern is the same again, and
// 2*ratio columns on.
func (h courses) period() vec {
	n := float64(2 * h.ratio)
	if !h.of.Diagonal {
		return vec{n * h.unit, h.unit}
	}
	return vec{n * h.unit / math.Sqrt2, math.Sqrt2 * h.unit}
}

// families: laid square, all edges and corners lie at multiples of the unit;
// diagonally, corners do at multiples of unit/sqrt 2 and edges where x ± y is a
// multiple of unit * sqrt 2.
func (h courses) families(a area) []family {
	if !h.of.Diagonal {
		return edges(a, h.unit, h.unit)
	}
	g := h.unit / math.Sqrt2
	return append(edges(a, g, g), slants(a, vec{1, 1}, 2*g), slants(a, vec{1, -1}, 2*g))
}

// even: a block lies in the middle of the area.
func (h courses) even(a area) []vec {
	m, b := a.middle(), h.at(node{h.ratio, 1})
	return []vec{{m.x - b.x/2, m.y - b.y/2}}
}

func (h courses) around(origin vec, a area) []tile {
	lo, hi := h.nodes(origin, a)
	var list []tile
	for j := lo.j; j <= hi.j; j++ {
		for i := h.from(lo.i, j); i <= hi.i; i += 2 * h.ratio {
			list = append(list, block(node{i, j}, node{i + h.ratio, j + 1}, letterAt(h.of.Lying, j)))
		}
	}
	for i := lo.i; i <= hi.i; i++ {
		for j := h.from(lo.j, i+1); j <= hi.j; j += 2 * h.ratio {
			list = append(list, block(node{i, j}, node{i + 1, j + h.ratio}, letterAt(h.of.Standing, i)))
		}
	}
	return list
}

// nodes are the least and the greatest nodes from which a block may reach an area.
func (h courses) nodes(origin vec, a area) (lo, hi node) {
	x := h.at(node{1, 0})
	lo, hi = node{math.MaxInt, math.MaxInt}, node{math.MinInt, math.MinInt}
	for _, c := range a.corners() {
		d := vec{(c.x - origin.x) / h.unit, (c.y - origin.y) / h.unit}
		i := (d.x*x.x + d.y*x.y) / h.unit
		j := (d.y*x.x - d.x*x.y) / h.unit
		lo = node{min(lo.i, int(math.Floor(i))), min(lo.j, int(math.Floor(j)))}
		hi = node{max(hi.i, int(math.Ceil(i))), max(hi.j, int(math.Ceil(j)))}
	}
	return node{lo.i - h.ratio, lo.j - h.ratio}, hi
}

// from is the first number from least on that is phase modulo twice the ratio.
func (h courses) from(least, phase int) int {
	n := 2 * h.ratio
	return least + ((phase-least)%n+n)%n
}

func block(from, to node, wood string) tile {
	corners := []node{from, {to.i, from.j}, to, {from.i, to.j}}
	return tile{outline: corners, pieces: []piece{{corners, wood}}}
}

// letterAt is the letter of row or column n of letters that repeat.
func letterAt(letters string, n int) string {
	r := []rune(letters)
	return string(r[(n%len(r)+len(r))%len(r)])
}
