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
func (w *Board) mostX(ways []way) int {
	return finer(w.cfg.MostX, w.guessStrips(ways)*(1+len(w.grown))*len(ways))
}

func (w *Board) mostY(ways []way) int {
	return finer(w.cfg.MostY, w.guessStrips(ways)*usualEnds)
}

// guessStrips is about how many heights strips will have: the widths of the parts
// and of pairs that can be ripped out of one strip.
func (w *Board) guessStrips(ways []way) int {
	type height struct{ thick, width layout.Length }
	heights := map[height]bool{}
	for _, p := range ways {
		heights[height{p.thickness, p.width}] = true
		if !w.shop.RipAgain || p.length < w.shop.MinRipLength {
			continue
		}
		for _, q := range ways {
			both := p.width + w.shop.RipKerf + q.width
			if q.length == p.length && q.thickness == p.thickness && q.lean == p.lean && both <= w.top-w.near {
				heights[height{p.thickness, both}] = true
			}
		}
	}
	return len(heights)
}
