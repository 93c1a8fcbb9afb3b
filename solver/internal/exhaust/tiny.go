package exhaust

import (
	"fmt"
	"math/rand"

	"sawbill/layout"
)

// TinyUnit is the grid of the jobs that Tiny makes.
const TinyUnit = layout.Inch

// Tiny makes a random job small enough to try every plan: one to three boards of
// 5 to 12 by 2 to 6 inches and one to three kinds of part, everything in whole
// inches, with whatever a shop can ask for turned on by chance. Same seed, same
// job. A board without taper credits its offcuts with a whole number of
// ten-thousandths a square inch, so that nothing is lost in rounding.
func Tiny(seed int64) *layout.Problem {
	d := dice{rand.New(rand.NewSource(seed))}
	p := &layout.Problem{Shop: d.shop(), Yard: d.chance(2)}
	for i := range 1 + d.Intn(3) {
		p.Stock = append(p.Stock, d.board(fmt.Sprint("B", i+1)))
	}
	for i := range 1 + d.Intn(3) {
		p.Bill = append(p.Bill, d.part(fmt.Sprint("part-", i+1), p.Stock))
	}
	return p
}

// dice draws what a tiny job is made of.
type dice struct{ *rand.Rand }

// chance is true once in n times.
func (d dice) chance(n int) bool { return d.Intn(n) == 0 }

// one draws one of some numbers of inches.
func (d dice) one(inches ...int) layout.Length {
	return layout.Length(inches[d.Intn(len(inches))]) * TinyUnit
}

// from draws a whole number of inches from lo to hi.
func (d dice) from(lo, hi int) layout.Length {
	return layout.Length(lo+d.Intn(hi-lo+1)) * TinyUnit
}

func (d dice) shop() *layout.Shop {
	s := layout.DefaultShop(layout.Inches)
	s.RipKerf, s.CrosscutKerf, s.RoughRipKerf = d.one(0, 0, 1), d.one(0, 1), d.one(0, 1)
	s.EndTrim, s.EdgeJoint, s.EndSquare = d.one(0, 0, 1), d.one(0, 0, 1), d.one(0, 0, 1)
	s.Snipe, s.FaceSkim = d.one(0, 0, 0, 1), TinyUnit
	s.MinBlank, s.MaxBlank = d.one(0, 3, 5), d.one(0, 0, 8)
	s.MinRipLength = d.one(0, 2, 4)
	s.MinOffcutLength, s.MinOffcutWidth = d.one(2, 4), d.one(1, 2)
	s.OffcutCredit = layout.CreditUnity / 10 * layout.Credit([]int{0, 6, 6, 9}[d.Intn(4)])
	s.RipAgain = !d.chance(3)
	s.Clearance = map[layout.Kind]layout.Clearance{
		layout.Check: {Along: d.one(0, 1)},
		layout.Metal: {Along: d.one(0, 1), Across: d.one(0, 1)},
	}
	return s
}

func (d dice) board(mark string) layout.Board {
	b := layout.Board{
		Mark: mark, Base: mark, Species: []string{"ash", "ash", "ash", "elm"}[d.Intn(4)],
		Thickness: 8 * TinyUnit, Width: d.from(2, 6), Length: d.from(5, 12),
		Edges: layout.Edges(d.Intn(3)), Faces: layout.Faces(d.Intn(2)),
		Source: []layout.Source{layout.Rack, layout.Rack, layout.Rack, layout.Yard}[d.Intn(4)],
	}
	b.TipWidth = b.Width
	if d.chance(4) {
		b.TipWidth = d.from(2, 6)
	}
	for range d.Intn(4) {
		b.Defects = append(b.Defects, d.defect(b.Frame()))
	}
	square := int64(b.Length/TinyUnit) * int64((b.Width+b.TipWidth)/TinyUnit)
	b.Cost = layout.Money(square * int64(100*(3+d.Intn(5)))) // so much for half a square inch
	return b
}

func (d dice) defect(frame layout.Rect) layout.Defect {
	kinds := []layout.Kind{layout.Knot, layout.Knot, layout.Stain, layout.Hole, layout.Check, layout.Metal}
	x, y := d.from(0, int(frame.X2/TinyUnit)-1), d.from(0, int(frame.Y2/TinyUnit)-1)
	r := layout.Rect{X1: x, X2: x + d.one(1, 1, 2), Y1: y, Y2: y + d.one(1, 1, 2)}
	return layout.Defect{Kind: kinds[d.Intn(len(kinds))], Face: layout.Face(d.Intn(3)), Rect: r.Intersect(frame)}
}

func (d dice) part(name string, stock []layout.Board) layout.Part {
	p := layout.Part{
		Name: name, Species: []string{"ash"}, Quantity: 1 + d.Intn(3),
		Thickness: d.one(6, 6, 5, 8), Width: d.from(1, 3), Length: d.from(2, 6),
		Grade:    []string{layout.Clear, layout.OneFace, layout.Sound}[d.Intn(3)],
		Priority: []int{0, 0, 1, 2}[d.Intn(4)],
	}
	if d.chance(3) {
		p.Species = append(p.Species, "elm")
	}
	if d.chance(8) {
		p.NotFrom = []string{stock[d.Intn(len(stock))].Mark}
	}
	return p
}
