package ceiling

import "sawbill/layout"

// edgeOffcuts seeks the offcuts between the cells of a strip into which a slanting far edge
// cuts. An offcut is a rectangle, so it is as high as the wood is at its narrower end: the
// worth of one from k to i is a product of that height and of the length between the two,
// which is linear in what the other end gives. The best other end is sought among straight
// lines. What defects take of it is known by bands of height.
type edgeOffcuts struct {
	w             *Board
	bands         offcuts
	before, after [][]Value // by band: what defects take up to a position, and up to the kerf before it; nil: nothing
	first, gap    int
	widens        bool
	sure          []float64 // by band: how high an offcut is at the least, millimetres
	// Millimetres: how high the wood is above the start of the strip at the butt, how much
	// higher with every millimetre along, from where that counts at a position, and how high
	// an offcut may be.
	above, slope, counts, most float64
	// Millimetres: the least height of an offcut, or a trifle less, for these are rounded;
	// the unit of positions and how far from its position an offcut may begin and end.
	least              float64
	unit, begins, ends float64
	parts, bare        edgeRun // behind a part, and before the first
}

// edgeRun is the offcuts behind some states of a strip.
type edgeRun struct {
	o     *edgeOffcuts
	next  int // where no offcut that starts there was looked at
	band  int // of the offcuts that are looked at: on boards that narrow one after the other
	lines [mostBands]envelope
}

const mm = float64(layout.Millimetre)

// begin makes ready for the offcuts of a strip from a position on.
func (o *edgeOffcuts) begin(b *Bench, bands offcuts, first int) {
	w := b.w
	o.w, o.bands, o.first, o.gap, o.widens = w, bands, first, w.offcutGap(), w.wood.TipWidth > w.wood.Width
	o.least = float64(w.shop.MinOffcutWidth-layout.Micrometre) / mm
	o.unit, o.begins, o.ends = float64(w.x.unit)/mm, float64(-w.soon)/mm, float64(w.x.slack-w.shop.CrosscutKerf)/mm
	o.setHeights(bands[0].low, bands[len(bands)-1].most)
	o.sure = o.sure[:0]
	for g := range bands {
		o.sure = append(o.sure, float64(bands[g].sure)/mm)
	}
	o.before, o.after = o.before[:0], o.after[:0]
	for g := range bands {
		var before, after []Value
		if len(bands[g].holes) > 0 {
			before, after = b.measure(2*g, &bands[g], first, -w.soon, 0), b.measure(2*g+1, &bands[g], first, w.x.slack-w.shop.CrosscutKerf, 1)
		}
		o.before, o.after = append(o.before, before), append(o.after, after)
	}
	o.parts.begin(o)
	o.bare.begin(o)
}

func (r *edgeRun) begin(o *edgeOffcuts) {
	r.o, r.next, r.band = o, o.first, len(o.bands)-1
	for g := range r.lines {
		r.lines[g].reset()
	}
}

// setHeights finds how high offcuts may be that begin at low in a strip so tall: on a board
// that narrows as the wood is where they end, on one that widens as where they start.
func (o *edgeOffcuts) setHeights(low, tall layout.Length) {
	w := o.w
	o.counts = float64(-w.shop.CrosscutKerf) / mm
	if o.widens {
		o.counts = float64(w.x.slack) / mm
	}
	o.most, o.above = float64(tall)/mm, float64(w.wood.Width-low)/mm
	o.slope = float64(w.wood.TipWidth-w.wood.Width) / float64(w.wood.Length)
}

// height is how high an offcut may be, millimetres, whose narrower end is at a position.
func (o *edgeOffcuts) height(i int) float64 { return min(o.most, o.above+o.slope*(o.at(i)+o.counts)) }

// at is the place of position i, millimetres.
func (o *edgeOffcuts) at(i int) float64 { return o.unit * float64(i) }

// bandOf is the band of offcuts so high.
func (o *edgeOffcuts) bandOf(height float64) int {
	g := len(o.bands) - 1
	for g > 0 && height <= o.sure[g] {
		g--
	}
	return g
}

// defective is what defects take up to a position, as worth less than none.
func defective(of []Value, i int) Value {
	if of == nil {
		return 0
	}
	return of[i]
}

// endingAt is the most with an offcut that ends before position i.
func (r *edgeRun) endingAt(v []Value, i int) Value {
	o := r.o
	if o.widens {
		return r.widening(v, i)
	}
	height := o.height(i)
	if height < o.least {
		return none
	}
	if g := o.bandOf(height); g != r.band {
		r.band, r.next = g, o.first
		r.lines[0].reset()
	}
	lines := &r.lines[0]
	for ; r.next <= i-o.gap; r.next++ {
		if k := r.next; v[k] >= 0 && (k == o.first || v[k] > v[k-1]) {
			lines.add(o.line(v, k, r.band))
		}
	}
	if lines.empty() {
		return none
	}
	return o.narrow(lines.at(-height), height, r.band, i)
}

// line is what the start of an offcut at k gives, on a board that narrows: by how much more
// it is worth with every millimetre that it is lower, and its worth at no height.
func (o *edgeOffcuts) line(v []Value, k, g int) (slope, worth float64) {
	return o.w.rate * (o.at(k) + o.begins), float64(v[k] - defective(o.before[g], k))
}

// narrow is the worth of an offcut so high that ends before position i, where the line of
// its start gives so much.
func (o *edgeOffcuts) narrow(start, height float64, g, i int) Value {
	return Value(start+o.w.rate*height*(o.at(i)+o.ends)) + defective(o.after[g], i) + 2
}

// widening is endingAt on a board that is wider at its tip: there offcuts are as high as
// the wood is where they start.
func (r *edgeRun) widening(v []Value, i int) Value {
	o := r.o
	for ; r.next <= i-o.gap; r.next++ {
		k := r.next
		height := o.height(k)
		if v[k] < 0 || height < o.least {
			continue
		}
		g := o.bandOf(height)
		r.lines[g].add(o.wideLine(v, height, g, k))
	}
	best := none
	for g := range o.bands {
		if !r.lines[g].empty() {
			best = max(best, o.wide(r.lines[g].at(o.at(i)+o.ends), g, i))
		}
	}
	return best
}

// wideLine is what the start of an offcut at k gives, on a board that widens: by how much
// more it is worth with every millimetre that it is longer, and its worth up to the butt.
func (o *edgeOffcuts) wideLine(v []Value, height float64, g, k int) (slope, worth float64) {
	slope = o.w.rate * height
	return slope, float64(v[k]-defective(o.before[g], k)) - slope*(o.at(k)+o.begins)
}

func (o *edgeOffcuts) wide(start float64, g, i int) Value {
	return Value(start) + defective(o.after[g], i) + 2
}

// worth is the most with the offcut from position k to i, less v[k]; none where there is no
// such offcut.
func (o *edgeOffcuts) worth(v []Value, k, i int) Value {
	if o.widens {
		height := o.height(k)
		if height < o.least {
			return none
		}
		g := o.bandOf(height)
		slope, worth := o.wideLine(v, height, g, k)
		return o.wide(slope*(o.at(i)+o.ends)+worth, g, i) - v[k]
	}
	height := o.height(i)
	if height < o.least {
		return none
	}
	g := o.bandOf(height)
	slope, worth := o.line(v, k, g)
	return o.narrow(slope*-height+worth, height, g, i) - v[k]
}
