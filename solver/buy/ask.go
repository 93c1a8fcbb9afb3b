package buy

import (
	"context"

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
	solve := o.Solve
	if solve.Rounds == 0 {
		solve.Rounds = rackRounds
	}
	plan, _, err := solver.Solve(ctx, &q, solve)
	return plan, err
}
