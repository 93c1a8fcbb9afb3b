package solver

import (
	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
)

// counting reports whether it is counted what boards make, where prices alone prove less than
// a plan costs.
func (q *sets) counting() bool { return q != nil && q.countable }

// mayCount reports whether what boards make is counted: in jobs all of whose groups are of few
// boards and pieces, where no board chosen for a match word and no composition stands behind
// what is made, and only for what the tests hold against the best of all plans: flat and
// straight boards, machines of any width, and parts that are square and lie flat.
func (q *sets) mayCount() bool {
	s := q.s
	if s.copies != nil || len(s.heeds.words) > 0 || s.p.Shop.MachineWidth() > 0 {
		return false
	}
	for i := range s.p.Bill {
		if part := &s.p.Bill[i]; part.Resaw || part.OnEdge || part.Bevel != 0 {
			return false
		}
	}
	for _, g := range q.groups {
		if g.all == nil || total(g.made) > smallPieces || len(g.boards) > smallBoards {
			return false
		}
		for _, b := range g.boards {
			wood := &s.p.Stock[b]
			if !wood.Flat() || wood.Crook > 0 || !ceiling.Fine(s.p, wood).Countable() {
				return false
			}
		}
	}
	return true
}

// Of a set whose prices were looked at so often it is counted what its boards make, with so
// much work in all and in one go.
const (
	countedLooks = 8
	mostCounted  = 20_000_000_000
	countedSteps = 30_000_000
)

// countedShare is how many times as much as everything else that may take.
const countedShare = 2

// count proves more of a set, all of whose boards are cut, by what each of them makes. The
// cuttings with which the least is proven are tried as a plan.
func (q *sets) count(g *setGroup, set *boardSet) {
	s := q.s
	known := ceiling.Value(column.FromMoney(s.spentOn(g.boards)))
	if q.counted != nil && q.counted != set {
		q.counted.job.Rest()
	}
	if q.counted = set; set.job == nil {
		set.job = q.newJob(g, set, known)
	}
	if set.job == nil {
		q.counted, set.counted = nil, true
		return
	}
	set.job.Known(known)
	before := set.job.Work()
	for set.job.Work() < before+countedSteps {
		if !set.job.Step() {
			set.counted = true
			break
		}
	}
	s.workers[0].looks += set.job.Work() - before
	set.least = max(set.least, layout.Money((set.job.Bound()+ceiling.Value(column.Cash)-1)/ceiling.Value(column.Cash)))
	if set.counted {
		if set.job.Found() {
			q.take(g, set)
		}
		q.counted, set.job = nil, nil
	}
}

// newJob makes ready to count what the boards of a set make, at the prices that prove the most of
// it; nil where there is too much to count.
func (q *sets) newJob(g *setGroup, set *boardSet, known ceiling.Value) *ceiling.Job {
	s := q.s
	var offers []ceiling.Offer
	set.order = nil
	for k, b := range set.best.boards {
		set.best.dual.m.eachTwin(b, func(twin int) {
			offers = append(offers, ceiling.Offer{Board: ceiling.Fine(s.p, &s.p.Stock[b]), Cost: set.best.cost(k), Most: set.best.most[k]})
			set.order = append(set.order, twin)
		})
	}
	price := make([]column.Value, len(set.best.prices))
	for i, m := range set.best.prices {
		price[i] = column.FromMoney(m)
	}
	each := func(n int, do func(k int)) { s.each(n, func(_ *worker, k int) { do(k) }) }
	return ceiling.NewJob(offers, exactly(price), g.made, known, mostCounted, s.workers[0].stop, each)
}

// take makes a plan of what the boards of a set make at least cost.
func (q *sets) take(g *setGroup, set *boardSet) {
	s := q.s
	st := s.best.copy()
	for _, b := range g.boards {
		st.set(b, nil)
	}
	price := make([]column.Value, len(s.p.Bill))
	for i := range price {
		price[i] = column.FromMoney(s.p.Stock[set.boards[0]].Cost)
	}
	for k, cutting := range set.job.Cuttings() {
		board := s.quick.board(set.order[k])
		cut := board.FromSketch(column.SketchOf(cutting), price)
		if cut.Root != nil {
			cut = board.Trim(&cut, price, st.missing)
		}
		if as := board.FromCutting(cutting, price); (cut.Root == nil || as.Gain() > cut.Gain()) && s.valid(set.order[k], as.Root) {
			cut = as
		}
		if cut.Root != nil {
			st.set(set.order[k], &cut)
		}
	}
	s.improve(st)
}

// valid reports whether a board may be cut so.
func (s *search) valid(b int, root *layout.Node) bool {
	plan := layout.Assemble(s.p, []layout.BoardCut{{Board: s.p.Stock[b].Mark, Root: root.Clone()}})
	return len(check.Plan(plan)) == 0
}
