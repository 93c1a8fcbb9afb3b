package check

import "sawbill/layout"

// v1: the root is the board, and its children are separated by crosscuts.
func v1(s *sawn, wrong report) {
	root := s.spots[0]
	board := layout.Rect{X1: 0, X2: s.wood.Length, Y1: 0, Y2: s.full()}
	if root.Rect != board {
		wrong(root, "the root is not the whole board, which is %v", board)
	}
	if len(root.kids) > 0 && root.Cut != layout.Crosscut {
		wrong(root, "the board is first ripped; it must be crosscut into blanks")
	}
}
