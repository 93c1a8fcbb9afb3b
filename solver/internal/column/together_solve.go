package column

// Solved is what came of a search over several boards.
type Solved struct {
	// Columns by board, nil where it is not cut; none where nothing was found that
	// comes to more than what was known.
	Columns []Column
	// Bound is what no plan of the boards comes to more than: its pieces at the
	// prices asked, and its offcuts, less the costs of the boards cut. What rounding
	// may hide (Rounding) is in it. It is proven only where Exact says so.
	Bound Value
}

// Solve seeks columns that together come to more than a value known to be possible,
// a whole number of ten-thousandths. It looks close below the bound first, for few
// labels come near it, and then lower, until something is found, or it is proven
// that there is nothing, or the work allowed is done.
func (t *Together) Solve(known Value) Solved {
	step := t.least()
	bound := t.Bound()
	for share := Value(16); bound >= known+step; share = max(1, share/2) {
		guess := max(known+step, bound-(bound-known)/share)
		columns, value, all := t.Search(guess)
		switch {
		case columns != nil && all:
			return Solved{columns, value + t.Rounding()}
		case columns != nil || !all:
			return Solved{columns, bound + t.Rounding()}
		}
		bound = guess - 1
	}
	return Solved{Bound: known}
}
