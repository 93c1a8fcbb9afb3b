package snug

import (
	"sawbill/layout"
	"sawbill/layout/check"
)

// Plan is a plan that makes what another one makes, of the same boards, for no more
// money and with no more steps, without the needless cuts. What is proven of the one is
// proven of the other. It gives the same plan back where there are none. The plan must
// have passed its check, and nothing of it may be cut yet.
func Plan(plan *layout.Plan) *layout.Plan {
	var cuts []layout.BoardCut
	changed := false
	for i := range plan.Boards {
		was := &plan.Boards[i]
		root := newBoard(plan, was).snug(was.Root)
		changed = changed || root != was.Root
		cuts = append(cuts, layout.BoardCut{Board: was.Board, Root: root.Clone()})
	}
	if !changed {
		return plan
	}
	next := layout.Assemble(&plan.Problem, cuts)
	proven := plan.Totals
	proven.Cost, proven.Yield = next.Totals.Cost, next.Totals.Yield
	next.Totals = proven
	if len(check.Plan(next)) > 0 {
		return plan
	}
	return next
}

// most is how many changes are made on a board at most. Each saves a cut or a sliver.
const most = 100

// snug is the tree of a board without needless cuts, or the tree itself.
func (b *board) snug(root *layout.Node) *layout.Node {
	for range most {
		next := b.closed(root)
		if next == nil {
			next = b.narrowed(root)
		}
		if next == nil {
			return root
		}
		root = next
	}
	return root
}

// closed is the tree with a place closed that saves the most work, and of those with as
// many cuts the one whose offcuts are worth most; nil where none saves any.
func (b *board) closed(root *layout.Node) *layout.Node {
	now := b.workOn(root)
	var best *layout.Node
	var least work
	for _, c := range b.closings(root) {
		next := c.of(root)
		if !b.allows(root, next) {
			continue
		}
		if w := b.workOn(next); w.lessThan(now) && (best == nil || w.compare(least) < 0) {
			best, least = next, w
		}
	}
	return best
}

// narrowed is a tree with a strip that is as wide as what is in it, and with the places
// closed that this opens; nil where that saves nothing.
func (b *board) narrowed(root *layout.Node) *layout.Node {
	now := b.workOn(root)
	for _, c := range b.narrowings(root) {
		next := c.of(root)
		if !b.allows(root, next) {
			continue
		}
		for closed := b.closed(next); closed != nil; closed = b.closed(next) {
			next = closed
		}
		if b.workOn(next).lessThan(now) {
			return next
		}
	}
	return nil
}

// change is something that is done to the node of a tree that a walk comes to as the
// at-th.
type change struct {
	at     int
	planed layout.Length // how much longer it makes a blank
	do     func(n *layout.Node)
}

// of is a copy of a tree that is changed.
func (c change) of(root *layout.Node) *layout.Node {
	next, i := root.Clone(), 0
	next.Walk(func(n *layout.Node) {
		if i == c.at {
			c.do(n)
		}
		i++
	})
	return next
}
