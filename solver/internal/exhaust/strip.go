package exhaust

import "sawbill/layout"

// strip is the front of a strip: one leaf, or crosscut into cells.
func (b *board) strip(s spot) front {
	return remember(b.strips, s, func() front {
		t := newTable(b.limits)
		t.addAll(b.leaf(s))
		f := b.sequence(s.Along(), b.shop.CrosscutKerf, func(along layout.Span) front {
			return b.cell(spot{layout.Rect{X1: along.Lo, X2: along.Hi, Y1: s.Y1, Y2: s.Y2}, s.bed})
		})
		t.addAll(within(layout.Node{Rect: s.Rect, Cut: layout.Crosscut}, f))
		return t.take()
	})
}

// cell is the front of a length of a strip: one leaf, or ripped again.
func (b *board) cell(s spot) front {
	return remember(b.cells, s, func() front {
		t := newTable(b.limits)
		t.addAll(b.leaf(s))
		if b.shop.RipAgain && s.Length() >= b.shop.MinRipLength {
			f := b.sequence(s.Across(), b.shop.RipKerf, func(across layout.Span) front {
				return b.leaf(spot{layout.Rect{X1: s.X1, X2: s.X2, Y1: across.Lo, Y2: across.Hi}, s.bed})
			})
			t.addAll(within(layout.Node{Rect: s.Rect, Cut: layout.Rip}, f))
		}
		return t.take()
	})
}

// leaf is the front of a piece that is not cut up: a part or an offcut.
func (b *board) leaf(s spot) front {
	return remember(b.leaves, s, func() front {
		return append(b.part(s.Rect, s.bed), b.offcut(s.Rect)...)
	})
}

// remember works a front out once.
func remember(known map[spot]front, s spot, work func() front) front {
	if f, ok := known[s]; ok {
		return f
	}
	f := work()
	known[s] = f
	return f
}

// part is the front of a leaf that is exactly one part.
func (b *board) part(r layout.Rect, in bed) front {
	far := min(b.wood.Far(r.X1), b.wood.Far(r.X2)) - in.jointed
	if r.Y2 > far || !in.parts.Contains(r.Along()) {
		return nil
	}
	var f front
	for _, i := range b.rows {
		p := &b.p.Bill[i]
		if p.CutThickness(b.shop) != in.thick || p.CutLength(b.shop) != r.Length() || p.CutWidth(b.shop) != r.Width() {
			continue
		}
		if show, ok := b.showFace(p, r); ok {
			var one counts
			one[i] = 1
			f = append(f, leaf(layout.Node{Rect: r, Part: p.Name, Show: show}, one, 0)...)
		}
	}
	return f
}

// showFace is a face that a part covering r can show and still meet its grade.
func (b *board) showFace(p *layout.Part, r layout.Rect) (layout.Face, bool) {
	g := b.shop.Grades[p.Grade]
	if b.accepts(g, layout.FaceA, layout.FaceB, r) {
		return layout.FaceA, true
	}
	return layout.FaceB, b.accepts(g, layout.FaceB, layout.FaceA, r)
}
