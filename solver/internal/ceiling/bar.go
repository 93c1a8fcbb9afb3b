package ceiling

import "sawbill/layout"

// bar is a board so narrow that nothing lies beside a part: no other part, and no
// offcut worth keeping. Then parts and offcuts lie one after another along it, a
// crosscut kerf apart, and no cutting is worth more than the best filling of its
// length, whatever its defects and edges (the unbounded knapsack problem: Gilmore
// & Gomory 1966).
type bar struct {
	exact bool // the best filling is a cutting
	unit  layout.Length
	parts []barPart
	n     int     // positions of the room for parts, each with a kerf behind it
	rest  float64 // what a length is worth as an offcut, as a value
	whole layout.Length
	least layout.Length // of an offcut
}

type barPart struct{ row, layers, advance int }

// mostBar is the most positions of a bar.
const mostBar = 1 << 17

// newBar is nil for a board on which things may lie side by side.
func (w *Board) newBar(ways []way) *bar {
	s, b := w.shop, w.wood
	if len(ways) == 0 {
		return nil
	}
	narrowest := w.wood.FullWidth()
	q := &bar{whole: b.Length + s.CrosscutKerf, least: s.MinOffcutLength}
	q.exact = len(b.Defects) == 0 && b.Flat() && b.Crook == 0
	room := w.to - w.from - 2*w.inset + s.CrosscutKerf
	unit := room
	for i := range ways {
		narrowest = min(narrowest, ways[i].width)
		unit = gcd(unit, ways[i].length+s.CrosscutKerf)
	}
	kerf := min(s.RipKerf, s.RoughRipKerf)
	if 2*narrowest+kerf <= w.wood.FullWidth() || w.rate > 0 && narrowest+kerf+s.MinOffcutWidth <= w.wood.FullWidth() {
		return nil
	}
	for room/unit > mostBar {
		unit *= 2
	}
	q.unit, q.n = unit, int(room/unit)
	for i := range ways {
		v := &ways[i]
		q.parts = append(q.parts, barPart{v.row, v.layers, max(1, int((v.length+s.CrosscutKerf)/unit))})
	}
	q.rest = w.rate * float64(w.wood.FullWidth()) / mm2
	return q
}

func gcd(a, b layout.Length) layout.Length {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// worth is the most that the bar is worth at the given prices.
func (q *bar) worth(price []Value) Value {
	best := make([]Value, q.n+1)
	most := q.restBehind(0)
	for i := range best {
		if i > 0 {
			best[i] = max(best[i], best[i-1])
		}
		most = max(most, best[i]+q.restBehind(i))
		for _, p := range q.parts {
			if next := i + p.advance; next <= q.n && price[p.row] > 0 {
				best[next] = max(best[next], best[i]+price[p.row]*Value(p.layers))
			}
		}
	}
	return most
}

// restBehind is the most that offcuts are worth when parts take so many positions.
func (q *bar) restBehind(positions int) Value {
	rest := q.whole - layout.Length(positions)*q.unit
	if q.rest == 0 || rest < q.least {
		return 0
	}
	return Value(q.rest*float64(rest)) + 1
}
