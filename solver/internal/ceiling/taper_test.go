package ceiling_test

import (
	"cmp"
	"fmt"
	"math/rand"
	"slices"
	"sort"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/ceiling"
)

// Under a slanting edge the best place of a part lies off every grid: as far towards the
// narrow end as its width allows, for then the offcut at the wide end is the longest.
func TestPartAtTheSlantingEdge(t *testing.T) {
	p := holeInOffcut()
	made := holdEdge(t, "by hand", p)
	turnRound(&p.Stock[0])
	if made += holdEdge(t, "turned round", p); made < 2 {
		t.Errorf("%d cuttings by hand were tried, want 2 or more", made)
	}
	for seed := range int64(60) {
		made += holdEdge(t, fmt.Sprint("seed ", seed), taperedJob(rand.New(rand.NewSource(seed))))
	}
	if made < 12 {
		t.Errorf("%d cuttings were tried, want 12 or more", made)
	}
}

// holdEdge holds the ceiling of a job's board against the cuttings that atTheEdge makes, and
// tells how many those were.
func holdEdge(t *testing.T, name string, p *layout.Problem) (made int) {
	t.Helper()
	var bench ceiling.Bench
	b, price := &p.Stock[0], []ceiling.Value{60e6}
	most, _ := bench.Most(ceiling.New(p, b), price, 0, 20e6, nil)
	for _, within := range []bool{false, true} {
		root := atTheEdge(p, within)
		if root == nil {
			continue
		}
		plan := layout.Assemble(p, []layout.BoardCut{{Board: b.Mark, Root: root}})
		if v := check.Plan(plan); len(v) > 0 {
			t.Fatalf("%s: %v", name, v)
		}
		made++
		if worth := price[0] + ceiling.Value(b.Cost-plan.Totals.Cost)*100; worth > most {
			t.Errorf("%s: part and offcuts are worth %d, above the ceiling %d", name, worth, most)
		}
	}
	return made
}

// holeInOffcut is a job whose best cutting has a hole near the end of a rough offcut, which
// ends between two marks.
func holeInOffcut() *layout.Problem {
	const step = layout.Inch / 64
	return &layout.Problem{
		Shop: layout.DefaultShop(layout.Inches),
		Stock: []layout.Board{{
			Mark: "B", Base: "B", Species: "ash", Cost: 50 * layout.Unity, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
			Thickness: layout.Inch, Width: 7 * layout.Inch, TipWidth: 7*layout.Inch - 5*step, Length: 50*layout.Inch + 24*step,
			Defects: []layout.Defect{{Kind: layout.Hole, Rect: layout.Rect{X1: 13*layout.Inch + 32*step, X2: 13*layout.Inch + 40*step, Y1: 3 * layout.Inch, Y2: 3*layout.Inch + 8*step}}},
		}},
		Bill: []layout.Part{{
			Name: "p", Species: []string{"ash"}, Quantity: 1, Grade: layout.Clear,
			Thickness: layout.Inch, Width: 7*layout.Inch - 4*step, Length: 26 * layout.Inch,
		}},
	}
}

// turnRound swaps the ends of a board.
func turnRound(b *layout.Board) {
	b.Width, b.TipWidth = b.TipWidth, b.Width
	for i := range b.Defects {
		r := &b.Defects[i].Rect
		r.X1, r.X2 = b.Length-r.X2, b.Length-r.X1
	}
}

// taperedJob is a board that narrows or widens by little, perhaps with a hole, and a part
// that is nearly as wide as its wide end.
func taperedJob(rng *rand.Rand) *layout.Problem {
	const step = layout.Inch / 64
	s := layout.DefaultShop(layout.Inches)
	s.EndTrim = layout.Length(rng.Intn(2)) * layout.Inch
	long, wide, less := 46*layout.Inch+layout.Length(rng.Intn(80))*layout.Inch/8, 7*layout.Inch, layout.Length(2+rng.Intn(30))*step
	b := layout.Board{
		Mark: "B", Base: "B", Species: "ash", Thickness: layout.Inch, Width: wide, TipWidth: wide - less, Length: long,
		Cost: 50 * layout.Unity, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
	}
	if rng.Intn(8) > 0 {
		x := long * layout.Length(rng.Intn(64)) / 64 / (layout.Inch / 8) * (layout.Inch / 8)
		b.Defects = []layout.Defect{{Kind: layout.Hole, Rect: layout.Rect{X1: x, X2: x + layout.Inch/8, Y1: 3 * layout.Inch, Y2: 4 * layout.Inch}}}
	}
	if rng.Intn(2) == 0 {
		turnRound(&b)
	}
	part := layout.Part{
		Name: "p", Species: []string{"ash"}, Quantity: 1, Thickness: layout.Inch, Grade: layout.Clear,
		Width: wide - layout.Length(1+rng.Intn(int(less/step)))*step, Length: layout.Length(22+rng.Intn(8)) * layout.Inch,
	}
	return &layout.Problem{Shop: s, Stock: []layout.Board{b}, Bill: []layout.Part{part}}
}

// atTheEdge is the cutting with the part as far as it goes and offcuts at both sides, that of
// the wide side in one strip with it or crosscut off before; nil where a defect is in the way
// of the part, or there is no room for an offcut.
func atTheEdge(p *layout.Problem, within bool) *layout.Node {
	s, b, q := p.Shop, &p.Stock[0], &p.Bill[0]
	at, ok := furthest(b, q)
	sound := layout.Span{Lo: s.EndTrim, Hi: b.Length - s.EndTrim}
	ok = ok && sound.Contains(at)
	for _, d := range b.Defects {
		ok = ok && !d.Rect.Grow(s.Clearance[d.Kind].Along, 0).Along().Overlaps(at)
	}
	before := layout.Span{Lo: 0, Hi: at.Lo - s.CrosscutKerf}
	behind := layout.Span{Lo: at.Hi + s.CrosscutKerf, Hi: b.Length}
	wide := &before
	if b.Width < b.TipWidth {
		wide = &behind
	}
	if !ok || wide.Len() < s.MinOffcutLength+s.EndTrim {
		return nil
	}
	blank := &layout.Node{Rect: b.Frame(), Cut: layout.Rip, Trued: true, Thickness: layout.Inch}
	part := &layout.Node{Rect: layout.Rect{X1: at.Lo, X2: at.Hi, Y2: q.Width}, Part: q.Name}
	blank.X1, blank.X2, blank.Children = at.Lo, at.Hi, []*layout.Node{part}
	if within {
		strip := &layout.Node{Rect: part.Rect, Cut: layout.Crosscut}
		wide.Lo, wide.Hi = max(wide.Lo, sound.Lo), min(wide.Hi, sound.Hi)
		strip.X1, strip.X2 = min(at.Lo, wide.Lo), max(at.Hi, wide.Hi)
		blank.X1, blank.X2, blank.Children = strip.X1, strip.X2, []*layout.Node{strip}
		strip.Children = inOrder(part, kept(strip.Rect, *wide, s))
		*wide = layout.Span{}
	}
	return &layout.Node{Rect: b.Frame(), Cut: layout.Crosscut, Children: inOrder(kept(b.Frame(), before, s), blank, kept(b.Frame(), behind, s))}
}

// kept is an offcut as wide as r; nil where it is too short.
func kept(r layout.Rect, along layout.Span, s *layout.Shop) *layout.Node {
	if along.Len() < s.MinOffcutLength {
		return nil
	}
	r.X1, r.X2 = along.Lo, along.Hi
	return &layout.Node{Rect: r, Offcut: "keep"}
}

// inOrder is the nodes that there are, as they lie along the board.
func inOrder(nodes ...*layout.Node) []*layout.Node {
	nodes = slices.DeleteFunc(nodes, func(n *layout.Node) bool { return n == nil })
	slices.SortFunc(nodes, func(a, b *layout.Node) int { return cmp.Compare(a.X1, b.X1) })
	return nodes
}

// furthest is where a part lies at last towards the narrow end.
func furthest(b *layout.Board, q *layout.Part) (at layout.Span, ok bool) {
	ends := func(n int) layout.Span {
		at := layout.Span{Lo: layout.Length(n), Hi: layout.Length(n) + q.Length}
		if b.Width < b.TipWidth {
			at = layout.Span{Lo: b.Length - at.Hi, Hi: b.Length - at.Lo}
		}
		return at
	}
	n := sort.Search(int(b.Length-q.Length), func(n int) bool { return b.FarMin(ends(n)) < q.Width })
	return ends(max(0, n-1)), n > 0
}
