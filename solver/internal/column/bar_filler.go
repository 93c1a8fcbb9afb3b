package column

import "sawbill/layout"

// filler goes through the rows of pieces of a bar depth first, those that are worth
// most for their length first, and turns back where filling all that is left at the
// best rate would not come to more than the best so far (branch and bound for the
// knapsack problem: Martello & Toth 1977). It is quick where few pieces fill a bar.
type filler struct {
	q      *bar
	price  []Value
	limits []int
	rest   func(used layout.Length) Value
	order  []int // of pieces, as indices into the rows of the bar

	least []layout.Length // by place in order: the shortest from there on
	rate  []float64       // by place in order: the best from there on
	taken []int
	best  []int
	top   Value
	nodes int
}

// mostFillerNodes bounds the work.
const mostFillerNodes = 20_000

// all reports whether it went through everything.
func (f *filler) all() bool {
	n := len(f.order)
	f.least, f.rate = make([]layout.Length, n+1), make([]float64, n+1)
	f.least[n] = f.q.room + 1
	for k := n - 1; k >= 0; k-- {
		f.least[k] = min(f.least[k+1], f.q.size[f.order[k]])
		f.rate[k] = f.q.bestRate(f.order[k:], f.price)
	}
	f.top, f.nodes = f.rest(0), mostFillerNodes
	f.from(0, 0, 0)
	return f.nodes > 0
}

// from fills what is left from the k-th piece in order on.
func (f *filler) from(k int, used layout.Length, value Value) {
	f.nodes--
	rest := f.rest(used)
	if value+rest > f.top {
		f.top, f.best = value+rest, append(f.best[:0], f.taken...)
	}
	left := f.q.room - used
	for ; k < len(f.order) && f.nodes > 0 && left >= f.least[k]; k++ {
		if value+rest+Value(f.rate[k]*float64(left)+0.5) <= f.top {
			return
		}
		piece := f.order[k]
		most := min(f.limits[f.q.rows[piece]], int(left/f.q.size[piece]))
		start := len(f.taken)
		for range most {
			f.taken = append(f.taken, piece)
		}
		for n := most; n > 0; n-- {
			f.from(k+1, used+layout.Length(n)*f.q.size[piece], value+Value(n)*f.price[f.q.rows[piece]])
			f.taken = f.taken[:start+n-1]
		}
	}
}
