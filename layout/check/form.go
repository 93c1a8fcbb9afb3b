package check

import (
	"fmt"

	"sawbill/layout"
)

// absurd is beyond every length that the checker reckons with. Sums of a few
// such lengths are far from overflowing an int64.
const absurd = 1000 * layout.MaxLength

// maxCount is beyond every count in a shop: pieces, layers, slices.
const maxCount = 1_000_000

// formFaults collects what cannot be reckoned with in one row of the plan.
type formFaults struct {
	row   string // such as `board "M4"`
	found *[]Violation
}

func (f formFaults) add(format string, args ...any) {
	*f.found = append(*f.found, Violation{Rule: "form", What: f.row + ": " + fmt.Sprintf(format, args...)})
}

// length wants least <= l <= layout.MaxLength.
func (f formFaults) length(what string, l, least layout.Length) {
	if l < least || l > layout.MaxLength {
		f.add("%s is %d nm; want %d to %d", what, int64(l), int64(least), int64(layout.MaxLength))
	}
}

// count wants 0 <= n <= maxCount.
func (f formFaults) count(what string, n int) {
	if n < 0 || n > maxCount {
		f.add("%s is %d; want 0 to %d", what, n, maxCount)
	}
}

func (f formFaults) money(what string, m layout.Money) {
	if m < 0 || m > layout.MaxMoney {
		f.add("%s is %d ten-thousandths; want 0 to %d", what, int64(m), int64(layout.MaxMoney))
	}
}

// problemForm lists what in the shop, the stock and the bill is too malformed
// to reckon with. Nothing of such a plan is replayed.
func problemForm(p *layout.Plan) []Violation {
	var found []Violation
	switch {
	case p == nil:
		formFaults{"plan", &found}.add("there is none")
		return found
	case p.Problem.Shop == nil:
		formFaults{"shop", &found}.add("there is none")
		return found
	}
	shopForm(p.Problem.Shop, formFaults{"shop", &found})
	for i := range p.Problem.Stock {
		b := &p.Problem.Stock[i]
		stockForm(b, formFaults{fmt.Sprintf("board %q", b.Mark), &found})
	}
	for i := range p.Problem.Bill {
		part := &p.Problem.Bill[i]
		billForm(part, formFaults{fmt.Sprintf("part %q", part.Name), &found})
	}
	if p.Record != nil {
		for i := range p.Record.Wanted {
			part := &p.Record.Wanted[i]
			billForm(part, formFaults{fmt.Sprintf("wanted part %q", part.Name), &found})
		}
	}
	for _, m := range p.Missing {
		formFaults{fmt.Sprintf("missing %q", m.Part), &found}.count("quantity", m.Quantity)
	}
	return found
}

func shopForm(s *layout.Shop, f formFaults) {
	for _, l := range []struct {
		key   string
		value layout.Length
	}{
		{"rip_kerf", s.RipKerf}, {"crosscut_kerf", s.CrosscutKerf},
		{"rough_rip_kerf", s.RoughRipKerf}, {"resaw_kerf", s.ResawKerf},
		{"end_trim", s.EndTrim}, {"edge_joint", s.EdgeJoint}, {"end_square", s.EndSquare},
		{"face_skim", s.FaceSkim}, {"snipe", s.Snipe}, {"panel_square", s.PanelSquare},
		{"length_allowance", s.LengthAllowance}, {"width_allowance", s.WidthAllowance},
		{"thickness_allowance", s.ThicknessAllowance},
		{"min_blank", s.MinBlank}, {"max_blank", s.MaxBlank},
		{"jointer_width", s.JointerWidth}, {"planer_width", s.PlanerWidth},
		{"min_rip_length", s.MinRipLength}, {"min_rip", s.MinRip}, {"min_crosscut", s.MinCrosscut},
		{"min_offcut_length", s.MinOffcutLength}, {"min_offcut_width", s.MinOffcutWidth},
	} {
		f.length(l.key, l.value, 0)
	}
	for kind, c := range s.Clearance {
		f.length(fmt.Sprintf("clearance of %s", kind), min(c.Along, c.Across), 0)
		f.length(fmt.Sprintf("clearance of %s", kind), max(c.Along, c.Across), 0)
	}
	if s.OffcutCredit < 0 || s.OffcutCredit >= layout.CreditUnity {
		f.add("offcut_credit is %d thousand-millionths; want 0 or more, but less than 1", int64(s.OffcutCredit))
	}
}

func stockForm(b *layout.Board, f formFaults) {
	if b.Mark == "" {
		f.add("a board without a mark")
	}
	f.length("thickness", b.Thickness, 1)
	f.length("width", b.Width, 1)
	f.length("tip_width", b.TipWidth, 1)
	f.length("length", b.Length, 1)
	f.length("bow", b.Bow, 0)
	f.length("crook", b.Crook, 0)
	f.length("cup", b.Cup, 0)
	f.length("twist", b.Twist, 0)
	f.money("cost", b.Cost)
	if b.Edges > layout.EdgesBoth || b.Faces > layout.FacesPlaned || b.Source > layout.Hold {
		f.add("edges, faces or source hold no known word")
	}
	for _, d := range b.Defects {
		if d.Face > layout.FaceB || !sane(d.Rect) {
			f.add("a %s has no known face or lies far off the board", d.Kind)
		}
	}
}

func billForm(p *layout.Part, f formFaults) {
	if p.Name == "" {
		f.add("a part without a name")
	}
	least := layout.Length(1)
	if p.Set != "" {
		least = 0 // the plan chooses the length of a strip
		f.length("slice_thickness", p.SliceThickness, 1)
		if min(p.Quantity, p.Slices) < 1 {
			f.add("%d strips in a copy and %d slices; want 1 or more of a set", p.Quantity, p.Slices)
		}
	}
	f.length("thickness", p.Thickness, 1)
	f.length("width", p.Width, 1)
	f.length("length", p.Length, least)
	f.count("quantity", p.Quantity)
	f.count("spare", p.Spare)
	if p.Set != "" && p.Spare > 0 {
		f.add("%d spare of a row of a set; its slices are what counts", p.Spare)
	}
	f.count("slices", p.Slices)
	if p.Bevel < 0 || p.Bevel > 45*layout.Degree {
		f.add("bevel is %d millionths of a degree; want 0 to 45 degrees", int64(p.Bevel))
	}
}

// sane reports whether all sides of a rectangle are within twice the largest
// board.
func sane(r layout.Rect) bool {
	const far = 2 * layout.MaxLength
	return min(r.X1, r.X2, r.Y1, r.Y2) >= -far && max(r.X1, r.X2, r.Y1, r.Y2) <= far
}
