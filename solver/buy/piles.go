package buy

import (
	"context"
	"runtime"
	"slices"
	"sort"
	"sync"

	"sawbill/layout"
	"sawbill/solver"
)

// order is what is wanted of one wood.
type order struct {
	w    wood
	p    layout.Problem // without boards
	need []int          // by pile: how many boards; 0: they never suffice
	done []bool
	u    *Usual
}

// planPiles works out how many boards of each pile are needed, pile by pile, and sums
// the piles up.
func (a *Advice) planPiles(ctx context.Context, orders []*order, o AskOptions) error {
	n := o.piles()
	for _, r := range orders {
		r.need, r.done = make([]int, n), make([]bool, n)
	}
	faults := make([]error, n*len(orders))
	side(n*len(orders), o.Solve.Workers, func(i int) {
		r, k := orders[i%len(orders)], i/len(orders)
		r.need[k], faults[i] = r.plan(ctx, newPile(r.u, r.w, o.Solve.Seed, k))
		r.done[k] = ctx.Err() == nil
	})
	for _, err := range faults {
		if err != nil {
			return err
		}
	}
	for _, r := range orders {
		a.Woods = append(a.Woods, r.sum(o.Solve.Seed))
	}
	return nil
}

// side does n things, some side by side: with 0 workers as many as there are
// processors.
func side(n, workers int, do func(i int)) {
	if workers == 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	next := make(chan int)
	var wg sync.WaitGroup
	for range workers {
		wg.Go(func() {
			for i := range next {
				do(i)
			}
		})
	}
	for i := range n {
		next <- i
	}
	close(next)
	wg.Wait()
}

// plan is how many boards of a pile complete the order, 0 if not even very many do.
func (r *order) plan(ctx context.Context, from *pile) (n int, err error) {
	whole := func(n int) bool {
		if err != nil || ctx.Err() != nil {
			return false
		}
		var ok bool
		ok, err = r.completed(ctx, from.first(n))
		return ok
	}
	few, least := 0, r.atLeast(from)
	for n = least; !whole(n); n += n/2 + 1 {
		if n > 6*least+mostMore || err != nil || ctx.Err() != nil {
			return 0, err
		}
		few = n
	}
	return few + 1 + sort.Search(n-few-1, func(i int) bool { return whole(few + 1 + i) }), err
}

// mostMore is how many boards are tried beyond six times the wood of the parts.
const mostMore = 12

// atLeast is how many boards have as much wood as the parts.
func (r *order) atLeast(from *pile) int {
	wood := new(layout.Volume)
	for i := range r.p.Bill {
		part := r.p.Bill[i]
		part.Thickness = r.w.thickness
		if part.Set != "" {
			wood.Add(part.StripVolume(part.Slices), part.Quantity)
		} else {
			wood.Add(part.Volume(), part.Quantity)
		}
	}
	sum := new(layout.Volume)
	for n := 1; ; n++ {
		if sum.Add(from.first(n)[n-1].Volume(), 1); sum.Cmp(wood) >= 0 {
			return n
		}
	}
}

// completed reports whether a plan of some boards is found that leaves nothing
// missing.
func (r *order) completed(ctx context.Context, boards []layout.Board) (bool, error) {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	found := &firstAsGood{stop: stop}
	p := r.p
	p.Stock = slices.Clone(boards)
	_, _, err := solver.Solve(ctx, &p, solver.Options{Rounds: pileRounds, Workers: 1, Unproven: true, Observer: found})
	return found.plan != nil, err
}
