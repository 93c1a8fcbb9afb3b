package buy

import (
	"fmt"
	"math/rand"

	"sawbill/layout"
)

// manyPiles is more piles than are ever drawn with one seed.
const manyPiles = 1_000_003

// pile draws boards of one species and thickness, as they come, without end. The k-th
// pile of a seed has the same boards, however many are drawn.
type pile struct {
	u      *Usual
	w      wood
	rng    *rand.Rand
	boards []layout.Board
}

func newPile(u *Usual, w wood, seed int64, k int) *pile {
	return &pile{u: u, w: w, rng: rand.New(rand.NewSource(seed*manyPiles + int64(k)))}
}

// first are the first n boards.
func (q *pile) first(n int) []layout.Board {
	for len(q.boards) < n {
		q.boards = append(q.boards, q.draw(fmt.Sprint("pile ", len(q.boards)+1)))
	}
	return q.boards[:n]
}

// volume is that of the first n boards.
func (q *pile) volume(n int) *layout.Volume {
	sum := new(layout.Volume)
	for i := range q.first(n) {
		sum.Add(q.boards[i].Volume(), 1)
	}
	return sum
}

// anyWidthOf is one in how many boards has any width, not one of the common ones.
const anyWidthOf = 5

func (q *pile) draw(mark string) layout.Board {
	u := q.u
	lo, hi := u.Narrow, u.Wide
	if q.rng.Intn(anyWidthOf) == 0 {
		lo, hi = u.Narrowest, u.Widest
	}
	length := q.steps(u.Shortest, u.Longest, u.LengthStep)
	if q.rng.Intn(1000) < u.Odd && length < u.Longest {
		length += u.LengthStep / 2
	}
	length += q.steps(0, u.Over, u.Over/6)
	b := clearBoard(q.w.species, q.w.thickness, q.steps(lo, hi, u.WidthStep), length)
	b.Mark, b.Base, b.Source = mark, mark, layout.Rack
	b.Cost = layout.Money(b.Volume().MM3() / 1e3) // boards are compared by their volume alone
	q.spoil(&b)
	return b
}

// steps draws a length between two, a whole number of steps above the lower one.
func (q *pile) steps(lo, hi, step layout.Length) layout.Length {
	return lo + layout.Length(q.rng.Intn(int((hi-lo)/step)+1))*step
}

// spoil marks about as many defects as the face is large.
func (q *pile) spoil(b *layout.Board) {
	apart := float64(q.u.Poorest) + q.rng.Float64()*float64(q.u.Clearest-q.u.Poorest)
	face := float64(b.Length) / float64(layout.Millimetre) * float64(b.Width) / float64(layout.Millimetre)
	for range int(face/apart + q.rng.Float64()) {
		b.Defects = append(b.Defects, q.defect(b))
	}
}

// defect draws one: of ten, six knots of 1 to 3 in with the wild grain about them, two
// checks at an end, a split and a stretch of wane.
func (q *pile) defect(b *layout.Board) layout.Defect {
	const in = layout.Inch
	some := func(lo, hi int) layout.Length { return q.steps(layout.Length(lo)*in/2, layout.Length(hi)*in/2, in/4) }
	d := layout.Defect{Kind: layout.Knot}
	switch q.rng.Intn(10) {
	case 0, 1:
		d.Kind = layout.Check
		d.Rect = layout.Rect{X2: some(4, 12), Y2: b.Width}
	case 2:
		y := q.steps(0, b.Width-in/2, in/4)
		d.Kind, d.Rect = layout.Split, layout.Rect{X2: some(6, 20), Y1: y, Y2: y + in/2}
	case 3:
		x := q.steps(0, b.Length*3/4, in)
		d.Kind, d.Rect = layout.Wane, layout.Rect{X1: x, X2: x + some(20, 60), Y1: b.Width - some(1, 2), Y2: b.Width}
		return q.within(b, d)
	default:
		x, y := q.steps(0, b.Length-2*in, in/2), q.steps(0, b.Width-in, in/4)
		d.Rect = layout.Rect{X1: x, X2: x + some(2, 6), Y1: y, Y2: y + some(2, 6)}
		return q.within(b, d)
	}
	if q.rng.Intn(2) == 0 { // at the tip
		d.Rect.X1, d.Rect.X2 = b.Length-d.Rect.X2, b.Length
	}
	return q.within(b, d)
}

func (*pile) within(b *layout.Board, d layout.Defect) layout.Defect {
	d.Rect = d.Rect.Intersect(b.Frame())
	return d
}
