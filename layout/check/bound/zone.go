package bound

import "sawbill/layout"

// zoneParts is into how many pieces its own length is divided when zones are
// cut short, where offcuts are credited: the shorter a zone, the more of a
// defect all its lengths have in common.
const zoneParts = 8

// setZones finds, for every start of a length of class c, the defects that it
// cannot avoid along the board.
func (w *wood) setZones(c *class) {
	c.zoneAt = make([]int32, w.nx+1)
	credited := w.unsound != nil && c.again && c.length >= w.shop.MinOffcutLength
	chunk := max(1, c.advance/zoneParts)
	known := map[[2]uint64]int32{}
	for i := range c.zoneAt {
		if w.x.at(i)+c.length > w.board.Length {
			c.zoneAt[i] = -1
			continue
		}
		hit := w.hits(func(r layout.Rect) layout.Span { return r.Along() }, w.x, i, c.length)
		key := [2]uint64{hit, 0}
		if credited && hit != 0 {
			key[1] = uint64(i/chunk) + 1
		}
		z, ok := known[key]
		if !ok {
			z = int32(len(c.zones))
			known[key] = z
			c.zones = append(c.zones, zone{hit: hit})
			if key[1] > 0 {
				c.zones[z].waste = w.commonWaste(c, (i/chunk)*chunk, (i/chunk+1)*chunk-1)
			}
		}
		c.zoneAt[i] = z
	}
}

// commonWaste is the area of defects below each position across that every
// length of class c holds which begins at the positions lo to hi.
func (w *wood) commonWaste(c *class, lo, hi int) []int64 {
	first, last := w.x.down(w.x.last(hi)+w.x.unit-1), w.x.down(w.x.at(lo)+c.length)
	last = min(last, w.nx)
	if first >= last {
		return nil
	}
	waste := make([]int64, w.ny+1)
	for j := range waste {
		waste[j] = w.unsound[j][last] - w.unsound[j][first]
	}
	return waste
}

// setReach finds how far across a length may reach where the board tapers.
// The far edge is taken where it is best for a length that begins in a
// position.
func (w *wood) setReach(c *class) {
	if !w.tapers() {
		return
	}
	c.topAt, c.clipAt = make([]int32, w.nx+1), make([]int32, w.nx+1)
	for i := range c.topAt {
		far := w.narrow(span{i, i}, c.length)
		c.topAt[i] = int32(w.y.down(far - w.far + w.lanes[c.lane].topKerf))
		c.clipAt[i] = int32(w.y.down(far + w.rip))
	}
}
