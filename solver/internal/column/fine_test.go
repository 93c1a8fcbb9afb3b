package column

import (
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/jobs"
)

// stickJob is a planed bar of 2400 by 40 mm, kerf 3 mm, and parts as wide as it.
func stickJob(lengths ...layout.Length) (*layout.Problem, []Value) {
	s := layout.DefaultShop(layout.Millimetres)
	s.EndTrim, s.MinBlank, s.MinRipLength, s.OffcutCredit = 0, 0, 0, 0
	const mm = layout.Millimetre
	p := &layout.Problem{Shop: s, Stock: []layout.Board{{
		Mark: "B", Base: "B", Species: "oak", Thickness: 20 * mm, Length: 2400 * mm, Width: 40 * mm, TipWidth: 40 * mm,
		Edges: layout.EdgesBoth, Faces: layout.FacesPlaned, Cost: layout.Unity,
	}}}
	var price []Value
	for i, l := range lengths {
		p.Bill = append(p.Bill, layout.Part{
			Name: string(rune('a' + i)), Species: []string{"oak"}, Grade: layout.Clear, Quantity: 9,
			Thickness: 20 * mm, Width: 40 * mm, Length: l * mm,
		})
		price = append(price, Value(l))
	}
	return p, price
}

// TestQuickMeetsMillimetres fills a bar to the last millimetre: 799 + 3 + 797 + 3 +
// 798 = 2400. On a grid of 2 mm each of the three would take up to 1 mm more.
func TestQuickMeetsMillimetres(t *testing.T) {
	p, price := stickJob(799, 797, 798, 511, 613, 907, 1001)
	w := New(p, &p.Stock[0], Quick())
	if w.exact() {
		t.Fatal("the bar is small enough to try every position, and says nothing of the quick grid")
	}
	if c := new(Bench).Best(w, price).Value; c != 2394 {
		t.Errorf("the bar is filled by %d mm of parts, 2394 are possible", c)
	}
}

// BenchmarkQuickPlain prices the clean bars and panels of small jobs, which have
// the finest grids.
func BenchmarkQuickPlain(b *testing.B) {
	var boards []*Board
	var prices [][]Value
	for _, j := range append(jobs.Bars(), jobs.Panels()...) {
		boards = append(boards, New(j.Problem, &j.Problem.Stock[0], Quick()))
		prices = append(prices, byVolume(j.Problem))
	}
	bench := new(Bench)
	for b.Loop() {
		for i, w := range boards {
			bench.Best(w, prices[i])
		}
	}
	b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N)/float64(len(boards)), "µs/board")
}
