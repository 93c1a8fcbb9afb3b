package steps

import "sawbill/layout"

// Caution is a short line that is printed beside the step that needs it.
type Caution string

// The cautions that are the same for every piece, one for each danger of a cut.
const (
	CautionRoughRip   Caution = "Never against a rip fence: snap a line; bandsaw or track saw, hollow side down."
	CautionSupport    Caution = "Warped: support it so that it cannot rock or pinch the blade."
	CautionShortBlank Caution = "Too short for jointer and planer: not allowed."
	CautionPushStick  Caution = "Narrow rip: push stick or block, riving knife."
	CautionThin       Caution = "Thin strip: it falls on the side away from the fence, never trapped."
	CautionThinWanted Caution = "Thin strip: never trapped between fence and blade: mark it, set the fence for what is left, so that it falls away."
	CautionThinBoth   Caution = "Thin on both sides of the blade: bandsaw; else a push block with a heel takes the strip at the fence right past the blade."
	CautionShort      Caution = "Short: clamp it or cut from a longer one; no hand near the blade; no length stop that traps the offcut."
	CautionBevel      Caution = "Bevel: the blade tilts away from the fence; the wedge must fall free; check the angle with a gauge."
	CautionCarrier    Caution = "The edge at the fence runs out before the end of the piece: fix the piece to a straight carrier."
	CautionResaw      Caution = "Resaw: sawn edge on the table, planed face against a tall fence; push block; no hand where the blade comes out."
	CautionThinPlane  Caution = "Too thin for most planers: on a flat carrier board, light cuts, or by hand."
	CautionRest       Caution = "Before this let the wood rest on stickers for a day or more, for sawn wood moves; then flatten it anew, half of the rest off each face."
	CautionShortPlane Caution = "Too short for the planer: plane it by hand."
	CautionMetal      Caution = "Metal marked: find it, remove it, check with a detector; until then do not cut there."
	CautionDust       Caution = "Dust: extraction and a mask; some woods sensitise."
)

// SafetyFirst is said on every sheet and in every booklet.
const SafetyFirst = "Guards, riving knife, push blocks, local rules and proper training come first."

// thinPlane is the thickness below which most planers take no wood by itself.
const thinPlane = 3 * layout.Inch / 16

// pushStickWidth is the width of a rip below which hands stay off the wood.
const pushStickWidth = 6 * layout.Inch

// cautions lists what must be said beside a step done to piece p.
func (w *worker) cautions(s *Step, p piece) []Caution {
	shop, b := w.shop, w.board
	var list []Caution
	say := func(when bool, c Caution) {
		if when {
			list = append(list, c)
		}
	}
	switch s.Operation {
	case RoughRip:
		list = append(list, CautionRoughRip)
		say(b.Crook > 0 || b.Twist > 0 || b.Cup > 0, CautionSupport)
	case Crosscut:
		say(s.Blank == "" && (b.Bow > 0 || b.Twist > 0 || b.Cup > 0), CautionSupport)
		say(!s.NoCut && shortPiece(shop, s), CautionShort)
	case Rip, BevelRip:
		say(s.Operation == BevelRip && !s.NoCut, CautionBevel)
		say(s.From == Far && w.board.FarMin(p.rect.Along()) < p.rect.Y2+p.far, CautionCarrier)
		say(!s.NoCut && s.Setting < pushStickWidth, CautionPushStick)
		if c := thin(s.Setting < shop.MinRip, narrowRest(shop, s)); !s.NoCut && c != "" {
			list = append(list, c)
		}
	case Resaw:
		say(!s.NoCut, CautionResaw)
	case Plane:
		say(s.Final, CautionRest)
		say(s.Final && p.rect.Length() < shop.MinBlank, CautionShortPlane)
		say(s.Setting < thinPlane, CautionThinPlane)
	case True:
		list = append(list, w.looseNear(p)...)
		say(b.Faces == layout.FacesRough && p.rect.Length() < shop.MinBlank, CautionShortBlank)
	}
	list = append(list, w.looseInCut(s, p)...)
	say(!s.NoCut && w.metalIn(p), CautionMetal)
	return list
}

// shortPiece reports whether one of the pieces of a crosscut, waste or not, is
// too short to be held.
func shortPiece(shop *layout.Shop, s *Step) bool {
	rest := s.RestTape.Across(s.Operation)
	return s.Setting < shop.MinCrosscut || Shaving <= rest && rest < shop.MinCrosscut
}

// thin is the caution for a rip whose strip at the fence is thin, or the one beyond
// the blade. Where both are, the fence cannot be set for a wide one.
func thin(off, rest bool) Caution {
	switch {
	case off && rest:
		return CautionThinBoth
	case off:
		return CautionThinWanted
	case rest:
		return CautionThin
	}
	return ""
}

// narrowRest reports whether a rip leaves a thin strip, waste or not, on the side
// away from the fence.
func narrowRest(shop *layout.Shop, s *Step) bool {
	rest := s.RestTape.Across(s.Operation)
	return Shaving <= rest && rest < shop.MinRip
}

func (w *worker) metalIn(p piece) bool {
	for _, d := range w.board.Defects {
		if d.Kind == layout.Metal && w.reach(d).Overlaps(w.covers(p)) {
			return true
		}
	}
	return false
}
