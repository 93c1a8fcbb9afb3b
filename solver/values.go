package solver

import (
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// markup is how much more than its wood a part is worth to the search at first:
// enough that no offcut is kept where a part could be.
const markup = 1.5

// startValues are what the parts are worth at first: the cost of the wood that
// one piece takes with its kerfs out of the cheaper boards that may give it,
// marked up.
func startValues(p *layout.Problem) []float64 {
	values := make([]float64, len(p.Bill))
	for i := range p.Bill {
		part := &p.Bill[i]
		l := float64(part.CutLength(p.Shop) + p.Shop.CrosscutKerf)
		w := float64(narrowest(p.Shop, part) + p.Shop.RipKerf)
		values[i] = markup * l * w * woodRate(p, part)
		values[i] = max(values[i], 1) // free wood is no reason to leave a part out
	}
	return values
}

// narrowest is the least width that a piece may take of a board.
func narrowest(s *layout.Shop, part *layout.Part) layout.Length {
	if part.OnEdge {
		return min(part.CutWidth(s), part.EdgeWidth(s))
	}
	return part.CutWidth(s)
}

// woodRate is the value of a square nanometre of the boards that may give a
// part, of the cheapest quarter of them. Free boards do not count, where there are
// others: a part that they do not give costs as much as any.
func woodRate(p *layout.Problem, part *layout.Part) float64 {
	var rates []float64
	for i := range p.Stock {
		b := &p.Stock[i]
		if mayGive(p, part, b) && b.Cost > 0 {
			area := float64(b.Length) * float64(b.Width+b.TipWidth) / 2
			rates = append(rates, float64(column.FromMoney(b.Cost))/area)
		}
	}
	if len(rates) == 0 {
		return 0
	}
	slices.Sort(rates)
	return rates[len(rates)/4]
}

// shaken is values with each multiplied by chance, up to a quarter more or a
// fifth less.
func shaken(values []float64, rng *rand.Rand) []float64 {
	s := make([]float64, len(values))
	for i, v := range values {
		s[i] = v * (0.8 + 0.45*rng.Float64())
	}
	return s
}

// prices rounds values. Where parts may go missing, those of a better rank are
// worth so much more that they are served first.
func prices(p *layout.Problem, values []float64, missing []int) []column.Value {
	prices := make([]column.Value, len(values))
	weights := rankWeights(p, wants(missing))
	for i, v := range values {
		prices[i] = column.Value(v*weights[i]) + 1
	}
	return prices
}

// rankWeights are 1, or where parts are short the powers of three by rank.
func rankWeights(p *layout.Problem, short bool) []float64 {
	weights := make([]float64, len(p.Bill))
	var ranks []int
	for i := range p.Bill {
		weights[i] = 1
		ranks = append(ranks, p.Bill[i].Rank())
	}
	if !short {
		return weights
	}
	slices.Sort(ranks)
	ranks = slices.Compact(ranks)
	for i := range p.Bill {
		at, _ := slices.BinarySearch(ranks, p.Bill[i].Rank())
		for range min(len(ranks)-1-at, 6) {
			weights[i] *= 3
		}
	}
	return weights
}

// correct moves the value of every part towards what the cut cost in which it
// was made, so that parts that were cut wastefully count for more the next time
// (sequential value correction: Mukhacheva & Zalgaller 1993; Belov & Scheithauer
// 2007). ratio is net cost over value of the cut, mean that of all cuts.
func correct(values, start []float64, counts []int, ratio, mean float64) {
	const pace = 0.1
	for i, n := range counts {
		if n > 0 && mean > 0 {
			v := values[i] * (1 + pace*(ratio/mean-1))
			values[i] = min(max(v, start[i]*0.7), start[i]*2)
		}
	}
}
