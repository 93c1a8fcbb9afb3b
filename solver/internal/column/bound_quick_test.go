package column

import (
	"errors"
	"sync/atomic"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check/bound"
	"sawbill/solver/internal/jobs"
)

// TestBoundIsNeverBelowQuick holds the proof from prices against columns of
// boards of real size: it may not prove that a board is worth less than a column
// that was found, however long it looks.
func TestBoundIsNeverBelowQuick(t *testing.T) {
	bench := new(Bench)
	tried := 0
	for seed := range int64(150) {
		p := jobs.Varied(jobs.Size{Boards: 1, Kinds: 8, Pieces: 60}, seed)
		price := byVolume(p)
		for i := range price {
			price[i] -= price[i] % Cash
		}
		b := &p.Stock[0]
		found := bench.Best(New(p, b, Quick()), price).Value
		over := layout.Money((found - FromMoney(b.Cost)) / Cash)
		if !p.Takes(b) || over <= 0 {
			continue
		}
		tried++
		proof, err := bound.Prove(after(800), idle(p, price, 1-over))
		if err == nil && len(proof.Violations) == 0 {
			t.Errorf("seed %d: a column is worth %v beyond its board, the proof allows %v", seed, over, -proof.Proven)
		}
		if err != nil && !errors.Is(err, bound.ErrStopped) {
			t.Errorf("seed %d: %v", seed, err)
		}
	}
	if tried < 40 {
		t.Errorf("only %d boards are worth cutting", tried)
	}
}

// after says stop once it has been asked n times.
func after(n int64) func() bool {
	var asked atomic.Int64
	return func() bool { return asked.Add(1) > n }
}
