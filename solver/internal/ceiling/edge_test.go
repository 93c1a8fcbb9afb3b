package ceiling

import (
	"math"
	"math/rand"
	"testing"

	"sawbill/layout"
)

// TestEnvelopeIsTheHighestLine holds the envelope against all its lines, with lines added
// while it is asked.
func TestEnvelopeIsTheHighestLine(t *testing.T) {
	for seed := range int64(300) {
		rng := rand.New(rand.NewSource(seed))
		var e envelope
		var lines [][2]float64
		slope, x := rng.Float64(), -10*rng.Float64()
		for range 1 + rng.Intn(60) {
			if rng.Intn(3) > 0 || e.empty() {
				slope += float64(rng.Intn(3)) * rng.Float64()
				lines = append(lines, [2]float64{slope, 20 * rng.NormFloat64()})
				e.add(slope, lines[len(lines)-1][1])
				continue
			}
			x += rng.Float64()
			want := math.Inf(-1)
			for _, l := range lines {
				want = max(want, l[0]*x+l[1])
			}
			if got := e.at(x); math.Abs(got-want) > 1e-9 {
				t.Fatalf("seed %d: at %v of %d lines it is %v, want %v", seed, x, len(lines), got, want)
			}
		}
	}
}

// TestEdgeOffcutsAreTheBest holds the best offcut under a slanting edge before every
// position against all that end there, on boards that narrow and that widen, and every one
// against what its wood is worth.
func TestEdgeOffcutsAreTheBest(t *testing.T) {
	tried := 0
	for seed := range int64(40) {
		rng := rand.New(rand.NewSource(seed))
		w, row := slantedRow(rng)
		if len(row.offcuts) == 0 || !row.offcuts[0].slants {
			continue
		}
		b := &Bench{w: w}
		first := rng.Intn(w.x.n / 2)
		tall := row.offcuts[len(row.offcuts)-1].most
		var o edgeOffcuts
		o.begin(b, row.offcuts, first)
		v := make([]Value, w.places()+1)
		for i := range v {
			if v[i] = none; i > first {
				v[i] = v[i-1]
			}
			if i >= first && rng.Intn(6) == 0 {
				v[i] = max(v[i], 0) + Value(rng.Intn(400_000))
			}
		}
		for i := first; i <= w.x.n; i += 1 + rng.Intn(3) {
			best := none
			for k := first; k <= i-o.gap; k++ {
				worth := o.worth(v, k, i)
				if v[k] < 0 || worth == none {
					continue
				}
				best = max(best, v[k]+worth)
				clean := w.wood.CleanOffcut(layout.Rect{
					X1: w.x.at(k), X2: w.x.at(i) - w.shop.CrosscutKerf, Y1: o.bands[0].low, Y2: o.bands[0].low + tall,
				})
				if sure := Value(w.shop.OffcutWorth(w.wood, clean)) * 100; w.shop.Keeps(clean) && worth < sure-100 {
					t.Fatalf("seed %d: the offcut from %d to %d counts %d, it is worth %d", seed, k, i, worth, sure)
				}
			}
			got := o.parts.endingAt(v, i)
			if best < 0 {
				best = max(best, got) // none of them, or one that nothing is known of
			}
			tried++
			if got < best-2 || got > best+2 {
				t.Fatalf("seed %d: before position %d the best is %d, want %d", seed, i, got, best)
			}
		}
	}
	if tried < 3000 {
		t.Errorf("only %d positions were tried", tried)
	}
}

// TestOffcutsAloneAreWorthNoMoreThanTheirWood holds what a strip is worth without a part
// against the most that its positions are taken to add, below which that is not worked out.
func TestOffcutsAloneAreWorthNoMoreThanTheirWood(t *testing.T) {
	slanted, level := 0, 0
	for seed := range int64(60) {
		rng := rand.New(rand.NewSource(seed))
		w, row := slantedRow(rng)
		if seed%3 == 0 { // the same strip where the far edge does not reach it
			row.offcuts = row.offcuts[max(0, len(row.offcuts)-1):]
			for i := range row.offcuts {
				row.offcuts[i].slants = false
			}
		}
		b := &Bench{w: w}
		first := rng.Intn(w.x.n / 2)
		b.bare = make([]Value, w.x.n+1)
		before, edge := b.newStripOffcuts(row, first)
		switch {
		case before != nil:
			level++
		case edge != nil:
			slanted++
		}
		for i := first; i <= w.x.n; i++ {
			b.layBare(before, edge, first, i)
			if most := Value(w.mostKept(row)*float64(i-first)) + 1; b.bare[i] > most {
				t.Fatalf("seed %d: offcuts up to position %d are worth %d, more than %d", seed, i, b.bare[i], most)
			}
		}
	}
	if slanted < 10 || level < 10 {
		t.Errorf("only %d strips under a slanting edge and %d others were tried", slanted, level)
	}
}

// slantedRow is a board that narrows or widens, perhaps with defects, and a strip into
// which its far edge cuts.
func slantedRow(rng *rand.Rand) (*Board, *row) {
	const mm = layout.Millimetre
	s := layout.DefaultShop(layout.Millimetres)
	b := &layout.Board{
		Mark: "B", Base: "B", Species: "ash", Cost: 40 * layout.Unity, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
		Thickness: 25 * mm, Length: layout.Length(700+rng.Intn(400)) * mm, Width: 220 * mm,
	}
	b.TipWidth = b.Width - layout.Length(10+rng.Intn(80))*mm
	if rng.Intn(2) == 0 {
		b.Width, b.TipWidth = b.TipWidth, b.Width
	}
	for range rng.Intn(3) {
		x, y := layout.Length(rng.Intn(800))*mm, layout.Length(60+rng.Intn(60))*mm
		b.Defects = append(b.Defects, layout.Defect{Kind: layout.Knot, Rect: layout.Rect{X1: x, X2: x + 40*mm, Y1: y, Y2: y + 25*mm}})
	}
	p := &layout.Problem{Shop: s, Stock: []layout.Board{*b}, Bill: []layout.Part{{
		Name: "p", Species: []string{"ash"}, Quantity: 1, Grade: layout.Clear, Thickness: 25 * mm, Width: 50 * mm, Length: 300 * mm,
	}}}
	w := New(p, &p.Stock[0])
	l := &w.lanes[len(w.lanes)-1]
	h := l.heights[len(l.heights)-1-rng.Intn(len(l.heights)/2)]
	j := w.y.down(layout.Length(20+rng.Intn(100)) * mm)
	return w, &row{lane: l, offcuts: w.offcutsOf(l, h, []int{j})}
}
