package risk

import (
	"context"
	"runtime"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// Options steer a simulation. The zero value works.
type Options struct {
	// Seed makes it reproducible; default 0.
	Seed int64
	// Draws is how often the cutting is simulated; 0 means 2000.
	Draws int
	// Workers is how many draws are made side by side; 0 means one a processor. It never
	// changes the answer.
	Workers int
	// Rates is a shop that says how much hides in the wood; nil: that of the plan.
	Rates *layout.Shop
}

const usualDraws = 2000

// simulation is a job with all of its draws.
type simulation struct {
	*job
	o     Options
	draws []verdict
}

// Of simulates the cutting of a plan, which must have passed its check. The error is
// that of ctx, where it ends before the simulation.
func Of(ctx context.Context, plan *layout.Plan, o Options) (*layout.Risk, error) {
	if o.Draws == 0 {
		o.Draws = usualDraws
	}
	if o.Workers == 0 {
		o.Workers = runtime.GOMAXPROCS(0)
	}
	if o.Rates == nil {
		o.Rates = plan.Problem.Shop
	}
	s := &simulation{job: newJob(plan, o.Rates), o: o}
	if err := s.run(ctx); err != nil {
		return nil, err
	}
	order, best, err := s.order(ctx)
	if err != nil {
		return nil, err
	}
	r := &layout.Risk{
		Seed: o.Seed, AsPlanned: s.share(s.finished()), Order: order,
		Finished: best.share(best.finished()), Assumed: s.assumed(), Parts: best.parts(),
	}
	r.Spares, r.Bought, err = best.buy(ctx)
	return r, err
}

// run makes all draws.
func (s *simulation) run(ctx context.Context) error {
	s.draws = make([]verdict, s.o.Draws)
	return each(ctx, s.o.Workers, s.o.Draws, func(bench *column.Bench, i int) {
		s.draws[i] = s.draw(s.o.Seed, i, bench)
	})
}

func (s *simulation) share(count int) layout.Share {
	return layout.Share{Count: count, Of: len(s.draws)}
}

// finished counts the draws in which all is made.
func (s *simulation) finished() int {
	n := 0
	for i := range s.draws {
		if s.draws[i].need == nil {
			n++
		}
	}
	return n
}

// assumed is what is reckoned with in each species of the job.
func (s *simulation) assumed() []layout.AssumedHidden {
	var list []layout.AssumedHidden
	at := map[string]int{}
	for _, b := range s.roots {
		h, rate, size := s.o.Rates.HiddenOf(b.board.Species)
		key := fold(b.board.Species)
		if _, known := at[key]; !known {
			at[key] = len(list)
			list = append(list, layout.AssumedHidden{Species: b.board.Species, Hidden: h, RateSaid: rate, SizeSaid: size})
		}
		list[at[key]].Boards++
		list[at[key]].BoardFeet += b.board.Volume().BoardFeet()
	}
	return list
}

// parts are the rows of the bill with how often they are missing, in the order of the
// bill.
func (s *simulation) parts() []layout.PartAtRisk {
	var list []layout.PartAtRisk
	at := map[string]int{}
	for _, name := range s.names {
		if _, known := at[name]; !known {
			at[name] = len(list)
			list = append(list, layout.PartAtRisk{Part: name, Missing: s.share(0), Spared: s.share(s.finished())})
		}
	}
	for i := range s.draws {
		missing, all := map[int]int{}, 0
		for row, n := range s.draws[i].need {
			if n > 0 {
				missing[at[s.names[row]]] += n
				all += n
			}
		}
		for k := range list {
			if n := missing[k]; n > 0 {
				list[k].Missing.Count++
				list[k].Mean += float64(n) / float64(len(s.draws))
				if all == 1 {
					list[k].Spared.Count++
				}
			}
		}
	}
	return list
}
