package buy

import "sawbill/layout"

// leastSize is the least width and the least length of a board of which a part of the
// order can be made, however long, or wide, it is; in sixteenths of an inch or whole
// millimetres, rounded up. A board a step smaller gives none. Each is 0 where not even
// the largest board gives one.
//
// It is worked back from the part: what it is cut to, what squaring, jointing and
// snipe take from its blank, the shortest blank for the machines, and the end trims.
func (r *order) leastSize() (width, length layout.Length) {
	big := r.u.largest(r.w.species, r.w.thickness)
	width = r.least(big.Width, func(l layout.Length) layout.Board {
		return clearBoard(r.w.species, r.w.thickness, l, big.Length)
	})
	length = r.least(big.Length, func(l layout.Length) layout.Board {
		return clearBoard(r.w.species, r.w.thickness, big.Width, l)
	})
	return width, length
}

// least is the least size, in whole steps up to most, of a board that gives a part.
func (r *order) least(most layout.Length, board func(layout.Length) layout.Board) layout.Length {
	step := r.step()
	lo, hi := layout.Length(0), most/step
	if !r.gives(board(hi * step)) {
		return 0
	}
	for hi-lo > 1 {
		if mid := lo + (hi-lo)/2; r.gives(board(mid * step)) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return hi * step
}

// step is how finely boards are measured at a yard.
func (r *order) step() layout.Length {
	if r.p.Shop.Units == layout.Millimetres {
		return layout.Millimetre
	}
	return layout.Inch / 16
}

// singles are the parts of the order, one piece of each; of a glue-up the strip with
// the fewest slices.
func (r *order) singles() []layout.Part {
	var list []layout.Part
	for i := range r.p.Bill {
		part := r.p.Bill[i]
		if part.Set != "" {
			part = r.p.Shop.Strip(&part, r.p.Shop.LeastSlices(&part))
			part.Slices, part.SliceThickness = 0, 0 // a part like any other
		}
		part.Quantity, part.Spare, part.Match = 1, 0, ""
		list = append(list, part)
	}
	return list
}

// gives reports whether a board could give any part of the order.
func (r *order) gives(b layout.Board) bool {
	p := r.p
	for _, part := range r.singles() {
		if p.CouldGive(&part, &b) {
			return true
		}
	}
	return false
}
