package layout

import (
	"fmt"
	"math/rand/v2"
	"testing"
)

// What is said of 20 kinds of parts that 200 boards with defects do not give.
func BenchmarkWhy(b *testing.B) {
	rng := rand.New(rand.NewPCG(1, 2))
	in := func(lo, hi int) Length { return Length(lo+rng.IntN(hi-lo+1)) * Inch }
	p := &Problem{Shop: DefaultShop(Inches)}
	for i := range 200 {
		board := Board{Mark: fmt.Sprint("A", i), Species: "ash", Thickness: 2 * Inch, Width: in(5, 9), Length: in(60, 120), Cup: Inch / 8}
		board.TipWidth = board.Width
		for range 6 {
			x, y := in(0, 110), in(0, 4)
			board.Defects = append(board.Defects, Defect{Kind: Knot, Rect: Rect{x, x + 2*Inch, y, y + 2*Inch}.Intersect(board.Frame())})
		}
		p.Stock = append(p.Stock, board)
	}
	for i := range 20 {
		p.Bill = append(p.Bill, Part{
			Name: fmt.Sprint("part ", i), Species: []string{"ash"}, Thickness: Inch, Width: in(8, 9), Length: in(80, 110), Quantity: 1,
		})
	}
	for b.Loop() {
		if Assemble(p, nil).Missing[0].Why == "" {
			b.Fatal("nothing said")
		}
	}
}
