package render

import (
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
)

// unevenPlans are plans made by hand of wood that is bent, or cut otherwise than
// flat and square.
func unevenPlans() map[string]*layout.Plan {
	plans := map[string]*layout.Plan{
		"staves": staves(), "panels": panels(), "warped": warped(), "hexagon": hexagon(), "crooked-mm": crookedMM(),
		"staves-again": stavesAgain(),
	}
	for _, plan := range plans {
		for i := range plan.Problem.Bill {
			plan.Problem.Bill[i].Grade = layout.Clear
		}
	}
	return plans
}

// trued is a blank with strips that run its usable length.
func trued(blank layout.Rect, thickness layout.Length, strips ...*layout.Node) *layout.Node {
	return &layout.Node{Rect: blank, Cut: layout.Rip, Trued: true, Thickness: thickness, Children: strips}
}

// strip is a strip from which leaves are crosscut one after the other.
func strip(along layout.Span, y1, y2, lean, kerf layout.Length, leaves ...*layout.Node) *layout.Node {
	n := &layout.Node{Rect: box(along.Lo, along.Hi, y1, y2), Cut: layout.Crosscut, Lean: lean}
	x := along.Lo
	for _, leaf := range leaves {
		leaf.Rect = box(x, x+leaf.X2, y1, y2)
		x = leaf.X2 + kerf
		leaf.Lean = lean
		n.Children = append(n.Children, leaf)
	}
	return n
}

func long(part string, length layout.Length) *layout.Node {
	return &layout.Node{Rect: layout.Rect{X2: length}, Part: part}
}

// staves are three strips at 22.5 degrees and a square lath beside them.
func staves() *layout.Plan {
	const e = in / 8
	shop := layout.DefaultShop(layout.Inches)
	bevel := 45 * layout.Degree / 2
	stave := layout.Part{Name: "stave", Species: []string{"sweet chestnut"}, Thickness: 6 * e, Width: in + 2*e, Length: 18 * in, Quantity: 6, Bevel: bevel}
	lean, kerf := stave.Lean(), shop.BevelKerf(bevel)
	along := layout.Span{Lo: in + 2*e, Hi: 39*in - 2*e}
	y := 3 * e
	var strips []*layout.Node
	for range 3 {
		strips = append(strips, strip(along, y, y+stave.Width, lean, shop.CrosscutKerf, long("stave", 18*in), long("stave", 18*in)))
		y += stave.Width + kerf
	}
	strips = append(strips, strip(along, 42*e, 46*e, 0, shop.CrosscutKerf, long("lath", 37*in)))
	bill := []layout.Part{stave, peg("lath", 4*e, 37*in, 1)}
	return onePlan(shop, board("B4", 6*in, 40*in), bill, trued(box(in, 39*in, 0, 6*in), 6*e, strips...))
}

// stavesAgain is a square strip of which one length is ripped again, into a square lath and
// two leaning staves.
func stavesAgain() *layout.Plan {
	const e = in / 8
	shop := layout.DefaultShop(layout.Inches)
	bevel := 30 * layout.Degree
	stave := layout.Part{Name: "stave", Species: []string{"sweet chestnut"}, Thickness: 6 * e, Width: in, Length: 18 * in, Quantity: 2, Bevel: bevel}
	lean, kerf := stave.Lean(), shop.BevelKerf(bevel)
	along := layout.Span{Lo: in + 2*e, Hi: 39*in - 2*e}
	again := &layout.Node{Rect: layout.Rect{X2: 18 * in}, Cut: layout.Rip}
	s := strip(along, e, 33*e, 0, shop.CrosscutKerf, again, long("panel", 18*in))
	for _, p := range []struct {
		part     string
		y1, wide layout.Length
		lean     layout.Length
	}{{"lath", e, 4 * e, 0}, {"stave", 5*e + kerf, in, lean}, {"stave", 5*e + in + 2*kerf, in, lean}} {
		again.Children = append(again.Children, &layout.Node{Rect: box(again.X1, again.X2, p.y1, p.y1+p.wide), Part: p.part, Lean: p.lean})
	}
	bill := []layout.Part{stave, peg("lath", 4*e, 18*in, 1), peg("panel", 4*in, 18*in, 1)}
	return onePlan(shop, board("B6", 6*in, 40*in), bill, trued(box(in, 39*in, 0, 6*in), 6*e, s))
}

// hexagon are narrow bevelled strips, many beside each other.
func hexagon() *layout.Plan {
	shop := layout.DefaultShop(layout.Millimetres)
	const mm = layout.Millimetre
	bevel := 30 * layout.Degree
	part := layout.Part{Name: "rhomb", Species: []string{"sweet chestnut"}, Thickness: 30 * mm, Width: 34640 * layout.Micrometre, Length: 700 * mm, Quantity: 9, Bevel: bevel}
	lean, kerf := part.Lean(), shop.BevelKerf(bevel)
	b := board("X7", 210*mm, 800*mm)
	b.Thickness = 40 * mm
	along := layout.Span{Lo: 31 * mm, Hi: 769 * mm}
	var strips []*layout.Node
	for y := 3*mm + kerf; y+part.Width+lean+kerf <= 207*mm; y += part.Width + kerf {
		strips = append(strips, strip(along, y, y+part.Width, lean, shop.CrosscutKerf, long("rhomb", 700*mm)))
	}
	return onePlan(shop, b, []layout.Part{part}, trued(box(25*mm, 775*mm, 0, 210*mm), 30*mm, strips...))
}

// panels are resawn, three from one piece, beside slips on edge.
func panels() *layout.Plan {
	const e = in / 8
	shop := layout.DefaultShop(layout.Inches)
	panel := layout.Part{Name: "drawer-bottom", Species: []string{"sweet chestnut"}, Thickness: 2 * e, Width: 3 * in, Length: 18 * in, Quantity: 6, Resaw: true}
	slip := layout.Part{Name: "slip", Species: []string{"sweet chestnut"}, Thickness: 6 * e, Width: in + 5*in/16, Length: 18 * in, Quantity: 2, OnEdge: true}
	along := layout.Span{Lo: in + 2*e, Hi: 39*in - 2*e}
	layered := func() *layout.Node {
		n := long("drawer-bottom", 18*in)
		n.Layers = 3
		return n
	}
	edge := func() *layout.Node {
		n := long("slip", 18*in)
		n.OnEdge = true
		return n
	}
	b := board("P3", 5*in, 40*in)
	b.Thickness = 2 * in
	return onePlan(shop, b, []layout.Part{panel, slip}, trued(box(in, 39*in, 0, 5*in), in+5*in/16,
		strip(along, e, 25*e, 0, shop.CrosscutKerf, layered(), layered()), strip(along, 26*e, 32*e, 0, shop.CrosscutKerf, edge(), edge())))
}

// warped is wider than the machines and bent every way: rough-ripped in two, then
// trued; the other half is kept. A short blank beyond finishes thicker.
func warped() *layout.Plan {
	const e = in / 8
	shop := layout.DefaultShop(layout.Inches)
	shop.JointerWidth, shop.PlanerWidth = 8*in, 12*in
	b := board("W9", 11*in, 96*in)
	b.Thickness, b.Bow, b.Crook, b.Cup, b.Twist = 2*in, 4*e, in, 2*e, 2*e
	b.Defects = []layout.Defect{{Kind: layout.Shake, Rect: box(20*in, 26*in, 6*in, 7*in)}}
	rail := layout.Part{Name: "rail", Species: []string{"sweet chestnut"}, Thickness: 12 * e, Width: 2 * in, Length: 40 * in, Quantity: 2}
	foot := layout.Part{Name: "foot", Species: []string{"sweet chestnut"}, Thickness: 13 * e, Width: 3 * in, Length: 20 * in, Quantity: 2}
	near := box(in, 49*in, 0, 5*in)
	u := shop.Usable(&b, near)
	halves := &layout.Node{Rect: box(in, 49*in, 0, 11*in), Cut: layout.Rip, Children: []*layout.Node{
		trued(near, 12*e, strip(u.Along(), u.Y1, u.Y1+2*in, 0, shop.CrosscutKerf, long("rail", 40*in)),
			strip(u.Along(), u.Y1+2*in+e, u.Y1+4*in+e, 0, shop.CrosscutKerf, long("rail", 40*in))),
		{Rect: box(in, 49*in, 5*in+e, 11*in), Offcut: "?"},
	}}
	short := box(50*in, 74*in, 0, 7*in)
	u = shop.Usable(&b, short)
	feet := &layout.Node{Rect: box(50*in, 74*in, 0, 11*in), Cut: layout.Rip, Children: []*layout.Node{
		trued(short, 13*e, strip(u.Along(), u.Y1, u.Y1+3*in, 0, shop.CrosscutKerf, long("foot", 20*in)),
			strip(u.Along(), u.Y1+3*in+e, u.Y1+6*in+e, 0, shop.CrosscutKerf, long("foot", 20*in))),
	}}
	return onePlan(shop, b, []layout.Part{rail, foot}, halves, feet)
}

// crookedMM is a crooked, tapered board in millimetres, in short blanks.
func crookedMM() *layout.Plan {
	shop := layout.DefaultShop(layout.Millimetres)
	const mm = layout.Millimetre
	b := board("K2", 160*mm, 2400*mm)
	b.Thickness, b.Crook, b.Bow, b.TipWidth = 34*mm, 24*mm, 9*mm, 140*mm
	slat := layout.Part{Name: "slat", Species: []string{"sweet chestnut"}, Thickness: 26 * mm, Width: 60 * mm, Length: 700 * mm, Quantity: 4}
	var blanks []*layout.Node
	for _, x := range []layout.Length{25 * mm, 803 * mm} {
		blank := box(x, x+775*mm, 0, 160*mm)
		u := shop.Usable(&b, blank)
		blanks = append(blanks, trued(blank, 26*mm, strip(u.Along(), u.Y1, u.Y1+60*mm, 0, shop.CrosscutKerf, long("slat", 700*mm)),
			strip(u.Along(), u.Y1+63*mm, u.Y1+123*mm, 0, shop.CrosscutKerf, long("slat", 700*mm))))
	}
	return onePlan(shop, b, []layout.Part{slat}, blanks...)
}

func TestUnevenPlansAreValid(t *testing.T) {
	for name, plan := range unevenPlans() {
		for _, v := range check.Plan(plan) {
			t.Errorf("%s: %v", name, v)
		}
	}
}

func TestSheetsSayWhatUnevenWoodNeeds(t *testing.T) {
	for _, c := range []struct {
		what string
		plan *layout.Plan
		want []string
	}{
		{"staves", staves(), []string{
			"Blade 22.5° from square, B leans out by ~5/16", "face A", "face B", "Settings are read at the table", "never end for end",
			"bevel rip 22.5°, face B down", "bevel rip 22.5°, face A down", "fence without a gap",
		}},
		{"staves of a length", stavesAgain(), []string{
			"Section of B6-1/1", "Blade 30° from square, B leans out by ~7/16", "B down", "A down", "bevel rip 30°, face B down",
		}},
		{"panels", panels(), []string{
			"Truing takes of 2: two rough faces 3/16. It can finish to 1-13/16 and is planed to 1-5/16.",
			"P3-1a, 18 x 3 x 1-1/4: set 11/32", "joint the sawn face flat, 3/32 off", "on edge", "resaw 1/16",
		}},
		{"warped", warped(), []string{
			"Over the whole board: bow 1/2, crook 1, cup 1/4, twist 1/4.", "is 11 wide, and the machines take 8",
			"corners of the hollow reference edge", "bow 1/8", "joint the hollow reference edge straight, 3/8 off its ends and 1/8 off its middle",
		}},
	} {
		text := boardText(t, c.plan)
		for _, want := range c.want {
			if !strings.Contains(text, want) {
				t.Errorf("%s: no %q in %q", c.what, want, text)
			}
		}
	}
}
