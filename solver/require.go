package solver

import (
	"context"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
)

// Requirement is what every plan that makes a whole bill obeys: at some prices of the
// parts, the boards that it cuts are worth at least Wanted together, none of them more
// than Most says. Values are millionths of the unit of money.
type Requirement struct {
	Wanted int64
	Most   []int64 // by board of the stock; 0 of one that may not be cut
}

// Refuses reports whether some boards, by index into the stock, cannot make the whole
// bill.
func (r *Requirement) Refuses(boards []int) bool {
	left := r.Wanted
	for _, b := range boards {
		left -= r.Most[b]
	}
	return left > 0
}

// Requirements finds requirements of the bill of one problem. What is proven leaves
// match words out; a bill with glue-ups has no requirements.
type Requirements struct{ s *search }

// NewRequirements makes ready for p. Everything ends when ctx does.
func NewRequirements(ctx context.Context, p *layout.Problem, o Options) *Requirements {
	s := newSearch(nearlyFree(p), o, func() bool { return ctx.Err() != nil })
	s.start = startValues(p)
	return &Requirements{s}
}

// nearlyFree is a problem in which boards cost next to nothing and offcuts are worth
// nothing, so that prices are high just for parts that the boards are too few for.
func nearlyFree(p *layout.Problem) *layout.Problem {
	q := *p
	shop := *p.Shop
	shop.OffcutCredit = 0
	q.Shop, q.Stock = &shop, slices.Clone(p.Stock)
	for i := range q.Stock {
		q.Stock[i].Cost /= 1000
	}
	return &q
}

// requireWork are the steps with which boards are looked at, time by time.
func requireWork() []int { return []int{8e6, 64e6} }

// That looks for a requirement that some boards, by index into the stock, do not meet;
// ok is false when it finds none. The prices are those at which the boards come
// nearest to falling short (a cut as of Benders 1962, with the linear programme over
// cuts of the boards for the problem below).
func (q *Requirements) That(boards []int) (r Requirement, ok bool) {
	s := q.s
	if len(s.p.Sets()) > 0 {
		return r, false
	}
	boards = slices.DeleteFunc(slices.Clone(boards), func(b int) bool { return !slices.Contains(s.usable, b) })
	price, short := q.prices(boards)
	if !short {
		return r, false
	}
	most, sharp := make([]ceiling.Value, len(s.p.Stock)), make([]bool, len(s.p.Stock))
	for k, work := range requireWork() {
		look := boards
		if k == 0 {
			look = s.usable
		}
		q.look(look, price, work, most, sharp)
		if s.workers[0].stop() {
			return r, false
		}
		if r = q.requirement(price, most); r.Refuses(boards) {
			return r, true
		}
	}
	return r, false
}

// prices are those at which all that is wanted is worth the most beyond what the
// boards can give. Where it is worth no more than cuts that are known already, short is
// false, and the boards need no closer look.
func (q *Requirements) prices(boards []int) (price []ceiling.Value, short bool) {
	d := q.s.newDual(q.s.newMaster(boards, wanted(q.s.p), false))
	for _, b := range boards {
		for _, c := range q.s.pool.known(b) {
			d.m.offerRaw(rawColumn{board: b, counts: c.Counts}, 1)
		}
	}
	d.run(d.most(), fullEffort)
	if d.center == nil {
		return nil, false
	}
	over := 0.0
	for i, v := range d.center {
		price = append(price, ceiling.Value(v))
		over += v * float64(d.m.demand[i])
	}
	for _, b := range boards {
		over -= d.worth[b]
	}
	return price, over > 0
}

// look bounds what some boards are worth at prices. Boards that are alike are looked
// at once.
func (q *Requirements) look(boards []int, price []ceiling.Value, work int, most []ceiling.Value, sharp []bool) {
	s := q.s
	var first []int
	done := map[int]bool{}
	for _, b := range boards {
		if twin := s.quick.twin[b]; !done[twin] && !sharp[b] {
			done[twin] = true
			first = append(first, b)
		}
	}
	s.each(len(first), func(w *worker, k int) {
		b := first[k]
		m, exact := w.high.Most(ceiling.New(s.p, &s.p.Stock[b]), price, 0, work, w.stop)
		if most[b] == 0 || m < most[b] {
			most[b] = max(m, 0)
		}
		sharp[b] = exact
	})
	for _, b := range first {
		for _, other := range s.usable {
			if s.quick.twin[other] == s.quick.twin[b] {
				most[other], sharp[other] = most[b], sharp[b]
			}
		}
	}
}

func (q *Requirements) requirement(price, most []ceiling.Value) Requirement {
	r := Requirement{Most: make([]int64, len(most))}
	for i := range q.s.p.Bill {
		r.Wanted += int64(q.s.p.Bill[i].Quantity) * int64(price[i])
	}
	for b, v := range most {
		r.Most[b] = min(int64(v), r.Wanted) // a board that makes everything needs no more
	}
	return r
}
