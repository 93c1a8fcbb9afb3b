package layout

import "math/big"

// Flattening is what making a blank flat and clean takes from its thickness, each
// figure rounded up to a whole nanometre.
type Flattening struct {
	Skim            Length // of both faces together
	Bow, Cup, Twist Length
}

// FlatteningOf is what truing a blank takes from the thickness of b. With l and w
// the length and the width of the blank's wood, L and W those of the board,
//
//	skim = 2 * face_skim, 0 of planed faces    bow = bow * (l/L)^2
//	cup = cup * (w/W)^2                        twist = twist/2 * (l/L) * (w/W)
//
// A gap is measured over the whole board. Parallel faces that are hollow cost the
// gap once (as Wengert writes on planing cupped lumber); an arc's height goes with
// the square of its chord. Of a twist, the lift of the fourth corner, flattening
// costs half.
func (s *Shop) FlatteningOf(b *Board, blank Rect) Flattening {
	l, w := blank.Length(), b.WoodWidth(blank)
	var f Flattening
	if b.Faces == FacesRough {
		f.Skim = 2 * s.FaceSkim
	}
	if b.Bow > 0 {
		f.Bow = ceilDiv(arc(b.Bow, l, b.Length), product(b.Length, b.Length))
	}
	if b.Cup > 0 {
		f.Cup = ceilDiv(arc(b.Cup, w, b.FullWidth()), product(b.FullWidth(), b.FullWidth()))
	}
	if b.Twist > 0 {
		lift := product(b.Twist, min(max(l, 0), b.Length), min(max(w, 0), b.FullWidth()))
		f.Twist = ceilDiv(lift, product(2, b.Length, b.FullWidth()))
	}
	return f
}

// AvailableIn is the thickness that a blank of b finishes to: that of the board
// less what flattening and cleaning its faces take, rounded down once. It is
// negative where truing takes more than there is.
func (s *Shop) AvailableIn(b *Board, blank Rect) Length {
	left := s.Available(b)
	if b.Flat() {
		return left
	}
	l := min(max(blank.Length(), 0), b.Length)
	w := min(max(b.WoodWidth(blank), 0), b.FullWidth())
	whole, full := b.Length, b.FullWidth()
	// Over the common denominator 2 L^2 W^2.
	loss := product(2, b.Bow, l, l, full, full)
	loss.Add(loss, product(2, b.Cup, w, w, whole, whole))
	loss.Add(loss, product(b.Twist, l, w, whole, full))
	return left - ceilDiv(loss, new(big.Int).Mul(product(2, whole, whole), product(full, full)))
}

// Flat reports whether b has no bow, no cup and no twist. It may be crooked.
func (b *Board) Flat() bool { return b.Bow == 0 && b.Cup == 0 && b.Twist == 0 }

// WoodWidth is the width of the wood of a rectangle of b, as the machines meet
// it: the smaller of Y2 and the largest distance of the far edge, less Y1.
func (b *Board) WoodWidth(r Rect) Length {
	return min(r.Y2, max(b.Far(b.within(r.X1)), b.Far(b.within(r.X2)))) - r.Y1
}

// within is x held between the ends of b.
func (b *Board) within(x Length) Length { return min(max(x, 0), b.Length) }

// MachineWidth is the widest wood that both jointer and planer take, 0 where
// neither has a limit.
func (s *Shop) MachineWidth() Length {
	if s.JointerWidth == 0 || s.PlanerWidth == 0 {
		return max(s.JointerWidth, s.PlanerWidth)
	}
	return min(s.JointerWidth, s.PlanerWidth)
}
