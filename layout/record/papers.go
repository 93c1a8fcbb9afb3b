package record

import (
	"reflect"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// papers are the boards whose cuts are those of the former plan, so that their
// sheets stay true.
func papers(former, next *layout.Plan) []layout.Paper {
	var list []layout.Paper
	spareThen, spareNow := former.Spares(), next.Spares()
	for _, bp := range next.Boards {
		old := former.Board(bp.Board)
		if old == nil || !sameTree(old.Root, bp.Root) || !sameSpares(bp.Root, spareThen, spareNow) ||
			!sameBoard(former.Problem.Board(bp.Board), next.Problem.Board(bp.Board)) {
			continue
		}
		if p := former.Record.Paper(bp.Board); p != nil {
			list = append(list, *p)
		} else {
			list = append(list, layout.Paper{
				Board: bp.Board, Revision: former.Revision, Word: steps.CheckWord(former), Made: former.Made,
			})
		}
	}
	return list
}

// sameSpares reports whether the same pieces of a tree are spare.
func sameSpares(root *layout.Node, then, now map[string]bool) bool {
	for _, leaf := range root.Leaves() {
		for _, id := range leaf.PieceIDs() {
			if then[id] != now[id] {
				return false
			}
		}
	}
	return true
}

// sameBoard compares what a sheet shows of a board; no defects are as good as none.
func sameBoard(a, b *layout.Board) bool {
	if a == nil || b == nil || len(a.Defects) != len(b.Defects) {
		return false
	}
	for i := range a.Defects {
		if a.Defects[i] != b.Defects[i] {
			return false
		}
	}
	x, y := *a, *b
	x.Defects, y.Defects = nil, nil
	return reflect.DeepEqual(x, y)
}

func sameTree(a, b *layout.Node) bool {
	if len(a.Children) != len(b.Children) {
		return false
	}
	for i := range a.Children {
		if !sameTree(a.Children[i], b.Children[i]) {
			return false
		}
	}
	x, y := *a, *b
	x.Children, y.Children = nil, nil
	return reflect.DeepEqual(x, y)
}

// Changed are the marks of boards whose sheets a plan needs anew after another
// plan of the same job.
func Changed(plan *layout.Plan) []string {
	var marks []string
	for _, b := range plan.Boards {
		if plan.Record.Paper(b.Board) == nil {
			marks = append(marks, b.Board)
		}
	}
	return marks
}
