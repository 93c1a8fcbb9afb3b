package column

import (
	"cmp"
	"encoding/binary"
	"slices"

	"sawbill/layout"
)

// profile is what all strips share that have one height and thickness and meet
// the same defects in the same places; the strip at y position at stands for
// them all.
type profile struct {
	strip int
	at    int
	lie   int
	far   layout.Length // lost to joint the far edge
	lean  layout.Length // how much further its parts reach on face B
	hit   set           // defects that it meets across
	clear bool          // it meets none
	// coarse says that it stands for all strips that meet the same defects,
	// wherever in the strip they lie: parts are then not stacked beside a defect.
	coarse bool
	// slanted says that the far edge may cut into the strip, so that what fits
	// depends on the place along.
	slanted bool
	lo, hi  layout.Length // where, along, the far edge does not cut in
}

// stacks reports whether parts may be stacked in the strip where it meets the
// defects of a zone.
func (p *profile) stacks(z *zone) bool { return !p.coarse || !z.hit.meets(p.hit) }

// setStrips chooses the heights that strips may have.
func (w *Board) setStrips() {
	for t := range w.thicks {
		for _, h := range w.heights(&w.thicks[t]) {
			lean := w.thicks[t].lean
			if l := w.leans[lean]; h+l.by+2*l.inset() <= w.top-w.near {
				w.strips = append(w.strips, strip{t, lean, h, w.y.up(h + w.shop.RipKerf)})
			}
		}
	}
}

func (w *Board) heights(t *thick) []layout.Length {
	var widths []layout.Length
	again := false
	for _, c := range t.classes {
		widths = append(widths, w.classes[c].widths...)
		again = again || w.classes[c].again
	}
	widths = sorted(widths)
	switch {
	case !again:
		return widths
	case w.cfg.MostHeights == 0:
		return w.stacked(t)
	}
	return w.fewHeights(t, widths)
}

// stacked lists the heights that a strip can usefully have: where nothing but
// parts is sought in cells and nothing blocks them, the sums of widths that one
// class can stack, kerfs between; otherwise every height.
func (w *Board) stacked(t *thick) []layout.Length {
	simple := len(w.grown) == 0 && (w.measure.rate == 0 || !w.cfg.InnerOffcuts)
	can := make([]bool, w.y.n+1)
	least := w.wood.FullWidth()
	for _, c := range t.classes {
		w.markStacks(&w.classes[c], can)
		least = min(least, w.classes[c].widths[0])
	}
	var heights []layout.Length
	for i := 1; i <= w.y.n; i++ {
		if can[i] || !simple && w.y.at(i) >= least {
			heights = append(heights, w.y.at(i))
		}
	}
	return heights
}

// markStacks marks the heights, on the grid, that stacks of one class reach.
func (w *Board) markStacks(c *class, can []bool) {
	from := make([]bool, len(can)+1) // a piece may start here
	from[0] = true
	for i := range can {
		if !from[i] {
			continue
		}
		for _, width := range c.widths {
			if end := w.y.up(w.y.at(i) + width); end <= w.y.n {
				can[end] = true
				if next := i + w.y.up(width+w.leans[c.lean].kerf); c.again && next <= w.y.n {
					from[next] = true
				}
			}
		}
	}
}

// fewHeights are the widths of the parts and, as far as the configuration
// allows, the stacks of two parts of one length.
func (w *Board) fewHeights(t *thick, widths []layout.Length) []layout.Length {
	var pairs []layout.Length
	for _, c := range t.classes {
		c := &w.classes[c]
		if !c.again {
			continue
		}
		for i, a := range c.widths {
			for _, b := range c.widths[i:] {
				pairs = append(pairs, w.y.at(w.y.up(a+w.leans[c.lean].kerf))+b)
			}
		}
	}
	pairs = sorted(pairs)
	for _, h := range pairs {
		if len(widths) >= w.cfg.MostHeights {
			break
		}
		widths = append(widths, h)
	}
	return sorted(widths)
}

func (w *Board) setProfiles() {
	known := map[string]int32{}
	w.clearOf = size(w.clearOf, len(w.strips), int32(-1))
	for i := range w.lies {
		w.lies[i].profileAt = make([][]int32, len(w.strips))
	}
	for s := range w.strips {
		for i := range w.lies {
			w.lies[i].profileAt[s] = w.profilesOf(i, s, known)
		}
		w.byHeight = append(w.byHeight, s)
	}
	slices.SortStableFunc(w.byHeight, func(a, b int) int {
		return cmp.Compare(w.strips[a].height, w.strips[b].height)
	})
	for i := range w.lies {
		w.lies[i].setAnew(w.byHeight)
	}
}

func (l *lie) setAnew(byHeight []int) {
	if len(byHeight) == 0 {
		return
	}
	l.anew = make([][]int32, len(l.profileAt[0]))
	for _, s := range byHeight {
		at := l.profileAt[s]
		for j := 1; j < len(at); j++ {
			if at[j] != at[j-1] && at[j] >= 0 {
				l.anew[j] = append(l.anew[j], int32(s))
			}
		}
	}
}

// profilesOf finds the profile of a strip at every position, in blanks of one lie.
func (w *Board) profilesOf(lie, s int, known map[string]int32) []int32 {
	at := make([]int32, w.y.n+1)
	for j := range at {
		at[j] = -1
		if l := w.leans[w.strips[s].lean]; w.y.at(j)+w.strips[s].height+l.by+l.inset() > w.top {
			continue
		}
		p := w.newProfile(lie, s, j)
		p.coarse = !p.clear && !w.looksBeside(j)
		key := w.profileKey(&p)
		id, ok := known[key]
		if !ok {
			id = int32(len(w.profiles))
			known[key] = id
			w.profiles = append(w.profiles, p)
			if p.clear && !p.slanted {
				w.clearOf[s] = id
			}
		}
		at[j] = id
	}
	return at
}

// looksBeside reports whether parts are stacked beside defects in strips from position
// j: everywhere where every position is tried, otherwise at some places at most.
func (w *Board) looksBeside(j int) bool {
	return w.exact() || w.cfg.Beside && j%(w.y.n/besidePlaces+1) == 0
}

// besidePlaces is how many places across those are at most.
const besidePlaces = 80

// newProfile describes the strip s at position j, in blanks of one lie.
func (w *Board) newProfile(lie, s, j int) profile {
	span := w.stripSpan(s, j)
	p := profile{strip: s, at: j, lie: lie, far: w.far + w.lies[lie].ripped, lean: w.leans[w.strips[s].lean].by, hit: w.lies[lie].hits(span)}
	p.clear = p.hit.empty()
	p.slanted = w.slants() && span.Hi > min(w.wood.Width, w.wood.TipWidth)-p.far
	if p.slanted && w.measure.rate > 0 {
		p.lo, p.hi = w.below(span.Hi - p.lean)
	}
	return p
}

// stripSpan is what a strip meets across, on either face.
func (w *Board) stripSpan(s, j int) layout.Span {
	return layout.Span{Lo: w.y.at(j), Hi: w.y.at(j) + w.strips[s].height + w.leans[w.strips[s].lean].by}
}

// profileKey is the same for all strips that a profile stands for.
func (w *Board) profileKey(p *profile) string {
	span := w.stripSpan(p.strip, p.at)
	key := binary.AppendVarint(nil, int64(p.strip))
	if p.slanted {
		key = binary.AppendVarint(append(key, '/'), int64(p.at))
		key = binary.AppendVarint(key, int64(p.far))
	}
	again := slices.ContainsFunc(w.thicks[w.strips[p.strip].thick].classes, func(c int) bool { return w.classes[c].again })
	for i, g := range w.lies[p.lie].grown {
		if !p.hit.has(i) {
			continue
		}
		key = binary.AppendVarint(key, int64(i))
		if again && !p.coarse {
			key = appendClipped(key, g.Across(), span)
		}
		if w.measure.rate > 0 && !p.coarse {
			key = appendClipped(key, w.wood.Defects[i].Rect.Across(), span)
		}
	}
	return string(key)
}

// appendClipped adds to a key where a span lies in a strip.
func appendClipped(key []byte, s, strip layout.Span) []byte {
	key = binary.AppendVarint(key, int64(max(s.Lo, strip.Lo)-strip.Lo))
	return binary.AppendVarint(key, int64(min(s.Hi, strip.Hi)-strip.Lo))
}
