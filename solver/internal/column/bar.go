package column

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// bar is a board without defects, taper and warp that is too narrow for two strips, and
// all of whose parts have one section: a stick. What is cut from it is a row of
// pieces in one long blank, a knapsack problem, which is solved for exact lengths
// and limited copies by a list of the states that no other state dominates
// (Horowitz & Sahni 1974) and that may still come to more than the best known. Where
// very many lengths can be made, only one state is kept for every two thousandth of
// the bar, and the row may not be the best.
type bar struct {
	room  layout.Length // for pieces with a kerf each
	start layout.Length // of the first piece
	rows  []int
	size  []layout.Length // by index into rows: with its kerf
}

// mostBarStates bounds the list.
const mostBarStates = 2000

// barState is a row of pieces: the last of them and the state before it.
type barState struct {
	length layout.Length
	value  Value
	before int32
	piece  int32 // index into rows
}

// newBar is nil for a board that is no bar. ways are those of the parts that the
// board may give.
func (w *Board) newBar(ways []way) *bar {
	s := w.shop
	if len(ways) == 0 || len(w.grown) > 0 || w.slants() || w.wood.Crook > 0 || !w.wood.Flat() || w.tooWide(w.wood.Frame()) {
		return nil
	}
	first := &ways[0]
	blank := w.wood.Length - 2*s.EndTrim
	if 2*first.width+s.RipKerf <= w.top-w.near || !w.machinesTake(blank) || blank < s.MinRipLength {
		return nil
	}
	inset := max(w.end, s.Snipe)
	q := &bar{start: s.EndTrim + inset}
	q.room = w.wood.Length - 2*q.start + s.CrosscutKerf
	for _, v := range ways {
		if v.width != first.width || v.thickness != first.thickness || v.onEdge || v.layers > 1 || w.problem.Bill[v.row].Bevel != 0 {
			return nil
		}
		q.rows = append(q.rows, v.row)
		q.size = append(q.size, v.length+s.CrosscutKerf)
	}
	return q
}

// fill chooses pieces, as indices into rows: those that with the worth of the rest
// are worth most, no more than limits of each.
func (q *bar) fill(price []Value, limits []int, rest func(used layout.Length) Value) []int {
	f := &filler{q: q, price: price, limits: limits, rest: rest, order: q.byDensity(price)}
	if f.all() {
		return f.best
	}
	return q.fillByList(f.order, price, limits, rest)
}

func (q *bar) fillByList(order []int, price []Value, limits []int, rest func(used layout.Length) Value) []int {
	states := []barState{{before: -1, piece: -1}}
	list := []int32{0} // the states that count, by rising length and value
	top, at := rest(0), int32(0)
	for k, piece := range order {
		row := q.rows[piece]
		for n := min(limits[row], int(q.room/q.size[piece])); n > 0; n-- {
			var added []int32
			for _, i := range list {
				length := states[i].length + q.size[piece]
				if length > q.room {
					break
				}
				added = append(added, int32(len(states)))
				states = append(states, barState{length, states[i].value + price[row], i, int32(piece)})
				if v := states[len(states)-1].value + rest(length); v > top {
					top, at = v, int32(len(states)-1)
				}
			}
			if len(added) == 0 {
				break
			}
			list = q.merge(states, list, added)
		}
		list = q.promising(states, list, top, q.bestRate(order[k+1:], price), rest)
		if len(list) == 0 {
			break
		}
	}
	var pieces []int
	for ; states[at].piece >= 0; at = states[at].before {
		pieces = append(pieces, int(states[at].piece))
	}
	return pieces
}

// byDensity is the wanted pieces, those that are worth most for their length first.
func (q *bar) byDensity(price []Value) []int {
	var order []int
	density := func(k int) float64 { return float64(price[q.rows[k]]) / float64(q.size[k]) }
	for k, row := range q.rows {
		if price[row] > 0 && q.size[k] <= q.room {
			order = append(order, k)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(density(b), density(a)) })
	return order
}

// bestRate is the most that a length gives in the pieces that are still to come.
func (q *bar) bestRate(order []int, price []Value) float64 {
	if len(order) == 0 {
		return 0
	}
	return float64(price[q.rows[order[0]]]) / float64(q.size[order[0]])
}

// merge joins two lists, without states that are no better than a shorter one, and
// of those of nearly the same length with the last alone.
func (q *bar) merge(states []barState, a, b []int32) []int32 {
	merged := make([]int32, 0, min(len(a)+len(b), 2*mostBarStates))
	most, near := Value(-1), q.room/mostBarStates
	for len(a) > 0 || len(b) > 0 {
		from := &a
		if len(a) == 0 || len(b) > 0 && states[b[0]].length < states[a[0]].length {
			from = &b
		}
		i := (*from)[0]
		*from = (*from)[1:]
		switch last := len(merged) - 1; {
		case states[i].value <= most:
		case last >= 0 && states[i].length == states[merged[last]].length,
			last > 0 && states[i].length-states[merged[last-1]].length <= near:
			merged[last], most = i, states[i].value
		default:
			merged, most = append(merged, i), states[i].value
		}
	}
	return merged
}

// promising keeps the states that may come to more than top when all that is left
// of their length is filled at a rate.
func (q *bar) promising(states []barState, list []int32, top Value, rate float64, rest func(layout.Length) Value) []int32 {
	return slices.DeleteFunc(list, func(i int32) bool {
		left := float64(q.room - states[i].length)
		return states[i].value+Value(rate*left+0.5)+rest(states[i].length) <= top
	})
}

// unlimited is as many copies as a bar can hold, by row of the bill.
func (q *bar) unlimited(rows int) []int {
	limits := make([]int, rows)
	for k, row := range q.rows {
		limits[row] = int(q.room / q.size[k])
	}
	return limits
}

// barCut is the best row of pieces within limits as a cut.
func (w *Board) barCut(price []Value, limits []int) Cut {
	q := w.bar
	pieces := q.fill(price, limits, w.barRest)
	if len(pieces) == 0 {
		return Cut{Counts: make([]int, len(price))}
	}
	slices.SortStableFunc(pieces, func(a, b int) int { return cmp.Compare(q.size[b], q.size[a]) })
	return w.finish(w.barRoot(pieces), price)
}

// barRest is what the rest of the bar is worth as an offcut after so much of its
// room is used.
func (w *Board) barRest(used layout.Length) Value {
	x := w.bar.start + used
	if x >= w.wood.Length || w.measure.rate == 0 {
		return 0
	}
	r := layout.Rect{X1: x, X2: w.wood.Length, Y1: 0, Y2: w.wood.FullWidth()}
	if r.Length() < w.shop.MinOffcutLength || r.Width() < w.shop.MinOffcutWidth {
		return 0
	}
	return Value(w.measure.rate * float64(r.Length()) * float64(r.Width()) / mm2)
}

// barRoot lays pieces one after another in one long blank.
func (w *Board) barRoot(pieces []int) *layout.Node {
	s, q := w.shop, w.bar
	part := func(k int) *layout.Part { return &w.problem.Bill[q.rows[k]] }
	root := &layout.Node{Rect: w.wood.Frame(), Cut: layout.Crosscut}
	blank := &layout.Node{Rect: root.Rect, Trued: true, Cut: layout.Rip}
	blank.X1, blank.X2 = s.EndTrim, w.wood.Length-s.EndTrim
	strip := &layout.Node{Rect: blank.Rect, Cut: layout.Crosscut}
	strip.X1, strip.X2 = blank.X1+w.end, blank.X2-w.end
	strip.Y1, strip.Y2 = w.near, w.near+part(pieces[0]).CutWidth(s)
	at := q.start
	for _, k := range pieces {
		leaf := &layout.Node{Rect: strip.Rect, Part: part(k).Name}
		leaf.X1, leaf.X2 = at, at+part(k).CutLength(s)
		strip.Children = append(strip.Children, leaf)
		at = leaf.X2 + s.CrosscutKerf
	}
	if only := strip.Children[0]; only.Rect == strip.Rect {
		strip = only
	}
	blank.Children, root.Children = []*layout.Node{strip}, []*layout.Node{blank}
	w.setThickness(blank)
	return root
}
