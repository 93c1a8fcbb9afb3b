package bound

import (
	"errors"
	"math/big"
	"math/bits"
	"slices"

	"sawbill/layout"
)

// worth turns areas into values. Areas are in nanometres along by micrometres
// across, so that an int64 holds 9000 m².
type worth struct{ rate uint64 } // value per area, times 2^rateShift; rounded up

const rateShift = 40

// newWorth is the worth of the sound wood of a board as an offcut:
// credit * cost / (length * mean width) for each area.
func newWorth(s *layout.Shop, b *layout.Board) (worth, error) {
	num := big.NewInt(int64(s.OffcutCredit))
	num.Mul(num, big.NewInt(int64(b.Cost)))
	num.Mul(num, big.NewInt(2*1000*int64(cash)))
	num.Lsh(num, rateShift)
	den := big.NewInt(int64(b.Length))
	den.Mul(den, big.NewInt(int64(b.Width+b.TipWidth)))
	den.Mul(den, big.NewInt(int64(layout.CreditUnity)))
	num.Add(num, den)
	num.Sub(num, big.NewInt(1))
	if num.Div(num, den); num.BitLen() > 62 {
		return worth{}, errors.New("its wood is worth too much to reckon with")
	}
	return worth{num.Uint64()}, nil
}

// whole is what all the wood of a board is worth as offcuts, and so the most that they
// can be worth together: credit * cost.
func (m worth) whole(s *layout.Shop, b *layout.Board) value {
	all := big.NewInt(int64(b.Cost))
	all.Mul(all, big.NewInt(int64(s.OffcutCredit)*int64(cash)))
	return value(all.Div(all, big.NewInt(int64(layout.CreditUnity))).Int64()) + 1
}

// of is the value of an area, rounded down. The worth of what lies between two
// places is at most the difference of the values below them, and 1.
func (m worth) of(area int64) value {
	if area < 0 {
		return -m.of(-area) - 1
	}
	hi, lo := bits.Mul64(uint64(area), m.rate)
	return value(hi<<(64-rateShift) | lo>>rateShift)
}

// up and floor are lengths in micrometres.
func up(l layout.Length) int64    { return int64((l + layout.Micrometre - 1) / layout.Micrometre) }
func floor(l layout.Length) int64 { return int64(l / layout.Micrometre) }

// setUnsound adds up the defects as marked, where there is surely wood: for
// each position across and along, the area of them below.
func (w *wood) setUnsound() {
	w.unsound = make([][]int64, w.ny+1)
	for j := range w.unsound {
		w.unsound[j] = make([]int64, w.nx+1)
	}
	for i := range w.nx {
		covers := w.covers(i)
		for j, row := range w.unsound {
			row[i+1] = row[i] + int64(w.x.unit)*floor(coveredBelow(covers, w.y.at(j)))
		}
	}
}

// covers lists where, across, defects cover position i along in full, without
// overlap.
func (w *wood) covers(i int) []layout.Span {
	var list []layout.Span
	if w.x.at(i+1) > w.board.Length {
		return nil
	}
	far := w.board.FarMin(layout.Span{Lo: w.x.at(i), Hi: w.x.at(i + 1)})
	for _, d := range w.board.Defects {
		if d.Rect.X1 > w.x.at(i) || d.Rect.X2 < w.x.at(i+1) {
			continue
		}
		if lo, hi := max(0, d.Rect.Y1), min(d.Rect.Y2, far); lo < hi {
			list = append(list, layout.Span{Lo: lo, Hi: hi})
		}
	}
	slices.SortFunc(list, func(a, b layout.Span) int { return int(min(max(a.Lo-b.Lo, -1), 1)) })
	reached := layout.Length(0)
	for k := range list {
		list[k].Lo = max(list[k].Lo, reached)
		reached = max(reached, list[k].Hi)
		list[k].Hi = max(list[k].Hi, list[k].Lo)
	}
	return list
}

// coveredBelow is how much of the spans lies below y.
func coveredBelow(spans []layout.Span, y layout.Length) layout.Length {
	var sum layout.Length
	for _, s := range spans {
		sum += max(0, min(s.Hi, y)-s.Lo)
	}
	return sum
}

// offcut is the most that an offcut is worth which lies within x1 to x2 along
// and y1 to y2 across; 0 where it is too small to keep.
func (w *wood) offcut(r layout.Rect) value {
	if w.worth.rate == 0 || r.Length() < w.shop.MinOffcutLength || r.Width() < w.shop.MinOffcutWidth || r.Empty() {
		return 0
	}
	area := int64(r.Length()) * (up(r.Width()) + 1) // areas of defects are good to a micrometre
	if w.unsound != nil {
		i1, i2 := w.x.down(r.X1+w.x.unit-1), w.x.down(r.X2)
		j1, j2 := w.y.down(r.Y1+w.y.unit-1), w.y.down(r.Y2)
		if i1 < i2 && j1 < j2 {
			area -= w.wasteIn(span{i1, i2}, span{j1, j2})
		}
	}
	return w.worth.of(max(0, area)) + 1
}

// wasteIn is the area of defects between two positions along and two across.
func (w *wood) wasteIn(x, y span) int64 {
	x.hi, y.hi = min(x.hi, w.nx), min(y.hi, w.ny)
	return w.unsound[y.hi][x.hi] - w.unsound[y.hi][x.lo] - w.unsound[y.lo][x.hi] + w.unsound[y.lo][x.lo]
}
