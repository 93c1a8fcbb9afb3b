package column

import (
	"math/rand"
	"slices"
	"sort"

	"sawbill/layout"
)

// shortStarts are starts of blanks that are short because the board is warped: of
// blanks that finish to a thickness to which the whole length does not, and of a
// crooked board halves and thirds. They come as chains of blanks end to end from
// the first start on; whole chains are taken, those listed first or, with rng, any,
// until there are as many starts as the configuration allows.
func (w *Board) shortStarts(rng *rand.Rand) []int {
	chains := w.shortChains()
	if rng != nil {
		rng.Shuffle(len(chains), func(i, j int) { chains[i], chains[j] = chains[j], chains[i] })
	}
	var starts []int
	for _, c := range chains {
		if len(starts) > 0 && len(starts)+len(c) > w.cfg.MostStarts {
			continue
		}
		starts = append(starts, c...)
	}
	return starts
}

func (w *Board) shortChains() [][]int {
	var chains [][]int
	whole := w.last() - w.first()
	for i := range w.thicks {
		most := w.longestFor(w.thicks[i].thickness)
		if most >= whole {
			continue
		}
		chains = append(chains, w.chain(w.alikeUpTo(most)))
		for _, c := range w.thicks[i].classes {
			chains = append(chains, w.chain(w.fullestUpTo(&w.classes[c], most)))
		}
	}
	if w.wood.Crook > w.y.unit {
		chains = append(chains, w.chain(w.alikeUpTo(whole*2/3)), w.chain(w.alikeUpTo(whole*2/5)))
	}
	return slices.DeleteFunc(chains, func(c []int) bool { return len(c) == 0 })
}

// longestFor is the longest blank, in positions, that finishes to a thickness, as
// wide as the machines take it, or half as wide where a whole one would not be long
// enough for any part.
func (w *Board) longestFor(thickness layout.Length) int {
	piece := layout.Rect{Y2: w.wood.FullWidth()}
	if w.tooWide(w.wood.Frame()) {
		piece.Y2 = w.shop.MachineWidth()
	}
	longest := func() int {
		return sort.Search(w.x.n, func(l int) bool {
			piece.X2 = w.x.at(l + 1)
			return w.availableIn(piece) < thickness
		})
	}
	if l := longest(); w.x.at(l) >= max(w.shop.MinBlank, w.shop.MinRipLength) {
		return l
	}
	piece.Y2 /= 2
	return longest()
}

// alikeUpTo is the length of the fewest blanks alike that make up the board and are
// at most so long; 0 where those would be too short.
func (w *Board) alikeUpTo(most int) int {
	kerf := w.x.up(w.shop.CrosscutKerf)
	whole := w.last() - w.first() + kerf
	if most <= 0 || whole <= 0 {
		return 0
	}
	n := (whole + most + kerf - 1) / (most + kerf)
	return whole/n - kerf
}

// fullestUpTo is the length of a blank at most so long that holds as many cells of a
// class as can be and no more; 0 where it holds none.
func (w *Board) fullestUpTo(c *class, most int) int {
	once := w.x.up(c.length + 2*max(w.end, w.shop.Snipe))
	if once > most {
		return 0
	}
	return once + (most-once)/c.advance*c.advance
}

// chain lists where blanks of a length, end to end, start after the first one.
func (w *Board) chain(length int) []int {
	if w.x.at(length) < max(w.shop.MinBlank, w.shop.MinRipLength, w.x.unit) {
		return nil
	}
	var starts []int
	step := length + w.x.up(w.shop.CrosscutKerf)
	for at := w.first() + step; at < w.last(); at += step {
		starts = append(starts, at)
	}
	return starts
}
