package layout

import "math/big"

// Shift is how far from y = 0 the wood of a blank begins where it is hollowest,
// when its two corners at the reference edge stand at 0:
//
//	s = crook * (l / L)^2
//
// with l the length of the rough crosscut blank and L that of the board, as the
// height of an arc goes with the square of its chord. It is rounded up to a whole
// nanometre, and a length beyond the board's counts as the board's.
func (b *Board) Shift(l Length) Length {
	if b.Crook == 0 {
		return 0
	}
	n := arc(b.Crook, l, b.Length)
	return ceilDiv(n, product(b.Length, b.Length))
}

// arc is gap * part^2, part held between 0 and whole.
func arc(gap, part, whole Length) *big.Int {
	part = min(max(part, 0), whole)
	return product(gap, part, part)
}

// product is the exact product of lengths; that of three or more does not fit an
// int64.
func product(lengths ...Length) *big.Int {
	p := big.NewInt(1)
	for _, l := range lengths {
		p.Mul(p, big.NewInt(int64(l)))
	}
	return p
}

// ceilDiv is n/d rounded up, for a positive d and a result that fits.
func ceilDiv(n, d *big.Int) Length {
	q, rest := new(big.Int).DivMod(n, d, new(big.Int))
	if rest.Sign() > 0 {
		return Length(q.Int64()) + 1
	}
	return Length(q.Int64())
}

// Straight reports whether the reference edge of b can be worked from as it is.
func (b *Board) Straight() bool { return b.Edges != EdgesRough && b.Crook == 0 }
