package bound

import (
	"math/big"
	"slices"

	"sawbill/layout"
	"sawbill/layout/check"
)

// fixed is what cannot be planned otherwise any more in a job that goes on: the boards
// that are being cut stay as they are, and copies of glue-ups of which strips are cut or
// lie on these boards are completed as the plan completes them. A bound of such a plan
// is one of all plans that leave that so. A plan to which nothing has happened fixes
// nothing.
type fixed struct {
	cost   layout.Money           // of the boards that are being cut, less their offcuts
	made   map[string]int         // pieces on them, by part
	strips map[string]map[int]int // fixed ones, by row and slices
	lacks  map[string]map[int]int // strips that are cut elsewhere to complete copies
	slices map[string]int         // of the copies that these complete, by set
	free   []layout.Board         // what is yet to be planned
}

func fixedOf(plan *layout.Plan) fixed {
	started := plan.Record.IsStarted
	f := fixed{
		cost: check.CostOf(plan, started), made: map[string]int{}, strips: map[string]map[int]int{},
		lacks: map[string]map[int]int{}, slices: map[string]int{},
		free: slices.DeleteFunc(slices.Clone(plan.Problem.Stock), func(b layout.Board) bool { return started(b.Mark) }),
	}
	all := map[string]map[int]int{}
	held := map[string]bool{}
	for i := range plan.Boards {
		b := &plan.Boards[i]
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part == "" {
				continue
			}
			for _, id := range leaf.PieceIDs() {
				held[id] = true
			}
			tally(all, leaf.Part, leaf.Slices, leaf.Pieces())
			if started(b.Board) {
				f.made[leaf.Part] += leaf.Pieces()
				tally(f.strips, leaf.Part, leaf.Slices, leaf.Pieces())
			}
		}
	}
	if plan.Record != nil {
		for _, c := range plan.Record.Cut {
			if !held[c.Wood.Mark] {
				tally(all, c.Part, c.Slices, 1)
				tally(f.strips, c.Part, c.Slices, 1)
			}
		}
	}
	f.complete(plan.Problem.Bill, all)
	return f
}

func tally(strips map[string]map[int]int, row string, k, n int) {
	if strips[row] == nil {
		strips[row] = map[int]int{}
	}
	strips[row][k] += n
}

// complete works out what the copies that are begun lack, of as many of them as the
// plan makes.
func (f *fixed) complete(bill []layout.Part, all map[string]map[int]int) {
	sets := map[string][]*layout.Part{}
	for i := range bill {
		if bill[i].Set != "" {
			sets[bill[i].Set] = append(sets[bill[i].Set], &bill[i])
		}
	}
	for name, rows := range sets {
		for k := range all[rows[0].Name] {
			whole, begun := all[rows[0].Name][k], 0
			for _, row := range rows {
				whole = min(whole, all[row.Name][k]/row.Quantity)
				begun = max(begun, (f.strips[row.Name][k]+row.Quantity-1)/row.Quantity)
			}
			n := min(whole, begun)
			f.slices[name] += n * k
			for _, row := range rows {
				if lack := n*row.Quantity - f.strips[row.Name][k]; lack > 0 {
					tally(f.lacks, row.Name, k, lack)
				}
			}
		}
	}
}

// costs is what is fixed costs, in hundredths of a ten-thousandth.
func (f *fixed) costs() *big.Int {
	sum := big.NewInt(int64(f.cost))
	return sum.Mul(sum, big.NewInt(int64(cash)))
}

// completing is what the strips are worth that copies lack which are begun, in
// hundredths of a ten-thousandth.
func (f *fixed) completing(prices map[string]map[int]layout.Money) *big.Int {
	sum := new(big.Int)
	for row, lacks := range f.lacks {
		for k, n := range lacks {
			worth := big.NewInt(int64(prices[row][k]))
			sum.Add(sum, worth.Mul(worth, big.NewInt(int64(n)*int64(cash))))
		}
	}
	return sum
}
