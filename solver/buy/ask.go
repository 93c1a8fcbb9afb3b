package buy

import (
	"context"
	"runtime"
	"slices"
	"sync"

	"sawbill/layout"
	"sawbill/solver"
)

// AskOptions steer Ask. The zero value works.
type AskOptions struct {
	// Solve are the options of the plan of the rack, and its Seed that of the piles.
	Solve solver.Options
	// Share is as in Options.
	Share func(ctx context.Context, share float64) (context.Context, context.CancelFunc)
	// Piles is how many piles of each wood are drawn; 0 means 20.
	Piles int
}

const (
	usualPiles       = 20
	pileRounds       = 3 // of the search for a plan of a pile
	shareOfRackFirst = 0.3
	rackRounds       = 60 // where nothing else bounds the plan of the rack
)

func (o AskOptions) piles() int {
	if o.Piles == 0 {
		return usualPiles
	}
	return o.Piles
}

// Advice is what to ask for.
type Advice struct {
	// Rack is the plan of the rack alone. Nothing need be bought where it leaves nothing
	// missing.
	Rack  *layout.Plan
	Woods []Wanted
	// Not are the parts for which no bought board helps.
	Not []layout.Missing
	// Usual is what boards were taken to be like.
	Usual Usual
}

// Wanted is what to ask for of one species and rough thickness.
type Wanted struct {
	Species   string
	Thickness layout.Length
	Parts     []string // that are made of it
	// Piles is how many piles were planned, Short how many of them did not complete the
	// bill however many boards were taken from them.
	Piles, Short int
	// Half is what half of the piles needed no more than, Most what nine in ten did; nil
	// where too many fell short, or none was planned.
	Half, Most *Amount
	// A board narrower than Width or shorter than Length gives none of the parts.
	Width, Length layout.Length
}

// Amount is the first boards of a pile.
type Amount struct {
	Boards int
	Volume *layout.Volume
}

// Ask says how much wood to ask for so that a bill is completed. The rack is planned
// first, and its plan stays; what it leaves missing is planned out of piles of boards
// that are drawn by chance (UsualBoards) and taken as they come. Pieces with a match
// word of which any is missing are all wanted anew. The strips of a glue-up in several
// woods are planned by each wood for itself. No board of the yard takes part. An error
// is a fault of ours.
func Ask(ctx context.Context, p *layout.Problem, o AskOptions) (*Advice, error) {
	plan, err := planRack(ctx, p, o)
	if err != nil {
		return nil, err
	}
	a := &Advice{Rack: plan, Usual: UsualBoards(p.Shop.Units).with(p.Shop, p.Stock)}
	orders := a.orders()
	if err := a.planPiles(ctx, orders, o); err != nil {
		return nil, err
	}
	return a, nil
}

func planRack(ctx context.Context, p *layout.Problem, o AskOptions) (*layout.Plan, error) {
	ctx, cancel := Options{Share: o.Share}.share(ctx, shareOfRackFirst)
	defer cancel()
	q := *p
	q.Yard = false
	if len(q.Stock) == 0 {
		return layout.Assemble(&q, nil), nil
	}
	rounds := o.Solve
	if rounds.Rounds == 0 {
		rounds.Rounds = rackRounds
	}
	plan, _, err := solver.Solve(ctx, &q, rounds)
	return plan, err
}

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
func (r *order) plan(ctx context.Context, from *pile) (int, error) {
	least := r.atLeast(from)
	few, enough := 0, 0
	for n := least; enough == 0; n += n/2 + 1 {
		if n > 6*least+mostMore || ctx.Err() != nil {
			return 0, nil
		}
		whole, err := r.completed(ctx, from.first(n))
		switch {
		case err != nil:
			return 0, err
		case whole:
			enough = n
		default:
			few = n
		}
	}
	for enough-few > 1 {
		n := few + (enough-few)/2
		whole, err := r.completed(ctx, from.first(n))
		switch {
		case err != nil:
			return 0, err
		case whole:
			enough = n
		default:
			few = n
		}
	}
	return enough, nil
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
	n := 1
	for from.volume(n).Cmp(wood) < 0 {
		n++
	}
	return n
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
