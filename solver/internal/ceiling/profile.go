package ceiling

import (
	"slices"

	"sawbill/layout"
)

// height is a range of heights of a strip, counted in positions from its start
// to the least start of what lies beyond it. A strip in the range takes at least
// lo and holds no more than hi.
type height struct{ lo, hi int }

// widest is the most heights that are taken together.
const widest = 2

// mostHeights is the most ranges of a lane.
const mostHeights = 200

// profile is the strips of one range of heights that meet the same marks for
// certain. Each cell of a profile is worth the most that it is in any of them.
type profile struct {
	height  int
	starts  []int // positions across
	offcuts area
	keeps   bool // high enough for an offcut
}

// setHeights divides the heights of strips into ranges: where nothing is in the
// way a strip is as high as a part or a stack of parts of one length, so each of
// these is a range by itself; what lies between two of them is another.
func (w *Board) setHeights(l *lane) {
	most := w.y.down(w.wood.FullWidth()-w.far-w.near+w.stripKerf) + 1
	alone := make([]bool, most+2)
	for i := range l.classes {
		l.classes[i].markHeights(alone)
	}
	lo := 1
	for m := 1; m <= most; m++ {
		if alone[m] {
			l.between(lo, m-1)
			l.heights = append(l.heights, height{m, m})
			lo = m + 1
		}
	}
	l.between(lo, most)
	l.thin()
}

// between adds ranges from lo to hi.
func (l *lane) between(lo, hi int) {
	for ; lo <= hi; lo += widest {
		l.heights = append(l.heights, height{lo, min(hi, lo+widest-1)})
	}
}

// markHeights marks the heights of parts and of stacks.
func (c *class) markHeights(alone []bool) {
	stacks := make([]bool, len(alone))
	stacks[0] = true
	for m := range stacks {
		if !stacks[m] {
			continue
		}
		for i := range c.pieces {
			if to := m + c.pieces[i].advance; c.again && to < len(stacks) {
				stacks[to], alone[to] = true, true
			}
		}
	}
	for i := range c.pieces {
		if q := &c.pieces[i]; q.alone < len(alone) {
			alone[q.alone] = true
		}
	}
}

// thin merges neighbouring ranges until there are not too many.
func (l *lane) thin() {
	for len(l.heights) > mostHeights {
		var merged []height
		for i := 0; i < len(l.heights); i += 2 {
			h := l.heights[i]
			if i+1 < len(l.heights) {
				h.hi = l.heights[i+1].hi
			}
			merged = append(merged, h)
		}
		l.heights = merged
	}
}

// profileKey tells profiles of one range of heights apart.
type profileKey struct {
	met   set
	slant int // how far the strips reach beyond the least far edge
}

// slantStep is how many positions across are taken together where strips reach
// beyond the least far edge.
const slantStep = 2

func (w *Board) setProfiles(l *lane) {
	low, first := w.lowestTop(l), w.y.down(w.near)
	highest := w.y.down(w.wood.FullWidth() - w.far + w.stripKerf)
	l.at = make([][]int32, len(l.heights))
	for h, height := range l.heights {
		l.at[h] = slices.Repeat([]int32{-1}, w.y.n+1)
		known := map[profileKey]int32{}
		for j := first; j+height.lo <= highest && j <= w.y.n; j++ {
			key := profileKey{met: w.met(j, height.lo)}
			if over := j + height.hi - low; over > 0 {
				key.slant = (over + slantStep - 1) / slantStep
			}
			id, ok := known[key]
			if !ok {
				id = int32(len(l.profiles))
				known[key] = id
				l.profiles = append(l.profiles, profile{height: h})
			}
			l.at[h][j] = id
			l.profiles[id].starts = append(l.profiles[id].starts, j)
		}
	}
	for i := range l.profiles {
		w.setOffcuts(l, &l.profiles[i])
	}
}

// lowestTop is the least far that parts of the lane may reach.
func (w *Board) lowestTop(l *lane) int {
	low := w.y.n + 1
	for i := range l.classes {
		for _, z := range l.classes[i].zones {
			low = min(low, z.top)
		}
	}
	return low
}

// met is the marks that a strip from position j meets for certain when it takes
// m positions.
func (w *Board) met(j, m int) set {
	var met set
	for i, d := range w.marks {
		if w.y.at(j+1) <= w.y.at(w.y.down(d.Y2)) && w.y.at(j+m)-w.stripKerf > d.Y1 {
			met |= 1 << i
		}
	}
	return met
}

func (w *Board) setOffcuts(l *lane, p *profile) {
	h := l.heights[p.height]
	tall := w.y.at(h.hi+1) - w.stripKerf
	p.keeps = w.rate > 0 && tall >= w.shop.MinOffcutWidth
	if !p.keeps {
		return
	}
	p.offcuts = w.newArea(w.y.at(p.starts[0]), tall, func(spot layout.Rect) layout.Length {
		least := spot.Width()
		for _, j := range p.starts {
			least = min(least, shared(spot.Across(), layout.Span{Lo: w.y.at(j + 1), Hi: w.y.at(j+h.lo) - w.stripKerf}))
		}
		return least
	})
}
