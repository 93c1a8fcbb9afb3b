package bound

import (
	"errors"
	"fmt"
	"math/big"
	"runtime"
	"sync"

	"sawbill/layout"
	"sawbill/layout/check"
)

// ErrUnpriced says that a plan carries no prices, so that there is nothing to
// prove.
var ErrUnpriced = errors.New("the plan carries no prices, so nothing can be proven from them")

// ErrStopped says that the proof was given up before it was decided.
var ErrStopped = errors.New("stopped before anything was proven")

// Proof is what the prices of a plan prove.
type Proof struct {
	// Proven is a value that no valid plan with the same parts missing can cost
	// less than. It is at least what the plan states where there are no
	// violations; the search for a higher one ends there.
	Proven layout.Money
	// Violations are what is wrong with the plan, or with what it says about its
	// bound.
	Violations []check.Violation
}

// Prove works out from the prices of a plan alone what it can be proven to cost
// at least, and holds that against the price_bound that the plan states. A plan
// that fails its check is not proven at all. It returns ErrUnpriced for a plan
// without prices, ErrStopped when stop, which is asked often and from two
// goroutines, has said so, and an error that begins with "cannot prove" where
// the plan holds what this package does not reckon with.
func Prove(stop func() bool, plan *layout.Plan) (Proof, error) {
	if found := check.Plan(plan); len(found) > 0 {
		return Proof{Violations: found}, nil
	}
	t := &plan.Totals
	if t.Prices == nil && t.PriceBound == nil {
		return Proof{}, ErrUnpriced
	}
	if found := misstated(t); len(found) > 0 {
		return Proof{Violations: found}, nil
	}
	f := fixedOf(plan)
	spread, err := spreadOut(&plan.Problem, t, &f)
	if err != nil {
		return Proof{}, fmt.Errorf("cannot prove: %w", err)
	}
	list, err := lots(&spread.problem, spread.prices)
	if err != nil {
		return Proof{}, fmt.Errorf("cannot prove: %w", err)
	}
	worth := wanted(plan, &f)
	worth.Add(worth, spread.wanted(plan.Missing, &f))
	worth.Add(worth, f.completing(t.StripPrices))
	worth.Add(worth, f.costs())
	return prove(stop, list, worth, *t.PriceBound)
}

// trifle is the share of what all boards cost for which they are looked at on the
// finest grid: one in so many. That takes long, and proves hardly more.
const trifle = 500

// isTrifle reports whether a proof falls short by no more than that.
func isTrifle(short *big.Int, list []*lot) bool {
	most := new(big.Int)
	for _, l := range list {
		cost := big.NewInt(int64(l.cost))
		most.Add(most, cost.Mul(cost, big.NewInt(l.boards)))
	}
	return short.Sign() > 0 && short.Cmp(most.Quo(most, big.NewInt(trifle*int64(cash)))) <= 0
}

// prove looks at the boards level by level until they prove what is stated.
func prove(stop func() bool, list []*lot, wanted *big.Int, stated layout.Money) (Proof, error) {
	proven, err := proveAt(levels(), stop, list, wanted, stated)
	short := new(big.Int).Sub(big.NewInt(int64(stated)), proven)
	if err == nil && isTrifle(short, list) {
		proven, err = proveAt(finestLevels(), stop, list, wanted, stated)
		short.Sub(big.NewInt(int64(stated)), proven)
	}
	switch {
	case err != nil:
		return Proof{}, err
	case short.Sign() <= 0:
		return Proof{Proven: money(proven)}, nil
	}
	return Proof{Proven: money(proven), Violations: []check.Violation{violation(
		"the plan says that its prices prove %v; they prove %v, which falls short by %v", stated, money(proven), money(short),
	)}}, nil
}

// proveAt is what the boards prove once they are looked at on some levels, or on as
// many of them as it takes to prove what is stated.
func proveAt(levels []level, stop func() bool, list []*lot, wanted *big.Int, stated layout.Money) (*big.Int, error) {
	var proven *big.Int
	for _, at := range levels {
		lower(list, at, stop)
		proven = proves(list, wanted)
		if proven.Cmp(big.NewInt(int64(stated))) >= 0 {
			return proven, nil
		}
		if stop() {
			return proven, ErrStopped
		}
	}
	return proven, nil
}

// money is an amount, held within what an int64 can hold.
func money(i *big.Int) layout.Money {
	if !i.IsInt64() {
		return layout.Money(int64(i.Sign()) << 62)
	}
	return layout.Money(i.Int64())
}

// lower sharpens all bounds that matter at one level.
func lower(list []*lot, at level, stop func() bool) {
	var open []*lot
	for _, l := range list {
		if !l.settled() {
			open = append(open, l)
		}
	}
	next := make(chan *lot)
	var group sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), 2) {
		group.Go(func() {
			for l := range next {
				l.ceiling.lower(at, l.cost, stop)
			}
		})
	}
	for _, l := range open {
		next <- l
	}
	close(next)
	group.Wait()
}

// wanted is the value of the pieces that the plan makes, in hundredths of a
// ten-thousandth: the sum over parts that are in no set of (quantity - missing -
// fixed) * price.
func wanted(plan *layout.Plan, f *fixed) *big.Int {
	made := map[string]int{}
	for i := range plan.Problem.Bill {
		if part := &plan.Problem.Bill[i]; part.Set == "" {
			made[part.Name] += part.Quantity - f.made[part.Name]
		}
	}
	for _, m := range plan.Missing {
		made[m.Part] -= m.Quantity
	}
	sum := new(big.Int)
	for part, n := range made {
		n = max(0, n) // what is being cut may give spares
		worth := big.NewInt(int64(plan.Totals.Prices[part]))
		sum.Add(sum, worth.Mul(worth, big.NewInt(int64(n)*int64(cash))))
	}
	return sum
}

// proves is what the bounds prove, rounded down to ten-thousandths:
//
//	wanted - sum over boards of max(0, bound - cost)
func proves(list []*lot, wanted *big.Int) *big.Int {
	sum := new(big.Int).Set(wanted)
	for _, l := range list {
		over := big.NewInt(int64(l.over()))
		sum.Sub(sum, over.Mul(over, big.NewInt(l.boards)))
	}
	return sum.Div(sum, big.NewInt(int64(cash))) // Div rounds down
}
