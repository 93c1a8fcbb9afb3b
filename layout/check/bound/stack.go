package bound

import (
	"slices"

	"sawbill/layout"
)

// stackAt says whose stack: of class c, from position j across, in zone z.
type stackAt struct{ c, z, j int }

// stack is the last rip of one length of a strip: most[k] is the most that the
// pieces are worth that lie in the first k positions across, if one of them is a part, and
// keep[k] is the largest most[i] less the worth below i, over i up to k. Offcuts alone are
// worth no more than one as high as the strip.
type stack struct{ most, keep []value }

// nothing is less than every difference of values.
const nothing value = -1 << 61

// stackOf is the stack of class c from position j in zone z.
func (b *bench) stackOf(c, z, j int) *stack {
	at := stackAt{c, z, j}
	if s, ok := b.stacks[at]; ok {
		return s
	}
	if len(b.stacks) >= b.mostStacks() {
		clear(b.stacks)
	}
	s := b.newStack(&b.classes[c], &b.classes[c].zones[z], j)
	b.stacks[at] = s
	return s
}

// newStack fills a stack by
//
//	most[k] = max(most[k-1], all[k - advance] + price, keep[k - least] + worth below k,
//	              lean[k - exit])
//	lean[k] = max(lean[k-1], lean[k - advance] + price, all[k - advance] + price)
//	all[k]  = max(most[k], one offcut up to k)
//
// in which the third is an offcut that ends at k, and lean is for pieces that lean
// otherwise than the strip: none of them begins earlier than at its entry.
func (b *bench) newStack(c *class, z *zone, j int) *stack {
	n := b.y.down(b.board.FullWidth()-b.far+b.rip) - j
	s := &stack{slices.Repeat([]value{nothing}, n+1), slices.Repeat([]value{nothing}, n+1)}
	all := make([]value, n+1)
	least, keeps := b.keepsLength(c)
	lean, exit := c.leaning(n + 1)
	for k := range s.most {
		if k > 0 {
			s.most[k], s.keep[k] = max(s.most[k], s.most[k-1]), s.keep[k-1]
		}
		if keeps && k >= least {
			all[k] = max(0, b.worthTo(c, z, j+k)-b.worthFrom(c, z, j))
			if kept := s.keep[k-least]; kept > nothing {
				s.most[k] = max(s.most[k], kept+b.worthTo(c, z, j+k))
			}
		}
		if lean != nil && k > 0 {
			lean[k] = max(lean[k], lean[k-1])
		}
		if lean != nil && k >= exit {
			s.most[k] = max(s.most[k], lean[k-exit])
		}
		if s.most[k] >= 0 {
			s.keep[k] = max(s.keep[k], s.most[k]-b.worthFrom(c, z, j+k))
		}
		all[k] = max(all[k], s.most[k])
		for i := range c.pieces {
			p := &c.pieces[i]
			to := k + p.advance
			if to > n || p.blocked(z.hit&p.hitAt[j+k]) {
				continue
			}
			if p.entry == 0 {
				s.most[to] = max(s.most[to], all[k]+p.price)
				continue
			}
			lean[to] = max(lean[to], lean[k]+p.price)
			if k >= p.entry {
				lean[to] = max(lean[to], all[k]+p.price)
			}
		}
	}
	return s
}

// leaning is the values lean at the start, nil where no piece of the class needs them,
// and the least that is lost behind such pieces.
func (c *class) leaning(n int) (lean []value, exit int) {
	exit = n
	for i := range c.pieces {
		if p := &c.pieces[i]; p.entry > 0 {
			exit = min(exit, p.exit)
		}
	}
	if exit == n {
		return nil, n
	}
	return slices.Repeat([]value{nothing}, n), exit
}

// keepsLength reports whether offcuts of the last rip of class c can be kept,
// and how many positions each takes at least.
func (b *bench) keepsLength(c *class) (least int, keeps bool) {
	return b.y.down(b.shop.MinOffcutWidth + b.rip), b.worth.rate > 0 && c.length >= b.shop.MinOffcutLength
}

// worthFrom and worthTo: an offcut that begins in position i and ends before
// position k is worth at most worthTo(k) - worthFrom(i).
func (b *bench) worthFrom(c *class, z *zone, i int) value {
	area := int64(c.length) * floor(b.y.at(i))
	if z.waste != nil {
		area -= z.waste[i]
	}
	return b.worth.of(area)
}

func (b *bench) worthTo(c *class, z *zone, k int) value {
	top := b.topOf(k, b.rip)
	area := int64(c.length) * (up(top) + 1)
	if z.waste != nil {
		area -= z.waste[max(0, b.y.down(top))]
	}
	return b.worth.of(area) + 1
}

// cell is the most that a length of class c, beginning at position i along, is
// worth in the strip.
func (b *bench) cell(s *strip, c, i int) value {
	class := &b.classes[c]
	z := int(class.zoneAt[i])
	if z < 0 {
		return 0
	}
	if !s.slants {
		if s.cells[c][z] < 0 {
			s.cells[c][z] = b.cellTo(s, c, z, s.stackTop, s.stackTop)
		}
		return s.cells[c][z]
	}
	return b.cellTo(s, c, z, min(s.stackTop, int(class.topAt[i])), min(s.stackTop, int(class.clipAt[i])))
}

// cellTo is what a length in zone z is worth when its parts end by position top
// and its offcuts by position clip, which is no less.
func (b *bench) cellTo(s *strip, c, z, top, clip int) value {
	class := &b.classes[c]
	if !class.again {
		return b.alone(s, class, class.zones[z].hit, top)
	}
	if clip <= s.at.j {
		return 0
	}
	if s.stacks[c][z].stack == nil {
		s.stacks[c][z] = b.stackIn(s, c, z)
	}
	in := &s.stacks[c][z]
	if in.top == top && in.clip == clip {
		return in.last
	}
	in.top, in.clip, in.last = top, clip, b.upToTop(s, in, class, top, clip)
	return in.last
}

// upToTop is what a stack is worth whose parts end by position top, and its
// offcuts by position clip.
func (b *bench) upToTop(s *strip, in *standing, class *class, top, clip int) value {
	k := min(max(top-s.at.j, 0), len(in.most)-1)
	best := max(0, in.most[k])
	if clip > top && in.keeps {
		if i := min(k, clip-s.at.j-in.least); i >= 0 && in.keep[i] > nothing {
			best = max(best, in.keep[i]+b.worthTo(class, in.zone, in.j+clip-s.at.j))
		}
	}
	return best
}

// stackIn is the stack that stands in a strip in a zone. Where the strip meets
// no defect of the zone, all stacks are as the one from position 0 of a cleared
// board.
func (b *bench) stackIn(s *strip, c, z int) standing {
	from, j := b, s.at.j
	if b.classes[c].zones[z].hit&s.meets == 0 {
		from, j, z = b.plain, 0, 0
	}
	in := standing{stack: from.stackOf(c, z, j), zone: &from.classes[c].zones[z], j: j, top: -1}
	in.least, in.keeps = b.keepsLength(&b.classes[c])
	return in
}

// standing is a stack and where it stands.
type standing struct {
	*stack
	zone  *zone
	j     int
	least int // positions that an offcut of it takes
	keeps bool

	top, clip int // for which it was last asked, and what it was worth
	last      value
}

// alone is the best part that is as wide as the strip, where parts are not
// ripped again, and may begin anywhere between the strip's first and last start.
func (b *bench) alone(s *strip, c *class, hit uint64, top int) value {
	var best value
	for i := range c.pieces {
		p := &c.pieces[i]
		if p.width != s.at.width || p.foreign || p.price <= best {
			continue
		}
		for j := s.at.j; j <= s.at.last && j+p.advance <= top; j++ {
			if !p.blocked(hit & p.hitAt[j]) {
				best = p.price
				break
			}
		}
	}
	return best
}

// alone is the width of parts that are not ripped again, in strips of a lean.
type alone struct {
	lean  lean
	width layout.Length
}

func (w *wood) listAlones() []alone {
	var list []alone
	for _, c := range w.classes {
		for _, p := range c.pieces {
			if own := (alone{w.lanes[c.lane].lean, p.width}); !c.again && !slices.Contains(list, own) {
				list = append(list, own)
			}
		}
	}
	return list
}
