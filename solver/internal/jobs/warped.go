package jobs

import (
	"math/rand"

	"sawbill/layout"
)

// Warped is Varied with most boards bowed, crooked, cupped or twisted by chance,
// with machines that some boards are too wide for, and with thick parts, parts that
// may stand on edge, thin ones that may be resawn and bevelled ones.
func Warped(size Size, seed int64) *layout.Problem {
	p := Varied(size, seed)
	rng := rand.New(rand.NewSource(seed + 2))
	if rng.Intn(2) == 0 {
		p.Shop.JointerWidth = []layout.Length{6 * layout.Inch, 8 * layout.Inch}[rng.Intn(2)]
	}
	if rng.Intn(3) == 0 {
		p.Shop.PlanerWidth = 13 * layout.Inch / 2
	}
	for i := range p.Stock {
		b := &p.Stock[i]
		gap := func(most int) layout.Length {
			return max(0, layout.Length(rng.Intn(2*most)-most)) * layout.Inch / 32
		}
		b.Bow, b.Crook, b.Cup, b.Twist = gap(16), gap(16), gap(8), gap(12)
	}
	for i := range p.Bill {
		part := &p.Bill[i]
		switch rng.Intn(9) {
		case 0, 1:
			part.Thickness = []layout.Length{layout.Inch, 3 * layout.Inch / 2, 7 * layout.Inch / 4}[rng.Intn(3)]
		case 2:
			part.OnEdge = true
		case 3, 4:
			part.Resaw, part.Thickness = true, layout.Length(1+rng.Intn(3))*layout.Inch/8
		case 5:
			part.Bevel = layout.Angle(1+rng.Intn(45)) * layout.Degree
		}
	}
	return p
}
