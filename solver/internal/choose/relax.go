package choose

import (
	"math"

	"sawbill/solver/internal/lp"
)

// relaxation is the linear relaxation of a node and the nodes below it: exactly
// one item a group, in fractions. It holds the items that the node allows, with
// counts cut off at what its settled groups leave, and open groups and wanted
// kinds alone have rows.
type relaxation struct {
	*lp.Program
	column  []int // by item, or -1
	columns int   // of items
	row     []int // by kind, or -1
	open    int   // groups
}

// steps limits the work on one relaxation, which takes some ten steps as a rule.
const steps = 5000

func (s *search) relax(allowed []bool, r rest) *relaxation {
	x := &relaxation{column: make([]int, len(s.items)), row: make([]int, len(s.wanted)), open: len(r.open)}
	var senses []lp.Sense
	var rhs []float64
	for range r.open {
		senses, rhs = append(senses, lp.Equal), append(rhs, 1)
	}
	for i, n := range r.left {
		x.row[i] = -1
		if n > 0 {
			x.row[i] = len(rhs)
			senses, rhs = append(senses, lp.AtLeast), append(rhs, float64(n))
		}
	}
	x.Program = lp.New(senses, rhs)
	for k := range x.column {
		x.column[k] = -1
	}
	for at, g := range r.open {
		lo, hi := s.group(g)
		for k := lo; k < hi; k++ {
			if allowed[k] {
				x.column[k] = x.Add(float64(s.items[k].cost), x.entries(at, s.items[k].counts, r.left))
			}
		}
	}
	x.columns = x.Columns()
	for i, row := range x.row {
		if row >= 0 {
			x.Add(float64(s.penalty[i]), []lp.Entry{{Row: row, Coef: 1}})
		}
	}
	return x
}

// entries are those of an item of the open group that has the given row.
func (x *relaxation) entries(group int, counts, left []int) []lp.Entry {
	entries := []lp.Entry{{Row: group, Coef: 1}}
	for i, n := range counts {
		if n > 0 && x.row[i] >= 0 {
			entries = append(entries, lp.Entry{Row: x.row[i], Coef: float64(min(n, left[i]))})
		}
	}
	return entries
}

// fits tells whether the relaxation is still a good one for a node: no group has
// been settled since it was made, and many of its items are still allowed.
func (x *relaxation) fits(allowed []bool, r rest) bool {
	n := 0
	for k, col := range x.column {
		if col >= 0 && allowed[k] {
			n++
		}
	}
	return len(r.open) == x.open && 3*n > x.columns
}

// solve finds shares of the allowed items, and prices.
func (s *search) solve(x *relaxation, allowed []bool) {
	for k, col := range x.column {
		switch {
		case col < 0:
		case allowed[k]:
			x.Allow(col)
		default:
			x.Forbid(col)
		}
	}
	x.Solve(steps)
	for k, col := range x.column {
		s.share[k] = 0
		if col >= 0 {
			s.share[k] = x.X(col)
		}
	}
	duals := x.Dual()
	for i, row := range x.row {
		if row >= 0 {
			price := int64(math.Round(duals[row] * float64(s.scale)))
			s.price[i] = min(max(price, 0), s.penalty[i]*s.scale)
		}
	}
}
