package solver

import (
	"slices"

	"sawbill/solver/internal/column"
)

// dual seeks part values at which no board is worth more than it costs and yet
// everything is wanted: the prices p that make
//
//	L(p) = sum of wanted * p - sum over boards of max(0, best(board, p) - cost)
//
// large, by a subgradient method with a smoothed direction (Polyak 1969; Barahona
// & Anbil 2000). Boards are priced one by one with any number of copies, by the
// swift routine; so what comes out steers the search and proves nothing.
type dual struct {
	s        *search
	values   []float64
	smooth   []float64 // direction, relative to the start values
	best     float64
	keep     []float64
	appeal   []float64 // of boards at the kept values: what they are worth over their cost
	step     float64
	sinceTop int
}

// settle finds the values that the search goes on with, and which boards appeal
// at them.
func (s *search) settle(target float64) {
	d := &dual{s: s, values: slices.Clone(s.start), smooth: make([]float64, len(s.start)), step: 0.25}
	boards := s.usable
	for range d.rounds(len(boards)) {
		if s.workers[0].stop() {
			break
		}
		d.round(boards, target)
	}
	if d.keep != nil {
		s.values, s.appeal = d.keep, d.appeal
	}
}

// rounds is how many rounds are spent, fewer when there are many boards.
func (d *dual) rounds(boards int) int { return max(1, min(50, 2500/max(1, boards))) }

func (d *dual) round(boards []int, target float64) {
	s := d.s
	price := make([]column.Value, len(d.values))
	lower, got := 0.0, make([]float64, len(d.values))
	for i, v := range d.values {
		price[i] = column.Value(v) + 1
		lower += v * float64(s.p.Bill[i].Quantity)
	}
	found := s.priceAll(boards, price)
	if found == nil {
		return
	}
	appeal := make([]float64, len(s.p.Stock))
	for k, b := range boards {
		cost := float64(column.FromMoney(s.p.Stock[b].Cost))
		worth := float64(found[k].Value)
		appeal[b] = worth / max(cost, 1)
		if worth <= cost {
			continue
		}
		lower -= worth - cost
		for i, n := range found[k].Counts {
			got[i] += float64(n)
		}
	}
	if d.note(lower, appeal) {
		d.move(got, max(target-lower, 0.01*target))
	}
}

// note keeps the values with the best L so far; after three rounds without gain
// it goes back to them with a shorter step.
func (d *dual) note(lower float64, appeal []float64) (goOn bool) {
	if d.keep == nil || lower > d.best {
		d.best, d.keep, d.appeal, d.sinceTop = lower, slices.Clone(d.values), appeal, 0
		return true
	}
	if d.sinceTop++; d.sinceTop == 3 {
		d.step, d.sinceTop = d.step/2, 0
		copy(d.values, d.keep)
		clear(d.smooth)
		return false
	}
	return true
}

// move goes along the smoothed direction, in coordinates relative to the start
// values.
func (d *dual) move(got []float64, room float64) {
	var norm float64
	for i, start := range d.s.start {
		g := start * (float64(d.s.p.Bill[i].Quantity) - got[i])
		d.smooth[i] = 0.6*d.smooth[i] + 0.4*g
		norm += d.smooth[i] * d.smooth[i]
	}
	if norm == 0 {
		return
	}
	for i, start := range d.s.start {
		q := d.values[i]/start + d.step*room/norm*d.smooth[i]
		d.values[i] = start * min(max(q, 0.2), 5)
	}
}
