package layout

import "math/big"

// Credit is the share of its worth that a kept offcut is credited with, in
// thousand-millionths: 0 <= credit < CreditUnity.
type Credit int64

// CreditUnity is a share of one.
const CreditUnity Credit = 1_000_000_000

// PriceUnit says what prices count in.
type PriceUnit uint8

// What prices can count in.
const (
	PerBoardFoot PriceUnit = iota
	PerCubicMetre
)

// String gives the word of the shop file.
func (u PriceUnit) String() string { return [...]string{"bf", "m3"}[u] }

// Shop is how one shop works: its saws, its machines, its habits. Limits of 0
// stand for none where the comment says so.
type Shop struct {
	Units    Unit
	Fraction int // inches print to this denominator: 2, 4, 8, 16, 32 or 64

	RipKerf, CrosscutKerf, RoughRipKerf, ResawKerf Length

	EndTrim     Length // cut off each end of a board before the first part
	EdgeJoint   Length // lost to straighten a rough or rough-ripped edge
	EndSquare   Length // lost at each end of a trued blank
	FaceSkim    Length // lost from each rough face
	Snipe       Length // no part within this of a trued blank's ends
	PanelSquare Length // lost at each end of a glue-up strip

	LengthAllowance, WidthAllowance, ThicknessAllowance Length

	MinBlank     Length
	MaxBlank     Length // 0: none
	JointerWidth Length // 0: none
	PlanerWidth  Length // 0: none
	MinRipLength Length
	MinRip       Length
	MinCrosscut  Length

	MinOffcutLength, MinOffcutWidth Length
	OffcutCredit                    Credit
	RipAgain                        bool

	Price     map[string]Money // by species, as the shop file spells it
	PriceUnit PriceUnit
	Clearance map[Kind]Clearance
	Grades    map[string]Grade
	Kinds     map[Kind]bool     // true: sound
	Hidden    map[string]Hidden // by species, as the shop file spells it; see HiddenOf
	Charges   *Charges          // nil: the shop file has no table for quotes
}

// DefaultShop is the shop of model section 5 with no key set but units.
func DefaultShop(u Unit) *Shop {
	s := &Shop{
		Units: u, Fraction: 32,
		OffcutCredit: CreditUnity / 10 * 6, RipAgain: true,
		Price:  map[string]Money{},
		Grades: StandardGrades(),
		Kinds:  map[Kind]bool{},
		Hidden: map[string]Hidden{},
	}
	for _, k := range SoundKinds() {
		s.Kinds[k] = true
	}
	for _, k := range UnsoundKinds() {
		s.Kinds[k] = false
	}
	if u == Millimetres {
		s.setMillimetreDefaults()
	} else {
		s.setInchDefaults()
	}
	return s
}

func (s *Shop) setInchDefaults() {
	s.RipKerf, s.CrosscutKerf, s.RoughRipKerf, s.ResawKerf = Inch/8, Inch/8, Inch/8, Inch/16
	s.EndTrim, s.EdgeJoint, s.EndSquare, s.FaceSkim = Inch, Inch/8, Inch/4, 3*Inch/32
	s.PanelSquare = Inch / 4
	s.MinBlank, s.MinRipLength, s.MinRip, s.MinCrosscut = 12*Inch, 12*Inch, 3*Inch/4, 8*Inch
	s.MinOffcutLength, s.MinOffcutWidth = 12*Inch, 3*Inch/2
	s.setClearance(Inch, Inch/2)
}

func (s *Shop) setMillimetreDefaults() {
	const mm = Millimetre
	s.RipKerf, s.CrosscutKerf, s.RoughRipKerf, s.ResawKerf = 3*mm, 3*mm, 3*mm, 2*mm
	s.EndTrim, s.EdgeJoint, s.EndSquare, s.FaceSkim = 25*mm, 3*mm, 6*mm, 5*mm/2
	s.PanelSquare = 6 * mm
	s.MinBlank, s.MinRipLength, s.MinRip, s.MinCrosscut = 300*mm, 300*mm, 20*mm, 200*mm
	s.MinOffcutLength, s.MinOffcutWidth = 300*mm, 40*mm
	s.setClearance(25*mm, 12*mm)
}

func (s *Shop) setClearance(crack, metal Length) {
	s.Clearance = map[Kind]Clearance{
		Check: {Along: crack}, Split: {Along: crack}, Shake: {Along: crack},
		Metal: {metal, metal},
	}
}

// PriceOf is the price of a species in money per PriceUnit, and whether the
// shop has one.
func (s *Shop) PriceOf(species string) (Money, bool) {
	for name, price := range s.Price {
		if SameSpecies(name, species) {
			return price, true
		}
	}
	return 0, false
}

// DefaultCost is what a board without a cost of its own is worth: its volume in
// board feet (cubic metres) times the price of its species, rounded half up.
// Where the shop prices nothing the price is 1; where it prices other species
// but not this one, ok is false.
func (s *Shop) DefaultCost(b *Board) (cost Money, ok bool) {
	price, ok := s.PriceOf(b.Species)
	if !ok {
		if len(s.Price) > 0 {
			return 0, false
		}
		price = Unity
	}
	unit := boardFoot()
	if s.PriceUnit == PerCubicMetre {
		unit = cubicMetre()
	}
	// Twice the volume, so that the mean width of a tapered board stays whole.
	twice := NewVolume(b.Length, b.Width+b.TipWidth, b.Thickness).Int()
	twice.Mul(twice, big.NewInt(int64(price)))
	return roundHalfUp(new(big.Rat).SetFrac(twice, unit.Lsh(unit, 1))), true
}
