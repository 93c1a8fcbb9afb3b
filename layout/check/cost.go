package check

import (
	"math/big"
	"slices"

	"sawbill/layout"
)

// boardCost: a board costs what the stock says.
func boardCost(s *sawn, wrong report) {
	if s.plan.Cost != s.wood.Cost {
		wrong(nil, "the plan counts %v for the board; the stock says %v", s.plan.Cost, s.wood.Cost)
	}
}

// totalCost: the plan costs what its boards cost, less what its offcuts are
// worth.
func totalCost(j *job, note note) {
	if !j.whole {
		return
	}
	sum := new(big.Int)
	for _, s := range j.boards {
		sum.Add(sum, big.NewInt(int64(s.wood.Cost)))
		for _, at := range s.spots {
			if at.Offcut != "" {
				sum.Sub(sum, big.NewInt(int64(s.worth(at))))
			}
		}
	}
	if sum.Cmp(big.NewInt(int64(j.plan.Totals.Cost))) != 0 {
		note("", "", "the plan says that it costs %v; its boards less its offcuts come to %v",
			j.plan.Totals.Cost, layout.Money(sum.Int64()))
	}
}

// CostOf is what boards of a plan cost, those whose marks are chosen, less what the
// offcuts are worth that are kept of them. The plan must have passed its check.
func CostOf(p *layout.Plan, chosen func(mark string) bool) layout.Money {
	var sum layout.Money
	for _, s := range newJob(p).boards {
		if !chosen(s.wood.Mark) {
			continue
		}
		sum += s.wood.Cost
		for _, at := range s.spots {
			if at.Offcut != "" {
				sum -= s.worth(at)
			}
		}
	}
	return sum
}

// worth is the credit for an offcut, rounded down to 1/10 000:
//
//	offcut_credit * cost / (length * mean width) * sound area
//
// where the sound area is that of what counts of the offcut, less the union of
// the defects in it as marked.
func (s *sawn) worth(at *spot) layout.Money {
	sound := soundArea(s.clean(at), s.wood.Defects)
	sound.Mul(sound, big.NewInt(int64(s.wood.Cost)))
	sound.Mul(sound, big.NewInt(int64(s.job.shop.OffcutCredit)))
	sound.Lsh(sound, 1) // the mean width is half the sum of the widths
	per := product(s.wood.Length, s.wood.Width+s.wood.TipWidth)
	per.Mul(per, big.NewInt(int64(layout.CreditUnity)))
	return layout.Money(sound.Quo(sound, per).Int64())
}

// soundArea is the area of r outside all defects, in square nanometres. It
// walks the grid of all defect edges and adds up the cells that no defect
// covers.
func soundArea(r layout.Rect, defects []layout.Defect) *big.Int {
	area := new(big.Int)
	if r.X1 >= r.X2 || r.Y1 >= r.Y2 {
		return area
	}
	var within []layout.Defect
	xs, ys := []layout.Length{r.X1, r.X2}, []layout.Length{r.Y1, r.Y2}
	for _, d := range defects {
		if !interiorsMeet(d.Rect, r) {
			continue
		}
		within = append(within, d)
		xs = append(xs, held(d.Rect.X1, r.X1, r.X2), held(d.Rect.X2, r.X1, r.X2))
		ys = append(ys, held(d.Rect.Y1, r.Y1, r.Y2), held(d.Rect.Y2, r.Y1, r.Y2))
	}
	slices.Sort(xs)
	slices.Sort(ys)
	for i := range xs[1:] {
		for k := range ys[1:] {
			cell := layout.Rect{X1: xs[i], X2: xs[i+1], Y1: ys[k], Y2: ys[k+1]}
			spoiled := func(d layout.Defect) bool { return interiorsMeet(d.Rect, cell) }
			if !slices.ContainsFunc(within, spoiled) {
				area.Add(area, product(cell.X2-cell.X1, cell.Y2-cell.Y1))
			}
		}
	}
	return area
}

// held is v, held between lo and hi.
func held(v, lo, hi layout.Length) layout.Length { return min(max(v, lo), hi) }
