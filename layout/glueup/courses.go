package glueup

import "math"

// courses is the tiling of a herringbone: its nodes are the corners of a square grid
// as wide as a block. In row j blocks lie from node j + 2*ratio*k on; in column i
// blocks stand from node i + 1 + 2*ratio*k on.
type courses struct {
	unit  float64
	ratio int
	of    *Herringbone
}

// The kinds of its tiles.
const (
	lies = iota
	stands
)

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
			list = append(list, tile{node{i, j}, lies})
		}
	}
	for i := lo.i; i <= hi.i; i++ {
		for j := h.from(lo.j, i+1); j <= hi.j; j += 2 * h.ratio {
			list = append(list, tile{node{i, j}, stands})
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

func (h courses) outline(nodes []node, t tile) []node {
	to := node{t.at.i + h.ratio, t.at.j + 1}
	if t.kind == stands {
		to = node{t.at.i + 1, t.at.j + h.ratio}
	}
	return append(nodes, t.at, node{to.i, t.at.j}, to, node{t.at.i, to.j})
}

func (h courses) pieces(t tile) []piece {
	wood := letterAt(h.of.Lying, t.at.j)
	if t.kind == stands {
		wood = letterAt(h.of.Standing, t.at.i)
	}
	return []piece{{h.outline(nil, t), wood}}
}

// letterAt is the letter of row or column n of letters that repeat.
func letterAt(letters string, n int) string {
	r := []rune(letters)
	return string(r[(n%len(r)+len(r))%len(r)])
}
