package solver

import (
	"slices"

	"sawbill/solver/internal/column"
	"sawbill/solver/internal/lp"
)

// master is the linear programme over columns (Dantzig & Wolfe 1960; Gilmore &
// Gomory 1961): columns of every board in shares that add up to one board at
// most, so that together they make what is wanted, for the least cost. Its dual
// values are the prices at which further columns are sought.
type master struct {
	s        *search
	usable   []int // the boards that may be cut
	forced   bool  // all of them must be cut
	demand   []int
	clusters []cluster
	of       []int // by board: its cluster
	heeds    heeds
	prog     *lp.Program
	raw      []rawColumn
}

// rawColumn is a column of a board as it was found.
type rawColumn struct {
	board  int
	worth  float64 // of its offcuts
	counts []int
	at     int // which column of the programme it is
}

// cluster is boards that share a row of the programme: boards that are alike, or
// where there are very many boards some that are not. A column of the latter is
// one column of each of its boards that is worth its cost.
type cluster struct{ boards []int }

// mostClusters is the most rows for boards.
const mostClusters = 240

// newMaster begins with shortages alone, or where boards must be cut with columns
// that give nothing.
func (s *search) newMaster(usable, demand []int, forced bool) *master {
	m := &master{s: s, usable: usable, forced: forced, demand: demand, of: make([]int, len(s.p.Stock))}
	m.setClusters()
	var senses []lp.Sense
	var rhs []float64
	for c := range m.clusters {
		sense := lp.AtMost
		if forced {
			sense = lp.Equal
		}
		senses, rhs = append(senses, sense), append(rhs, m.share(c))
	}
	for _, d := range demand {
		senses, rhs = append(senses, lp.AtLeast), append(rhs, float64(d))
	}
	if !forced && m.keepsAll() {
		m.heeds = s.heeds
	}
	for range m.heeds.words {
		senses, rhs = append(senses, lp.AtMost), append(rhs, 1)
	}
	for range m.heeds.limits {
		senses, rhs = append(senses, lp.AtMost), append(rhs, 0)
	}
	m.prog = lp.New(senses, rhs)
	for i := range demand {
		m.prog.Add(shortagePrice*s.start[i]/perMoney, []lp.Entry{{Row: len(m.clusters) + i, Coef: 1}})
	}
	m.offerCopies()
	if forced {
		for c := range m.clusters {
			m.offer(c, s.cost(m.clusters[c].boards[0]), nil)
		}
	}
	return m
}

// shortagePrice is how many times its first value a part may be worth at most.
const shortagePrice = 6

// perMoney is how many values make one unit of money, in which the programme
// counts.
const perMoney = 1e6

// setClusters puts boards that are alike together, and where there are still too
// many clusters, neighbours in the stock.
func (m *master) setClusters() {
	first := map[int]int{}
	for _, b := range m.usable {
		twin := m.s.quick.twin[b]
		c, ok := first[twin]
		if !ok {
			c = len(m.clusters)
			first[twin] = c
			m.clusters = append(m.clusters, cluster{})
		}
		m.clusters[c].boards = append(m.clusters[c].boards, b)
	}
	if n := len(m.clusters); n > mostClusters {
		merged := make([]cluster, mostClusters)
		for c, old := range m.clusters {
			to := &merged[c*mostClusters/n]
			to.boards = append(to.boards, old.boards...)
		}
		m.clusters = merged
	}
	for c := range m.clusters {
		for _, b := range m.clusters[c].boards {
			m.of[b] = c
		}
	}
}

// alike reports whether all boards of a cluster are alike.
func (m *master) alike(c int) bool {
	twin, boards := m.s.quick.twin, m.clusters[c].boards
	return !slices.ContainsFunc(boards, func(b int) bool { return twin[b] != twin[boards[0]] })
}

// keepsAll reports whether every column is kept as it was found: those of boards that are
// not alike and share a row are not.
func (m *master) keepsAll() bool {
	for c := range m.clusters {
		if !m.alike(c) {
			return false
		}
	}
	return true
}

// share is how many columns of a cluster may be chosen.
func (m *master) share(c int) float64 {
	if m.alike(c) {
		return float64(len(m.clusters[c].boards))
	}
	return 1
}

// boards lists those to be priced: of boards that are alike, one.
func (m *master) boards() []int {
	return slices.DeleteFunc(slices.Clone(m.usable), func(b int) bool {
		return m.s.quick.twin[b] != b
	})
}

// eachTwin calls do with every usable board that is like b.
func (m *master) eachTwin(b int, do func(int)) {
	for _, other := range m.clusters[m.of[b]].boards {
		if m.s.quick.twin[other] == m.s.quick.twin[b] {
			do(other)
		}
	}
}

// offer adds a column to a cluster, what it costs and makes, and tells which column of the
// programme it is.
func (m *master) offer(c int, cost float64, counts []float64) int {
	entries := []lp.Entry{{Row: c, Coef: 1}}
	for i, n := range counts {
		if n > 0 {
			entries = append(entries, lp.Entry{Row: len(m.clusters) + i, Coef: n})
		}
	}
	return m.prog.Add(cost/perMoney, append(entries, m.heeded(c, counts)...))
}

// offerRaw adds a column of a board, its worth and pieces scaled.
func (m *master) offerRaw(c rawColumn, scale float64) {
	k := m.of[c.board]
	if !m.alike(k) {
		return
	}
	counts := make([]float64, len(c.counts))
	for i, n := range c.counts {
		counts[i] = scale * float64(n)
	}
	c.at = m.offer(k, m.s.cost(c.board)-scale*c.worth, counts)
	m.raw = append(m.raw, c)
}

// mostKnown is the most that a column of a board is worth at some prices, of those that
// were kept as they were found.
func (m *master) mostKnown(board int, price []column.Value) float64 {
	most := 0.0
	for i := range m.raw {
		c := &m.raw[i]
		if m.of[c.board] != m.of[board] {
			continue
		}
		worth := c.worth
		for row, n := range c.counts {
			worth += float64(n) * float64(price[row])
		}
		most = max(most, worth)
	}
	return most
}

// masterSteps bounds the work of one solve of the programme.
const masterSteps = 20_000

// duals is the dual solution of the master, in values: of the parts, of the rows
// of the clusters and of what is heeded (not above 0), and its own value.
type duals struct {
	parts, clusters, heeded []float64
	value                   float64
}

// solve solves the programme; ok is false when it ran out of steps.
func (m *master) solve() (*duals, bool) {
	if m.prog.Solve(masterSteps) != lp.Optimal {
		return nil, false
	}
	y, n := m.prog.Dual(), len(m.clusters)
	d := &duals{value: m.prog.Value() * perMoney}
	for i := range y {
		y[i] *= perMoney
	}
	d.clusters, d.parts, d.heeded = y[:n], y[n:m.heedRow()], y[m.heedRow():]
	for i := range d.parts {
		d.parts[i] = max(0, d.parts[i])
	}
	return d, true
}
