package column

import (
	"slices"

	"sawbill/layout"
)

// lean is how strips are ripped whose edges lean: how much further from the reference
// edge they lie on face B than on face A, and what one rip takes of a face. The first
// of a board's leans is that of square strips.
type lean struct{ by, kerf layout.Length }

// leanOf is the index among the board's leans of that of a part.
func (w *Board) leanOf(part *layout.Part) int {
	if part.Bevel == 0 {
		return 0
	}
	l := lean{part.Lean(), w.shop.BevelKerf(part.Bevel)}
	i := slices.Index(w.leans, l)
	if i < 0 {
		i = len(w.leans)
		w.leans = append(w.leans, l)
	}
	return i
}

// apart is how far a strip stays from the far edge of its neighbour toward the
// reference edge, measured on face A: a kerf on either face. Strips that lean alike
// nest.
func (l lean) apart(next lean) layout.Length {
	return max(l.kerf, next.kerf) + max(0, l.by-next.by)
}

// inset is how far a strip stays from the near edge of its trued node: of a square
// one nothing is lost, of a leaning one a kerf beside the wedge.
func (l lean) inset() layout.Length {
	if l.by == 0 {
		return 0
	}
	return l.kerf
}

// leanNamed is the lean of a node that leans so much.
func (w *Board) leanNamed(by layout.Length) lean {
	found := w.leans[0]
	for _, l := range w.leans[1:] {
		if l.by == by && by > 0 {
			found = lean{by, max(found.kerf, l.kerf)}
		}
	}
	return found
}

// after is by how many positions the next strip of a lean may start later, after one
// of another, than a square strip after a square one. The far edge of a trued node
// comes next where next is atEnd: there a leaning strip loses the wedge and a kerf.
func (w *Board) after(before, next int) int {
	l := w.leans[before]
	if next == atEnd {
		return w.y.up(l.by + l.inset())
	}
	return w.y.up(l.apart(w.leans[next]) - w.shop.RipKerf)
}

// What may come next in a layer, beside strips of one lean.
const (
	anyLean = -1
	atEnd   = -2
)

// setNexts lists what may come after a strip, as far as it makes a difference, and how
// much later.
func (w *Board) setNexts() {
	w.next = []int{0}
	for lean := range w.leans[1:] {
		w.next = append(w.next, lean+1)
	}
	if len(w.leans) > 1 {
		w.next = append(w.next, atEnd)
	}
	w.afters = make([][]int, len(w.leans))
	for lean := range w.leans {
		for _, next := range w.next {
			w.afters[lean] = append(w.afters[lean], w.after(lean, next))
		}
	}
}

// layers says which layer of the rips of a trued node is which. Without leaning
// strips there is one, and where the mode demands a thickness a second one for the
// rips that hold a part of it. With them each of these becomes one for every lean
// that the next strip may have and one for the end of the node, which is the last;
// and there is one more before all others where nothing is cut yet.
type layers struct {
	leans int
	must  bool
}

func (w *Board) layersOf(m mode) layers { return layers{len(w.leans), m.must > 0} }

// group is how many layers there are for the rips that hold, or do not hold, a part of
// the thickness demanded.
func (l layers) group() int {
	if l.leans == 1 {
		return 1
	}
	return l.leans + 1
}

func (l layers) count() int {
	n := l.group()
	if l.must {
		n *= 2
	}
	if l.leans > 1 {
		n++
	}
	return n
}

// of is the layer for what may come next, among the rips that hold a part of the
// thickness demanded, or among those that do not.
func (l layers) of(held bool, next int) int {
	n := max(next, 0)
	if next == atEnd && l.leans > 1 {
		n = l.leans
	}
	if held && l.must {
		n += l.group()
	}
	if l.leans > 1 {
		n++
	}
	return n
}

// next is what may come next in a layer; held says of which rips.
func (l layers) next(layer int) (next int, held bool) {
	if l.leans > 1 {
		if layer == 0 {
			return anyLean, false
		}
		layer--
	}
	next = layer % l.group()
	if l.leans > 1 && next == l.leans {
		next = atEnd
	}
	return next, layer >= l.group()
}

// opens reports whether a strip of a lean may start at position j in a layer for
// strips of lean next, in a trued node that is usable from near on.
func (w *Board) opens(next, lean, j int, near layout.Length) bool {
	if next == anyLean {
		return w.y.at(j) >= near+w.leans[lean].inset()
	}
	return next == lean
}
