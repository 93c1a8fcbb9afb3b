package render

import (
	"fmt"

	"sawbill/layout"
)

// crowdedPlans are plans made by hand that are hard to draw.
func crowdedPlans() map[string]*layout.Plan {
	return map[string]*layout.Plan{
		"forty-pegs":  fortyPegs(),
		"ten-inch":    tenInch(),
		"taper":       taper(),
		"defects":     twelveDefects(),
		"long-names":  longNames(),
		"narrow-end":  narrowEnd(),
		"short":       shortOfAll(),
		"nothing-cut": {Problem: layout.Problem{Shop: layout.DefaultShop(layout.Inches)}, Job: "empty"},
	}
}

const in = layout.Inch

func box(x1, x2, y1, y2 layout.Length) layout.Rect {
	return layout.Rect{X1: x1, X2: x2, Y1: y1, Y2: y2}
}

func board(mark string, width, length layout.Length) layout.Board {
	return layout.Board{
		Mark: mark, Base: mark, Species: "sweet chestnut", Thickness: in, Width: width, TipWidth: width, Length: length,
		Place: "long rack, bay 3", Cost: 24 * layout.Unity,
	}
}

func onePlan(shop *layout.Shop, b layout.Board, bill []layout.Part, blanks ...*layout.Node) *layout.Plan {
	p := &layout.Problem{Shop: shop, Stock: []layout.Board{b}, Bill: bill}
	root := &layout.Node{Rect: b.Frame(), Cut: layout.Crosscut, Children: blanks}
	plan := layout.Assemble(p, []layout.BoardCut{{Board: b.Mark, Root: root}})
	plan.Job = "potting bench"
	return plan
}

func peg(name string, width, length layout.Length, quantity int) layout.Part {
	return layout.Part{
		Name: name, Species: []string{"sweet chestnut"}, Thickness: 3 * in / 4, Width: width, Length: length,
		Quantity: quantity, Grade: layout.Clear,
	}
}

// grid is a blank cut into strips and those into equal parts, all named name.
func grid(shop *layout.Shop, b *layout.Board, x1, x2 layout.Length, name string, width, length layout.Length) *layout.Node {
	n := &layout.Node{Rect: box(x1, x2, 0, b.FullWidth()), Trued: true, Thickness: 3 * in / 4, Cut: layout.Rip}
	u := shop.Usable(b, n.Rect)
	most := b.FarMin(layout.Span{Lo: x1, Hi: x2}) - shop.EdgeJoint
	for y := u.Y1; y+width <= min(u.Y2, most); y += width + shop.RipKerf {
		strip := &layout.Node{Rect: box(u.X1, u.X2, y, y+width), Cut: layout.Crosscut}
		for x := u.X1; x+length <= u.X2; x += length + shop.CrosscutKerf {
			strip.Children = append(strip.Children, &layout.Node{Rect: box(x, x+length, y, y+width), Part: name, Show: layout.FaceB})
		}
		n.Children = append(n.Children, strip)
	}
	return n
}

// fortyPegs is a board of 14 ft in one blank with forty small parts.
func fortyPegs() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	b := board("C14", 4*in+in/2, 168*in)
	return onePlan(shop, b, []layout.Part{peg("peg", 2*in, 8*in, 40)}, grid(shop, &b, in, 167*in, "peg", 2*in, 8*in))
}

// tenInch is an offcut ten inches square.
func tenInch() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	shop.EndTrim = 0
	b := board("C2-K3", 10*in, 10*in)
	b.Faces, b.Edges, b.Thickness = layout.FacesPlaned, layout.EdgesOne, 3*in/4
	return onePlan(shop, b, []layout.Part{peg("wedge", in/2, 4*in, 60)}, grid(shop, &b, 0, 10*in, "wedge", in/2, 4*in))
}

// taper is a board that is wider at the tip, with a kept offcut.
func taper() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	b := board("T1", 5*in, 60*in)
	b.TipWidth = 9 * in
	keep := &layout.Node{Rect: box(41*in, 59*in, 0, 9*in), Offcut: "?"}
	return onePlan(shop, b, []layout.Part{peg("rail", in, 15*in, 12)}, grid(shop, &b, in, 40*in, "rail", in, 15*in), keep)
}

// twelveDefects has a defect of each of many kinds close together.
func twelveDefects() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	b := board("D12", 8*in, 80*in)
	for i, kind := range append(layout.SoundKinds(), layout.UnsoundKinds()[:6]...) {
		x := layout.Length(2+i*5) * in / 1
		y := layout.Length(i%4) * 2 * in
		b.Defects = append(b.Defects, layout.Defect{Kind: kind, Face: layout.Face(i % 3), Rect: box(x, x+in, y, y+3*in/2)})
	}
	return onePlan(shop, b, []layout.Part{peg("batten", 7*in/4, 11*in, 30)},
		grid(shop, &b, in, 40*in, "batten", 7*in/4, 11*in), grid(shop, &b, 40*in+in/8, 79*in, "batten", 7*in/4, 11*in))
}

// narrowEnd has short blanks with long names at its tip, and rough rips.
func narrowEnd() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	b := board("behind-the-stove-7", 9*in, 150*in)
	keep := &layout.Node{Rect: box(136*in, 148*in+in/2, 0, 9*in), Cut: layout.Rip}
	for _, y := range []layout.Length{0, 3*in + in/8, 6*in + in/4} {
		keep.Children = append(keep.Children, &layout.Node{Rect: box(keep.X1, keep.X2, y, y+2*in), Offcut: "?"})
	}
	return onePlan(shop, b, []layout.Part{peg("spindle", in, 11*in, 90), peg("stay", in, 40*in, 9)},
		grid(shop, &b, in, 100*in, "stay", in, 40*in),
		grid(shop, &b, 101*in, 113*in, "spindle", in, 11*in), grid(shop, &b, 120*in, 132*in, "spindle", in, 11*in), keep)
}

// longNames has a mark, a species, a place, a note and a part that run on.
func longNames() *layout.Plan {
	shop := layout.DefaultShop(layout.Millimetres)
	const mm = layout.Millimetre
	b := board("bought-from-the-old-mill-2019", 180*mm, 1500*mm)
	b.Thickness = 27 * mm
	b.Species = "wild service tree from the far side of the valley"
	b.Place = "behind the door, second bearer from the top, under the tarpaulin"
	b.Note = "the sawyer said that this one had stood beside a fence for eighty years, so look for staples before anything touches it"
	name := "left-hand-front-drawer-runner-with-the-long-tongue"
	part := layout.Part{
		Name: name, Species: []string{b.Species}, Thickness: 19 * mm, Width: 25 * mm, Length: 320 * mm, Quantity: 40, Grade: layout.Sound,
	}
	plan := onePlan(shop, b, []layout.Part{part}, grid(shop, &b, 25*mm, 1475*mm, name, 25*mm, 320*mm))
	plan.Job = fmt.Sprint("a chest of many small drawers for seeds, string and labels, ", "second attempt after the flood of last spring")
	return plan
}
