package column

import (
	"math/rand"
	"slices"

	"sawbill/layout"
)

// setCuts chooses where blanks may start and end.
func (w *Board) setCuts() {
	w.startOK, w.endOK = make([]bool, w.x.n+1), make([]bool, w.x.n+1)
	for i := range w.startOK {
		at := w.x.at(i)
		w.startOK[i] = i == 0 || !w.metalIn(layout.Span{Lo: at - w.shop.CrosscutKerf, Hi: at})
		w.endOK[i] = at == w.wood.Length || !w.metalIn(layout.Span{Lo: at, Hi: at + w.shop.CrosscutKerf})
	}
	if w.exact() {
		for i := w.first(); i <= w.last(); i++ {
			w.starts, w.ends = append(w.starts, i), append(w.ends, i)
		}
		return
	}
	w.chooseCuts(w.candidates(), nil)
}

// first and last are the positions between which blanks lie.
func (w *Board) first() int { return w.x.up(w.shop.EndTrim) }
func (w *Board) last() int  { return w.x.down(w.wood.Length - w.shop.EndTrim) }

// WithCuts is the same board with blanks that may start elsewhere: the places
// beside defects stay, the others are drawn from those at which a blank before
// could hold a sum of part lengths.
func (w *Board) WithCuts(rng *rand.Rand) *Board {
	if w.exact() {
		return w
	}
	v := *w
	v.starts, v.ends = nil, nil
	v.chooseCuts(w.candidates(), rng)
	return &v
}

// candidates are starts that a good column could use: beside the defects, and
// after blanks that hold one, two or three lengths exactly.
func (w *Board) candidates() []int {
	var found []int
	for _, anchor := range w.anchors() {
		found = append(found, w.afterLengths(anchor, 3)...)
	}
	slices.Sort(found)
	return slices.Compact(found)
}

// anchors are the first start and the starts that hug the far side of a defect.
func (w *Board) anchors() []int {
	anchors := []int{w.first()}
	for _, g := range w.grown {
		if at := w.x.up(max(0, g.X2-w.end)); at > w.first() && at < w.last() {
			anchors = append(anchors, at)
		}
	}
	slices.Sort(anchors)
	return slices.Compact(anchors)
}

// afterLengths are the starts that follow a blank from a that holds at most n
// cells and no more.
func (w *Board) afterLengths(a, n int) []int {
	if n == 0 {
		return nil
	}
	var found []int
	room := w.last() - a
	for i := range w.classes {
		c := &w.classes[i]
		once := w.x.up(c.length + 2*max(w.end, w.shop.Snipe) + w.shop.CrosscutKerf)
		for k := 0; k < n; k++ {
			if next := once + k*c.advance; next < room {
				found = append(found, a+next)
			}
		}
	}
	return found
}

// chooseCuts takes all anchors and fills up with candidates, spread evenly or,
// with rng, by chance.
func (w *Board) chooseCuts(candidates []int, rng *rand.Rand) {
	starts := w.anchors()
	most := w.mostStarts()
	if len(starts) > most/2+1 {
		starts = spread(starts, most/2+1, rng)
	}
	starts = append(starts, spread(candidates, max(0, most-len(starts)), rng)...)
	starts = append(append(starts, w.shortStarts(rng)...), w.first())
	slices.Sort(starts)
	for _, s := range slices.Compact(starts) {
		if w.startOK[s] {
			w.starts = append(w.starts, s)
		}
	}
	w.ends = w.endsFor(w.starts)
}

// mostStarts is how many starts are tried: fewer where a blank of a warped board may
// hold so many kinds of strips that one start takes as long as several on others.
func (w *Board) mostStarts() int {
	most := w.cfg.MostStarts
	if work := len(w.profiles) * w.x.n; !(w.wood.Flat() && w.wood.Crook == 0) && work > manyStrips {
		most = max(2, most*manyStrips/work)
	}
	return most
}

// manyStrips is how many kinds of strips times positions along are no reason for
// fewer starts.
const manyStrips = 100_000

// endsFor are the ends that go with some starts, and others.
func (w *Board) endsFor(starts []int, others ...int) []int {
	ends := append([]int{w.last()}, others...)
	for _, s := range starts {
		ends = append(ends, w.x.down(w.x.at(s)-w.shop.CrosscutKerf))
	}
	for _, g := range w.grown {
		ends = append(ends, w.x.down(g.X1+w.end))
	}
	slices.Sort(ends)
	return slices.DeleteFunc(slices.Compact(ends), func(e int) bool {
		return e <= w.first() || e > w.last() || !w.endOK[e]
	})
}

// spread takes n of the list: evenly, or by chance with rng.
func spread[T any](list []T, n int, rng *rand.Rand) []T {
	if len(list) <= n {
		return slices.Clone(list)
	}
	taken := make([]T, 0, n)
	for i := range n {
		at := (2*i + 1) * len(list) / (2 * n)
		if rng != nil {
			at = rng.Intn(len(list))
		}
		taken = append(taken, list[at])
	}
	return taken
}

// Along is the same board with blanks that may start and end where those of a sketch do.
func (w *Board) Along(sketch *layout.Node) *Board {
	if w.exact() {
		return w
	}
	v := *w
	v.starts, v.ends = []int{w.first()}, nil
	var ends []int
	for _, blank := range sketch.Children {
		for _, i := range []int{w.x.down(blank.X1), w.x.up(blank.X1)} {
			if i > w.first() && i < w.last() && w.startOK[i] {
				v.starts = append(v.starts, i)
			}
		}
		ends = append(ends, w.x.down(blank.X2))
	}
	slices.Sort(v.starts)
	v.starts = slices.Compact(v.starts)
	v.ends = v.endsFor(v.starts, ends...)
	return &v
}
