package ceiling

import (
	"math/rand"
	"testing"

	"sawbill/solver/internal/column"
	"sawbill/solver/internal/jobs"
)

// TestBarIsItsBestFilling compares bars without credit for offcuts with the best
// row of pieces, which the bound must meet.
func TestBarIsItsBestFilling(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	for _, job := range jobs.Bars() {
		p := job.Problem
		for range 20 {
			price := make([]Value, len(p.Bill))
			values := make([]column.Value, len(p.Bill))
			for i := range price {
				price[i] = Value(rng.Intn(9_000_000))
				values[i] = column.Value(price[i])
			}
			b := &p.Stock[rng.Intn(len(p.Stock))]
			w := New(p, b)
			if w.bar == nil {
				t.Fatalf("%s: %s is not taken for a bar", job.Name, b.Mark)
			}
			best := new(column.Bench).Priced(column.New(p, b, column.Quick()), values, make([]int, len(values)))
			if got, _ := new(Bench).Most(w, price, 0, 1, nil); got < Value(best.Value) || p.Shop.OffcutCredit == 0 && got != Value(best.Value) {
				t.Errorf("%s: at most %d, the best filling is worth %d", job.Name, got, best.Value)
			}
		}
	}
}
