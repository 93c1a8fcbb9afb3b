// Package jobs makes random jobs that look like a shop's, for tests and
// benchmarks.
package jobs

import (
	"fmt"
	"math/rand"

	"sawbill/layout"
)

// Size says how large a random job is.
type Size struct {
	Boards, Kinds, Pieces int
}

// New makes a job in the default inch shop: boards of one to three species, 20
// to 168 in long and 3 to 11 in wide, a third of them tapered, most with
// defects; parts of mixed grades. Same seed, same job. The stock is drawn
// without regard to the bill: it may fall short.
func New(size Size, seed int64) *layout.Problem {
	rng := rand.New(rand.NewSource(seed))
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches)}
	species := []string{"ash", "elm", "beech"}[:1+rng.Intn(3)]
	for i, s := range species {
		p.Shop.Price[s] = layout.Money(6+2*i) * layout.Unity
	}
	for i := range size.Boards {
		p.Stock = append(p.Stock, board(rng, i, species, p.Shop))
	}
	for i := range size.Kinds {
		quantity := max(1, size.Pieces/size.Kinds+rng.Intn(5)-2)
		p.Bill = append(p.Bill, part(rng, i, species, quantity))
	}
	return p
}

func eighths(rng *rand.Rand, lo, hi int) layout.Length {
	return layout.Length(lo*8+rng.Intn((hi-lo)*8+1)) * layout.Inch / 8
}

func board(rng *rand.Rand, i int, species []string, s *layout.Shop) layout.Board {
	b := layout.Board{
		Mark: fmt.Sprint("B", i+1), Species: species[rng.Intn(len(species))],
		Thickness: []layout.Length{layout.Inch, layout.Inch, 5 * layout.Inch / 4, 2 * layout.Inch}[rng.Intn(4)],
		Width:     eighths(rng, 3, 11), Length: eighths(rng, 72, 168), Edges: layout.Edges(rng.Intn(3)),
	}
	b.Base = b.Mark
	if rng.Intn(5) == 0 {
		b.Length = eighths(rng, 20, 60)
	}
	b.TipWidth = b.Width
	if rng.Intn(3) == 0 {
		b.TipWidth = max(3*layout.Inch, b.Width+eighths(rng, 0, 2)-layout.Inch)
	}
	for range rng.Intn(2 + int(b.Length/(24*layout.Inch))) {
		if d := defect(rng, &b); !d.Rect.Empty() {
			b.Defects = append(b.Defects, d)
		}
	}
	b.Cost, _ = s.DefaultCost(&b)
	return b
}

func defect(rng *rand.Rand, b *layout.Board) layout.Defect {
	kinds := []layout.Kind{layout.Knot, layout.Knot, layout.Loose, layout.Check, layout.Sap, layout.Stain, layout.Wane, layout.Pin}
	d := layout.Defect{Kind: kinds[rng.Intn(len(kinds))], Face: layout.Face(rng.Intn(3))}
	x := layout.Length(rng.Int63n(int64(b.Length/(layout.Inch/8)))) * layout.Inch / 8
	y := layout.Length(rng.Int63n(int64(b.FullWidth()/(layout.Inch/8)))) * layout.Inch / 8
	switch d.Kind {
	case layout.Check:
		d.Face, d.Rect = layout.Through, layout.Rect{X1: 0, X2: eighths(rng, 1, 6), Y1: 0, Y2: b.FullWidth()}
	case layout.Sap, layout.Wane:
		d.Rect = layout.Rect{X1: x, X2: x + eighths(rng, 10, 50), Y1: b.FullWidth() - eighths(rng, 0, 1), Y2: b.FullWidth()}
	default:
		d.Rect = layout.Rect{X1: x, X2: x + eighths(rng, 1, 2), Y1: y, Y2: y + eighths(rng, 1, 2)}
	}
	d.Rect = d.Rect.Intersect(b.Frame())
	return d
}

func part(rng *rand.Rand, i int, species []string, quantity int) layout.Part {
	return layout.Part{
		Name: fmt.Sprint("part-", i+1), Species: []string{species[rng.Intn(len(species))]},
		Thickness: []layout.Length{3 * layout.Inch / 4, 3 * layout.Inch / 4, 5 * layout.Inch / 8}[rng.Intn(3)],
		Width:     eighths(rng, 1, 4), Length: eighths(rng, 8, 40), Quantity: quantity,
		Grade:    []string{layout.Clear, layout.Clear, layout.OneFace, layout.Sound}[rng.Intn(4)],
		Priority: []int{0, 0, 0, 1, 2}[rng.Intn(5)],
	}
}
