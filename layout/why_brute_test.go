package layout_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/check"
)

const mm = layout.Millimetre

// A board could give a piece exactly where the checker passes some plan that cuts
// it: every blank, every rough rip and every place of the piece on a grid of
// millimetres is tried on small boards.
func TestWhyAgainstEveryPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		said := strings.Contains(layout.Assemble(p, nil).Missing[0].Why, "could give one")
		if found := placed(p); (found != nil) != said {
			t.Fatalf("said that it could be given: %v; a plan that passes: %+v\nshop %+v\nboard %+v\npart %+v",
				said, found, *p.Shop, p.Stock[0], p.Bill[0])
		}
	})
}

func drawProblem(t *rapid.T) *layout.Problem {
	upTo := func(name string, lo, hi int) layout.Length {
		return layout.Length(rapid.IntRange(lo, hi).Draw(t, name)) * mm
	}
	s := layout.DefaultShop(layout.Millimetres)
	s.RoughRipKerf, s.RipKerf, s.CrosscutKerf = mm, mm, mm
	s.EndTrim, s.EdgeJoint, s.EndSquare, s.FaceSkim = upTo("trim", 0, 1), upTo("joint", 0, 1), upTo("square", 0, 1), 0
	s.Snipe, s.MinBlank, s.MinRipLength = upTo("snipe", 0, 1), upTo("min blank", 0, 7), upTo("min rip", 0, 5)
	s.JointerWidth = rapid.SampledFrom([]layout.Length{0, 0, 3 * mm, 4 * mm}).Draw(t, "jointer")
	s.Clearance = map[layout.Kind]layout.Clearance{layout.Check: {Along: mm}}
	b := layout.Board{
		Mark: "P", Base: "P", Species: "elm", Thickness: 4 * mm, Length: upTo("length", 6, 9), Width: upTo("width", 3, 5),
		Bow:   rapid.SampledFrom([]layout.Length{0, 0, 2 * mm}).Draw(t, "bow"),
		Crook: rapid.SampledFrom([]layout.Length{0, 0, mm}).Draw(t, "crook"),
		Edges: rapid.SampledFrom([]layout.Edges{layout.EdgesRough, layout.EdgesOne, layout.EdgesBoth}).Draw(t, "edges"),
		Faces: rapid.SampledFrom([]layout.Faces{layout.FacesRough, layout.FacesPlaned}).Draw(t, "faces"),
	}
	b.TipWidth = b.Width
	// Of a tapered and cupped board the narrow end may be the thicker one.
	if rapid.Bool().Draw(t, "tapered") {
		b.TipWidth = upTo("tip", 3, 5)
	} else {
		b.Cup = rapid.SampledFrom([]layout.Length{0, 2 * mm}).Draw(t, "cup")
		b.Twist = rapid.SampledFrom([]layout.Length{0, 2 * mm}).Draw(t, "twist")
	}
	for range rapid.IntRange(0, 2).Draw(t, "defects") {
		x, y := upTo("x", 0, 6), upTo("y", 0, 2)
		b.Defects = append(b.Defects, layout.Defect{
			Kind: rapid.SampledFrom([]layout.Kind{layout.Knot, layout.Check, layout.Metal}).Draw(t, "kind"),
			Face: rapid.SampledFrom([]layout.Face{layout.Through, layout.FaceA, layout.FaceB}).Draw(t, "face"),
			Rect: layout.Rect{X1: x, X2: x + upTo("long", 1, 3), Y1: y, Y2: y + upTo("wide", 1, 2)}.Intersect(b.Frame()),
		})
	}
	part := layout.Part{
		Name: "rail", Species: []string{"elm"}, Quantity: 1, Length: upTo("part length", 2, 6), Width: upTo("part width", 1, 3),
		Thickness: upTo("part thickness", 1, 4), OnEdge: rapid.Bool().Draw(t, "on edge"),
		Grade: rapid.SampledFrom([]string{layout.Clear, layout.OneFace}).Draw(t, "grade"),
	}
	return &layout.Problem{Shop: s, Stock: []layout.Board{b}, Bill: []layout.Part{part}}
}

// placed is a tree of cuts that gives the part and that the checker passes, or nil.
func placed(p *layout.Problem) *layout.Node {
	b, part := &p.Stock[0], &p.Bill[0]
	for length := mm; length <= b.Length; length += mm {
		heights := grid(b.FullWidth(), b.Shift(length))
		for x := layout.Length(0); x+length <= b.Length; x += mm {
			for _, y1 := range heights {
				for _, y2 := range heights {
					blank := layout.Rect{X1: x, X2: x + length, Y1: y1, Y2: y2}
					if y1 >= y2 {
						continue
					}
					if tree := placedIn(p, blank, leafOf(part, false)); tree != nil {
						return tree
					}
					if tree := placedIn(p, blank, leafOf(part, true)); tree != nil {
						return tree
					}
				}
			}
		}
	}
	return nil
}

// grid are the whole millimetres up to width, and those from shift.
func grid(width, shift layout.Length) []layout.Length {
	var list []layout.Length
	for y := layout.Length(0); y <= width; y += mm {
		list = append(list, y)
		if shift > 0 && y+shift <= width {
			list = append(list, y+shift)
		}
	}
	return list
}

// leafOf is a piece of the part at the origin, with face A up.
func leafOf(part *layout.Part, onEdge bool) layout.Node {
	wide := part.Width
	if onEdge {
		wide = part.Thickness
	}
	return layout.Node{Rect: layout.Rect{X2: part.Length, Y2: wide}, Part: part.Name, OnEdge: onEdge}
}

func placedIn(p *layout.Problem, blank layout.Rect, piece layout.Node) *layout.Node {
	b, part := &p.Stock[0], &p.Bill[0]
	if piece.OnEdge && !part.OnEdge {
		return nil
	}
	in := p.Shop.Usable(b, blank)
	for x := in.X1; x+piece.X2 <= in.X2; x += mm {
		for y := in.Y1; y+piece.Y2 <= in.Y2; y += mm {
			for _, show := range []layout.Face{layout.FaceA, layout.FaceB} {
				leaf := piece
				leaf.Show = show
				leaf.Rect = layout.Rect{X1: x, X2: x + piece.X2, Y1: y, Y2: y + piece.Y2}
				tree := treeOf(p, blank, in, &leaf)
				if len(check.Plan(layout.Assemble(p, []layout.BoardCut{{Board: "P", Root: tree}}))) == 0 {
					return tree
				}
			}
		}
	}
	return nil
}

// treeOf cuts a leaf out of a blank, ripped rough where it is narrower than the
// board.
func treeOf(p *layout.Problem, blank, usable layout.Rect, leaf *layout.Node) *layout.Node {
	strip := &layout.Node{
		Rect: layout.Rect{X1: usable.X1, X2: usable.X2, Y1: leaf.Y1, Y2: leaf.Y2}, Cut: layout.Crosscut, Children: []*layout.Node{leaf},
	}
	trued := &layout.Node{
		Rect: blank, Trued: true, Thickness: p.Shop.NeedOf(leaf, &p.Bill[0]), Cut: layout.Rip, Children: []*layout.Node{strip},
	}
	frame := p.Stock[0].Frame()
	root := &layout.Node{Rect: frame, Cut: layout.Crosscut, Children: []*layout.Node{trued}}
	if blank.Y1 > 0 || blank.Y2 < frame.Y2 {
		rough := &layout.Node{Rect: layout.Rect{X1: blank.X1, X2: blank.X2, Y2: frame.Y2}, Cut: layout.Rip, Children: []*layout.Node{trued}}
		root.Children[0] = rough
	}
	return root
}
