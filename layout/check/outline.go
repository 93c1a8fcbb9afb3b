package check

import (
	"math/big"

	"sawbill/layout"
)

// micrometre is what a rounded quotient may be missed by.
const micrometre = layout.Micrometre

// far is the distance of the far edge from the reference edge at x, held within
// the board, rounded down:
//
//	far(x) = width + (tip_width - width) * x / length
func (s *sawn) far(x layout.Length) layout.Length {
	x = min(max(x, 0), s.wood.Length)
	n := product(s.wood.TipWidth-s.wood.Width, x)
	n.Div(n, big.NewInt(int64(s.wood.Length))) // Div rounds down where the divisor is positive
	return s.wood.Width + layout.Length(n.Int64())
}

// narrow and wide are the least and the largest far(x) over a rectangle; a
// straight line has both at its ends.
func (s *sawn) narrow(r layout.Rect) layout.Length { return min(s.far(r.X1), s.far(r.X2)) }
func (s *sawn) wide(r layout.Rect) layout.Length   { return max(s.far(r.X1), s.far(r.X2)) }

// taperSlack is what a rounded far edge may be missed by.
func (s *sawn) taperSlack() layout.Length {
	if s.wood.Width == s.wood.TipWidth {
		return 0
	}
	return micrometre
}

// full is the width of the board at its wider end.
func (s *sawn) full() layout.Length { return max(s.wood.Width, s.wood.TipWidth) }

// shiftOf is how far the wood of a blank of length l starts from y = 0, where
// the board is crooked, rounded up: crook * (l / length)^2.
func (s *sawn) shiftOf(l layout.Length) layout.Length {
	share := s.share(l, s.wood.Length)
	gap := new(big.Rat).SetInt64(int64(s.wood.Crook))
	gap.Mul(gap, share).Mul(gap, share)
	n := new(big.Int).Neg(gap.Num()) // ceil(a/b) is -floor(-a/b)
	return -layout.Length(n.Div(n, gap.Denom()).Int64())
}

// available is the thickness that a trued node finishes to, rounded down:
//
//	thickness - 2 * face_skim (0 if planed)
//	- bow * (l/L)^2 - cup * (w/W)^2 - twist/2 * (l/L) * (w/W)
func (s *sawn) available(at *spot) layout.Length {
	along := s.share(at.Length(), s.wood.Length)
	across := s.share(s.woodWidth(at), s.full())
	left := new(big.Rat).SetInt64(int64(s.wood.Thickness))
	if s.wood.Faces == layout.FacesRough {
		left.Sub(left, new(big.Rat).SetInt64(2*int64(s.job.shop.FaceSkim)))
	}
	lose := func(gap layout.Length, half int64, p, q *big.Rat) {
		g := big.NewRat(int64(gap), half)
		left.Sub(left, g.Mul(g, p).Mul(g, q))
	}
	lose(s.wood.Bow, 1, along, along)
	lose(s.wood.Cup, 1, across, across)
	lose(s.wood.Twist, 2, along, across)
	n := new(big.Int)
	return layout.Length(n.Div(left.Num(), left.Denom()).Int64())
}

// warpSlack is what a rounded thickness may be missed by.
func (s *sawn) warpSlack() layout.Length {
	if s.wood.Bow == 0 && s.wood.Cup == 0 && s.wood.Twist == 0 {
		return 0
	}
	return micrometre
}

// woodWidth is the width of the wood of a node: the smaller of y2 and the
// largest far(x) in it, less y1.
func (s *sawn) woodWidth(at *spot) layout.Length {
	return min(at.Y2, s.wide(at.Rect)) - at.Y1
}

// share is part/whole, held between 0 and 1.
func (s *sawn) share(part, whole layout.Length) *big.Rat {
	return big.NewRat(int64(min(max(part, 0), whole)), int64(whole))
}

// product is a*b, which may not fit an int64.
func product(a, b layout.Length) *big.Int {
	return new(big.Int).Mul(big.NewInt(int64(a)), big.NewInt(int64(b)))
}
