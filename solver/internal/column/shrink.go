package column

import (
	"slices"

	"sawbill/layout"
)

// shrink is a copy of a cut tree in which every trued blank of the full width
// ends where its last part does, as far as the rules allow, and no offcut is
// kept inside a trued node; harvest then finds what to keep. One large rough
// offcut is often worth more than several small ones.
func (w *Board) shrink(root *layout.Node) *layout.Node {
	c := root.Clone()
	for _, n := range c.Children {
		if n.Trued {
			dropOffcuts(n)
			w.shrinkBlank(n)
		}
	}
	return c
}

// Bare is a copy of a cut tree of which nothing is kept but the parts.
func Bare(root *layout.Node) *layout.Node {
	c := root.Clone()
	dropOffcuts(c)
	return c
}

// dropOffcuts takes out the offcuts below n, and what then holds nothing.
func dropOffcuts(n *layout.Node) {
	for _, c := range n.Children {
		dropOffcuts(c)
	}
	n.Children = slices.DeleteFunc(n.Children, func(c *layout.Node) bool {
		return c.Part == "" && len(c.Children) == 0
	})
}

func (w *Board) shrinkBlank(n *layout.Node) {
	var reach layout.Length
	thicks := map[layout.Length]bool{}
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" {
			reach = max(reach, leaf.X2)
			thicks[w.needOf(leaf)] = true
		}
	}
	if reach == 0 {
		return
	}
	end := max(reach+max(w.end, w.shop.Snipe), n.X1+w.shop.MinRipLength, n.X1+w.shop.MinBlank)
	if len(thicks) > 1 {
		end = max(end, n.X1+w.shop.MinBlank+2*w.end)
	}
	if end >= n.X2 || w.metalIn(layout.Span{Lo: end, Hi: end + w.shop.CrosscutKerf}) {
		return
	}
	n.X2 = end
	for _, strip := range n.Children {
		strip.X2 = end - w.end
	}
}
