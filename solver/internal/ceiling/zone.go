package ceiling

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// setZones finds, for every class and every position along, the marks that a
// cell meets and how far across its parts may reach.
func (w *Board) setZones(l *lane) {
	for i := range l.classes {
		c := &l.classes[i]
		c.zoneAt = make([]int16, w.x.n+1)
		known, hits := map[zone]int16{}, map[hitKey]int{}
		for j := range c.zoneAt {
			c.zoneAt[j] = -1
			if w.x.at(j)+c.length > w.to {
				continue
			}
			hit, cover := w.along(c, j), w.covered(c, j)
			key := w.hitKey(hit, cover)
			h, ok := hits[key]
			if !ok {
				h = len(c.hits)
				hits[key] = h
				c.hits = append(c.hits, hit)
				c.cover = append(c.cover, cover)
			}
			c.cover[h] = least(c.cover[h], cover)
			far := w.edge(c, j)
			z := zone{h, w.y.down(far - w.far + l.topKerf), w.held(c, far)}
			k, ok := known[z]
			if !ok {
				k = int16(len(c.zones))
				known[z] = k
				c.zones = append(c.zones, z)
			}
			c.zoneAt[j] = k
		}
	}
	l.same = make([]bool, w.x.n+1)
	for j := range l.same {
		l.same[j] = j > 0 && !slices.ContainsFunc(l.classes, func(c class) bool { return c.zoneAt[j] != c.zoneAt[j-1] })
	}
}

// hitKey is the same for cells that are taken for alike: those that meet the same marks, and
// where nothing is taken together, that hold as much of them.
type hitKey struct {
	met   set
	cover string
}

func (w *Board) hitKey(met set, cover []layout.Length) hitKey {
	if w.fine() {
		return hitKey{met, fmt.Sprint(cover)}
	}
	return hitKey{met: met}
}

// along is the marks that a cell at position j meets.
func (w *Board) along(c *class, j int) set {
	var hit set
	for i, m := range w.marks {
		if blocks(w.x, j, c.length, m.Along()) {
			hit |= 1 << i
		}
	}
	return hit
}

// covered is how much of each spot lies in a cell at position j for certain.
func (w *Board) covered(c *class, j int) []layout.Length {
	covered := make([]layout.Length, len(w.spots))
	for i, s := range w.spots {
		first := layout.Span{Lo: w.x.at(j) - w.soon, Hi: w.x.at(j) - w.soon + c.length}
		last := layout.Span{Lo: w.x.upTo(j), Hi: w.x.upTo(j) + c.length}
		covered[i] = min(shared(first, s.Along()), shared(last, s.Along()))
	}
	return covered
}

// shared is how long two spans run together.
func shared(a, b layout.Span) layout.Length { return max(0, min(a.Hi, b.Hi)-max(a.Lo, b.Lo)) }

func least(a, b []layout.Length) []layout.Length {
	for i := range a {
		a[i] = min(a[i], b[i])
	}
	return a
}

// edge is how far across the wood of a cell at position j reaches, where the far edge is
// taken as wide as it is anywhere that the cell may lie.
func (w *Board) edge(c *class, j int) layout.Length {
	if !w.slants() {
		return w.wood.FullWidth()
	}
	first, last := w.x.at(j), min(w.x.at(j+1), w.wood.Length-c.length)
	if w.x.exact {
		last = first
	}
	return max(w.wood.FarMin(layout.Span{Lo: first, Hi: first + c.length}),
		w.wood.FarMin(layout.Span{Lo: last, Hi: last + c.length})) + 2*layout.Micrometre
}

// edgeSteps is into how many steps a position is divided where it tells how high an
// offcut along the slanting far edge is.
const edgeSteps = 4

// held is no less than a place that a slanting far edge reaches, for offcuts of cells; 0
// where none is kept there.
func (w *Board) held(c *class, far layout.Length) layout.Length {
	if !w.slants() || !c.again || w.rate == 0 || c.length < w.shop.MinOffcutLength {
		return 0
	}
	step := max(1, w.y.unit/edgeSteps)
	return (far + step - 1) / step * step
}
