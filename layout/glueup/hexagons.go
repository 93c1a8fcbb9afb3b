package glueup

import "math"

// hexagons is the tiling of prism slices, a corner away from you. Its nodes lie
// t apart along x and s/2 along y, t being half a hexagon across its flats and s its
// side; those with i+j even are corners or centres.
type hexagons struct {
	t, s float64
	of   *Cubes
}

func (h hexagons) at(n node) vec { return vec{float64(n.i) * h.t, float64(n.j) * h.s / 2} }

func (h hexagons) period() vec { return vec{2 * h.t, 1.5 * h.s} }

// families: corners lie at every multiple of t along x and of s/2 along y; a slanted
// edge lies where x*s/2 ± y*t is a multiple of s*t.
func (h hexagons) families(a area) []family {
	return append(edges(a, h.t, h.s/2),
		slants(a, vec{h.s / 2, h.t}, h.s*h.t), slants(a, vec{h.s / 2, -h.t}, h.s*h.t))
}

// even: the middle of the area is the middle of a hexagon, or of one of its edges.
func (h hexagons) even(a area) []vec {
	m := a.middle()
	return []vec{
		m, {m.x - h.t, m.y}, {m.x - h.t/2, m.y - 0.75*h.s}, {m.x + h.t/2, m.y - 0.75*h.s},
	}
}

func (h hexagons) around(origin vec, a area) []tile {
	var list []tile
	rows := func(y float64) float64 { return (y - origin.y) / (1.5 * h.s) }
	for r := int(math.Floor(rows(a.lo.y))) - 1; r <= int(math.Ceil(rows(a.hi.y)))+1; r++ {
		across := func(x float64) float64 { return (x - origin.x - float64(r)*h.t) / (2 * h.t) }
		for c := int(math.Floor(across(a.lo.x))) - 1; c <= int(math.Ceil(across(a.hi.x)))+1; c++ {
			list = append(list, tile{at: node{2*c + r, 3 * r}})
		}
	}
	return list
}

// outline: the hexagon around a node, from the corner away from you on.
func (h hexagons) outline(nodes []node, t tile) []node {
	i, j := t.at.i, t.at.j
	return append(nodes, node{i, j + 2}, node{i - 1, j + 1}, node{i - 1, j - 1}, node{i, j - 2}, node{i + 1, j - 1}, node{i + 1, j + 1})
}

// pieces: three rhombi that meet in the middle with their angles of 120 degrees.
func (h hexagons) pieces(t tile) []piece {
	c := h.outline(nil, t) // away, away left, near left, near, near right, away right
	return []piece{
		{[]node{t.at, c[5], c[0], c[1]}, h.of.Top},
		{[]node{t.at, c[3], c[4], c[5]}, h.of.Right},
		{[]node{t.at, c[1], c[2], c[3]}, h.of.Left},
	}
}
