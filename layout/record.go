package layout

import (
	"slices"
	"time"
)

// Record is what has happened to a job before a revision of its plan, and what the
// plan alone does not say. Boards that are being cut stand in the plan with all
// their cuts, done or not; the bill counts their pieces. Boards that are cut are
// in the record alone.
type Record struct {
	// From is the revision that this one goes on from.
	From int
	// Told is what made it one, a line each.
	Told []string
	// Wanted is the whole bill: what is cut, what is planned and what is missing.
	Wanted []Part
	// Cut are the finished pieces. They never change.
	Cut []CutPiece
	// Started are the boards in the plan that are being cut.
	Started []Start
	// Spent is what the boards cost that are in the record alone, Used these boards as
	// they stood in the stock; plans made before it was kept do not have it.
	Spent Money
	Used  []Board
	// Origins say where wood of the stock was cut out of another board.
	Origins []Origin
	// Papers are the boards of the plan whose cuts are older than this revision.
	Papers []Paper
}

// Start is a board that is being cut, with the tree of its cuts when that began: the
// plan's own has lost what was given up since.
type Start struct {
	Board string
	Root  *Node
}

// CutPiece is a finished piece of a part.
type CutPiece struct {
	Part, Board string // its name in the bill, the mark of its board
	Revision    int    // after which it was cut
	Spare       bool   // as in the tree that it was cut from
	Slices      int    // that a strip of a glue-up gives, otherwise 0
	// Wood is the piece as a row of the stock, marked with its id. Lay is where it was
	// in the frame of its board.
	Wood Board
	Lay  Rect
}

// Origin says that a board of the stock was cut out of another one, and where it
// lay in its frame.
type Origin struct {
	Board, Of string
	Wood      Rect
}

// Paper says by which revision the sheets of a board were made that are still
// true, and what they bear.
type Paper struct {
	Board    string
	Revision int
	Word     string
	Made     time.Time
}

// Wanted is the whole bill of a job: of what is cut, too, from boards that the plan no
// longer holds.
func (p *Plan) Wanted() []Part {
	if p.Record != nil {
		return p.Record.Wanted
	}
	return p.Problem.Bill
}

// Paper is the entry of a board whose cuts are older than the plan, or nil.
func (r *Record) Paper(mark string) *Paper {
	if r == nil {
		return nil
	}
	for i := range r.Papers {
		if r.Papers[i].Board == mark {
			return &r.Papers[i]
		}
	}
	return nil
}

// CutElsewhere are the finished pieces that came from boards which the plan no longer
// holds.
func (p *Plan) CutElsewhere() []CutPiece {
	if p.Record == nil {
		return nil
	}
	held := map[string]bool{}
	for _, b := range p.Boards {
		for _, leaf := range b.Root.Leaves() {
			for _, id := range leaf.PieceIDs() {
				held[id] = true
			}
		}
	}
	return slices.DeleteFunc(slices.Clone(p.Record.Cut), func(c CutPiece) bool { return held[c.Wood.Mark] })
}

// Start is the entry of a board that is being cut, or nil.
func (r *Record) Start(mark string) *Start {
	if r == nil {
		return nil
	}
	for i := range r.Started {
		if r.Started[i].Board == mark {
			return &r.Started[i]
		}
	}
	return nil
}

// IsStarted reports whether a board is being cut.
func (r *Record) IsStarted(mark string) bool {
	return r.Start(mark) != nil
}

// IsCut reports whether the piece with an id is finished.
func (r *Record) IsCut(id string) bool {
	if r == nil {
		return false
	}
	for i := range r.Cut {
		if r.Cut[i].Wood.Mark == id {
			return true
		}
	}
	return false
}
