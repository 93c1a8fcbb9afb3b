package layout

import "fmt"

// shorter says into how few equal pieces a part that is too long for its boards
// could be made, so that they fit; it is empty where that takes more than four, or
// pieces too short to be crosscut without a caution. Strips of a glue-up have
// their least length already.
func (q *query) shorter(rooms []*room) string {
	for i, word := range []string{"two", "three", "four"} {
		n := i + 2
		length := roundUpTo((q.part.Length+Length(i+1))/Length(n), q.jointStep())
		if q.part.SliceThickness > 0 || length < q.shop.MinCrosscut {
			return ""
		}
		if q.gives(rooms, length+q.shop.LengthAllowance) >= n {
			return fmt.Sprintf("; %s %s pieces would fit", word, length.Format(q.shop.Units, q.shop.Fraction))
		}
	}
	return ""
}

// jointStep is to what shorter pieces are rounded up: 1/16 in or 1 mm.
func (q *query) jointStep() Length {
	if q.shop.Units == Millimetres {
		return Millimetre
	}
	return Inch / 16
}

func roundUpTo(l, step Length) Length { return (l + step - 1) / step * step }

// gives counts up to four pieces of a length that the rooms give together, the most
// of any way to lie.
func (q *query) gives(rooms []*room, length Length) int {
	most := 0
	for _, l := range q.lies {
		n := 0
		for _, r := range rooms {
			n += r.mostOf(l.ofLength(length), 4-n)
		}
		most = max(most, n)
	}
	return most
}

// mostOf counts up to enough pieces, one or several side by side to a blank. There
// may be more where blanks differ.
func (r *room) mostOf(l lie, enough int) int {
	most := 0
	for beside := 1; beside <= enough; beside++ {
		if beside > 1 && l.lean > 0 {
			break
		}
		n := Length(beside)
		most = max(most, beside*r.blanks(l.ofWidth(n*l.across+(n-1)*r.shop.RipKerf), enough))
	}
	return min(most, enough)
}

// blanks counts up to enough blanks with a piece each, one after another and each
// as near to the butt as it may be.
func (r *room) blanks(l lie, enough int) int {
	rest := *r
	for n := range enough {
		if !rest.holds(l) {
			return n
		}
		spare := largest(r.shop.figureStep(), 0, rest.within.Len(), func(cut Length) bool {
			shorter := rest
			shorter.within.Hi -= cut
			return shorter.holds(l)
		})
		rest.within.Lo = rest.within.Hi - spare + r.shop.CrosscutKerf
	}
	return enough
}
