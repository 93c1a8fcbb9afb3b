package bound

import "slices"

// span is the positions lo to hi, hi included.
type span struct{ lo, hi int }

func (s span) wide() int { return s.hi - s.lo + 1 }

// value is money in hundredths of a ten-thousandth, always rounded against the
// proof.
type value int64

// step is the most that one piece is worth which begins in one cell and after
// which the next may begin in another.
type step struct {
	most  value
	known bool // worked out for these cells, not taken over from wider ones
}

// chain is the longest way from the first position to the last when every step
// from one position to a later one is worth something. Neighbouring positions
// are taken together in cells: a step between two cells is worth as much as the
// best between any two of their positions, so the longest way over cells is no
// shorter than the longest over positions. Cells are split only where the
// longest way leads, until it leads over single positions, where it is exact.
type chain struct {
	cells []span
	steps [][]step // by cell from, by cell to; only later cells are used
}

// newChain divides the positions 0 to n into cells of at most wide positions.
// No step may be shorter than wide, so that none begins and ends in one cell.
// first gives each step a value that is not too low.
func newChain(n, wide int, first func(from, to span) value) *chain {
	c := &chain{}
	for lo := 0; lo <= n; lo += wide {
		c.cells = append(c.cells, span{lo, min(lo+wide-1, n)})
	}
	c.steps = make([][]step, len(c.cells))
	for k := range c.steps {
		c.steps[k] = make([]step, len(c.cells))
		for l := k + 1; l < len(c.cells); l++ {
			c.steps[k][l].most = first(c.cells[k], c.cells[l])
		}
	}
	return c
}

// longest is the value of the longest way, by
//
//	best[k] = max(best[k+1], step from k to l + best[l])
//
// and next[k] is the cell to which it leads from k; a way that leads from k to
// k+1 for nothing has next[k] = 0.
func (c *chain) longest() (best []value, next []int) {
	n := len(c.cells)
	best, next = make([]value, n), make([]int, n)
	for k := n - 2; k >= 0; k-- {
		best[k] = best[k+1]
		row := c.steps[k]
		for l := k + 1; l < n; l++ {
			if v := row[l].most; v > 0 && v+best[l] > best[k] {
				best[k], next[k] = v+best[l], l
			}
		}
	}
	return best, next
}

// way lists the cells from which the longest way takes a step, and to which.
func way(next []int) [][2]int {
	var steps [][2]int
	for k := 0; k < len(next); {
		if next[k] == 0 {
			k++
			continue
		}
		steps = append(steps, [2]int{k, next[k]})
		k = next[k]
	}
	return steps
}

// settle sharpens the longest way until it leads over known steps between cells
// of at most wide positions, or is worth no more than enough, or stop says so.
// The result is never too low.
func (c *chain) settle(wide int, enough value, most func(from, to span) value, stop func() bool) value {
	for {
		best, next := c.longest()
		if best[0] <= enough || stop() {
			return best[0]
		}
		steps := way(next)
		if !c.learn(steps, most) && !c.splitWay(steps, wide) {
			return best[0]
		}
	}
}

// learn works out the steps that are not known and reports whether there were
// any.
func (c *chain) learn(steps [][2]int, most func(from, to span) value) bool {
	any := false
	for _, s := range steps {
		if at := &c.steps[s[0]][s[1]]; !at.known {
			at.most, at.known, any = min(at.most, most(c.cells[s[0]], c.cells[s[1]])), true, true
		}
	}
	return any
}

// forget has every step worked out again, more finely.
func (c *chain) forget() {
	for _, row := range c.steps {
		for l := range row {
			row[l].known = false
		}
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

// split halves cell k. The halves take over its steps.
func (c *chain) split(k int) {
	cell := c.cells[k]
	mid := cell.lo + cell.wide()/2
	c.cells = slices.Insert(c.cells, k+1, span{mid, cell.hi})
	c.cells[k].hi = mid - 1
	for i, row := range c.steps {
		over := row[k]
		over.known = false
		row[k] = over
		c.steps[i] = slices.Insert(row, k+1, over)
	}
	below := slices.Clone(c.steps[k])
	for l := range below {
		below[l].known = false
		c.steps[k][l].known = false
	}
	c.steps = slices.Insert(c.steps, k+1, below)
}
