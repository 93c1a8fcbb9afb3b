package bound

import (
	"sync"

	"sawbill/layout"
)

// ceiling is the upper bound of one board as far as it has been worked out.
type ceiling struct {
	rough, coarse, fine *wood
	finest              func() *wood // made when it is needed, for that takes a while; nil where none is finer
	wood                *wood        // that the chain is of
	chain               *chain
	most                value
}

// level is how finely a board is looked at: on which of its grids, and the most
// positions in a cell along and in one across.
type level struct {
	grid          func(*ceiling) *wood
	along, across int
}

// levels runs from coarse cells to single positions, on a rough grid, on the coarse
// one and then on the fine one.
func levels() []level {
	rough := func(c *ceiling) *wood { return c.rough }
	coarse := func(c *ceiling) *wood { return c.coarse }
	fine := func(c *ceiling) *wood { return c.fine }
	return []level{
		{rough, 8, 4}, {rough, 4, 2}, {rough, 2, 2}, {rough, 2, 1},
		{coarse, 32, 8}, {coarse, 16, 4}, {coarse, 8, 2}, {coarse, 4, 1}, {coarse, 2, 1}, {coarse, 1, 1},
		{fine, 16, 4}, {fine, 8, 2}, {fine, 4, 1}, {fine, 2, 1}, {fine, 1, 1},
	}
}

// finestLevels do so on the finest grid. Whoever states what prices prove looks at
// boards on a grid of his own: where sizes lie on neither, each may be the sharper by a
// trifle, and only a much finer one is so for certain.
func finestLevels() []level {
	finest := func(c *ceiling) *wood { return c.finest() }
	return []level{
		{finest, 64, 16}, {finest, 32, 8}, {finest, 16, 4}, {finest, 8, 2}, {finest, 4, 1}, {finest, 2, 1}, {finest, 1, 1},
	}
}

func newCeiling(p *layout.Problem, b *layout.Board, prices map[string]layout.Money) (*ceiling, error) {
	coarse, fine := gridsFor(p, b, prices)
	c := &ceiling{most: 1 << 62}
	var err error
	if c.coarse, err = newWood(p, b, coarse, prices); err != nil {
		return nil, err
	}
	if c.fine, err = newWood(p, b, fine, prices); err != nil {
		return nil, err
	}
	if c.rough, err = newWood(p, b, coarse.rough(b), prices); err != nil {
		c.rough = c.coarse // parts are too small for it
	}
	c.finest = sync.OnceValue(func() *wood {
		if fine.x.sole && fine.y.sole && !fine.uneven {
			return nil
		}
		w, err := newWood(p, b, finestFor(p, b, fine, prices), prices)
		if err != nil {
			return nil
		}
		return w
	})
	if most, ok := c.fine.stick(); ok {
		c.most = most
	}
	if len(c.fine.classes) == 0 {
		c.most = min(c.most, c.fine.worth.whole(p.Shop, b))
	}
	return c, nil
}

// lower sharpens the bound at one level, but no further than it takes to show
// that the board is worth no more than enough.
func (c *ceiling) lower(at level, enough value, stop func() bool) {
	w := at.grid(c)
	if w == nil {
		return
	}
	b := newBench(w, at.across, stop)
	if c.wood != b.wood {
		c.wood = b.wood
		wide := min(c.wood.leastAlong(), max(1, c.wood.nx/16))
		c.chain = newChain(c.wood.nx, wide, b.plain.along)
	}
	c.chain.forget()
	c.most = min(c.most, c.chain.settle(at.along, enough, b.along, stop))
}

// along is the most that one piece of a board is worth, crosscut from it, which
// begins in one cell along and after which the next may begin in another.
func (b *bench) along(from, to span) value {
	best := b.wholeOffcut(from, to)
	a1, a2 := max(from.lo, b.x.down(b.shop.EndTrim)), from.hi
	e1, e2 := to.lo, min(to.hi, b.x.down(b.board.Length-b.shop.EndTrim+b.crosscut))
	if a1 > a2 || e1 > e2 {
		return best
	}
	longest := b.endOf(e2) - max(b.x.at(a1), b.shop.EndTrim)
	shortest := b.x.at(e1) - b.crosscut - b.x.last(a2)
	if !b.machines(longest, shortest) {
		return best
	}
	best = max(best, b.wholePart(span{a1, a2}, longest, shortest))
	if longest < b.shop.MinRipLength {
		return best
	}
	short := b.briefest(shortest)
	return max(best, b.blank(blankAt{a1, e2, b.clip(from, to), b.stepped(b.shift(short)), b.lasting(short)}))
}

// machines reports whether some blank between two lengths can be trued. Of a
// planed board with both edges straight one may not need to be.
func (b *bench) machines(longest, shortest layout.Length) bool {
	if !b.machined() {
		return longest > 0
	}
	return longest > 0 && longest >= b.shop.MinBlank && (b.shop.MaxBlank == 0 || shortest <= b.shop.MaxBlank)
}

// wholeOffcut is the most that a piece is worth that is kept as it comes from
// the board.
func (b *bench) wholeOffcut(from, to span) value {
	return b.offcut(layout.Rect{
		X1: b.x.at(from.lo), X2: min(b.x.last(to.hi)-b.crosscut, b.board.Length),
		Y1: b.shift(max(b.shop.MinOffcutLength, b.x.at(to.lo)-b.crosscut-b.x.last(from.hi))), Y2: b.clip(from, to),
	})
}

// clip is the most that the narrower end of a piece can measure which begins in
// one cell and after which the next may begin in another.
func (b *bench) clip(from, to span) layout.Length {
	return b.narrow(from, max(0, b.x.at(to.lo)-b.crosscut-b.x.last(from.hi)))
}

// wholePart is the dearest part that is a whole blank by itself, without any
// rip: one too short to be ripped, from which truing takes nothing.
func (b *bench) wholePart(from span, longest, shortest layout.Length) value {
	var best value
	if b.near > 0 || b.far > 0 || b.inset > 0 {
		return best
	}
	for i := range b.classes {
		c := &b.classes[i]
		if c.length < b.shop.MinRipLength && shortest <= c.length && c.length <= longest && b.machines(c.length, c.length) {
			best = max(best, b.widestOf(c, from))
		}
	}
	return best
}

// widestOf is the dearest part of a class that is as wide as the board and may
// begin at one of the positions.
func (b *bench) widestOf(c *class, from span) value {
	var best value
	for i := from.lo; i <= from.hi; i++ {
		if c.zoneAt[i] < 0 {
			continue
		}
		hit := c.zones[c.zoneAt[i]].hit
		for k := range c.pieces {
			if p := &c.pieces[k]; p.width == b.board.FullWidth() && !p.foreign && !p.blocked(hit&p.hitAt[0]) {
				best = max(best, p.price)
			}
		}
	}
	return best
}
