package mip

// Model is an integer program: the least sum of cost times variable, over whole
// variables from 0 to their limits, that keeps every row.
type Model struct {
	costs []int64
	most  []int // by variable; negative: no limit
	rows  []row
}

// row demands that the sum of its terms is at least its right side.
type row struct {
	terms []term
	least int64
}

type term struct {
	factor   int64
	variable int
}

// Variables is how many variables the model has.
func (m *Model) Variables() int { return len(m.costs) }

// Rows is how many rows the model has.
func (m *Model) Rows() int { return len(m.rows) }

// variable adds a variable and gives its number; a negative limit is none.
func (m *Model) variable(cost int64, most int) int {
	m.costs, m.most = append(m.costs, cost), append(m.most, most)
	return len(m.costs) - 1
}

// atLeast adds a row.
func (m *Model) atLeast(least int64, terms ...term) {
	m.rows = append(m.rows, row{terms, least})
}
