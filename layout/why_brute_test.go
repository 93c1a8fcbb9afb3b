package layout_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/check"
)

const mm = layout.Millimetre

// What a real-valued rule moves by is rounded on the safe side, and the checker
// allows a micrometre for it: so much smaller is a piece that is sure to be found.
const rounded = 2 * layout.Micrometre

// A board could give a piece exactly where the checker passes some plan that cuts
// it: every blank, every rough rip and every place of the piece on a grid of
// millimetres is tried on small boards.
func TestWhyAgainstEveryPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		said, found := couldGive(p, 0), placed(p)
		if said && found == nil || found != nil && !said && !couldGive(p, rounded) {
			t.Fatalf("said that it could be given: %v; a plan that passes: %+v\nshop %+v\nboard %+v\npart %+v",
				said, found, *p.Shop, p.Stock[0], p.Bill[0])
		}
	})
}

// couldGive tells what is said of the part when it is less by some in every
// dimension.
func couldGive(p *layout.Problem, less layout.Length) bool {
	part := p.Bill[0]
	part.Length, part.Width = part.Length-less, part.Width-less
	if part.Thickness < p.Stock[0].Thickness { // else it would have to be planed
		part.Thickness -= less
	}
	smaller := &layout.Problem{Shop: p.Shop, Stock: p.Stock, Bill: []layout.Part{part}}
	return strings.Contains(layout.Assemble(smaller, nil).Missing[0].Why, "could give one")
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
	part := &p.Bill[0]
	for length := mm; length <= p.Stock[0].Length; length += mm {
		for x := layout.Length(0); x+length <= p.Stock[0].Length; x += mm {
			if tree := placedIn(p, layout.Span{Lo: x, Hi: x + length}, leafOf(part, false)); tree != nil {
				return tree
			}
			if tree := placedIn(p, layout.Span{Lo: x, Hi: x + length}, leafOf(part, true)); part.OnEdge && tree != nil {
				return tree
			}
		}
	}
	return nil
}

// heights are the places of a piece across the board, a whole number of millimetres
// from where the wood begins, in a blank so long, or ends.
func heights(b *layout.Board, blank, piece layout.Span) []layout.Length {
	var list []layout.Length
	for _, edge := range []layout.Length{0, b.Shift(blank.Len()), b.FarMin(piece), b.FarMin(layout.Span{Lo: piece.Lo, Hi: piece.Lo})} {
		for y := edge - edge/mm*mm; y <= b.FullWidth(); y += mm {
			if !slices.Contains(list, y) {
				list = append(list, y)
			}
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

func placedIn(p *layout.Problem, along layout.Span, piece layout.Node) *layout.Node {
	b := &p.Stock[0]
	for x := along.Lo; x+piece.X2 <= along.Hi; x += mm {
		for _, y := range heights(b, along, layout.Span{Lo: x, Hi: x + piece.X2}) {
			leaf := piece
			leaf.Rect = layout.Rect{X1: x, X2: x + piece.X2, Y1: y, Y2: y + piece.Y2}
			for _, blank := range blanksAround(b, along, leaf.Rect) {
				if tree := passes(p, blank, leaf); tree != nil {
					return tree
				}
			}
		}
	}
	return nil
}

// blanksAround are those of a length of the board that hold a piece, as wide as the
// board or ripped rough a whole number of millimetres from the piece.
func blanksAround(b *layout.Board, along layout.Span, piece layout.Rect) []layout.Rect {
	near, far := []layout.Length{0}, []layout.Length{b.FullWidth()}
	for y := piece.Y1; y > 0; y -= mm {
		near = append(near, y)
	}
	for y := piece.Y2; y < b.FullWidth(); y += mm {
		far = append(far, y)
	}
	var list []layout.Rect
	for _, y1 := range near {
		for _, y2 := range far {
			list = append(list, layout.Rect{X1: along.Lo, X2: along.Hi, Y1: y1, Y2: y2})
		}
	}
	return list
}

// passes is the tree that cuts a leaf out of a blank, with either face to show, if
// the checker passes it.
func passes(p *layout.Problem, blank layout.Rect, leaf layout.Node) *layout.Node {
	usable := p.Shop.Usable(&p.Stock[0], blank)
	if !usable.Contains(leaf.Rect) {
		return nil
	}
	for _, show := range []layout.Face{layout.FaceA, layout.FaceB} {
		leaf.Show = show
		trees := []*layout.Node{treeOf(p, blank, usable, &leaf)}
		if blank == leaf.Rect {
			trees = append(trees, wholeOf(p, leaf))
		}
		for _, tree := range trees {
			if len(check.Plan(layout.Assemble(p, []layout.BoardCut{{Board: "P", Root: tree}}))) == 0 {
				return tree
			}
		}
	}
	return nil
}

// wholeOf makes a leaf of a whole blank, which is not ripped any more.
func wholeOf(p *layout.Problem, leaf layout.Node) *layout.Node {
	leaf.Trued, leaf.Thickness = true, p.Shop.NeedOf(&leaf, &p.Bill[0])
	return roughOf(p, &leaf)
}

// treeOf cuts a leaf out of a blank by a rip and a crosscut.
func treeOf(p *layout.Problem, blank, usable layout.Rect, leaf *layout.Node) *layout.Node {
	strip := &layout.Node{
		Rect: layout.Rect{X1: usable.X1, X2: usable.X2, Y1: leaf.Y1, Y2: leaf.Y2}, Cut: layout.Crosscut, Children: []*layout.Node{leaf},
	}
	trued := &layout.Node{
		Rect: blank, Trued: true, Thickness: p.Shop.NeedOf(leaf, &p.Bill[0]), Cut: layout.Rip, Children: []*layout.Node{strip},
	}
	return roughOf(p, trued)
}

// roughOf cuts a blank out of the board, ripped rough where it is narrower than that.
func roughOf(p *layout.Problem, trued *layout.Node) *layout.Node {
	frame := p.Stock[0].Frame()
	root := &layout.Node{Rect: frame, Cut: layout.Crosscut, Children: []*layout.Node{trued}}
	if trued.Y1 > 0 || trued.Y2 < frame.Y2 {
		rough := &layout.Node{Rect: layout.Rect{X1: trued.X1, X2: trued.X2, Y2: frame.Y2}, Cut: layout.Rip, Children: []*layout.Node{trued}}
		root.Children[0] = rough
	}
	return root
}
