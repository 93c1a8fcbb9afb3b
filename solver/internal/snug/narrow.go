package snug

import "sawbill/layout"

// narrowings are all changes of a tree that make a strip as wide as what is in it.
func (b *board) narrowings(root *layout.Node) []change {
	var list []change
	at := -1
	root.Walk(func(n *layout.Node) {
		at++
		if n.Cut != layout.Crosscut || n == root || n.Lean > 0 {
			return
		}
		if s := held(n); s.Lo < s.Hi && s != n.Across() {
			list = append(list, change{at: at, do: func(n *layout.Node) { narrow(n, s) }})
		}
	})
	return list
}

// held is how much of the width of a strip its pieces take.
func held(strip *layout.Node) layout.Span {
	s := layout.Span{Lo: strip.Y2, Hi: strip.Y1}
	for _, cell := range strip.Children {
		for _, leaf := range cell.Leaves() {
			if leaf.Part != "" || leaf.Offcut != "" {
				s.Lo, s.Hi = min(s.Lo, leaf.Y1), max(s.Hi, leaf.Y2)
			}
		}
	}
	return s
}

// narrow gives a strip and its lengths another width. A length that then is one piece
// is ripped no more.
func narrow(strip *layout.Node, s layout.Span) {
	strip.Y1, strip.Y2 = s.Lo, s.Hi
	for i, cell := range strip.Children {
		cell.Y1, cell.Y2 = s.Lo, s.Hi
		if len(cell.Children) == 1 && cell.Children[0].Rect == cell.Rect {
			strip.Children[i] = cell.Children[0]
		}
	}
}
