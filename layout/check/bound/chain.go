package bound

import "slices"

// span is the positions lo to hi, hi included.
type span struct{ lo, hi int }

func (s span) wide() int { return s.hi - s.lo + 1 }

// value is money in hundredths of a ten-thousandth, always rounded against the
// proof.
type value int64

// chain is the longest way from the first position to the last when every step
// from one position to a later one is worth something. Neighbouring positions
// are taken together in cells: a step between two cells is worth as much as the
// best between any two of their positions, so the longest way over cells is no
// shorter than the longest over positions. Cells are split only where the
// longest way leads, until it leads over single positions, where it is exact.
type chain struct {
	cells []span
	most  [][]value // by cell from, by later cell to: what a step is worth at most
	known [][]bool  // worked out for these cells, not taken over from wider ones
	best  []value   // by cell: the most that a way from it is worth
	next  []int     // the cell to which that way steps; 0: it goes on to the next cell for nothing
	stale []bool    // best is to be worked out again
}

// newChain divides the positions 0 to n into cells of at most wide positions.
// No step may be shorter than wide, so that none begins and ends in one cell.
// first gives each step a value that is not too low.
func newChain(n, wide int, first func(from, to span) value) *chain {
	c := &chain{}
	for lo := 0; lo <= n; lo += wide {
		c.cells = append(c.cells, span{lo, min(lo+wide-1, n)})
	}
	count := len(c.cells)
	c.best, c.next = make([]value, count), make([]int, count)
	c.stale = slices.Repeat([]bool{true}, count)
	for k := range count {
		c.most, c.known = append(c.most, make([]value, count)), append(c.known, make([]bool, count))
		for l := k + 1; l < count; l++ {
			c.most[k][l] = first(c.cells[k], c.cells[l])
		}
	}
	return c
}

// longest is the value of the longest way, by
//
//	best[k] = max(best[k+1], step from k to l + best[l])
//
// Steps are only ever found to be worth less, so a cell keeps its best where
// that does not lead over a step or a cell that has changed.
func (c *chain) longest() value {
	changed := make([]bool, len(c.cells))
	for k := len(c.cells) - 2; k >= 0; k-- {
		if !c.stale[k] && !changed[max(c.next[k], k+1)] {
			continue
		}
		was := c.best[k]
		c.better(k)
		c.stale[k], changed[k] = false, c.best[k] != was
	}
	return c.best[0]
}

// better finds the best way from cell k.
func (c *chain) better(k int) {
	best, next := c.best[k+1], 0
	row := c.most[k]
	for l, v := range c.best {
		if l > k && row[l] > 0 && row[l]+v > best {
			best, next = row[l]+v, l
		}
	}
	c.best[k], c.next[k] = best, next
}

// way lists the cells from which the longest way takes a step, and to which.
func (c *chain) way() [][2]int {
	var steps [][2]int
	for k := 0; k < len(c.cells)-1; {
		if c.next[k] == 0 {
			k++
			continue
		}
		steps = append(steps, [2]int{k, c.next[k]})
		k = c.next[k]
	}
	return steps
}

// settle sharpens the longest way until it leads over known steps between cells
// of at most wide positions, or is worth no more than enough, or stop says so.
// The result is never too low.
func (c *chain) settle(wide int, enough value, most func(from, to span) value, stop func() bool) value {
	for {
		best := c.longest()
		if best <= enough || stop() {
			return best
		}
		steps := c.way()
		if !c.learn(steps, most) && !c.splitWay(steps, wide) {
			return best
		}
	}
}

// learn works out the steps that are not known and reports whether any turned
// out to be worth less.
func (c *chain) learn(steps [][2]int, most func(from, to span) value) bool {
	less := false
	for _, s := range steps {
		k, l := s[0], s[1]
		if c.known[k][l] {
			continue
		}
		c.known[k][l] = true
		if v := most(c.cells[k], c.cells[l]); v < c.most[k][l] {
			c.most[k][l], c.stale[k], less = v, true, true
		}
	}
	return less
}

// forget has every step worked out again, more finely.
func (c *chain) forget() {
	for _, row := range c.known {
		clear(row)
	}
}

// splitWay splits the cells of a way that are wider than allowed and reports
// whether there were any.
func (c *chain) splitWay(steps [][2]int, wide int) bool {
	var cells []int
	for _, s := range steps {
		for _, k := range s {
			if c.cells[k].wide() > wide {
				cells = append(cells, k)
			}
		}
	}
	slices.Sort(cells)
	cells = slices.Compact(cells)
	for _, k := range slices.Backward(cells) {
		c.split(k)
	}
	return len(cells) > 0
}

// split halves cell k. The halves take over its steps, as not yet known, and
// its best way: both are worth what it was until more is known.
func (c *chain) split(k int) {
	cell := c.cells[k]
	mid := cell.lo + cell.wide()/2
	c.cells = slices.Insert(c.cells, k+1, span{mid, cell.hi})
	c.cells[k].hi = mid - 1
	for i := range c.most {
		c.most[i] = slices.Insert(c.most[i], k+1, c.most[i][k])
		c.known[i] = slices.Insert(c.known[i], k+1, false)
		c.known[i][k] = false
	}
	clear(c.known[k])
	c.most = slices.Insert(c.most, k+1, slices.Clone(c.most[k]))
	c.known = slices.Insert(c.known, k+1, slices.Clone(c.known[k]))
	c.best = slices.Insert(c.best, k+1, c.best[k])
	c.next = slices.Insert(c.next, k+1, c.next[k])
	c.stale = slices.Insert(c.stale, k+1, c.stale[k])
	for i, to := range c.next {
		if to > k {
			c.next[i]++
		}
	}
}
