package glueup

import (
	"math"

	"sawbill/layout"
)

// vec is a place or a direction in nanometres.
type vec struct{ x, y float64 }

// area is an upright rectangle.
type area struct{ lo, hi vec }

func areaOf(r layout.Rect) area {
	return area{vec{float64(r.X1), float64(r.Y1)}, vec{float64(r.X2), float64(r.Y2)}}
}

func (a area) corners() []vec {
	return []vec{a.lo, {a.hi.x, a.lo.y}, a.hi, {a.lo.x, a.hi.y}}
}

func (a area) middle() vec { return vec{(a.lo.x + a.hi.x) / 2, (a.lo.y + a.hi.y) / 2} }

// node counts the steps from the origin of a tiling to a corner of it. Every corner
// has one node, so that blocks that meet there share it.
type node struct{ i, j int }

// tile is what is laid as one: a prism's slice, or a block. It stands at a node, and
// a tiling may have several kinds.
type tile struct {
	at   node
	kind int
}

// piece is one block of a tile.
type piece struct {
	corners []node
	wood    string
}

// tiling covers the plane with tiles, over and over.
type tiling interface {
	// at is where a node lies, in nanometres from the origin of the tiling.
	at(n node) vec
	// period is a box of origins such that every other origin gives the same
	// outlines as one in it.
	period() vec
	// families are the lines of origins at which some tile touches the edge of an
	// area, without crossing it; more lines do no harm.
	families(a area) []family
	// even are origins that make the middle of an area a centre of symmetry.
	even(a area) []vec
	// around lists the tiles of a tiling with that origin that may meet an area, and
	// perhaps others.
	around(origin vec, a area) []tile
	// outline appends the corners of a tile, which is convex, in order around it.
	outline(nodes []node, t tile) []node
	// pieces are the blocks of a tile.
	pieces(t tile) []piece
}

// touch is how far, in nanometres, a tile may reach into an area and is still said
// to touch it only: more than rounding, and much less than glue.
const touch = 20.0

// places appends where nodes lie on the face.
func places(points []vec, t tiling, origin vec, nodes []node) []vec {
	for _, n := range nodes {
		p := t.at(n)
		points = append(points, vec{p.x + origin.x, p.y + origin.y})
	}
	return points
}

// reaches reports whether a convex polygon reaches into an area: by separating axes,
// for both are convex (Gottschalk, Lin & Manocha 1996).
func reaches(points []vec, a area) bool {
	for _, p := range points { // most have a corner well inside
		if a.lo.x+touch < p.x && p.x < a.hi.x-touch && a.lo.y+touch < p.y && p.y < a.hi.y-touch {
			return true
		}
	}
	if apart(points, a, vec{1, 0}) || apart(points, a, vec{0, 1}) {
		return false
	}
	for i, p := range points {
		q := points[(i+1)%len(points)]
		if l := math.Hypot(q.x-p.x, q.y-p.y); l > 0 && apart(points, a, vec{(p.y - q.y) / l, (q.x - p.x) / l}) {
			return false
		}
	}
	return true
}

// apart reports whether the shadows of a polygon and an area on an axis do not meet,
// or touch only.
func apart(points []vec, a area, axis vec) bool {
	lo, hi := shadow(points, axis)
	alo, ahi := a.shadow(axis)
	return lo >= ahi-touch || alo >= hi-touch
}

// shadow is the extent of an area along an axis.
func (a area) shadow(axis vec) (lo, hi float64) {
	x1, x2 := a.lo.x*axis.x, a.hi.x*axis.x
	y1, y2 := a.lo.y*axis.y, a.hi.y*axis.y
	return min(x1, x2) + min(y1, y2), max(x1, x2) + max(y1, y2)
}

// shadow is the extent of points along an axis.
func shadow(points []vec, axis vec) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, p := range points {
		d := p.x*axis.x + p.y*axis.y
		lo, hi = min(lo, d), max(hi, d)
	}
	return lo, hi
}

// meeting lists the tiles that reach into an area.
func meeting(t tiling, origin vec, a area) []tile {
	var list []tile
	var nodes []node
	var points []vec
	for _, tile := range t.around(origin, a) {
		nodes = t.outline(nodes[:0], tile)
		points = places(points[:0], t, origin, nodes)
		if reaches(points, a) {
			list = append(list, tile)
		}
	}
	return list
}

// blocks are the blocks of tiles that reach into an area themselves, and of the
// others none: what lies beyond the trim altogether is not drawn.
func blocks(t tiling, origin vec, tiles []tile, a area) []Block {
	var list []Block
	for _, tile := range tiles {
		for _, p := range t.pieces(tile) {
			if !reaches(places(nil, t, origin, p.corners), a) {
				continue
			}
			b := Block{Wood: p.wood}
			for _, n := range p.corners {
				b.Corners = append(b.Corners, corner(t, origin, n))
			}
			list = append(list, b)
		}
	}
	return list
}

// corner is a node on the face: the origin and the node are rounded to whole
// nanometres each, so that blocks that share a node share the corner exactly.
func corner(t tiling, origin vec, n node) Corner {
	p := t.at(n)
	return Corner{round(origin.x) + round(p.x), round(origin.y) + round(p.y)}
}

// round is the nearest whole number of nanometres.
func round(x float64) layout.Length { return layout.Length(math.Round(x)) }
