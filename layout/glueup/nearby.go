package glueup

import (
	"cmp"
	"math"
	"slices"

	"sawbill/layout"
)

// size is a face that could be made instead.
type size struct {
	length, width layout.Length
	slices        int
	waste         float64
}

// mostNearby is how many sizes are named.
const mostNearby = 3

// nearby lists sizes near a face that waste less, the least wasteful first. They
// are tried at steps of half a hexagon's pitch, where hexagons end: along the rows t
// apart, across them s/2, either way round; within half a hexagon of the face. Only
// symmetric faces are tried, so that there may be places that take even fewer.
func (k *Cubes) nearby(face layout.Rect, trim layout.Length) []size {
	_, now, _ := k.best(face.Grow(trim, trim))
	used := k.waste(face, now)
	t, s := float64(k.StripThickness), k.side()
	var list []size
	for _, steps := range []vec{{t, s / 2}, {s / 2, t}} {
		for _, length := range near(face.Length(), steps.x, trim, t) {
			for _, width := range near(face.Width(), steps.y, trim, t) {
				r := layout.Rect{X2: length, Y2: width}
				n := k.symmetric(r.Grow(trim, trim))
				if waste := k.waste(r, n); waste < used-0.005 {
					list = append(list, size{length, width, n, waste})
				}
			}
		}
	}
	slices.SortFunc(list, func(a, b size) int {
		return cmp.Or(cmp.Compare(a.waste, b.waste), cmp.Compare(a.length, b.length), cmp.Compare(a.width, b.width))
	})
	list = slices.CompactFunc(list, func(a, b size) bool { return a.length == b.length && a.width == b.width })
	return list[:min(len(list), mostNearby)]
}

// symmetric is the number of hexagons that cover a rectangle symmetrically.
func (k *Cubes) symmetric(r layout.Rect) int {
	h := k.hexagons()
	over := func(r layout.Rect) int {
		_, tiles := fewestOf(h, areaOf(r), h.even(areaOf(r)))
		return len(tiles)
	}
	return min(over(r), over(exchanged(r)))
}

// near lists the sizes within reach of l that end, with the trim on both sides, at
// a multiple of a step, rounded down to whole half millimetres: such a size can be
// set at a saw, and never needs more.
func near(l layout.Length, step float64, trim layout.Length, reach float64) []layout.Length {
	const whole = layout.Millimetre / 2
	from := math.Ceil((float64(l+2*trim) - reach) / step)
	to := math.Floor((float64(l+2*trim) + reach) / step)
	var list []layout.Length
	for i := from; i <= to; i++ {
		if at := round(i*step+touch) - 2*trim; at > whole {
			list = append(list, at-at%whole)
		}
	}
	return list
}
