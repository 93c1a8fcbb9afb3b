package layout

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// shopLength is one length of the shop under its key in the shop file.
type shopLength struct {
	key    string
	length Length
}

func (s *Shop) lengths() []shopLength {
	return []shopLength{
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
	}
}

func checkShop(cs *Complaints, s *Shop) {
	a := about{cs, ShopTable, WholeTable}
	for _, l := range s.lengths() {
		if l.length < 0 || l.length > MaxLength {
			a.fault(l.key, l.length.String(), "want a length from 0 to 30 m")
		}
	}
	checkKerfs(a, s)
	if !slices.Contains([]int{2, 4, 8, 16, 32, 64}, s.Fraction) {
		a.fault("fraction", fmt.Sprint(s.Fraction), "want 2, 4, 8, 16, 32 or 64")
	}
	if s.OffcutCredit < 0 || s.OffcutCredit >= CreditUnity {
		a.fault("offcut_credit", s.OffcutCredit.String(), "want a share from 0 to less than 1")
	}
	if s.MaxBlank > 0 && s.MaxBlank < s.MinBlank {
		a.fault("max_blank", s.MaxBlank.Format(s.Units, s.Fraction),
			"want at least min_blank, "+s.MinBlank.Format(s.Units, s.Fraction))
	}
	checkPrices(a, s)
	checkClearance(a, s)
	checkGrades(a, s)
	checkHidden(a, s)
	checkCharges(a, s.Charges)
}

// maxKerf is wider than any saw cuts, so that a slip of the pen is told.
const maxKerf = Inch

func checkKerfs(a about, s *Shop) {
	say := func(l Length) string { return l.Exact(s.Units) }
	for _, l := range s.lengths() {
		if strings.HasSuffix(l.key, "_kerf") && maxKerf < l.length && l.length <= MaxLength {
			a.fault(l.key, say(l.length), "want what the saw turns to dust, at most "+say(maxKerf))
		}
	}
}

func checkPrices(a about, s *Shop) {
	names := slices.Sorted(maps.Keys(s.Price))
	for i, name := range names {
		if s.Price[name] < 0 || s.Price[name] > MaxMoney {
			a.fault("price."+name, s.Price[name].String(), "want a price that is not negative")
		}
		for _, other := range names[:i] {
			if SameSpecies(name, other) {
				a.fault("price."+name, name, fmt.Sprintf("which is priced already, as %q", other))
			}
		}
	}
}

func checkClearance(a about, s *Shop) {
	for _, kind := range slices.Sorted(maps.Keys(s.Clearance)) {
		c := s.Clearance[kind]
		key := "clearance." + string(kind)
		if _, known := s.Kinds[kind]; !known {
			a.fault(key, string(kind), WantOneOf(string(kind), s.kindWords()))
		}
		for _, l := range []Length{c.Along, c.Across} {
			if l < 0 || l > MaxLength {
				a.fault(key, l.String(), "want a length from 0 to 30 m")
			}
		}
	}
}

func checkGrades(a about, s *Shop) {
	for _, name := range slices.Sorted(maps.Keys(s.Grades)) {
		for _, kind := range slices.Concat(s.Grades[name].Show, s.Grades[name].Back) {
			if _, known := s.Kinds[kind]; !known {
				a.fault("grades."+name, string(kind), WantOneOf(string(kind), s.kindWords()))
			}
		}
	}
}

func checkHidden(a about, s *Shop) {
	names := slices.Sorted(maps.Keys(s.Hidden))
	for i, name := range names {
		h, key := s.Hidden[name], "hidden."+name
		if h.Per10BF < 0 || h.Per10BF > MaxRate {
			a.fault(key+".per_10bf", h.Per10BF.String(), "want a number from 0 to "+MaxRate.String())
		}
		for _, l := range []shopLength{{".length", h.Length}, {".width", h.Width}} {
			if l.length < 0 || l.length > MaxLength {
				a.fault(key+l.key, l.length.String(), "want a length from 0 to 30 m")
			}
		}
		for _, other := range names[:i] {
			if SameSpecies(name, other) {
				a.fault(key, name, fmt.Sprintf("which is there already, as %q", other))
			}
		}
	}
}
