package column

import "sawbill/layout"

// mostExact is the most steps of the exact programme for which it is run in
// place of a quicker one: about what that takes, one to two milliseconds on one
// core.
const mostExact = 250_000

// mostExactGrid is the most positions of a board on which the steps are counted
// at all.
const mostExactGrid = 60_000

// NewExact makes a board ready for trying every position. It is nil where one
// pricing would take more than most steps, of some five nanoseconds each.
func NewExact(p *layout.Problem, b *layout.Board, most int) *Board {
	w, ways := newOnGrid(p, b, Exact())
	if w.x.n*w.y.n > mostExactGrid {
		return nil
	}
	w.makeReady(ways)
	if w.steps() > most {
		return nil
	}
	return w
}

// What one more pair of a start and an end takes, in steps, and how many times as
// much it takes where the wood between may be kept as an offcut.
const (
	pairSteps   = 3
	offcutSteps = 6
)

// steps is about how many steps the exact programme takes: in the strips of the
// blanks from every start, and in the rips of every blank, which are gone through
// again from every position across where rough rips may help.
func (w *Board) steps() int {
	starts, blanks := len(w.starts), len(w.starts)*len(w.ends)/2
	if w.alike() {
		starts, blanks = 1, len(w.ends)
	}
	rips := (w.y.n + 1) * len(w.strips)
	if len(w.metal) > 0 || w.roughHelps() || w.ripsFirst() {
		rips *= w.y.n + 1
	}
	rips *= len(w.next) * len(w.next)
	pairs := len(w.starts) * len(w.ends) / 2
	if w.measure.rate > 0 {
		pairs *= offcutSteps
	}
	return starts*len(w.profiles)*w.x.n*len(w.classes) + blanks*rips + pairs*pairSteps
}
