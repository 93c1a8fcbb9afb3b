package bound

import (
	"slices"

	"sawbill/layout"
)

// blankAt says which blanks: those that begin at position a along or later, and
// after which the next piece may begin at position e or earlier. No offcut as
// long as the blank reaches further across than clip. The wood begins at shift across
// or later, and of the lanes it holds those that last.
type blankAt struct {
	a, e                 int
	clip, shift, lasting layout.Length
}

// blank is the most that a blank is worth: the longest way across it in strips,
// whichever of them are ripped before truing.
func (b *bench) blank(at blankAt) value {
	if v, ok := b.blanks[at]; ok {
		return v
	}
	n := b.ny
	wide := min(b.leastAcross(), max(1, n/12))
	plain := at
	plain.clip = b.board.FullWidth()
	c := newChain(n, wide, func(from, to span) value { return b.plain.between(plain, from, to) })
	v := c.settle(b.fine, 0, func(from, to span) value { return b.between(at, from, to) }, b.stop)
	b.blanks[at] = v
	return v
}

// between is the most that one strip of a blank is worth which begins in one
// cell across and after which the next may begin in another.
func (b *bench) between(at blankAt, from, to span) value {
	best := max(b.roughOffcut(at, from, to), b.truedOffcut(at, from, to))
	for _, l := range b.bevels {
		best = max(best, b.strip(at, from, to, l))
	}
	return best
}

// roughOffcut is the most that an offcut is worth which is ripped off a blank before
// it is trued: as long as that, and of the board's own edges, but what lies beside it
// has a joint to lose. Two of them side by side are worth no more than one instead.
func (b *bench) roughOffcut(at blankAt, from, to span) value {
	y := b.y.at(from.lo)
	if from.lo > b.y.down(at.shift) { // there may be a strip before it
		y += b.jointed() - b.stripKerf
	}
	return b.offcut(layout.Rect{
		X1: b.x.at(at.a), X2: min(b.x.last(at.e)-b.crosscut, b.board.Length),
		Y1: max(y, at.shift), Y2: min(b.topOf(to.hi, b.jointed()), at.clip),
	})
}

// truedOffcut is the most that one is worth which is ripped off a trued blank.
func (b *bench) truedOffcut(at blankAt, from, to span) value {
	return b.offcut(layout.Rect{
		X1: b.x.at(at.a) + b.end, X2: b.endOf(at.e) - b.end,
		Y1: max(b.y.at(from.lo), at.shift+b.near), Y2: min(b.topOf(to.hi, b.stripKerf), at.clip, b.board.FullWidth()-b.far),
	})
}

// strip is the most that a strip of one lean is worth.
func (b *bench) strip(at blankAt, from, to span, l lean) value {
	j1, j2 := max(from.lo, b.lowest(l, at.shift)), from.hi
	k1, k2 := to.lo, min(to.hi, b.topmost(l))
	if m := b.shop.MachineWidth(); m > 0 {
		k2 = min(k2, j2+b.y.down(m+b.behind(l))+1)
	}
	if j1 > j2 || k1 > k2 {
		return 0
	}
	var best value
	// Without parts a strip can only be better than one offcut of its length
	// where the far edge cuts into that.
	if b.tapers() || slices.ContainsFunc(b.classes, func(c class) bool { return c.again }) {
		best = b.upTo(b.stripOf(stripAt{a: at.a, j: j1, last: j1, k: k2, lean: l, lasting: at.lasting}, at.e), at)
	}
	for _, own := range b.alones {
		if own.lean == l {
			best = max(best, b.justWide(at, span{j1, j2}, span{k1, k2}, own))
		}
	}
	return best
}

// justWide is the most that a strip is worth that is just as wide as a part.
// Where the width is no whole number of positions it may take one more than its
// width rounded down.
func (b *bench) justWide(at blankAt, from, to span, own alone) value {
	size := own.width + b.behind(own.lean)
	takes := b.y.down(size)
	more := 1
	if b.y.exact(size) {
		more = 0
	}
	j1, j2 := max(from.lo, to.lo-takes-more), min(from.hi, to.hi-takes)
	k2 := min(to.hi, j2+takes+more)
	if j1 > j2 || k2 < to.lo {
		return 0
	}
	return b.upTo(b.stripOf(stripAt{a: at.a, j: j1, last: j2, k: k2, width: own.width, lean: own.lean, lasting: at.lasting}, at.e), at)
}
