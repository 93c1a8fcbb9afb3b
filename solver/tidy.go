package solver

import (
	"cmp"
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// tidiness is what is compared of plans that cost the same: fewer boards to pull,
// then fewer widths to set the fence to, then fewer offcuts, for one big one is
// worth more on the rack than several small ones.
type tidiness struct{ boards, settings, offcuts int }

func (a tidiness) compare(b tidiness) int {
	return cmp.Or(cmp.Compare(a.boards, b.boards), cmp.Compare(a.settings, b.settings), cmp.Compare(a.offcuts, b.offcuts))
}

func (s *state) tidiness() tidiness {
	t := tidiness{boards: len(s.used())}
	widths := map[layout.Length]bool{}
	for _, c := range s.cuts {
		if c != nil {
			t.offcuts += offcutsOf(c)
			for _, w := range settingsOf(c) {
				widths[w] = true
			}
		}
	}
	t.settings = len(widths)
	return t
}

// settingsOf lists the widths that a cut rips to, each once.
func settingsOf(c *column.Cut) []layout.Length {
	var widths []layout.Length
	c.Root.Walk(func(n *layout.Node) {
		for _, child := range n.Children {
			if n.Cut == layout.Rip && child.Offcut == "" {
				widths = append(widths, child.Width())
			}
		}
	})
	slices.Sort(widths)
	return slices.Compact(widths)
}

func offcutsOf(c *column.Cut) int {
	n := 0
	for _, leaf := range c.Root.Leaves() {
		if leaf.Offcut != "" {
			n++
		}
	}
	return n
}

const (
	tidyTasks  = 16   // tries
	tidyBoards = 8    // that are cut, a try
	tidySpend  = 1000 // one part in so many of the cost may be spent
	tidyNodes  = 8    // of each choice
	tidyKnown  = 40   // ways to cut a board that are chosen among
)

// tidy is the last pass over the best plan: a few boards at a time are cut anew, in
// ways that are known, where that makes the plan tidier. What it spends in all is at
// most a thousandth of the cost, and nothing where the plan is proven to be the
// best. It reports whether the plan changed.
func (s *search) tidy(proven bool) bool {
	limit := s.best.cost()
	if !proven {
		limit += limit / tidySpend
	}
	rng := rand.New(rand.NewSource(s.o.Seed + 1))
	now, changed := s.best.copy(), false
	for range tidyTasks {
		if s.tidyOnce(now, limit, rng) {
			changed = true
		}
	}
	if changed {
		s.best = now
	}
	return changed
}

// tidyOnce tries one change of a plan and keeps it if the plan is tidier then, has
// as much missing and costs no more than limit.
func (s *search) tidyOnce(now *state, limit layout.Money, rng *rand.Rand) bool {
	t := s.newTidyTask(now, rng)
	if len(t.boards) == 0 {
		return false
	}
	r := newRestricted(s.p, t.boards, t.wanted, t.penalty)
	r.extra = s.untidy(now, t, float64(column.FromMoney(limit-now.cost())))
	for k, known := range t.known {
		if t.before[k] != nil {
			r.offer(k, t.before[k])
		}
		for _, c := range known[max(0, len(known)-tidyKnown):] {
			if c != t.before[k] {
				r.offer(k, c)
			}
		}
	}
	a := &answer{}
	s.workers[0].cut(a, t, r.best(t.before, tidyNodes), s.values)
	next := now.copy()
	next.recut(t.boards, a.cuts)
	missing := func(st *state) layout.Score { return layout.NewScore(s.p, st.missing, 0) }
	if missing(next).Compare(missing(now)) > 0 || next.cost() > limit || next.tidiness().compare(now.tidiness()) >= 0 {
		return false
	}
	*now = *next
	return true
}

// newTidyTask takes some boards that are cut, and one that is not.
func (s *search) newTidyTask(now *state, rng *rand.Rand) *task {
	t := &task{
		island: &island{now: now, best: now}, rng: rng, wanted: make([]int, len(s.p.Bill)),
		short: slices.Clone(now.missing), penalty: s.penalties(now),
	}
	for _, b := range some(now.used(), tidyBoards, rng) {
		t.add(s, b)
	}
	unused := slices.DeleteFunc(slices.Clone(s.usable), func(b int) bool { return now.cuts[b] != nil })
	for _, b := range some(unused, 1, rng) {
		t.add(s, b)
	}
	return t
}

// untidy is what a cut of the task is taken to cost beyond its money: for its board,
// for widths that no board outside the task is ripped to, and for its offcuts. Money
// that may be spent is worth a board; where none may, a board is worth a trifle.
func (s *search) untidy(now *state, t *task, spend float64) func(*column.Cut) float64 {
	set := map[layout.Length]bool{}
	for b, c := range now.cuts {
		if c != nil && !slices.Contains(t.boards, b) {
			for _, w := range settingsOf(c) {
				set[w] = true
			}
		}
	}
	spend = max(spend, 16*float64(column.Cash))
	return func(c *column.Cut) float64 {
		extra := spend
		for _, w := range settingsOf(c) {
			if !set[w] {
				extra += spend / 4
			}
		}
		return extra + spend/16*float64(offcutsOf(c))
	}
}
