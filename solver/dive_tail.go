package solver

import (
	"cmp"
	"slices"
)

// What a dive cuts last hardly fits: few boards are left, and what is left to be made does
// not fill them, so a plan may come out a twentieth dearer than the programme that it began
// with. The boards that were cut last are cut anew together, with a few that were not cut,
// in whole numbers; then some more of them.

// tails is how many boards that were cut last are cut anew, time by time.
func tails() []int { return []int{6, 10} }

const (
	tailPricing = 4   // rounds of pricing, at most
	tailNodes   = 300 // of the choice in whole numbers
)

// cutTails cuts the boards anew that were cut last, where the plan is better then.
func (d *dive) cutTails() {
	for _, n := range tails() {
		d.cutTail(n)
	}
}

func (d *dive) cutTail(n int) {
	s := d.s
	t := s.newTask(&island{d.st, d.st}, d.rng.Int63())
	t.pricing, t.nodes = tailPricing, tailNodes
	free := map[int]bool{}
	for _, b := range d.boards {
		free[b] = true
	}
	for _, b := range d.lastCut(n) {
		t.add(s, b)
		delete(free, b)
	}
	s.addUnused(t, free)
	t.wantMissing()
	a := d.w.plan(t, s.values)
	if a == nil {
		return
	}
	d.found = append(d.found, a.found...)
	st := d.st.copy()
	if st.recut(t.boards, a.cuts); st.score().Compare(d.st.score()) < 0 {
		d.st = st
	}
}

// lastCut lists the n of its boards that were cut last, and behind them those that were cut
// with a tail alone.
func (d *dive) lastCut(n int) []int {
	boards := slices.DeleteFunc(slices.Clone(d.boards), func(b int) bool { return d.st.cuts[b] == nil })
	turn := func(b int) int {
		if k := slices.Index(d.order, b); k >= 0 {
			return k
		}
		return len(d.order)
	}
	slices.SortStableFunc(boards, func(a, b int) int { return cmp.Compare(turn(a), turn(b)) })
	return boards[max(0, len(boards)-n):]
}
