package layout

import (
	"math/big"
	"slices"
)

// CleanOffcut is the rectangle that counts of an offcut leaf of a board without
// crook: its wood without the taper of the far edge. It may be empty.
func (b *Board) CleanOffcut(leaf Rect) Rect {
	leaf.Y2 = min(leaf.Y2, b.FarMin(leaf.Along()))
	return leaf
}

// CleanOffcutIn is the rectangle that counts of an offcut leaf in a rough crosscut
// blank so long: its wood without the taper of the far edge and without the
// hollow of a crooked reference edge. It may be empty.
func (b *Board) CleanOffcutIn(blank Length, leaf Rect) Rect {
	clean := b.CleanOffcut(leaf)
	clean.Y1 = max(clean.Y1, b.Shift(blank))
	return clean
}

// Keeps reports whether the clean rectangle of an offcut is large enough for
// the shop to keep.
func (s *Shop) Keeps(clean Rect) bool {
	return clean.Length() >= s.MinOffcutLength && clean.Width() >= s.MinOffcutWidth &&
		!clean.Empty()
}

// OffcutWorth is what a kept offcut is credited with:
// credit * cost / (length * mean width) * (area of clean less the defects in
// it, as marked), rounded down.
func (s *Shop) OffcutWorth(b *Board, clean Rect) Money {
	num := new(big.Int).Mul(SoundArea(clean, b.Defects).Int(), big.NewInt(int64(b.Cost)))
	num.Mul(num, big.NewInt(2*int64(s.OffcutCredit)))
	den := new(big.Int).Mul(big.NewInt(int64(b.Length)), big.NewInt(int64(b.Width+b.TipWidth)))
	den.Mul(den, big.NewInt(int64(CreditUnity)))
	return Money(num.Div(num, den).Int64())
}

// SoundArea is the area of r less the area of the union of the defects in it,
// as marked. Of an empty r it is 0.
func SoundArea(r Rect, defects []Defect) *Area {
	area := new(Area)
	if r.Empty() { // two negative sides would make an area of nothing
		return area
	}
	area.Add(r.Length(), r.Width())
	var inside []Rect
	xs := []Length{r.X1, r.X2}
	for _, d := range defects {
		if c := d.Rect.Intersect(r); !c.Empty() {
			inside = append(inside, c)
			xs = append(xs, c.X1, c.X2)
		}
	}
	if len(inside) == 0 {
		return area
	}
	slices.Sort(xs)
	xs = slices.Compact(xs)
	for i := range xs[1:] {
		slab := Span{xs[i], xs[i+1]}
		area.Sub(slab.Len(), covered(inside, slab))
	}
	return area
}

// covered is the width that the rectangles meeting a slab cover together; every
// rectangle spans the slab or misses it.
func covered(rects []Rect, slab Span) Length {
	var across []Span
	for _, r := range rects {
		if r.Along().Overlaps(slab) {
			across = append(across, r.Across())
		}
	}
	slices.SortFunc(across, func(a, b Span) int { return int(min(max(a.Lo-b.Lo, -1), 1)) })
	var sum, reached Length
	for i, s := range across {
		if i == 0 || s.Lo > reached {
			reached = s.Lo
		}
		if s.Hi > reached {
			sum += s.Hi - reached
			reached = s.Hi
		}
	}
	return sum
}
