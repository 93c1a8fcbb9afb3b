package choose

import "fmt"

// Column is one that may be chosen. Cost is in whole units of any kind, the same
// as those of the penalties, and may be below 0. Counts are pieces by kind, at
// least 0.
type Column struct {
	Group  int
	Cost   int64
	Counts []int
}

// Best chooses at most one column for each group. Demand and penalty are by kind
// and at least 0. Start is a choice to begin from, by group the index of a column
// or -1, or nil. Nodes limits the work: each solves one relaxation or goes through
// at most some two thousand choices. With none, start is polished at most.
//
// It returns by group the index of the chosen column or -1, the cost of that
// choice with its penalties, which is never above that of start, and whether it
// is proven that no choice costs less. Pieces beyond the demand are allowed and
// worth nothing.
//
// Best panics on a column that does not fit the groups and kinds, on numbers below
// 0 where none may be, and where the sum of all penalties and of the largest costs
// by group reaches 2^60.
func Best(groups int, demand []int, penalty []int64, columns []Column, start []int, nodes int) (choice []int, cost int64, proven bool) {
	mustFit(groups, demand, penalty, columns, start)
	in := newInstance(groups, demand, penalty, columns)
	s := newSearch(in, nodes)
	s.begin(start)
	proven = s.run()
	return in.outside(s.best), s.cost, proven
}

func mustFit(groups int, demand []int, penalty []int64, columns []Column, start []int) {
	if len(demand) != len(penalty) {
		panic(fmt.Sprintf("choose: %d demands and %d penalties", len(demand), len(penalty)))
	}
	for i, d := range demand {
		if d < 0 || penalty[i] < 0 {
			panic(fmt.Sprintf("choose: kind %d: demand %d, penalty %d", i, d, penalty[i]))
		}
	}
	for j := range columns {
		columns[j].mustFit(j, groups, len(demand))
	}
	if start != nil && len(start) != groups {
		panic(fmt.Sprintf("choose: a start for %d of %d groups", len(start), groups))
	}
	for g, j := range start {
		if j < -1 || j >= len(columns) || j >= 0 && columns[j].Group != g {
			panic(fmt.Sprintf("choose: start of group %d is column %d", g, j))
		}
	}
}

func (c *Column) mustFit(j, groups, kinds int) {
	if c.Group < 0 || c.Group >= groups || len(c.Counts) != kinds {
		panic(fmt.Sprintf("choose: column %d: group %d, %d counts", j, c.Group, len(c.Counts)))
	}
	for _, n := range c.Counts {
		if n < 0 {
			panic(fmt.Sprintf("choose: column %d makes %d pieces", j, n))
		}
	}
}
