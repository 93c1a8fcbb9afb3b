package steps

import (
	"regexp"
	"slices"

	"sawbill/layout"
)

// Begun is the work on a board that is being cut, as it was planned when that began,
// with what is done marked. bp is one of plan.Boards, and the record of the plan says
// that the board is started.
func Begun(plan *layout.Plan, bp *layout.BoardPlan) *Sheet {
	return begun(plan, bp, plan.Record.Start(bp.Board), newNames(plan))
}

func begun(plan *layout.Plan, bp *layout.BoardPlan, start *layout.Start, names *names) *Sheet {
	p := plan.Problem
	p.Bill = plan.Record.Wanted // pieces that are given up may be of parts that nobody asks for any more
	s := workOn(&p, bp, start.Root, names)
	s.markDone(plan.Record)
	return s
}

// goOn leaves of the work on a board that is being cut what is still to be done for
// the pieces of a tree, and what is done. Who cut by the steps so far goes on with
// these: no piece that lies on the bench is measured otherwise than before, and waste
// that was a piece is still cut where that was.
func (s *Sheet) goOn(root *layout.Node) {
	wanted := map[string]*layout.Node{}
	for _, leaf := range root.Leaves() {
		switch {
		case leaf.Part != "":
			for _, id := range leaf.PieceIDs() {
				wanted[id] = leaf
			}
		case leaf.Offcut != "":
			wanted[leaf.Offcut] = leaf
		}
	}
	takes := map[string]bool{} // pieces that a later step takes
	var left []Step
	for i := len(s.Steps) - 1; i >= 0; i-- {
		st := s.Steps[i]
		if st.keepWanted(wanted, takes) || st.Done {
			takes[st.Piece] = true
			left = append(left, st)
		}
	}
	slices.Reverse(left)
	s.Steps = left
	s.rename(root)
}

// keepWanted makes waste of what a step gives and nobody wants any more, and reports
// whether it gives anything else. What was done keeps the name that is written on it.
func (s *Step) keepWanted(wanted map[string]*layout.Node, takes map[string]bool) bool {
	off := wanted[Chalk(s.Off)]
	switch {
	case s.Part != "" && off != nil && off.Offcut != "":
		s.spoil()
		s.Offcut = off.Offcut
	case s.Part != "" && off == nil:
		s.spoil()
	}
	if s.Offcut != "" && wanted[s.Offcut] == nil {
		s.Offcut, s.KeepsRest = "", false
	}
	keepsOff := s.Part != "" || s.Offcut != "" && !s.KeepsRest || s.Off != "" && takes[s.Off]
	keepsRest := s.KeepsRest || s.Rest != "" && takes[s.Rest]
	if !s.Done && !keepsOff {
		s.Off = ""
	}
	if !s.Done && !keepsRest {
		s.Rest = ""
	}
	return keepsOff || keepsRest
}

// spoil makes of a finished piece one that is none.
func (s *Step) spoil() {
	s.Part, s.Slices, s.OnEdge, s.Oversize, s.Show = "", 0, false, "", layout.Through
}

// rename gives the nodes of a tree that has lost pieces the names and blanks of those
// of the whole one, which lie at the same places.
func (s *Sheet) rename(root *layout.Node) {
	now := map[*layout.Node]*layout.Node{}
	var pair func(was, is *layout.Node)
	pair = func(was, is *layout.Node) {
		now[was] = is
		s.names.chalk[is] = s.names.chalk[was]
		for i := range is.Children {
			pair(was.Children[i], is.Children[i])
		}
	}
	pair(s.root, root)
	s.root = root
	var left []Blank
	for _, b := range s.Blanks {
		node := now[b.Node]
		if slices.ContainsFunc(s.Steps, func(st Step) bool { return st.Blank == b.Name }) {
			if node != nil {
				b.Node = node
			}
			left = append(left, b)
		}
	}
	s.Blanks = left
}

// again is what the record adds to the name of a piece whose name a board of the
// stock has already.
var again = regexp.MustCompile(`-R[0-9]+$`)

// lying are the chalk names of what a record says was taken off a board: finished
// pieces and wood that is stock by now.
func lying(r *layout.Record, mark string) map[string]bool {
	names := map[string]bool{}
	for _, c := range r.Cut {
		if c.Board == mark {
			names[c.Wood.Mark] = true
		}
	}
	for _, o := range r.Origins {
		if o.Of == mark {
			names[o.Board], names[again.ReplaceAllString(o.Board, "")] = true, true
		}
	}
	return names
}
