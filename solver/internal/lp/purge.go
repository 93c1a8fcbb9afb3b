package lp

// Purge drops the columns that keep refuses, but for those in the basis. It
// returns, by old index, the new index of every column, or -1 where it is gone.
func (p *Program) Purge(keep func(col int) bool) []int {
	v, m := &p.vars, len(p.rhs)
	moved := make([]int, p.Columns())
	next, entries := m, v.start[m]
	for col := range moved {
		j := m + col
		if v.seat[j] < 0 && !keep(col) {
			moved[col] = -1
			continue
		}
		moved[col] = next - m
		entries = v.move(j, next, entries)
		next++
	}
	v.cut(next, entries)
	for i, j := range p.base.order {
		if j >= m {
			p.base.order[i] = m + moved[j-m]
		}
	}
	return moved
}

// move puts variable j in the place of variable to, whose entries begin at the
// given place, and returns where they end.
func (v *variables) move(j, to, at int) int {
	lo, hi := v.start[j], v.start[j+1]
	copy(v.row[at:], v.row[lo:hi])
	copy(v.coef[at:], v.coef[lo:hi])
	v.start[to] = at
	v.cost[to], v.fixed[to], v.weight[to], v.seat[to] = v.cost[j], v.fixed[j], v.weight[j], v.seat[j]
	return at + hi - lo
}

// cut keeps the first n variables with their entries.
func (v *variables) cut(n, entries int) {
	v.start = v.start[:n+1]
	v.start[n] = entries
	v.row, v.coef = v.row[:entries], v.coef[:entries]
	v.cost, v.fixed, v.weight, v.seat = v.cost[:n], v.fixed[:n], v.weight[:n], v.seat[:n]
}
