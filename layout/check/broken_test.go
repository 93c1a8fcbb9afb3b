package check

import (
	"math"
	"testing"

	"sawbill/layout"
)

// breakage is one thing wrong with the good plan. alone says that it breaks no
// other rule.
type breakage struct {
	what  string
	rule  string
	piece string // of the message
	alone bool
	wreck func(*layout.Plan)
}

func checkBreakages(t *testing.T, list []breakage) {
	t.Helper()
	for _, b := range list {
		t.Run(b.rule+" "+b.what, func(t *testing.T) {
			p := goodPlan()
			b.wreck(p)
			wantViolation(t, p, b.rule, b.piece)
			if b.alone {
				wantOnly(t, p, b.rule)
			}
		})
	}
}

func TestBrokenTrees(t *testing.T) {
	const mm = millimetre
	checkBreakages(t, []breakage{
		// V1: the root
		{"root too short", "V1", "not the whole board", true, func(p *layout.Plan) { down(p, 0).X2 -= mm }},
		{"root of the narrow end's width", "V1", "y 0 mm to 200 mm", false, func(p *layout.Plan) { down(p, 0).Y2 = 180 * mm }},
		{"board ripped first", "V1", "first ripped", false, func(p *layout.Plan) { down(p, 0).Cut = layout.Rip }},

		// V2: children
		{"child beyond what is usable", "V2", "outside what is usable", true, func(p *layout.Plan) {
			down(p, 0, 0, 2).Y2 = 198 * mm
		}},
		{"child into the end loss", "V2", "outside what is usable", false, func(p *layout.Plan) { down(p, 0, 0, 2).X1 = 25 * mm }},
		{"kerf too thin between pieces", "V2", "2.9 mm from its neighbour; the kerf of the crosscut takes 3 mm", true, func(p *layout.Plan) {
			n := down(p, 0, 0, 1, 1)
			n.X1, n.X2 = n.X1-mm/10, n.X2-mm/10
		}},
		{"kerf too thin between strips", "V2", "the kerf of the rip takes 4 mm", false, func(p *layout.Plan) {
			p.Problem.Shop.RipKerf = 4 * mm
		}},
		{"rough kerf too thin", "V2", "the kerf of the rip takes 5 mm", true, func(p *layout.Plan) {
			p.Problem.Shop.RoughRipKerf = 5 * mm
		}},
		{"blanks without a kerf", "V2", "the kerf of the crosscut takes 3 mm", true, func(p *layout.Plan) {
			down(p, 0, 0).X2 += mm
			for _, strip := range down(p, 0, 0).Children {
				strip.X2 += mm
			}
		}},
		{"overlap", "V2", "overlaps its neighbour", true, func(p *layout.Plan) {
			n := down(p, 0, 0, 1, 1)
			n.X1, n.X2 = n.X1-10*mm, n.X2-10*mm
		}},
		{"out of order", "V2", "out of order", true, func(p *layout.Plan) {
			kids := down(p, 0, 0, 1).Children
			kids[0], kids[1] = kids[1], kids[0]
		}},
		{"crosscut not across", "V2", "must run from y 86 mm to 126 mm", false, func(p *layout.Plan) {
			down(p, 0, 0, 1, 0).Y1 = 87 * mm
		}},
		{"rip not through", "V2", "must run from x 31 mm to 1019 mm", true, func(p *layout.Plan) {
			down(p, 0, 0, 2).X2 = 1000 * mm
		}},

		// V3: end trims
		{"blank in the butt's trim", "V3", "gives 25 mm to 1975 mm", false, func(p *layout.Plan) { down(p, 0, 0).X1 = 24 * mm }},
		{"more trim at the tip", "V3", "with 30 mm trimmed", true, func(p *layout.Plan) {
			p.Problem.Shop.EndTrim = 30 * mm
		}},

		// V4: order of cuts
		{"part of untrued wood", "V4", "not been trued", false, func(p *layout.Plan) { down(p, 0, 1, 0).Trued = false }},
		{"trued twice", "V4", "a second time", false, func(p *layout.Plan) { down(p, 0, 0, 0, 1).Trued = true }},
		{"the whole board trued", "V4", "a second time", false, func(p *layout.Plan) { down(p, 1).Trued = true }},
		{"no rip again in this shop", "V4", "a rip as cut 3 after truing; no more than 2", true, func(p *layout.Plan) {
			p.Problem.Shop.RipAgain = false
		}},
		{"crosscut right after truing", "V4", "this must be a rip", false, func(p *layout.Plan) {
			down(p, 0, 0).Cut = layout.Crosscut
		}},
		{"crosscut after a rough rip", "V4", "a crosscut as cut 3 before truing; no more than 2", false, func(p *layout.Plan) {
			n := down(p, 0, 1, 1)
			n.Offcut, n.Cut = "", layout.Crosscut
			n.Children = []*layout.Node{keep(n.Rect)}
		}},
		{"offcut by a second rough crosscut", "V4", "a crosscut as cut 2 before truing; this must be a rip", false, func(p *layout.Plan) {
			down(p, 0, 1).Cut = layout.Crosscut
		}},
		{"a fourth cut", "V4", "a crosscut as cut 4 after truing", true, func(p *layout.Plan) {
			n := down(p, 0, 0, 0, 1, 1)
			part := *n
			*n = *crosscut(part.Rect, &part)
		}},

		// V5: machines
		{"blank too short", "V5", "take no less than 700 mm", false, func(p *layout.Plan) { p.Problem.Shop.MinBlank = 700 * mm }},
		{"blank too long", "V5", "1000 mm long; the machines take no more than 999 mm", true, func(p *layout.Plan) {
			p.Problem.Shop.MaxBlank = 999 * mm
		}},
		{"too wide for the jointer", "V5", "199.75 mm wide; the jointer takes 199 mm", true, func(p *layout.Plan) {
			p.Problem.Shop.JointerWidth = 199 * mm
		}},
		{"too wide for the planer", "V5", "the planer takes 150 mm", true, func(p *layout.Plan) { p.Problem.Shop.PlanerWidth = 150 * mm }},
		{"faces clean up to less", "V5", "needs 20 mm of thickness; its blank cleans up to 19.8 mm", true, func(p *layout.Plan) {
			p.Problem.Shop.FaceSkim = 51 * mm / 10
			p.Problem.Shop.ResawKerf = 0
			down(p, 1, 0, 1, 0).Layers = 0 // keeps the slip, which asks for more skim, out of it
			down(p, 1, 0, 1, 0).Part = ""
			p.Missing = append(p.Missing, layout.Missing{Part: "slip", Quantity: 2})
		}},
		{"thickness says less", "V5", "thickness says 19 mm; the thickest of its parts needs 20 mm", true, func(p *layout.Plan) {
			down(p, 0, 0).Thickness = 19 * mm
		}},
		{"thickness says more", "V5", "thickness says 21 mm", true, func(p *layout.Plan) { down(p, 0, 0).Thickness = 21 * mm }},
		{"two thicknesses in a strip", "V5", "in a strip planed to 16 mm", true, func(p *layout.Plan) {
			p.Problem.Bill = append(p.Problem.Bill, p.Problem.Bill[2])
			thin := &p.Problem.Bill[5]
			thin.Name, thin.Thickness, thin.Quantity = "thin", 12*mm, 1
			p.Problem.Bill[2].Quantity = 1
			down(p, 0, 0, 1, 1).Part = "thin"
		}},
		{"a short strip planed thinner", "V5", "planed thinner, to 16 mm, and is 988 mm long", false, func(p *layout.Plan) {
			p.Problem.Shop.MinBlank = 989 * mm
		}},

		// V6: sizes
		{"a part too long", "V6", "400.001 mm long; the part is cut to 400 mm", true, func(p *layout.Plan) {
			down(p, 0, 1, 0, 0, 0).X2 += layout.Micrometre
		}},
		{"a part too narrow", "V6", "79 mm wide; the part is cut to 80 mm", false, func(p *layout.Plan) { down(p, 0, 1, 0, 0, 0).Y2 -= mm }},
		{"an allowance is missing", "V6", "the part is cut to 405 mm", true, func(p *layout.Plan) { p.Problem.Shop.LengthAllowance = 5 * mm }},
		{"on edge without leave", "V6", "which the bill does not allow", true, func(p *layout.Plan) { p.Problem.Bill[4].OnEdge = false }},
		{"lying flat in a strip for edges", "V6", "the part is cut to 19 mm", false, func(p *layout.Plan) { down(p, 1, 0, 1, 1).OnEdge = false }},
		{"within the snipe", "V6", "6 mm from an end of its blank; snipe reaches 7 mm", false, func(p *layout.Plan) { p.Problem.Shop.Snipe = 7 * mm }},
		{"a short piece ripped", "V6", "nothing shorter than 401 mm is ripped", true, func(p *layout.Plan) {
			p.Problem.Shop.MinRipLength = 401 * mm
		}},
		{"a short blank rough-ripped", "V6", "only 600 mm long", false, func(p *layout.Plan) { p.Problem.Shop.MinRipLength = 601 * mm }},

		// V7: outline
		{"taper under a part", "V7", "reaches to y 126 mm", false, func(p *layout.Plan) { p.Problem.Stock[0].TipWidth = 40 * mm }},
		{"into the rough near edge", "V7", "starts at y 2 mm", false, func(p *layout.Plan) {
			for _, n := range []*layout.Node{down(p, 0, 1, 0, 0), down(p, 0, 1, 0, 0, 0)} {
				n.Y1, n.Y2 = 2*mm, 82*mm
			}
		}},

		// V8: grades
		{"a through knot in a one-face part", "V8", "not one-face, with face A to show or the other: knot", true, func(p *layout.Plan) {
			p.Problem.Stock[0].Defects[0].Face = layout.Through
		}},
		{"an unsound kind", "V8", "loose at x 100 mm", true, func(p *layout.Plan) {
			p.Problem.Stock[0].Defects[0].Kind = layout.Loose
		}},
		{"wrong show face", "V8", "with face A to show, only with the other: knot", true, func(p *layout.Plan) {
			down(p, 0, 0, 0, 0).Show = layout.FaceA
		}},
		{"shows the knot on its face B", "V8", "with face B to show, only with the other: knot", true, func(p *layout.Plan) {
			p.Problem.Stock[0].Defects[0].Face = layout.FaceB
		}},
		{"no show face", "V8", "show is missing", true, func(p *layout.Plan) { down(p, 0, 0, 0, 0).Show = layout.Through }},
		{"within a clearance", "V8", "check at x 870 mm", true, func(p *layout.Plan) {
			p.Problem.Shop.Clearance[layout.Check] = layout.Clearance{Along: 37 * mm}
		}},
		{"a grade that nobody knows", "V8", `no grade "mint"`, true, func(p *layout.Plan) { p.Problem.Bill[1].Grade = "mint" }},

		// V10: offcuts
		{"too short to keep", "V10", "the shop keeps nothing under 700 mm", true, func(p *layout.Plan) {
			p.Problem.Shop.MinOffcutLength = 700 * mm
		}},
		{"too narrow to keep", "V10", "600 mm by 80.72 mm", true, func(p *layout.Plan) { p.Problem.Shop.MinOffcutWidth = 81 * mm }},
		{"no wood in it", "V10", "no clean rectangle", true, func(p *layout.Plan) { down(p, 0, 1, 1).Y1 = 190 * mm }},

		// V12: whence
		{"another species", "V12", "is to be of plum or elm; the board is Pear", true, func(p *layout.Plan) {
			p.Problem.Bill[1].Species = []string{"plum", "elm"}
		}},
		{"not from this board", "V12", "must not come from this board", true, func(p *layout.Plan) {
			p.Problem.Bill[1].NotFrom = []string{"P1"}
		}},
		{"only from another board", "V12", "from P3 only", true, func(p *layout.Plan) { p.Problem.Bill[1].From = []string{"P3"} }},
		{"on hold", "V12", "on hold", true, func(p *layout.Plan) { p.Problem.Stock[1].Source = layout.Hold }},
		{"in the yard", "V12", "in the yard", true, func(p *layout.Plan) { p.Problem.Stock[1].Source = layout.Yard }},

		// V13: layers
		{"resawn without leave", "V13", "resawn into 2 layers", true, func(p *layout.Plan) { p.Problem.Bill[3].Resaw = false }},
		{"layers too short", "V13", "its layers are 350 mm long", false, func(p *layout.Plan) { p.Problem.Shop.MinBlank = 351 * mm }},
		{"resawn on edge without leave", "V13", "resawn into 2 layers", false, func(p *layout.Plan) {
			down(p, 1, 0, 1, 1).Layers = 2
		}},
		{"layers on edge", "V5", "needs 45 mm", false, func(p *layout.Plan) { // 2 x 19 + 2 + 2 x 2.5
			p.Problem.Bill[4].Resaw = true
			down(p, 1, 0, 1, 1).Layers = 2
		}},
		{"layers thicker than the strip", "V5", "the thickest of its parts needs 22 mm", false, func(p *layout.Plan) {
			p.Problem.Shop.ResawKerf = 5 * mm
		}},

		// V14: metal
		{"metal in a blank", "V14", "goes over the knives", true, func(p *layout.Plan) {
			p.Problem.Stock[0].Defects[2].Rect = box(1500, 1510, 85, 95)
		}},
		{"metal in the kerf beside a blank", "V14", "in the kerf at x 1628 mm", true, func(p *layout.Plan) {
			p.Problem.Stock[0].Defects[2].Rect = box(1642, 1650, 150, 160)
		}},
		{"metal under a blade that takes nothing", "V14", "in the kerf at x 1628 mm", false, func(p *layout.Plan) {
			p.Problem.Shop.CrosscutKerf = 0
			p.Problem.Stock[0].Defects[2].Rect = box(1625, 1650, 150, 160)
		}},
		{"metal in a rough rip", "V14", "in the kerf at x 1028 mm to 1628 mm, y 100 mm", true, func(p *layout.Plan) {
			p.Problem.Stock[0].Defects[2].Rect = box(1200, 1210, 114, 120)
		}},
	})
}

// A part that names no face shows face A: a knot on face B goes to the back.
func TestShowIsFaceAWhereNothingIsSaid(t *testing.T) {
	p := goodPlan()
	down(p, 0, 0, 0, 0).Show = layout.Through
	p.Problem.Stock[0].Defects[0].Face = layout.FaceB
	for _, v := range Plan(p) {
		t.Error(v)
	}
}

func TestBrokenFigures(t *testing.T) {
	money := func(m layout.Money) *layout.Money { return &m }
	checkBreakages(t, []breakage{
		// V11: counts
		{"made too often", "V11", "shelf is made 3 times; the bill asks for 2", true, func(p *layout.Plan) {
			p.Problem.Bill[0].Quantity = 2
			p.Missing = nil
		}},
		{"more than the spares", "V11", "shelf is made 3 times; the bill asks for 1 and 1 spare", true, func(p *layout.Plan) {
			p.Problem.Bill[0].Quantity, p.Problem.Bill[0].Spare = 1, 1
			p.Missing = nil
		}},
		{"spares that nobody can count", "form", "spare is -1", true, func(p *layout.Plan) { p.Problem.Bill[0].Spare = -1 }},
		{"layers count", "V11", "slip is made 2 times; the bill asks for 1", true, func(p *layout.Plan) { p.Problem.Bill[3].Quantity = 1 }},
		{"missing not listed", "V11", "shelf: 1 missing, but the plan lists 0", true, func(p *layout.Plan) { p.Missing = nil }},
		{"missing listed twice", "V11", "shelf: 1 missing, but the plan lists 2", true, func(p *layout.Plan) {
			p.Missing = append(p.Missing, p.Missing[0])
		}},
		{"missing of no part", "V11", `"door", which the bill does not ask for`, true, func(p *layout.Plan) {
			p.Missing = append(p.Missing, layout.Missing{Part: "door", Quantity: 1})
		}},
		{"a match broken", "V11", `pieces of "pair" are all to be of one board; one is of P1`, true, func(p *layout.Plan) {
			p.Problem.Bill[0].Match = "pair"
		}},

		// names
		{"no such board", "name", "no board of the stock", false, func(p *layout.Plan) { p.Boards[1].Board = "P9" }},
		{"no such part", "name", `no part "door"`, false, func(p *layout.Plan) { down(p, 0, 0, 0, 0).Part = "door" }},
		{"a board cut twice", "name", "cut twice", false, func(p *layout.Plan) { p.Boards = append(p.Boards, p.Boards[1]) }},
		{"one id twice", "name", "P1-1a: two pieces", true, func(p *layout.Plan) { down(p, 0, 0, 0, 1, 0).ID = "P1-1a" }},
		{"one offcut mark twice", "name", "P1-K1: two pieces or offcuts", true, func(p *layout.Plan) { down(p, 0, 1, 1).Offcut = "P1-K1" }},
		{"an offcut called like a board", "name", "P3: it has the mark of a board", true, func(p *layout.Plan) { down(p, 0, 1, 1).Offcut = "P3" }},
		{"two boards of one mark", "name", "two boards of the stock", false, func(p *layout.Plan) { p.Problem.Stock[2].Mark = "P1" }},
		{"two parts of one name", "name", `called "shelf"`, false, func(p *layout.Plan) { p.Problem.Bill[1].Name = "shelf" }},

		// cost, bound, yield
		{"a board too cheap", "cost", "the plan counts 8 for the board; the stock says 9", true, func(p *layout.Plan) {
			p.Boards[1].Cost = 8 * layout.Unity
		}},
		{"a total a ten-thousandth off", "cost", "costs 41.1188; its boards less its offcuts come to 41.1189", true, func(p *layout.Plan) {
			p.Totals.Cost--
		}},
		{"more credit than the shop gives", "cost", "come to 44.0595", true, func(p *layout.Plan) { p.Problem.Shop.OffcutCredit /= 2 }},
		{"bound above cost", "bound", "more than the cost", true, func(p *layout.Plan) { p.Totals.Bound = money(p.Totals.Cost + 1) }},
		{"bound below its prices", "bound", "less than the 7", true, func(p *layout.Plan) {
			p.Totals.Prices = map[string]layout.Money{"shelf": 1}
			p.Totals.Bound, p.Totals.PriceBound = money(6*layout.Unity), money(7*layout.Unity)
		}},
		{"a price bound without a bound", "bound", "no bound is given", true, func(p *layout.Plan) {
			p.Totals.Prices = map[string]layout.Money{}
			p.Totals.PriceBound = money(7)
		}},
		{"a price bound without prices", "bound", "without the prices", true, func(p *layout.Plan) {
			p.Totals.Bound, p.Totals.PriceBound = money(7), money(7)
		}},
		{"a price of no part", "bound", `"door"`, true, func(p *layout.Plan) { p.Totals.Prices = map[string]layout.Money{"door": 1} }},
		{"a negative price", "bound", "the price of shelf is negative", true, func(p *layout.Plan) {
			p.Totals.Prices = map[string]layout.Money{"shelf": -1}
		}},
		{"a price of strips that are none", "bound", `"shelf", which is no row of a set`, true, func(p *layout.Plan) {
			p.Totals.StripPrices = map[string]map[int]layout.Money{"shelf": {8: 1}}
		}},
		{"a better yield", "yield", "it is 0.324103", true, func(p *layout.Plan) { *p.Totals.Yield += 2e-6 }},
		{"no yield", "yield", "does not say", true, func(p *layout.Plan) { p.Totals.Yield = nil }},
		{"a yield that is no number", "yield", "yields NaN", true, func(p *layout.Plan) { *p.Totals.Yield = math.NaN() }},
		{"a yield of nothing", "yield", "cuts nothing", false, func(p *layout.Plan) { p.Boards = nil }},

		// account
		{"kerf as scrap", "account", "kerf is 0.000", true, func(p *layout.Plan) {
			a := &p.Boards[0].Account
			a.Scrap, a.Kerf = a.Scrap+a.Kerf, 0
		}},
		{"a sum that is off", "account", "sum is", true, func(p *layout.Plan) { p.Boards[0].Account.Edges += 12 }},
		{"no number", "account", "parts is NaN", true, func(p *layout.Plan) { p.Boards[0].Account.Parts = math.NaN() }},
	})
}

func TestMalformedPlans(t *testing.T) {
	const max, min = math.MaxInt64, math.MinInt64
	checkBreakages(t, []breakage{
		{"no tree", "form", "a node is missing", true, func(p *layout.Plan) { p.Boards[0].Root = nil }},
		{"a nil child", "form", "a node is missing", true, func(p *layout.Plan) { down(p, 0).Children[0] = nil }},
		{"a cycle", "form", "stands in the tree twice", true, func(p *layout.Plan) {
			down(p, 0).Children[0] = down(p, 0)
		}},
		{"a tower", "form", "more than 64 levels", true, func(p *layout.Plan) {
			n := down(p, 0, 0, 0, 0)
			for range 100 {
				child := *n
				*n = *rip(n.Rect, &child)
				n = &child
			}
		}},
		{"inside out", "form", "no extent", true, func(p *layout.Plan) { down(p, 0, 0).X1 = 1030 * millimetre }},
		{"at the end of the numbers", "form", "far off any board", true, func(p *layout.Plan) {
			down(p, 0, 0).X1, down(p, 0, 0).X2 = min, max
		}},
		{"an unknown cut", "form", "no known cut", true, func(p *layout.Plan) { down(p, 0, 0).Cut = 77 }},
		{"an unknown face", "form", "show face", true, func(p *layout.Plan) { down(p, 0, 0, 0, 0).Show = 9 }},
		{"children without a cut", "form", "no cut that separates", true, func(p *layout.Plan) { down(p, 0, 0).Cut = layout.NoCut }},
		{"a part cut up", "form", "cannot be a part", true, func(p *layout.Plan) { down(p, 0, 0).Part = "shelf" }},
		{"part and offcut", "form", "both a part and an offcut", true, func(p *layout.Plan) { down(p, 0, 0, 0, 0).Offcut = "K9" }},
		{"endless layers", "form", "layers", true, func(p *layout.Plan) { down(p, 0, 0, 0, 0).Layers = max }},
		{"a huge lean", "form", "a lean of 9223372036854775807 nm", true, func(p *layout.Plan) { down(p, 0, 0, 0, 0).Lean = max }},
		{"no shop", "form", "there is none", true, func(p *layout.Plan) { p.Problem.Shop = nil }},
		{"a negative kerf", "form", "rip_kerf is -1 nm", true, func(p *layout.Plan) { p.Problem.Shop.RipKerf = -1 }},
		{"an endless clearance", "form", "clearance of knot", true, func(p *layout.Plan) {
			p.Problem.Shop.Clearance[layout.Knot] = layout.Clearance{Along: max}
		}},
		{"a credit of one", "form", "offcut_credit", true, func(p *layout.Plan) { p.Problem.Shop.OffcutCredit = layout.CreditUnity }},
		{"a board without length", "form", `board "P3": length is 0 nm`, true, func(p *layout.Plan) { p.Problem.Stock[2].Length = 0 }},
		{"a board of unknown edges", "form", "no known word", true, func(p *layout.Plan) { p.Problem.Stock[2].Edges = 9 }},
		{"a negative cost", "form", "cost is -1", true, func(p *layout.Plan) { p.Problem.Stock[2].Cost = -1 }},
		{"a defect on no face", "form", "a knot has no known face", true, func(p *layout.Plan) { p.Problem.Stock[0].Defects[0].Face = 9 }},
		{"a part of no width", "form", `part "slat": width is 0 nm`, true, func(p *layout.Plan) { p.Problem.Bill[1].Width = 0 }},
		{"a steep bevel", "form", "bevel", true, func(p *layout.Plan) { p.Problem.Bill[1].Bevel = 46 * layout.Degree }},
		{"fewer than none missing", "form", `missing "shelf": quantity is -1`, true, func(p *layout.Plan) { p.Missing[0].Quantity = -1 }},
		{"an absurd total", "cost", "-9223372036854775808 ten-thousandths", true, func(p *layout.Plan) { p.Totals.Cost = min }},
	})
}

func TestNoPlan(t *testing.T) {
	if found := Plan(nil); !finds(found, "form", "plan: there is none") {
		t.Errorf("found %v", found)
	}
}

// A malformed board hides nothing that is wrong with another one.
func TestMalformedBoardHidesNoOther(t *testing.T) {
	p := goodPlan()
	p.Boards[0].Root = nil
	down(p, 1, 0).Thickness = 18 * millimetre
	wantViolation(t, p, "V5", "thickness says 18 mm")
}
