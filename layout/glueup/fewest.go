package glueup

import "math"

// family is a set of parallel lines: n·p is one of the phases, modulo the spacing.
type family struct {
	n       vec
	spacing float64
	phases  []float64
}

// fewest finds the origin with which a tiling covers an area with the fewest tiles,
// and these tiles.
//
// The count changes only where some tile comes to touch an edge or a corner of the
// area, on the lines of the families. A tile that touches only does not count, so on
// such a line there are no more than beside it; and where two lines cross there are
// no more than on either. So the least count is found where two lines cross, and all
// crossings of one period are tried. Origins that make the face symmetric are tried
// first, and win where they need no more.
func fewest(t tiling, a area) (origin vec, tiles []tile) {
	return fewestOf(t, a, append(t.even(a), crossings(t.families(a), t.period())...))
}

// fewestOf is the first of some origins with which a tiling takes the fewest tiles.
func fewestOf(t tiling, a area, origins []vec) (origin vec, tiles []tile) {
	for i, o := range origins {
		if list := meeting(t, o, a); i == 0 || len(list) < len(tiles) {
			origin, tiles = o, list
		}
	}
	return origin, tiles
}

// crossings lists where lines of two families cross, within a box at the origin.
func crossings(families []family, box vec) []vec {
	var list []vec
	for i, f := range families {
		for _, g := range families[:i] {
			det := f.n.x*g.n.y - f.n.y*g.n.x
			if math.Abs(det) <= 1e-9*math.Hypot(f.n.x, f.n.y)*math.Hypot(g.n.x, g.n.y) {
				continue // parallel
			}
			for _, c := range f.within(box) {
				for _, d := range g.within(box) {
					p := vec{(c*g.n.y - d*f.n.y) / det, (d*f.n.x - c*g.n.x) / det}
					if p.x >= -touch && p.x < box.x && p.y >= -touch && p.y < box.y {
						list = append(list, p)
					}
				}
			}
		}
	}
	return list
}

// within lists the values of n·p for the lines that meet a box at the origin.
func (f family) within(box vec) []float64 {
	lo, hi := shadow([]vec{{}, {box.x, 0}, box, {0, box.y}}, f.n)
	var values []float64
	for _, phase := range f.phases {
		for v := phase + math.Ceil((lo-phase)/f.spacing-1e-9)*f.spacing; v <= hi; v += f.spacing {
			values = append(values, v)
		}
	}
	return values
}

// edges are the families of origins at which a corner of a tile, of which one lies
// at every multiple of a step, comes upon an edge of the area.
func edges(a area, stepX, stepY float64) []family {
	return []family{
		{vec{1, 0}, stepX, []float64{a.lo.x, a.hi.x}},
		{vec{0, 1}, stepY, []float64{a.lo.y, a.hi.y}},
	}
}

// slants is the family of origins at which a slanted edge of a tile, of which one
// lies at every multiple of a spacing, comes upon a corner of the area.
func slants(a area, n vec, spacing float64) family {
	f := family{n: n, spacing: spacing}
	for _, c := range a.corners() {
		f.phases = append(f.phases, n.x*c.x+n.y*c.y)
	}
	return f
}
