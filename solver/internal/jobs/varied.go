package jobs

import (
	"math/rand"

	"sawbill/layout"
)

// Varied is New with the shop, the boards and the bill changed by chance in
// every way that a job may differ: machine limits, allowances, kerfs, snipe, no
// last rip, no credit, millimetres, planed boards, metal, boards on hold or at
// the yard, alternatives, boards named and excluded.
func Varied(size Size, seed int64) *layout.Problem {
	p := New(size, seed)
	rng := rand.New(rand.NewSource(seed + 1))
	chance := func(n int) bool { return rng.Intn(n) == 0 }
	s := p.Shop
	if chance(3) {
		s.RipKerf, s.CrosscutKerf = 3*layout.Millimetre, 16*layout.Millimetre/5
	}
	if chance(3) {
		s.MinBlank, s.MaxBlank = 10*layout.Inch, 60*layout.Inch
	}
	if chance(3) {
		s.Snipe = 2 * layout.Inch
	}
	if chance(3) {
		s.LengthAllowance, s.WidthAllowance, s.ThicknessAllowance = layout.Inch/4, layout.Inch/16, layout.Inch/32
	}
	if chance(3) {
		s.OffcutCredit = []layout.Credit{0, layout.CreditUnity / 10 * 9}[rng.Intn(2)]
	}
	s.RipAgain = !chance(3)
	if chance(3) {
		s.EndTrim, s.EdgeJoint, s.EndSquare, s.MinRipLength = 0, 0, 0, 0
	}
	p.Yard = chance(2)
	for i := range p.Stock {
		vary(rng, p, &p.Stock[i])
	}
	for i := range p.Bill {
		varyPart(rng, p, &p.Bill[i])
	}
	return p
}

func vary(rng *rand.Rand, p *layout.Problem, b *layout.Board) {
	if rng.Intn(4) == 0 {
		b.Faces, b.Thickness = layout.FacesPlaned, 3*layout.Inch/4
		b.Edges = layout.EdgesBoth
	}
	if rng.Intn(6) == 0 {
		b.Source = []layout.Source{layout.Yard, layout.Hold}[rng.Intn(2)]
	}
	if rng.Intn(5) == 0 {
		x, y := layout.Length(rng.Intn(int(b.Length/layout.Inch)))*layout.Inch, layout.Length(rng.Intn(3))*layout.Inch
		d := layout.Defect{Kind: layout.Metal, Rect: layout.Rect{X1: x, X2: x + layout.Inch, Y1: y, Y2: y + layout.Inch/2}}
		if d.Rect = d.Rect.Intersect(b.Frame()); !d.Rect.Empty() {
			b.Defects = append(b.Defects, d)
		}
	}
	b.Cost, _ = p.Shop.DefaultCost(b)
}

func varyPart(rng *rand.Rand, p *layout.Problem, part *layout.Part) {
	other := p.Stock[rng.Intn(len(p.Stock))]
	switch rng.Intn(6) {
	case 0:
		part.Species = append(part.Species, other.Species)
	case 1:
		part.NotFrom = []string{other.Mark}
	case 2:
		if layout.SameSpecies(other.Species, part.Species[0]) {
			part.From = []string{other.Mark}
		}
	}
}
