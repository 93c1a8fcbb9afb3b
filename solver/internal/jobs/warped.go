package jobs

import (
	"math/rand"

	"sawbill/layout"
)

// Warped is Varied with most boards bowed, crooked, cupped or twisted by chance,
// the thicker ones for parts that they give only in short blanks, and with machines
// that some boards are too wide for.
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
		if rng.Intn(4) == 0 {
			p.Bill[i].Thickness = []layout.Length{layout.Inch, 3 * layout.Inch / 2, 7 * layout.Inch / 4}[rng.Intn(3)]
		}
	}
	return p
}
