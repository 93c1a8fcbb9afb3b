package bound

import (
	"math"
	"slices"

	"sawbill/layout"
)

// lane is the strips of one thickness and one lean.
type lane struct {
	thick   layout.Length
	lean    lean
	longest layout.Length // the longest blank that is thick enough for any part of it
	topKerf layout.Length // how far parts and the kerfs behind them may reach beyond the wood
}

func (w *wood) laneOf(v *way) int {
	i := slices.IndexFunc(w.lanes, func(l lane) bool { return l.thick == v.thickness && l.lean == v.lean })
	if i < 0 {
		i = len(w.lanes)
		w.lanes = append(w.lanes, lane{thick: v.thickness, lean: v.lean, topKerf: v.lean.kerf - v.lean.by})
	}
	w.lanes[i].longest = max(w.lanes[i].longest, v.longest)
	return i
}

// setBrief finds the shortest blank that holds a part.
func (w *wood) setBrief(ways []way) {
	w.brief = w.board.Length
	for i := range ways {
		w.brief = min(w.brief, w.leastBlank(ways[i].length))
	}
}

// lasting is the lanes of which a blank so short may hold parts, told by the shortest
// of the lengths up to which they last.
func (w *wood) lasting(short layout.Length) layout.Length {
	least := layout.Length(math.MaxInt64)
	for i := range w.lanes {
		if l := w.lanes[i].longest; l >= short {
			least = min(least, l)
		}
	}
	return least
}

// leans lists the leans of the strips of a board, square ones first.
func (w *wood) leans() []lean {
	list := []lean{{0, w.rip}}
	for i := range w.lanes {
		if l := w.lanes[i].lean; !slices.Contains(list, l) {
			list = append(list, l)
		}
	}
	return list
}

// briefest is how short a blank is at least when its shortest can be so short: it holds
// a part, or offcuts alone.
func (w *wood) briefest(short layout.Length) layout.Length {
	least := w.brief
	if w.worth.rate > 0 {
		least = min(least, w.shop.MinOffcutLength)
	}
	return max(short, least)
}

// behind is the least between a strip of a lean and what lies beyond it: of a square
// one a rip, or a rough rip and the joint of one edge; of others at least their kerf.
func (w *wood) behind(l lean) layout.Length {
	if l.by == 0 {
		return w.stripKerf
	}
	return l.kerf
}

// groups lists the groups of classes of which a strip may hold parts: those of one
// lane, of a lean, in blanks in which lanes last. Without any there is one empty group,
// for offcuts alone.
func (b *bench) groups(at stripAt) [][]int {
	groups := make([][]int, len(b.lanes))
	for c := range b.classes {
		groups[b.classes[c].lane] = append(groups[b.classes[c].lane], c)
	}
	var list [][]int
	for i, g := range groups {
		if l := &b.lanes[i]; l.lean == at.lean && l.longest >= at.lasting && len(g) > 0 {
			list = append(list, g)
		}
	}
	if len(list) == 0 {
		list = append(list, nil)
	}
	return list
}
