package solver

import (
	"slices"

	"sawbill/layout"
)

// strips is a job with glue-ups written as one without: a row for each strip of a
// set and each number of slices that a copy may have. How many copies of which
// number of slices are made is a composition (composition.go).
type strips struct {
	asked  *layout.Problem
	p      *layout.Problem
	groups []group
	from   map[string]origin // by name of a strip
}

// group is the strips of the copies of a set that have so many slices.
type group struct {
	set    int // in the order of the problem that was asked
	slices int
	rows   []int // of the bill of strips
	each   []int // by index into rows: how many a copy takes
}

// origin is what a strip is in the problem that was asked.
type origin struct {
	row    string
	slices int
}

// newStrips begins with the rows that are in no set.
func newStrips(asked *layout.Problem) *strips {
	p := *asked
	p.Bill = slices.DeleteFunc(slices.Clone(asked.Bill), func(part layout.Part) bool { return part.Set != "" })
	return &strips{asked: asked, p: &p, from: map[string]origin{}}
}

// add wants copies of a set that have so many slices.
func (e *strips) add(sets []layout.Set, set, k, copies int) {
	g := group{set: set, slices: k}
	for _, i := range sets[set].Rows {
		row := &e.asked.Bill[i]
		strip := e.asked.Shop.Strip(row, k)
		strip.Quantity = row.Quantity * copies
		g.rows, g.each = append(g.rows, len(e.p.Bill)), append(g.each, row.Quantity)
		e.p.Bill = append(e.p.Bill, strip)
		e.from[strip.Name] = origin{row.Name, k}
	}
	e.groups = append(e.groups, g)
}

// copies is how many whole copies of a group some pieces make.
func (g *group) copies(made []int) int {
	n := made[g.rows[0]] / g.each[0]
	for k, i := range g.rows {
		n = min(n, made[i]/g.each[k])
	}
	return n
}

// whole is a plan without the strips that make no whole copy.
func (e *strips) whole(s *search, st *state) *state {
	for {
		limits := e.wholeOnly(made(s.p, st))
		if slices.Equal(limits, made(s.p, st)) {
			return st
		}
		st = s.trimmed(st, limits)
	}
}

// wholeOnly is what is left of pieces that are made when strips of no whole copy
// do not count.
func (e *strips) wholeOnly(made []int) []int {
	left := slices.Clone(made)
	for i := range e.groups {
		g := &e.groups[i]
		for k, row := range g.rows {
			left[row] = g.copies(made) * g.each[k]
		}
	}
	return left
}

// trimmed is a plan that makes no more than limits. Boards that then give nothing are
// not cut.
func (s *search) trimmed(st *state, limits []int) *state {
	next, left := newState(s.p), slices.Clone(limits)
	price := prices(s.p, s.values, st.missing)
	for _, b := range st.used() {
		c := st.cuts[b]
		if beyond(c.Counts, left) {
			trimmed := s.quick.board(b).Trim(c, price, left)
			c = &trimmed
		}
		if !wants(c.Counts) {
			continue
		}
		next.set(b, c)
		for i, n := range c.Counts {
			left[i] -= n
		}
	}
	return next
}

// plan is a plan for the problem that was asked; strips say what row of a set they
// are of and how many slices they give.
func (e *strips) plan(st *state) *layout.Plan {
	var cuts []layout.BoardCut
	for _, b := range st.used() {
		root := st.cuts[b].Root.Clone()
		for _, leaf := range root.Leaves() {
			if o, strip := e.from[leaf.Part]; strip {
				leaf.Part, leaf.Slices = o.row, o.slices
			}
		}
		cuts = append(cuts, layout.BoardCut{Board: st.p.Stock[b].Mark, Root: root})
	}
	return layout.Assemble(e.asked, cuts)
}
