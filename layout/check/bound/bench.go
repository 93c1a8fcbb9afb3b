package bound

import "sawbill/layout"

// bench is one board at work: its wood, and what is remembered of it.
type bench struct {
	*wood
	plain  *bench // the board cleared; of a cleared board itself
	stop   func() bool
	fine   int // cells across of at most so many positions
	stacks map[stackAt]*stack
	strips map[stripAt]*strip
	blanks map[blankAt]value
	rulers map[rulerAt]*ruler
	ruled  int // values in them
}

// How many stacks and strips are remembered at a time: some hundred megabytes
// of the largest boards on the fine grid, and as much on a finer one.
const (
	mostStacks = 10_000
	mostStrips = 4_000
)

func (b *bench) mostStacks() int { return mostStacks * mostAcross / max(mostAcross, b.ny) }

func (b *bench) mostStrips() int { return mostStrips * mostAlong / max(mostAlong, b.nx) }

func newBench(w *wood, fine int, stop func() bool) *bench {
	b := emptyBench(w, fine, stop)
	b.plain = emptyBench(w.cleared(), w.ny, stop)
	b.plain.plain = b.plain
	return b
}

func emptyBench(w *wood, fine int, stop func() bool) *bench {
	return &bench{
		wood: w, stop: stop, fine: fine,
		stacks: map[stackAt]*stack{}, strips: map[stripAt]*strip{}, blanks: map[blankAt]value{}, rulers: map[rulerAt]*ruler{},
	}
}

// topmost is the last position across at which a strip with parts could end, its
// kerf included; lowest the first at which one could begin, where the wood does at
// shift.
func (w *wood) topmost(l lean) int {
	return w.y.down(w.board.FullWidth() - w.far - l.by - l.beside() + w.behind(l))
}

func (w *wood) lowest(l lean, shift layout.Length) int {
	return w.y.down(shift + w.near + l.beside())
}

// endOf is the furthest that a blank can reach along after which the next piece
// may begin at position e.
func (w *wood) endOf(e int) layout.Length {
	return min(w.x.last(e)-w.crosscut, w.board.Length-w.shop.EndTrim)
}

// topOf is the furthest across that something can reach which has a kerf behind
// it and beyond that position k.
func (w *wood) topOf(k int, kerf layout.Length) layout.Length { return w.y.last(k) - kerf }

// stackTop is the last position, with the kerf of a rip, of a stack in a strip
// that ends at position k with its own kerf.
func (w *wood) stackTop(k int, l lean) int { return w.y.down(w.topOf(k, w.behind(l)) + l.kerf) }
