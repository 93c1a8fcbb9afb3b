package column

import (
	"encoding/binary"
	"slices"

	"sawbill/layout"
)

// setZones finds, for every class and every start of a cell, the defects that
// the cell meets along the board.
func (w *Board) setZones() {
	for i := range w.classes {
		c := &w.classes[i]
		c.zoneAt = make([]int32, w.x.n+1)
		c.reach = make([]layout.Length, w.x.n+1)
		known := map[string]int32{}
		for j := range c.zoneAt {
			c.zoneAt[j] = -1
			at := w.x.at(j)
			if at+c.length > w.wood.Length {
				continue
			}
			c.reach[j] = w.wood.FarMin(layout.Span{Lo: at, Hi: at + c.length})
			hit, key := w.zoneKey(c, at)
			z, ok := known[key]
			if !ok {
				z = int32(len(c.zones))
				known[key] = z
				c.zones = append(c.zones, zone{hit: hit, at: j})
			}
			c.zoneAt[j] = z
		}
	}
	for t := range w.thicks {
		w.thicks[t].anew = w.zonesBegin(&w.thicks[t])
	}
}

// zonesBegin are the positions at which some class of a thickness meets other defects than
// a position earlier.
func (w *Board) zonesBegin(t *thick) set {
	begin := newSet(w.x.n + 1)
	for i := range w.x.n + 1 {
		if i == 0 || slices.ContainsFunc(t.classes, func(c int) bool {
			return w.classes[c].zoneAt[i] != w.classes[c].zoneAt[i-1]
		}) {
			begin.add(i)
		}
	}
	return begin
}

// zoneKey tells zones apart. Where offcuts may come off in the last rip, what
// they are worth depends on how much of each defect the cell holds.
func (w *Board) zoneKey(c *class, at layout.Length) (set, string) {
	span := layout.Span{Lo: at, Hi: at + c.length}
	hit := newSet(len(w.grown))
	var key []byte
	for i, g := range w.grown {
		if !g.Along().Overlaps(span) {
			continue
		}
		hit.add(i)
		key = binary.AppendVarint(key, int64(i))
		if w.cellOffcuts(c) {
			marked := w.wood.Defects[i].Rect
			key = binary.AppendVarint(key, int64(max(0, min(marked.X2, span.Hi)-max(marked.X1, span.Lo))))
			key = binary.AppendVarint(key, int64(marked.X1-span.Lo))
		}
	}
	return hit, string(key)
}

// cellOffcuts reports whether offcuts of the last rip are sought in cells of c.
func (w *Board) cellOffcuts(c *class) bool {
	return w.cfg.InnerOffcuts && c.lean == 0 && c.again && w.measure.rate > 0 && c.length >= w.shop.MinOffcutLength
}
