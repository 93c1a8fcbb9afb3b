package steps

import (
	"slices"

	"sawbill/layout"
)

// Sheet is the work on one board, in order.
type Sheet struct {
	Board  *layout.Board
	Plan   *layout.BoardPlan
	Steps  []Step
	Blanks []Blank
	root   *layout.Node // the tree that the steps cut
	names  *names
	spares map[string]bool // ids of pieces of the job
}

// Blank is one trued piece and where it lies.
type Blank struct {
	Name string // its chalk name
	Node *layout.Node
	// Usable is what truing leaves, in the board's frame. Where the far edge
	// tapers it is the box around the wood.
	Usable    layout.Rect
	Thickness layout.Length // planed to this
	// LeastWidth is the width that truing leaves at the narrowest place.
	LeastWidth layout.Length
	// OpenFar and OpenTip say that the far edge and the tip end are still rough
	// after truing.
	OpenFar, OpenTip bool
	Truing           Truing
}

// Of is the work on one board of a plan, cut board by board. bp is one of
// plan.Boards.
func Of(plan *layout.Plan, bp *layout.BoardPlan) *Sheet { return OfIn(plan, bp, ByBoard) }

// OfIn is the work on one board of a plan, numbered in an order of work. bp is one
// of plan.Boards.
func OfIn(plan *layout.Plan, bp *layout.BoardPlan, order Order) *Sheet {
	for _, s := range AllIn(plan, order) {
		if s.Plan.Board == bp.Board {
			return s
		}
	}
	panic("steps: board " + bp.Board + " is not in the plan")
}

// All is the work of a whole job, board by board. The plan must have passed its
// check.
func All(plan *layout.Plan) []*Sheet { return AllIn(plan, ByBoard) }

func newSheet(plan *layout.Plan, bp *layout.BoardPlan, names *names) *Sheet {
	start := plan.Record.Start(bp.Board)
	if start == nil {
		return workOn(&plan.Problem, bp, bp.Root, names)
	}
	s := begun(plan, bp, start, names)
	s.goOn(bp.Root)
	return s
}

// workOn is the work on the board of bp to cut it into the pieces of a tree.
func workOn(p *layout.Problem, bp *layout.BoardPlan, root *layout.Node, names *names) *Sheet {
	s := &Sheet{Board: p.Board(bp.Board), Plan: bp, root: root, names: names}
	w := &worker{shop: p.Shop, problem: p, board: s.Board, sheet: s}
	whole := piece{
		id:        names.whole(bp.Board),
		rect:      s.Board.Frame(),
		thickness: s.Board.Thickness,
	}
	w.breakDown(held{root, whole})
	if len(s.Steps) > 0 {
		s.Steps[0].Cautions = append(s.Steps[0].Cautions, CautionDust)
	}
	return s
}

// Spare reports whether all pieces that a part leaf gives are spare ones.
func (s *Sheet) Spare(leaf *layout.Node) bool {
	needed := func(id string) bool { return !s.spares[id] }
	return leaf.Part != "" && !slices.ContainsFunc(leaf.PieceIDs(), needed)
}

// Name is the chalk name of the piece that a node becomes.
func (s *Sheet) Name(n *layout.Node) string { return s.names.chalk[n] }
