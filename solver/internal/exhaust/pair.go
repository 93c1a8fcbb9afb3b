package exhaust

import "sawbill/layout"

// Pair is what one way to cut a board gives.
type Pair struct {
	Made  []int        // pieces, by row of the bill; at most what it asks for
	Worth layout.Money // of the offcuts
	way   way
}

// Root is the cut tree, built anew with each call; its offcuts and pieces have no
// names yet.
func (p Pair) Root() *layout.Node { return p.way.first.tree() }

// Pairs lists all that a board can give for p, on a grid of unit: each pair for
// which no other has at least its pieces of every part and at least its worth. It
// panics as New does.
func Pairs(p *layout.Problem, b *layout.Board, unit layout.Length) []Pair {
	refuse(p)
	var pairs []Pair
	f := newBoard(p, b, unit).whole()
	for i := range f {
		if !dominated(f, i) {
			pairs = append(pairs, newPair(f[i], len(p.Bill)))
		}
	}
	return pairs
}

func newPair(w way, rows int) Pair {
	p := Pair{Made: make([]int, rows), Worth: w.worth, way: w}
	for i := range p.Made {
		p.Made[i] = int(w.made[i])
	}
	return p
}

// dominated reports whether another way is at least as good as the i-th in
// everything. No two make the same pieces, so no two dominate each other.
func dominated(f front, i int) bool {
	for k := range f {
		if k != i && f[k].worth >= f[i].worth && covers(f[k].made, f[i].made) {
			return true
		}
	}
	return false
}

func covers(a, b counts) bool {
	for i := range a {
		if a[i] < b[i] {
			return false
		}
	}
	return true
}
