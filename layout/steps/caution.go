package steps

import (
	"slices"

	"sawbill/layout"
)

// Caution is a short fixed line that is printed beside the step that needs it.
type Caution string

// The cautions, one for each danger of a cut.
const (
	CautionRoughRip   Caution = "Never against a rip fence: snap a line; bandsaw or track saw, hollow side down."
	CautionSupport    Caution = "Warped: support it so that it cannot rock or pinch the blade."
	CautionLoose      Caution = "Loose wood near: cut it out first or do not machine this face; stand aside."
	CautionShortBlank Caution = "Too short for jointer and planer: not allowed."
	CautionPushStick  Caution = "Narrow rip: push stick or block, riving knife."
	CautionThin       Caution = "Thin strip: it falls on the side away from the fence, never trapped."
	CautionShort      Caution = "Short: clamp it, never hold it by hand near the blade; no stop that traps the offcut."
	CautionMetal      Caution = "Metal marked: find it, remove it, check with a detector; until then do not cut there."
	CautionDust       Caution = "Dust: extraction and a mask; some woods sensitise."
)

// SafetyFirst is said on every sheet and in every booklet.
const SafetyFirst = "Guards, riving knife, push blocks, local rules and proper training come first."

// pushStickWidth is the width of a rip below which hands stay off the wood.
const pushStickWidth = 6 * layout.Inch

// cautions lists what must be said beside a step done to piece p.
func cautions(shop *layout.Shop, b *layout.Board, s *Step, p piece) []Caution {
	var list []Caution
	say := func(when bool, c Caution) {
		if when {
			list = append(list, c)
		}
	}
	switch s.Operation {
	case RoughRip:
		list = append(list, CautionRoughRip)
	case Crosscut:
		say(s.Blank == "" && (b.Bow > 0 || b.Twist > 0 || b.Cup > 0), CautionSupport)
		say(!s.NoCut && shortPiece(shop, s, p), CautionShort)
	case Rip:
		say(!s.NoCut && s.Setting < pushStickWidth, CautionPushStick)
		say(!s.NoCut && narrowPiece(shop, s), CautionThin)
	case True:
		say(near(b, p.rect, layout.Loose, layout.Split, layout.Shake, layout.Bark), CautionLoose)
		say(b.Faces == layout.FacesRough && p.rect.Length() < shop.MinBlank, CautionShortBlank)
	}
	say(!s.NoCut && near(b, p.rect, layout.Metal), CautionMetal)
	return list
}

// shortPiece reports whether a crosscut leaves a wanted piece, or starts from
// one, that is too short to be held.
func shortPiece(shop *layout.Shop, s *Step, p piece) bool {
	return s.Off != "" && s.OffSize.Length < shop.MinCrosscut ||
		s.Rest != "" && s.RestSize.Length < shop.MinCrosscut ||
		p.rect.Length() < shop.MinCrosscut
}

func narrowPiece(shop *layout.Shop, s *Step) bool {
	return s.Setting < shop.MinRip || s.Rest != "" && s.RestSize.Width < shop.MinRip
}

// near reports whether a defect of one of the kinds is marked in r.
func near(b *layout.Board, r layout.Rect, kinds ...layout.Kind) bool {
	return slices.ContainsFunc(b.Defects, func(d layout.Defect) bool {
		return slices.Contains(kinds, d.Kind) && d.Rect.Overlaps(r)
	})
}
