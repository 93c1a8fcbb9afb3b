package files

import (
	"regexp"
	"slices"

	"sawbill/layout"
)

func (c *converter) shop(s shop1) *layout.Shop {
	if !slices.Contains([]count{2, 4, 8, 16, 32, 64}, s.Fraction) {
		c.fail("shop.fraction: found %d, want 2, 4, 8, 16, 32 or 64", s.Fraction)
	}
	at := func(key string, l nm) layout.Length { return c.length("shop."+key, l) }
	return &layout.Shop{
		Units:    layout.Unit(c.word("shop.units", s.Units, unitWords)),
		Fraction: int(s.Fraction),
		RipKerf:  at("rip_kerf", s.RipKerf), CrosscutKerf: at("crosscut_kerf", s.CrosscutKerf),
		RoughRipKerf: at("rough_rip_kerf", s.RoughRipKerf), ResawKerf: at("resaw_kerf", s.ResawKerf),
		EndTrim: at("end_trim", s.EndTrim), EdgeJoint: at("edge_joint", s.EdgeJoint),
		EndSquare: at("end_square", s.EndSquare), FaceSkim: at("face_skim", s.FaceSkim),
		Snipe: at("snipe", s.Snipe), PanelSquare: at("panel_square", s.PanelSquare),
		LengthAllowance:    at("length_allowance", s.LengthAllowance),
		WidthAllowance:     at("width_allowance", s.WidthAllowance),
		ThicknessAllowance: at("thickness_allowance", s.ThicknessAllowance),
		MinBlank:           at("min_blank", s.MinBlank), MaxBlank: at("max_blank", orNone(s.MaxBlank)),
		JointerWidth:    at("jointer_width", orNone(s.JointerWidth)),
		PlanerWidth:     at("planer_width", orNone(s.PlanerWidth)),
		MinRipLength:    at("min_rip_length", s.MinRipLength),
		MinRip:          at("min_rip", s.MinRip),
		MinCrosscut:     at("min_crosscut", s.MinCrosscut),
		MinOffcutLength: at("min_offcut_length", s.MinOffcutLength),
		MinOffcutWidth:  at("min_offcut_width", s.MinOffcutWidth),
		OffcutCredit:    layout.Credit(s.OffcutCredit), RipAgain: s.RipAgain,
		Price: eachValue[string, string](s.Price, func(m money) layout.Money {
			return c.money("shop.price", m)
		}),
		PriceUnit: layout.PriceUnit(c.word("shop.price_unit", s.PriceUnit, priceUnitWords)),
		Clearance: eachValue[string, layout.Kind](s.Clearance, func(l [2]nm) layout.Clearance {
			return layout.Clearance{Along: at("clearance", l[0]), Across: at("clearance", l[1])}
		}),
		Grades: eachValue[string, string](s.Grades, func(g grade1) layout.Grade {
			return layout.Grade{Show: each(g.Show, toKind), Back: each(g.Back, toKind)}
		}),
		Kinds: eachValue[string, layout.Kind](s.Kinds, func(sound string) bool {
			return c.word("shop.kinds", sound, soundWords) == 1
		}),
		Hidden: eachValue[string, string](s.Hidden, func(h hidden1) layout.Hidden {
			return layout.Hidden{Per10BF: layout.Rate(h.Per10BF), Length: at("hidden", h.Length), Width: at("hidden", h.Width)}
		}),
		Charges: c.charges(s.Quote),
	}
}

func (c *converter) charges(q *quote1) *layout.Charges {
	if q == nil {
		return nil
	}
	return &layout.Charges{
		Hours: layout.Hours(q.Hours), Rate: c.money("shop.quote.rate", q.Rate),
		Finish: c.money("shop.quote.finish", q.Finish), Hardware: c.money("shop.quote.hardware", q.Hardware),
		Margin: layout.Margin(q.Margin),
	}
}

func toKind(word string) layout.Kind { return layout.Kind(word) }

func orNone(l *nm) nm {
	if l == nil {
		return 0
	}
	return *l
}

// money is an amount that is not negative.
func (c *converter) money(key string, m money) layout.Money {
	if m < 0 || layout.Money(m) > layout.MaxMoney {
		c.fail("%s: found %s, want an amount from 0 to %s", key, layout.Money(m), layout.MaxMoney)
	}
	return layout.Money(m)
}

func (c *converter) board(b board1) layout.Board {
	at := "stock " + b.Board + ": "
	if b.Base == "" {
		b.Base = b.Board
	}
	if b.TipWidth == 0 {
		b.TipWidth = b.Width
	}
	return layout.Board{
		Mark: b.Board, Base: b.Base, Species: b.Species,
		Thickness: c.size(at+"thickness", b.Thickness),
		Width:     c.size(at+"width", b.Width), TipWidth: c.size(at+"tip_width", b.TipWidth),
		Length: c.size(at+"length", b.Length), Cost: c.money(at+"cost", b.Cost),
		Edges: layout.Edges(c.word(at+"edges", b.Edges, edgesWords)),
		Faces: layout.Faces(c.word(at+"faces", b.Faces, facesWords)),
		Bow:   c.length(at+"bow", b.Bow), Crook: c.length(at+"crook", b.Crook),
		Cup: c.length(at+"cup", b.Cup), Twist: c.length(at+"twist", b.Twist),
		Source: layout.Source(c.word(at+"source", b.Source, sourceWords)),
		Place:  b.Place, Grade: b.Grade, Note: b.Note,
		Defects: each(b.Defects, func(d defect1) layout.Defect {
			return layout.Defect{
				Kind: layout.Kind(d.Kind),
				Face: layout.Face(c.word(at+"face of a defect", d.Face, faceWords)),
				Rect: fromRect1(d.rect1),
			}
		}),
	}
}

func fromRect1(r rect1) layout.Rect {
	return layout.Rect{
		X1: layout.Length(r.X1), X2: layout.Length(r.X2),
		Y1: layout.Length(r.Y1), Y2: layout.Length(r.Y2),
	}
}

func (c *converter) part(p part1) layout.Part {
	at := "bill " + p.Part + ": "
	if p.Grade == "" {
		p.Grade = layout.Clear
	}
	return layout.Part{
		Name: p.Part, Species: p.Species,
		Thickness: c.size(at+"thickness", p.Thickness), Width: c.size(at+"width", p.Width),
		Length: c.length(at+"length", p.Length), Quantity: int(p.Quantity), Spare: int(p.Spare), Grade: p.Grade,
		Bevel: layout.Angle(p.Bevel), OnEdge: p.OnEdge, Resaw: p.Resaw, Match: p.Match,
		Priority: int(p.Priority), From: p.From, NotFrom: p.NotFrom,
		Set: p.Set, Slices: int(p.Slices),
		SliceThickness: c.length(at+"slice_thickness", p.SliceThickness), Piece: p.Piece, Note: p.Note,
	}
}

func (c *converter) boardCut(b boardCut1) layout.BoardPlan {
	return layout.BoardPlan{
		Board: b.Board, Cost: c.money("boards "+b.Board+": cost", b.Cost),
		Account: layout.Account(b.Account), Root: c.node(b.Root),
	}
}

func (c *converter) node(n node1) *layout.Node {
	out := &layout.Node{
		Rect: fromRect1(n.rect1), Cut: layout.Cut(c.word("cut", n.Cut, cutWords)),
		Trued: n.Trued, Thickness: c.length("thickness of a node", n.Thickness),
		Lean: c.length("lean", n.Lean), Part: n.Part, ID: n.ID,
		Show: layout.Face(c.word("show", n.Show, faceWords)), OnEdge: n.OnEdge,
		Layers: int(n.Layers), Slices: int(n.Slices), Spare: n.Spare, Offcut: n.Offcut,
	}
	for _, child := range n.Children {
		out.Children = append(out.Children, c.node(child))
	}
	return out
}

func fromTotals1(t totals1) layout.Totals {
	out := layout.Totals{
		Cost: layout.Money(t.Cost), Bound: (*layout.Money)(t.Bound), Yield: t.Yield,
		PriceBound: (*layout.Money)(t.PriceBound),
	}
	setPrices(&out, t.Prices)
	return out
}

// boardsOf puts the boards of a row, M4.1 and M4.2, in place of its mark M4,
// where no board has that mark itself.
func boardsOf(marks []string, stock []layout.Board) []string {
	var out []string
	for _, m := range marks {
		bears := func(b layout.Board) bool { return b.Mark == m }
		if slices.ContainsFunc(stock, bears) {
			out = append(out, m)
			continue
		}
		counted := regexp.MustCompile(`^` + regexp.QuoteMeta(m) + `\.\d+$`)
		before := len(out)
		for _, b := range stock {
			if b.Base == m || counted.MatchString(b.Mark) {
				out = append(out, b.Mark)
			}
		}
		if len(out) == before {
			out = append(out, m)
		}
	}
	return out
}
