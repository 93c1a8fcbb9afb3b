package exhaust

import "sawbill/layout"

// table gathers ways, and of those that make the same pieces it holds the one
// that is worth the most.
type table struct {
	limits counts
	at     []way // by code
	known  []bool
	codes  []int // in use
}

func newTable(limits counts) *table {
	n := 1
	for _, l := range limits {
		n *= int(l) + 1
	}
	return &table{limits: limits, at: make([]way, n), known: make([]bool, n)}
}

// code numbers the vectors of counts within the limits from 0 on; of others it
// is -1.
func (t *table) code(c counts) int {
	code := 0
	for i, n := range c {
		if n > t.limits[i] {
			return -1
		}
		code = code*(int(t.limits[i])+1) + int(n)
	}
	return code
}

func (t *table) add(w way) {
	code := t.code(w.made)
	switch {
	case code < 0:
		return
	case !t.known[code]:
		t.known[code] = true
		t.codes = append(t.codes, code)
	case w.worth <= t.at[code].worth:
		return
	}
	t.at[code] = w
}

func (t *table) addAll(f front) {
	for _, w := range f {
		t.add(w)
	}
}

// join adds every single piece of f followed by every way of rest.
func (t *table) join(f, rest front) {
	for i := range f {
		for k := range rest {
			sum := way{worth: f[i].worth + rest[k].worth, first: f[i].first, rest: &rest[k]}
			for r := range sum.made {
				sum.made[r] = f[i].made[r] + rest[k].made[r]
			}
			t.add(sum)
		}
	}
}

// take empties the table into a front.
func (t *table) take() front {
	f := make(front, len(t.codes))
	for i, code := range t.codes {
		f[i] = t.at[code]
		t.known[code] = false
	}
	t.codes = t.codes[:0]
	return f
}

// sequence is the front of a stretch that is cut into pieces with a kerf between
// neighbours, at positions a unit apart; piece gives the front of a single one.
//
//	ways from i on = ways from i+1 on, and for every j > i each
//	piece from i to j followed by each of the ways from j + kerf on
func (b *board) sequence(s layout.Span, kerf layout.Length, piece func(layout.Span) front) front {
	n := int(s.Len() / b.unit)
	if n <= 0 {
		return waste()
	}
	apart := int((kerf + b.unit - 1) / b.unit)
	at := func(i int) layout.Length { return s.Lo + layout.Length(i)*b.unit }
	from := make([]front, n+1)
	from[n] = waste()
	t := newTable(b.limits)
	for i := n - 1; i >= 0; i-- {
		t.addAll(from[i+1])
		for j := i + 1; j <= n; j++ {
			t.join(piece(layout.Span{Lo: at(i), Hi: at(j)}), from[min(j+apart, n)])
		}
		from[i] = t.take()
	}
	return from[0]
}
