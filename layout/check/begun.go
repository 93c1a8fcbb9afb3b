package check

import "sawbill/layout"

// begun: each board that the record says is being cut is in the plan, and so is the
// tree that it was begun with, but for what was given up since. That tree too is one
// of the board, cut in a valid order: the steps are worked out from it.
func begun(j *job, note note) {
	if j.plan.Record == nil {
		return
	}
	seen := map[string]bool{}
	for i := range j.plan.Record.Started {
		start := &j.plan.Record.Started[i]
		s := j.sawnOf(start.Board)
		switch {
		case seen[start.Board]:
			note(start.Board, "", "the record says twice that it is being cut")
		case s == nil:
			note(start.Board, "", "the record says that it is being cut, and the plan has no cuts of it")
		case j.formOfTree(&layout.BoardPlan{Board: start.Board, Root: start.Root}):
			j.begunWith(s, start.Root, note)
		}
		seen[start.Board] = true
	}
}

// begunWith holds the cuts of a board against the tree that it was begun with.
func (j *job) begunWith(s *sawn, root *layout.Node, note note) {
	was := &sawn{job: j, wood: s.wood, plan: s.plan}
	was.replay(&spot{Node: root})
	wrong := func(at *spot, format string, args ...any) {
		note(s.wood.Mark, j.place(at), "as it was begun: "+format, args...)
	}
	for _, rule := range []func(*sawn, report){v1, v2, v3, v4} {
		rule(was, wrong)
	}
	if at := unlike(s.spots[0], root); at != nil {
		note(s.wood.Mark, j.place(at), "it is cut otherwise than the record says it was begun")
	}
}

// unlike is the first node that a tree cuts up otherwise than another one does; what
// it does not cut up any more may be cut in that.
func unlike(at *spot, was *layout.Node) *spot {
	switch {
	case at.Rect != was.Rect:
		return at
	case len(at.kids) == 0:
		return nil
	case at.Cut != was.Cut || len(at.kids) != len(was.Children):
		return at
	}
	for i, kid := range at.kids {
		if other := unlike(kid, was.Children[i]); other != nil {
			return other
		}
	}
	return nil
}

func (j *job) sawnOf(mark string) *sawn {
	for _, s := range j.boards {
		if s.wood.Mark == mark {
			return s
		}
	}
	return nil
}
