package jobs

import (
	"fmt"
	"math/rand"

	"sawbill/layout"
)

// Large is a job of 200 boards, 35 kinds and 1500 pieces that can be made whole.
func Large() Named {
	return Named{"large", drawn(Size{Boards: 200, Kinds: 35, Pieces: 1500}, 1, long)}
}

// Huge is a job of 1500 boards, 40 kinds and 10 000 pieces that can be made
// whole.
func Huge() Named {
	return Named{"huge", drawn(Size{Boards: 1500, Kinds: 40, Pieces: 10000}, 2, long)}
}

// Small are a dozen jobs of three to five boards, 4 to 8 kinds and 8 to 30
// pieces that can be made whole. Their seeds were sought so that two to four of
// the boards are needed.
func Small() []Named {
	var jobs []Named
	for i, s := range []struct {
		boards, kinds, pieces int
		seed                  int64
	}{
		{3, 4, 8, 20}, {4, 5, 10, 121}, {5, 6, 12, 142}, {3, 7, 14, 23},
		{4, 8, 16, 24}, {5, 4, 18, 25}, {3, 5, 20, 1306}, {4, 6, 22, 107},
		{5, 7, 24, 188}, {5, 8, 26, 49}, {4, 4, 28, 610}, {5, 5, 30, 191},
	} {
		size := Size{Boards: s.boards, Kinds: s.kinds, Pieces: s.pieces}
		jobs = append(jobs, Named{fmt.Sprint("small-", i+1), drawn(size, s.seed, short)})
	}
	return jobs
}

// The lengths and widths between which boards are drawn.
var (
	long  = rack{length: "96 to 168", width: "4 to 11", tapered: 3, faults: "36"}
	short = rack{length: "44 to 96", width: "5 to 9", tapered: 3, faults: "36"}
)

// drawn makes a job of that many boards, kinds and exactly that many pieces by
// chance, in the default inch shop. The boards are like rack, in two thicknesses,
// and of each species in proportion to the area of its parts.
func drawn(size Size, seed int64, like rack) *layout.Problem {
	species := []string{"ash", "elm", "beech"}[:1+min(2, size.Boards/50)]
	bill := drawnBill(rand.New(rand.NewSource(seed)), size, species)
	r := &recipe{unit: layout.Inches, seed: seed}
	for i, n := range share(size.Boards, areas(bill, species)) {
		like.species = species[i]
		like.boards, like.thickness = n-n/2, "1"
		r.racks = append(r.racks, like)
		like.boards, like.thickness = n/2, "1-1/4"
		r.racks = append(r.racks, like)
	}
	p := r.problem()
	p.Bill = bill
	return p
}

func drawnBill(rng *rand.Rand, size Size, species []string) []layout.Part {
	bill := make([]layout.Part, size.Kinds)
	for i := range bill {
		quantity := size.Pieces*(i+1)/size.Kinds - size.Pieces*i/size.Kinds
		bill[i] = part(rng, i, species[i%len(species):][:1], quantity)
	}
	return bill
}

// areas sums the areas of the parts by species, in square inches.
func areas(bill []layout.Part, species []string) []int {
	sums := make([]int, len(species))
	for i := range bill {
		p := &bill[i]
		sums[i%len(species)] += p.Quantity * int(p.Length/layout.Inch) * int(p.Width*8/layout.Inch) / 8
	}
	return sums
}

// share divides n in proportion to parts.
func share(n int, parts []int) []int {
	var all, sum, given int
	for _, p := range parts {
		all += p
	}
	shares := make([]int, len(parts))
	for i, p := range parts {
		sum += p
		shares[i] = n*sum/all - given
		given += shares[i]
	}
	return shares
}
