package column

import (
	"slices"

	"sawbill/layout"
)

// roughLines is where the rough rips of one blank may run. Where every position is
// tried that is anywhere; otherwise beside metal, and where the pieces become
// narrow enough for the machines or for a thickness.
type roughLines struct {
	w    *Board
	from []int           // positions at which a piece may start beyond a rip
	to   []layout.Length // where one may end, ascending, the far edge last
}

func (b *Bench) roughLines(be blankEnds, k int) *roughLines {
	w := b.w
	r := &roughLines{w: w}
	if w.exact() {
		return r
	}
	a, e := be.a, be.ends[k]
	for _, m := range w.lieOf(a, e).metal {
		r.from = append(r.from, w.y.up(max(0, m.Y2)+w.shop.RoughRipKerf))
		r.end(m.Y1 - w.shop.RoughRipKerf)
	}
	whole := layout.Rect{X1: w.x.at(a), X2: w.x.at(e), Y2: w.wood.FullWidth()}
	for _, wide := range w.narrower(whole) {
		r.split(wide, w.nearOf(a, e, 0))
	}
	slices.Sort(r.to)
	r.to = append(slices.Compact(r.to), w.wood.FullWidth())
	return r
}

// end lets a piece end at y, on the grid.
func (r *roughLines) end(y layout.Length) {
	if y = r.w.y.at(max(0, r.w.y.down(y))); 0 < y && y < r.w.wood.FullWidth() {
		r.to = append(r.to, y)
	}
}

// line lets a rip run whose kerf begins at y.
func (r *roughLines) line(y layout.Length) {
	before := len(r.to)
	if r.end(y); len(r.to) > before {
		r.from = append(r.from, r.w.y.up(r.to[before]+r.w.shop.RoughRipKerf))
	}
}

// mostStacks is the most rips that are tried because a piece below them holds so
// many strips of one height and no more.
const mostStacks = 4

// split lets pieces be at most so wide: the first or the last as wide as that, all
// alike, or just wide enough for strips of one height.
func (r *roughLines) split(wide, near layout.Length) {
	w := r.w
	full, kerf := w.wood.FullWidth(), w.shop.RoughRipKerf
	if wide <= 0 {
		return
	}
	r.line(wide)
	r.line(full - wide - kerf)
	n := (full + kerf + wide + kerf - 1) / (wide + kerf)
	for i := layout.Length(1); i < min(n, 4); i++ {
		r.line(i*(full+kerf)/n - kerf)
	}
	for _, h := range spread(w.stripHeights(), mostStacks, nil) {
		if most := wide - near - w.shop.EdgeJoint; h <= most {
			n := (most + w.shop.RipKerf) / (h + w.shop.RipKerf)
			r.line(near + n*(h+w.shop.RipKerf) - w.shop.RipKerf + w.shop.EdgeJoint + w.y.unit)
		}
	}
}

// stripHeights are the distinct heights of the strips, lowest first.
func (w *Board) stripHeights() []layout.Length {
	var heights []layout.Length
	for _, s := range w.byHeight {
		heights = append(heights, w.strips[s].height)
	}
	return slices.Compact(heights)
}

// starts reports whether a piece may start at position j.
func (r *roughLines) starts(j int) bool {
	return r.w.exact() || j == 0 || slices.Contains(r.from, j)
}

// ends lists where pieces that start at y1 may end, ascending.
func (r *roughLines) ends(y1 layout.Length) []layout.Length {
	if !r.w.exact() {
		i, _ := slices.BinarySearch(r.to, y1+1)
		return r.to[i:]
	}
	var ends []layout.Length
	for j := r.w.y.down(y1) + 1; j <= r.w.y.n; j++ {
		ends = append(ends, r.w.y.at(j))
	}
	if full := r.w.wood.FullWidth(); len(ends) == 0 || ends[len(ends)-1] < full {
		ends = append(ends, full)
	}
	return ends
}
