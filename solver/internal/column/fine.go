package column

import "sawbill/layout"

// Where a board has few parts and few defects, a finer grid costs little, and a
// coarse one misses parts that fit exactly: the grid may then have up to mostFiner
// times the positions that the configuration allows, as long as the steps of one
// strip or blank, counted over all strips, stay below those that a board with many
// parts and some defects has anyhow.
const (
	mostFiner  = 8
	finerSteps = 200_000
	usualEnds  = 40 // of blanks, over all starts
)

// finer multiplies a number of positions by a power of two, so that there are at
// most finerSteps steps.
func finer(positions, stepsEach int) int {
	factor := 1
	for factor < mostFiner && 2*factor*positions*stepsEach <= finerSteps {
		factor *= 2
	}
	return factor * positions
}

// mostX and mostY are the most positions that the grid of a board may have; 0
// means any number.
func (w *Board) mostX(rows []int) int {
	return finer(w.cfg.MostX, w.guessStrips(rows)*(1+len(w.grown))*len(rows))
}

func (w *Board) mostY(rows []int) int {
	return finer(w.cfg.MostY, w.guessStrips(rows)*usualEnds)
}

// guessStrips is about how many heights strips will have: the widths of the parts
// and of pairs that can be ripped out of one strip.
func (w *Board) guessStrips(rows []int) int {
	type height struct{ thick, width layout.Length }
	heights := map[height]bool{}
	for _, i := range rows {
		p := &w.problem.Bill[i]
		heights[height{p.CutThickness(w.shop), p.CutWidth(w.shop)}] = true
		if !w.shop.RipAgain || p.CutLength(w.shop) < w.shop.MinRipLength {
			continue
		}
		for _, k := range rows {
			q := &w.problem.Bill[k]
			both := p.CutWidth(w.shop) + w.shop.RipKerf + q.CutWidth(w.shop)
			if q.CutLength(w.shop) == p.CutLength(w.shop) && q.CutThickness(w.shop) == p.CutThickness(w.shop) && both <= w.top-w.near {
				heights[height{p.CutThickness(w.shop), both}] = true
			}
		}
	}
	return len(heights)
}
