package ceiling

import (
	"slices"

	"sawbill/layout"
)

// setLanes gathers the parts by thickness and lean. Where a strip is ripped again,
// it may hold parts that lean otherwise than itself.
func (w *Board) setLanes(p *layout.Problem, ways []way) {
	for i := range ways {
		l := w.laneOf(&ways[i])
		l.longest = max(l.longest, w.longest(&ways[i]))
		w.addTo(l, p, &ways[i], true)
	}
	for i := range w.lanes {
		w.addForeign(&w.lanes[i], p, ways)
	}
	if w.steps() {
		w.lanes = append(w.lanes, lane{lean: lean{kerf: w.shop.RipKerf}, kerf: w.stripKerf, longest: w.wood.Length, bare: true})
	}
}

// steps reports whether offcuts may lie in steps under a slanting edge, so that a
// strip of several is worth more than one.
func (w *Board) steps() bool { return w.rate > 0 && w.slants() }

// laneOf is the lane of a thickness and a lean. A kerf at least as wide as that of
// a rip lies beyond a strip that leans, and its wedge before the far edge.
func (w *Board) laneOf(v *way) *lane {
	i := slices.IndexFunc(w.lanes, func(l lane) bool { return l.thickness == v.thickness && l.lean == v.lean })
	if i < 0 {
		i = len(w.lanes)
		l := lane{thickness: v.thickness, lean: v.lean, kerf: w.stripKerf, topKerf: w.shop.RipKerf}
		if v.lean.by > 0 {
			l.kerf, l.topKerf = v.lean.kerf, v.lean.kerf-v.lean.by
		}
		w.lanes = append(w.lanes, l)
	}
	return &w.lanes[i]
}

// addForeign adds the parts that lean otherwise than the strips of a lane.
func (w *Board) addForeign(l *lane, p *layout.Problem, ways []way) {
	for i := range ways {
		v := &ways[i]
		if v.thickness == l.thickness && v.lean != l.lean && w.ripsAgain(v.length) {
			l.longest, l.topKerf = max(l.longest, w.longest(v)), max(l.topKerf, v.lean.kerf)
			w.addTo(l, p, v, false)
		}
	}
}

func (w *Board) addTo(l *lane, p *layout.Problem, v *way, native bool) {
	c := w.classOf(l, v.length)
	q := w.newPiece(l, &p.Bill[v.row], v)
	if q.native = native; !native && l.lean.by == 0 {
		q.entry, q.exit = w.y.down(v.lean.kerf), w.y.down(v.lean.by)
	}
	c.pieces = append(c.pieces, q)
}

func (w *Board) classOf(l *lane, length layout.Length) *class {
	i := slices.IndexFunc(l.classes, func(c class) bool { return c.length == length })
	if i < 0 {
		i = len(l.classes)
		l.classes = append(l.classes, class{
			length:  length,
			advance: w.x.down(length + w.shop.CrosscutKerf),
			again:   w.ripsAgain(length),
		})
	}
	return &l.classes[i]
}

func (w *Board) ripsAgain(length layout.Length) bool {
	return w.shop.RipAgain && length >= w.shop.MinRipLength
}

func (w *Board) newPiece(l *lane, part *layout.Part, v *way) piece {
	q := piece{row: v.row, layers: v.layers, onEdge: v.onEdge, width: v.width, advance: max(1, w.y.down(v.width+v.lean.kerf)), across: make([]set, w.y.n+1)}
	q.alone = max(1, w.y.down(v.width+l.kerf))
	q.aloneMost = q.alone
	if (v.width+l.kerf)%w.y.unit != 0 {
		q.aloneMost++
	}
	grade := w.shop.Grades[part.Grade]
	for i, m := range w.marks {
		d := layout.Defect{Kind: m.kind, Face: m.face}
		show, back := slices.Contains(grade.Show, m.kind), slices.Contains(grade.Back, m.kind)
		if d.On(layout.FaceA) && !show || d.On(layout.FaceB) && !back {
			q.blockA |= 1 << i
		}
		if d.On(layout.FaceB) && !show || d.On(layout.FaceA) && !back {
			q.blockB |= 1 << i
		}
	}
	for j := range q.across {
		for i, m := range w.marks {
			if blocks(w.y, j, v.width+v.lean.by, m.Across()) {
				q.across[j] |= 1 << i
			}
		}
	}
	return q
}
