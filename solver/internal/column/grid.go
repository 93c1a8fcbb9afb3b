package column

import (
	"sawbill/layout"
)

// Value is money in millionths of the unit: part prices, offcut worth and their
// sums, as whole numbers, so that no sum depends on its order.
type Value int64

// Cash is the value of one ten-thousandth of the unit.
const Cash Value = 100

// FromMoney is an amount as a value.
func FromMoney(m layout.Money) Value { return Value(m) * Cash }

// none stands for "cannot be done".
const none Value = -1 << 60

// axis is a grid along one direction: position i lies at i*unit.
type axis struct {
	unit layout.Length
	n    int // the last position that is on the board
}

func newAxis(size, unit layout.Length) axis { return axis{unit, int(size / unit)} }

func (g axis) at(i int) layout.Length { return layout.Length(i) * g.unit }

// up is the first position at or after x; x is not negative.
func (g axis) up(x layout.Length) int { return int((x + g.unit - 1) / g.unit) }

// down is the last position at or before x; below 0 for negative x.
func (g axis) down(x layout.Length) int {
	if x < 0 {
		return -1
	}
	return int(x / g.unit)
}

// gcd is the greatest common divisor of lengths, all not negative; 0 of none.
func gcd(lengths ...layout.Length) layout.Length {
	var d layout.Length
	for _, l := range lengths {
		for l != 0 {
			d, l = l, d%l
		}
	}
	return d
}

// finerForLeans is how many times the positions across there may be for the sake of
// leaning strips.
const finerForLeans = 2

// fewStrips is how many heights of strips take so little time that leaning ones always
// have them.
const fewStrips = 6

// refine is unit halved as long as at most most positions lie on size: what a rip at
// a bevel takes is no multiple of any unit, and is rounded up.
func refine(size, unit layout.Length, most int) layout.Length {
	for unit%2 == 0 && 2*size/unit <= layout.Length(most) {
		unit /= 2
	}
	return unit
}

// coarsen is unit doubled until at most most positions lie on size, so that
// positions stay on the marks of a rule; most 0 means any number.
func coarsen(size, unit layout.Length, most int) layout.Length {
	for most > 0 && size/unit > layout.Length(most) {
		unit *= 2
	}
	return unit
}
