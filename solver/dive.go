package solver

import (
	"cmp"
	"math"
	"math/rand"
	"slices"

	"sawbill/solver/internal/column"
)

// dive makes a plan out of the linear programme over columns: cuts that it chooses
// whole are made, or else the one that it comes nearest to choosing; then it is
// solved again for what is still wanted, with new cuts that fit that (diving
// heuristic with column generation: Sadykov, Vanderbeck, Pessoa, Tahiri & Uchoa
// 2019). Boards that are alike are chosen among together, so this is at its best
// where a neighbourhood of a few boards is at its worst.
type dive struct {
	s      *search
	w      *worker // who makes it
	rng    *rand.Rand
	daring float64 // how far the choices are left to chance
	slow   int     // how many times as long as usual a pricing takes
	by     *pricer
	boards []int   // that are cut anew; the others are as in the best plan
	free   [][]int // of these boards alike, those that are not cut yet
	r      *restricted
	st     *state
	order  []int // boards, as they were cut
	found  []found
}

const (
	divesAtOnce = 2 // how many are made together, the very first of them without chance
	diveWhole   = 1 - 1e-6
	diveShare   = 16 // one in so many of the boards that are still wanted is cut at a time

	firstDivePricings = 800 // of boards, before the first choice
	divePricings      = 80  // before each of the others
)

// diveEvery is how many rounds lie between dives, beside those after each pass of the proof:
// few where most boards are alike, or dives are parts of a plan.
func (s *search) diveEvery() int {
	switch {
	case s.divesInParts():
		return 2
	case 4*len(s.alike()) <= len(s.usable):
		return 3
	}
	return 30
}

// plunge makes a few dives and goes on from those that make the best plan so far better; it
// reports whether any does.
func (s *search) plunge(n int) bool {
	dives := make([]*dive, divesAtOnce)
	slow := s.slowness()
	for k := range dives {
		dives[k] = &dive{s: s, slow: slow, by: s.pricing(), rng: rand.New(rand.NewSource(s.rng.Int63()))}
		if s.dived || k > 0 {
			dives[k].daring = 0.3
		}
		if s.widens(n) {
			dives[k].by, dives[k].slow = s.wide, 3*slow
		}
	}
	s.dived = true
	s.setBoards(dives)
	dives = slices.DeleteFunc(dives, func(d *dive) bool { return len(d.boards) == 0 })
	s.each(len(dives), func(w *worker, k int) {
		dives[k].w = w
		dives[k].run()
	})
	better := false
	for _, d := range dives {
		s.remember([]*answer{{found: d.found}})
		st := s.best.copy()
		st.recut(d.boards, d.cuts())
		better = s.improve(st) || better
	}
	return better
}

// cuts are those of its boards.
func (d *dive) cuts() []*column.Cut {
	cuts := make([]*column.Cut, len(d.boards))
	for k, b := range d.boards {
		cuts[k] = d.st.cuts[b]
	}
	return cuts
}

func (d *dive) run() {
	s := d.s
	d.st, d.free = s.best.copy(), s.alikeAmong(d.boards)
	d.st.recut(d.boards, make([]*column.Cut, len(d.boards)))
	boards := make([]int, len(d.free))
	for g, alike := range d.free {
		boards[g] = alike[0]
	}
	d.r = newRestricted(s.p, boards, d.st.missing, s.penalties(d.st))
	d.r.steps = masterSteps
	for g, b := range boards {
		d.r.prog.SetRHS(g, float64(len(d.free[g])))
		for _, c := range s.pool.cuts[s.quick.twin[b]] {
			d.r.offer(g, c)
		}
	}
	rounds := d.rounds(firstDivePricings, 20) + 2
	for wants(d.st.missing) && d.generate(rounds) && d.choose() {
		rounds = d.rounds(divePricings, 2)
	}
	d.cutTails()
}

// rounds is how many rounds of pricing make about so many pricings: no more than
// most where there are many kinds of boards, and at least one.
func (d *dive) rounds(pricings, most int) int {
	n := max(1, len(d.free))
	pricings = max(n, pricings/d.slow)
	return max(1, min(most, pricings/n)) + pricings/8/n
}

// generate adds cuts until none is attractive or so many rounds were made; it
// reports false when stopped.
func (d *dive) generate(rounds int) bool {
	for ; ; rounds-- {
		parts, boards, ok := d.r.prices()
		if !ok || d.w.stop() {
			return false
		}
		if rounds == 0 || d.price(parts, boards) == 0 {
			return true
		}
	}
}

// price offers an attractive cut of every board that is left; it reports how many
// there were.
func (d *dive) price(parts, boards []float64) int {
	added := 0
	price := make([]column.Value, len(parts))
	for i, v := range parts {
		price[i] = column.Value(v) + 1
	}
	var left []int
	var placed []*column.Board
	for g, free := range d.free {
		if len(free) > 0 {
			left, placed = append(left, g), append(placed, d.placed(free[0]))
		}
	}
	cuts := make([]column.Cut, len(left))
	for k := range left {
		if !d.w.stop() {
			cuts[k] = d.w.bench.Within(placed[k], price, d.st.missing, 1)
		}
	}
	for k, g := range left {
		c := &cuts[k]
		if c.Root == nil || netValue(d.s.p, d.free[g][0], c)-valueOf(c.Counts, parts) >= boards[g]-minGain {
			continue
		}
		d.r.offer(g, c)
		d.found = append(d.found, found{d.r.boards[g], c})
		added++
	}
	return added
}

// placed is a board whose blanks start where they usually do, or as in a sketch. Where they
// usually start in very many places, every other time they do.
func (d *dive) placed(b int) *column.Board {
	board := d.by.board(b)
	if d.by == d.s.wide && d.rng.Intn(2) == 0 {
		return board
	}
	if sketches := d.s.pool.sketches[d.s.quick.twin[b]]; len(sketches) > 0 {
		return board.Along(sketches[d.rng.Intn(len(sketches))])
	}
	return board
}

// choose makes the cuts that the programme chooses whole, or those that it comes
// nearest to; it reports whether there were any.
func (d *dive) choose() bool {
	x := d.r.prog.Primal()[len(d.r.wanted):]
	var order []int
	rank := make([]float64, len(x))
	sum := 0.0
	for k, v := range x {
		if v > 1-diveWhole && !d.r.gone[k] {
			order = append(order, k)
			sum += v
			rank[k] = v + d.daring*d.rng.Float64()
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(rank[b], rank[a]) })
	made, most := 0, max(1, int(sum)/diveShare)
	for _, k := range order {
		if x[k] < diveWhole && made >= most {
			break
		}
		for range max(1, int(math.Floor(x[k]+1-diveWhole))) {
			if d.make(k) {
				made++
			}
		}
	}
	d.forbid()
	return made > 0
}

// make cuts a board in a way chosen, unless it makes more than is wanted or no
// such board is left.
func (d *dive) make(k int) bool {
	c := d.r.columns[k]
	if len(d.free[c.at]) == 0 || beyond(c.cut.Counts, d.st.missing) {
		return false
	}
	b := d.free[c.at][0]
	d.st.set(b, c.cut)
	d.order, d.free[c.at] = append(d.order, b), d.free[c.at][1:]
	return true
}

// forbid takes out of the programme what no longer fits what is wanted.
func (d *dive) forbid() {
	for g, free := range d.free {
		d.r.prog.SetRHS(g, float64(len(free)))
	}
	for i, n := range d.st.missing {
		d.r.prog.SetRHS(len(d.free)+i, float64(n))
	}
	for k, c := range d.r.columns {
		if !d.r.gone[k] && beyond(c.cut.Counts, d.st.missing) {
			d.r.forbid(k)
		}
	}
}
