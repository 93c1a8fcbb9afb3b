package steps

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// Operation is what is done to the piece in hand.
type Operation string

// The operations, in the words of the trade.
const (
	Crosscut Operation = "crosscut"
	RoughRip Operation = "rough rip"
	True     Operation = "true"
	Rip      Operation = "rip"
	BevelRip Operation = "bevel rip"
	Resaw    Operation = "resaw"
	Plane    Operation = "plane"
)

// From is the end, edge or face of the piece in hand that stop, fence or tape
// touches.
type From string

// What a setting can be measured from.
const (
	Butt      From = "butt"
	Tip       From = "tip"
	Reference From = "reference"
	Far       From = "far"
	Face      From = "face"
)

// Size is length along the grain by width by thickness.
type Size struct{ Length, Width, Thickness layout.Length }

// Count says how many pieces of a part are done after a step, and how many are
// wanted, or that the piece that is done is a spare one. The zero Count belongs to a
// step that finishes none.
type Count struct {
	Done, Of int
	Spare    bool
}

// String gives "3 of 8", "spare", or nothing for the zero Count.
func (c Count) String() string {
	if c.Spare {
		return "spare"
	}
	if c.Of == 0 {
		return ""
	}
	return fmt.Sprintf("%d of %d", c.Done, c.Of)
}

// Step is one thing that a person does to one piece of wood.
type Step struct {
	Number    int    // 1, 2, 3, … over the whole job
	Board     string // mark of the board that the piece comes from
	Piece     string // id of the piece taken in hand
	Operation Operation
	From      From
	// Setting is the distance from there to the near side of the kerf; for True
	// and Plane it is the thickness planed to.
	Setting layout.Length
	// Angle is that of the blade from square. The blade tilts away from the fence.
	Angle layout.Angle
	// Down is the face that lies on the table where it matters: at a tilted blade,
	// or with a leaning edge against the fence. Setting is read there, at the
	// table. It is Through elsewhere.
	Down layout.Face
	// Off is the id of the piece between stop or fence and blade, or of the
	// result of True and Plane. It is empty when that piece is waste.
	Off     string
	OffSize Size
	// Rest is the id of what lies beyond the kerf, empty when it is waste or
	// nothing is left.
	Rest string
	// Part is the bill's name when Off is a finished piece of it.
	Part string
	// Offcut is the mark of a leftover to keep. It is the rest when KeepsRest.
	Offcut    string
	KeepsRest bool
	Slices    int
	// OnEdge says that the finished part Off stands on its edge: its thickness lies
	// across.
	OnEdge bool
	// Jointed says that Plane makes a resawn face flat, so that it can lie against
	// the fence of the next resaw.
	Jointed bool
	// Final says that Plane is the last work on a part, after it has rested.
	Final bool
	// Resawn is the chalk name of the wood whose layers a step saws apart or cleans,
	// empty for all other steps.
	Resawn   string
	Count    Count
	Cautions []Caution
	// Oversize is the sentence that tells the finished size of a part that is cut
	// with allowance; empty where it is cut to size.
	Oversize string

	// RestSize is the size of what lies beyond the kerf, waste or not; zero when
	// nothing is left.
	RestSize Size
	// Whole is what a tape reads on the piece in hand, OffTape and RestTape on
	// what the step makes of it.
	Whole, OffTape, RestTape Tape
	// WholeSection is the piece in hand across the grain, OffSection and RestSection
	// what a rip makes of it.
	WholeSection, OffSection, RestSection Section
	// Show is the face of a finished part that must be seen, if one must.
	Show layout.Face
	// Wood is where the piece in hand lies in the board's frame.
	Wood layout.Rect
	// OffWood and RestWood are where that lies which the step makes of it, waste or
	// not.
	OffWood, RestWood layout.Rect
	// Kerf is where the saw passes, in the board's frame. Where the plan leaves
	// nothing beyond a piece it lies outside the plan's wood, in the rough edge
	// or end. At a tilted blade it is what it takes of face A; on face B it lies Lean
	// further from the reference edge. It is empty for True, Plane, Resaw and a step
	// without a cut.
	Kerf layout.Rect
	Lean layout.Length
	// Done says that the record of the job has a piece for which this step was
	// needed.
	Done bool
	// NoCut says that the piece already has the size of Setting, so that nothing
	// is sawn: the step only names it and counts it.
	NoCut bool
	// Blank is the chalk name of the trued blank that the step works on, empty
	// for the rough cuts before.
	Blank string
}

// Rips reports whether a step rips a trued piece, square or at a bevel.
func (s *Step) Rips() bool { return s.Operation == Rip || s.Operation == BevelRip }

// OffcutColumn is the mark as the step file writes it: plain for Off,
// "rest:MARK" for the rest.
func (s *Step) OffcutColumn() string {
	if s.KeepsRest {
		return "rest:" + s.Offcut
	}
	return s.Offcut
}

// keepRest marks the rest as an offcut to keep, unless the mark is empty.
func (s *Step) keepRest(mark string) {
	if mark != "" {
		s.Offcut, s.KeepsRest = mark, true
	}
}

// Chalk is the name written on the wood of the piece with an id.
func Chalk(id string) string {
	name, _, _ := strings.Cut(id, "~")
	return name
}
