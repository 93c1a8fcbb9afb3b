package column

import (
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/jobs"
)

// byVolume prices parts a little above what their wood costs.
func byVolume(p *layout.Problem) []Value {
	price := make([]Value, len(p.Bill))
	for i := range p.Bill {
		price[i] = Value(p.Bill[i].Volume().BoardFeet() * 14 * float64(layout.Unity*100))
	}
	return price
}

// TestQuickIsValid lets the checker pass quick columns of boards of real size.
func TestQuickIsValid(t *testing.T) {
	for seed := range int64(25) {
		p := jobs.New(jobs.Size{Boards: 4, Kinds: 10, Pieces: 60}, seed)
		for i := range p.Bill {
			p.Bill[i].Quantity = 1000
		}
		price := byVolume(p)
		bench := new(Bench)
		for i := range p.Stock {
			cfg := Quick()
			cfg.Beside = (seed+int64(i))%2 == 1
			c := bench.Best(New(p, &p.Stock[i], cfg), price)
			if c.Root == nil || !holdsPart(c.Root) {
				continue
			}
			for _, v := range check.Plan(layout.Assemble(p, []layout.BoardCut{{Board: p.Stock[i].Mark, Root: c.Root}})) {
				t.Errorf("seed %d: %v", seed, v)
			}
		}
	}
}

// TestQuickIsValidOnWarpedBoards does so for columns of boards that are not flat,
// not straight or too wide for the machines, with and without limits.
func TestQuickIsValidOnWarpedBoards(t *testing.T) {
	cut := 0
	for seed := range int64(20) {
		p := jobs.Warped(jobs.Size{Boards: 3, Kinds: 8, Pieces: 60}, seed)
		price := byVolume(p)
		limits := make([]int, len(price))
		for i := range p.Bill {
			limits[i] = p.Bill[i].Quantity
		}
		bench := new(Bench)
		for i := range p.Stock {
			cfg := Quick()
			cfg.Beside = (seed+int64(i))%2 == 1
			w := New(p, &p.Stock[i], cfg)
			roots := []*layout.Node{bench.Within(w, price, limits, 2).Root}
			if seed%5 == 0 {
				limited, _ := bench.BestLimited(w, price, limits, 20_000)
				roots = append(roots, limited.Root)
			}
			for _, root := range roots {
				if root == nil || !holdsPart(root) {
					continue
				}
				cut++
				for _, v := range check.Plan(layout.Assemble(p, []layout.BoardCut{{Board: p.Stock[i].Mark, Root: root}})) {
					t.Errorf("seed %d: %v", seed, v)
				}
			}
		}
	}
	if cut < 40 {
		t.Errorf("only %d columns hold a part", cut)
	}
}

func BenchmarkQuick(b *testing.B) {
	p := jobs.New(jobs.Size{Boards: 20, Kinds: 12, Pieces: 100}, 1)
	price := byVolume(p)
	var boards []*Board
	for i := range p.Stock {
		boards = append(boards, New(p, &p.Stock[i], Quick()))
	}
	bench := new(Bench)
	for b.Loop() {
		for _, w := range boards {
			bench.Best(w, price)
		}
	}
	b.ReportMetric(float64(b.Elapsed().Milliseconds())/float64(b.N)/float64(len(boards)), "ms/board")
}

func BenchmarkReady(b *testing.B) {
	p := jobs.New(jobs.Size{Boards: 20, Kinds: 12, Pieces: 100}, 1)
	for b.Loop() {
		for i := range p.Stock {
			New(p, &p.Stock[i], Quick())
		}
	}
	b.ReportMetric(float64(b.Elapsed().Milliseconds())/float64(b.N)/float64(len(p.Stock)), "ms/board")
}
