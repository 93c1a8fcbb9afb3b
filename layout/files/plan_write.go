package files

import (
	"encoding/json"
	"io"
	"time"

	"sawbill/layout"
)

// WritePlan writes a plan file that is whole by itself. Errors are those of w,
// and a figure that is not finite.
func WritePlan(w io.Writer, p *layout.Plan) error {
	out := json.NewEncoder(w)
	out.SetEscapeHTML(false)
	out.SetIndent("", " ")
	return out.Encode(toPlan1(p))
}

func toPlan1(p *layout.Plan) plan1 {
	return plan1{
		Format: planFormat, Job: p.Job, Revision: count(p.Revision),
		Made: p.Made.UTC().Format(time.RFC3339Nano), Yard: p.Problem.Yard,
		Shop:    toShop1(p.Problem.Shop),
		Stock:   each(p.Problem.Stock, toBoard1),
		Bill:    each(p.Problem.Bill, toPart1),
		Boards:  each(p.Boards, toBoardCut1),
		Missing: each(p.Missing, toMissing1),
		Totals:  toTotals1(p.Totals),
		Paper:   p.Print.Paper, Order: p.Print.Order,
		Record: toRecord1(p.Record),
	}
}

// each converts a list; the result is never nil, which JSON would call null.
func each[A, B any](list []A, convert func(A) B) []B {
	out := make([]B, len(list))
	for i, a := range list {
		out[i] = convert(a)
	}
	return out
}

// eachValue converts the values of a map; the result is never nil.
func eachValue[K, L ~string, A, B any](m map[K]A, convert func(A) B) map[L]B {
	out := make(map[L]B, len(m))
	for k, a := range m {
		out[L(k)] = convert(a)
	}
	return out
}

func toShop1(s *layout.Shop) shop1 {
	return shop1{
		Units: s.Units.String(), Fraction: count(s.Fraction),
		RipKerf: nm(s.RipKerf), CrosscutKerf: nm(s.CrosscutKerf),
		RoughRipKerf: nm(s.RoughRipKerf), ResawKerf: nm(s.ResawKerf),
		EndTrim: nm(s.EndTrim), EdgeJoint: nm(s.EdgeJoint), EndSquare: nm(s.EndSquare),
		FaceSkim: nm(s.FaceSkim), Snipe: nm(s.Snipe), PanelSquare: nm(s.PanelSquare),
		LengthAllowance: nm(s.LengthAllowance), WidthAllowance: nm(s.WidthAllowance),
		ThicknessAllowance: nm(s.ThicknessAllowance),
		MinBlank:           nm(s.MinBlank), MaxBlank: limit(s.MaxBlank),
		JointerWidth: limit(s.JointerWidth), PlanerWidth: limit(s.PlanerWidth),
		MinRipLength: nm(s.MinRipLength), MinRip: nm(s.MinRip), MinCrosscut: nm(s.MinCrosscut),
		MinOffcutLength: nm(s.MinOffcutLength), MinOffcutWidth: nm(s.MinOffcutWidth),
		OffcutCredit: credit(s.OffcutCredit), RipAgain: s.RipAgain,
		Price:     eachValue[string, string](s.Price, toMoney),
		PriceUnit: s.PriceUnit.String(),
		Clearance: eachValue[layout.Kind, string](s.Clearance, func(c layout.Clearance) [2]nm {
			return [2]nm{nm(c.Along), nm(c.Across)}
		}),
		Grades: eachValue[string, string](s.Grades, func(g layout.Grade) grade1 {
			return grade1{each(g.Show, kindWord), each(g.Back, kindWord)}
		}),
		Kinds: eachValue[layout.Kind, string](s.Kinds, soundness),
		Hidden: eachValue[string, string](s.Hidden, func(h layout.Hidden) hidden1 {
			return hidden1{rate(h.Per10BF), nm(h.Length), nm(h.Width)}
		}),
		Quote: toQuote1(s.Charges),
	}
}

func toQuote1(c *layout.Charges) *quote1 {
	if c == nil {
		return nil
	}
	return &quote1{hours(c.Hours), money(c.Rate), money(c.Finish), money(c.Hardware), margin(c.Margin)}
}

func kindWord(k layout.Kind) string { return string(k) }

func toMoney(m layout.Money) money { return money(m) }

func soundness(sound bool) string {
	if sound {
		return "sound"
	}
	return "unsound"
}

// limit is a limit of the shop, of which 0 is none.
func limit(l layout.Length) *nm {
	if l == 0 {
		return nil
	}
	n := nm(l)
	return &n
}

func toRect1(r layout.Rect) rect1 { return rect1{nm(r.X1), nm(r.X2), nm(r.Y1), nm(r.Y2)} }

func toBoard1(b layout.Board) board1 {
	base := b.Base
	if base == b.Mark {
		base = ""
	}
	return board1{
		Board: b.Mark, Base: base, Species: b.Species,
		Thickness: nm(b.Thickness), Width: nm(b.Width), TipWidth: nm(b.TipWidth), Length: nm(b.Length),
		Cost: money(b.Cost), Edges: b.Edges.String(), Faces: b.Faces.String(),
		Bow: nm(b.Bow), Crook: nm(b.Crook), Cup: nm(b.Cup), Twist: nm(b.Twist),
		Source: b.Source.String(), Place: b.Place, Grade: b.Grade, Note: b.Note,
		Defects: each(b.Defects, func(d layout.Defect) defect1 {
			return defect1{string(d.Kind), d.Face.String(), toRect1(d.Rect)}
		}),
	}
}

func toPart1(p layout.Part) part1 {
	return part1{
		Part: p.Name, Species: each(p.Species, func(s string) string { return s }),
		Thickness: nm(p.Thickness), Width: nm(p.Width), Length: nm(p.Length),
		Quantity: count(p.Quantity), Spare: count(p.Spare), Grade: p.Grade, Bevel: degrees(p.Bevel),
		OnEdge: p.OnEdge, Resaw: p.Resaw, Match: p.Match, Priority: count(p.Priority),
		From: p.From, NotFrom: p.NotFrom,
		Set: p.Set, Slices: count(p.Slices), SliceThickness: nm(p.SliceThickness),
		Piece: p.Piece, Note: p.Note,
	}
}

func toMissing1(m layout.Missing) missing1 { return missing1{m.Part, count(m.Quantity), m.Why} }

func toBoardCut1(b layout.BoardPlan) boardCut1 {
	return boardCut1{b.Board, money(b.Cost), account1(b.Account), toNode1(b.Root)}
}

func toNode1(n *layout.Node) node1 {
	return node1{
		rect1: toRect1(n.Rect), Cut: n.Cut.String(),
		Trued: n.Trued, Thickness: nm(n.Thickness), Children: each(n.Children, toNode1),
		Lean: nm(n.Lean), Part: n.Part, ID: n.ID, Show: n.Show.String(), OnEdge: n.OnEdge,
		Layers: count(n.Layers), Slices: count(n.Slices), Spare: n.Spare, Offcut: n.Offcut,
	}
}

func toTotals1(t layout.Totals) totals1 {
	out := totals1{
		Cost: money(t.Cost), Bound: (*money)(t.Bound), Yield: t.Yield,
		Prices: toPrices1(t), PriceBound: (*money)(t.PriceBound),
	}
	if gap, ok := t.Gap(); ok {
		out.Gap = &gap
	}
	return out
}
