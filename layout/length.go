package layout

// Length is an exact length: a whole number of nanometres, as time.Duration is
// of nanoseconds. Sixty-fourths of an inch and millionths of a millimetre are
// both whole, so a plan never drifts.
type Length int64

// The lengths that people name.
const (
	Nanometre   Length = 1
	Micrometre         = 1000 * Nanometre
	Millimetre         = 1000 * Micrometre
	Centimetre         = 10 * Millimetre
	Metre              = 1000 * Millimetre
	Inch               = 25_400_000 * Nanometre
	Foot               = 12 * Inch
	SixtyFourth        = Inch / 64
)

// MaxLength is the longest length that anything in a shop may have. Products of
// two such lengths overflow an int64; see Area.
const MaxLength = 30 * Metre

// Unit says what a bare number means and how lengths print.
type Unit uint8

// The two units a shop can work in.
const (
	Inches Unit = iota
	Millimetres
)

// String gives the unit as the shop file spells it.
func (u Unit) String() string {
	if u == Millimetres {
		return "mm"
	}
	return "in"
}

// Mark is the distance between the finest marks that a rule in the unit has.
func (u Unit) Mark() Length {
	if u == Millimetres {
		return Millimetre / 2
	}
	return SixtyFourth
}
