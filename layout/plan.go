package layout

import "time"

// Plan is a whole answer: what to cut from which board, what is missing, what
// it costs. It is never changed once built, and holds all that is needed to
// draw, verify and continue it.
type Plan struct {
	Job      string
	Revision int
	Made     time.Time // UTC, whole seconds
	Problem  Problem
	Boards   []BoardPlan
	Missing  []Missing
	Totals   Totals
	// Print is how its sheets were asked for last.
	Print Print
	// Record is nil before anything has happened to the job.
	Record *Record
}

// Print is how the sheets of a plan are printed, in the words of the command line;
// empty words stand for what is usual.
type Print struct {
	Paper string // letter or a4
	Order string // of the steps: board or setup
}

// BoardPlan is the way one board is cut.
type BoardPlan struct {
	Board   string // its mark
	Cost    Money  // what the whole board costs
	Account Account
	Root    *Node
}

// Missing says how many pieces of a part the plan does not make.
type Missing struct {
	Part     string
	Quantity int
	Why      string
}

// Account splits the rough volume of a board, in cubic millimetres, without
// gap or overlap.
type Account struct {
	Parts   float64 // finished volume
	Planing float64 // the rest of the wood at part leaves
	Kerf    float64
	Edges   float64 // edge and end losses, end trims
	Offcuts float64 // kept
	Defects float64
	Scrap   float64
}

// Sum is the whole volume.
func (a Account) Sum() float64 {
	return a.Parts + a.Planing + a.Kerf + a.Edges + a.Offcuts + a.Defects + a.Scrap
}

// Plus adds two accounts.
func (a Account) Plus(b Account) Account {
	return Account{
		a.Parts + b.Parts, a.Planing + b.Planing, a.Kerf + b.Kerf, a.Edges + b.Edges,
		a.Offcuts + b.Offcuts, a.Defects + b.Defects, a.Scrap + b.Scrap,
	}
}

// Totals are the figures of a whole plan.
type Totals struct {
	// Cost is what the cut boards cost less what the kept offcuts are worth.
	Cost Money
	// Bound is a proven lower bound on Cost for any valid plan with the same
	// missing parts; nil where none was proven.
	Bound *Money
	// Yield is finished volume of parts over rough volume of boards cut less
	// offcuts kept; nil when nothing was cut.
	Yield *float64
	// Prices prove PriceBound: money per piece by part. Nil where none were
	// worked out.
	Prices map[string]Money
	// StripPrices are prices, too, money per strip by row of a set and by its slices.
	StripPrices map[string]map[int]Money
	PriceBound  *Money
}

// Gap is (cost - bound) / cost, 0 when they are equal; ok is false without a
// bound.
func (t Totals) Gap() (gap float64, ok bool) {
	switch {
	case t.Bound == nil:
		return 0, false
	case *t.Bound == t.Cost:
		return 0, true
	case t.Cost == 0:
		return 0, false
	}
	return float64(t.Cost-*t.Bound) / float64(t.Cost), true
}

// Board finds the plan of one board by its mark, or nil.
func (p *Plan) Board(mark string) *BoardPlan {
	for i := range p.Boards {
		if p.Boards[i].Board == mark {
			return &p.Boards[i]
		}
	}
	return nil
}
