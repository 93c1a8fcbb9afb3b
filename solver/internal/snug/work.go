package snug

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/steps"
)

// board is a board of a plan by itself.
type board struct {
	shop *layout.Shop
	wood *layout.Board
	plan layout.Plan // of nothing else; its tree is put in for a look
}

func newBoard(plan *layout.Plan, cut *layout.BoardPlan) *board {
	p := plan.Problem
	wood := p.Board(cut.Board)
	made := map[string]bool{}
	for _, leaf := range cut.Root.Leaves() {
		made[leaf.Part] = true
	}
	p.Stock = []layout.Board{*wood}
	p.Bill = slices.DeleteFunc(slices.Clone(p.Bill), func(part layout.Part) bool { return !made[part.Name] })
	return &board{shop: p.Shop, wood: wood, plan: layout.Plan{Revision: plan.Revision, Problem: p}}
}

// cutBy is the plan of the board alone, cut by a tree.
func (b *board) cutBy(root *layout.Node) *layout.Plan {
	p := b.plan
	p.Boards = []layout.BoardPlan{{
		Board: b.wood.Mark, Cost: b.wood.Cost, Root: root,
		Account: layout.NewAccount(b.shop, b.wood, p.Problem.Bill, root),
	}}
	return &p
}

// valid reports whether the checker passes a tree. What is missing, and what all costs,
// is not for one board to say.
func (b *board) valid(root *layout.Node) bool {
	ofBoard := func(v check.Violation) bool { return v.Board != "" || v.Rule == "form" }
	return !slices.ContainsFunc(check.Plan(b.cutBy(root)), ofBoard)
}

// work is what a person has to do to cut a board by a tree.
type work struct {
	steps, cuts int
	slivers     int // cuts that take off next to nothing
	cautions    int
	kept        layout.Money // what the offcuts are worth
}

// lessThan reports whether a is less work than o, and no more dangerous.
func (a work) lessThan(o work) bool {
	fewer := a.cuts < o.cuts || a.cuts == o.cuts && a.slivers < o.slivers
	return fewer && a.steps <= o.steps && a.cautions <= o.cautions
}

// compare is negative where a is the better of two that are both less than what there was:
// cuts first, then money.
func (a work) compare(o work) int {
	return cmp.Or(
		cmp.Compare(a.cuts, o.cuts), cmp.Compare(o.kept, a.kept), cmp.Compare(a.slivers, o.slivers), cmp.Compare(a.cautions, o.cautions),
	)
}

func (b *board) workOn(root *layout.Node) work {
	w := work{kept: b.worth(root)}
	for _, s := range steps.List(b.cutBy(root), steps.ByBoard) {
		w.steps++
		w.cautions += len(s.Cautions)
		if s.NoCut || s.Kerf.Empty() {
			continue
		}
		w.cuts++
		if b.takesSliver(s) {
			w.slivers++
		}
	}
	return w
}

// takesSliver reports whether a cut takes off less than a kerf and a 16th of an inch
// beside its kerf.
func (b *board) takesSliver(s *steps.Step) bool {
	off, rest, kerf := s.OffSize.Width, s.RestSize.Width, b.shop.RipKerf
	switch s.Operation {
	case steps.Crosscut:
		off, rest, kerf = s.OffSize.Length, s.RestSize.Length, b.shop.CrosscutKerf
	case steps.RoughRip:
		kerf = b.shop.RoughRipKerf
	}
	least := kerf + layout.Inch/16
	return s.Off == "" && off < least || s.Rest == "" && rest < least
}
