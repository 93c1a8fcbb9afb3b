package record

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// rest is what a draft leaves to be planned out of the boards that it does not cut: the
// parts that are missing, the strips that copies of glue-ups lack which are begun, of
// exactly as many slices as these have, and the slices that are then still missing.
type rest struct {
	problem *layout.Problem
	strips  map[string]strip // what rows of its bill stand for
	begun   []begunCopy      // that it completes
	held    map[string]bool  // parts that may come from fewer boards than the bill says
}

// strip is a strip of a row of a set that gives so many slices.
type strip struct {
	row    string
	slices int
}

// begunCopy is the number-th copy of a set with so many slices. Some of its strips are
// cut or planned, others are lacking, so many of each row.
type begunCopy struct {
	set    string
	slices int
	number int
	lacks  []int
	volume float64
}

func (c begunCopy) is(o begunCopy) bool {
	return c.set == o.set && c.slices == o.slices && c.number == o.number
}

// rest leaves copies alone that cannot be completed.
func (d *Draft) rest(hopeless []begunCopy) *rest {
	plan := d.assembled()
	r := &rest{
		problem: &layout.Problem{Shop: plan.Problem.Shop, Yard: plan.Problem.Yard}, strips: map[string]strip{},
		held: map[string]bool{},
	}
	for _, b := range plan.Problem.Stock {
		if d.trees[b.Mark] == nil {
			r.problem.Stock = append(r.problem.Stock, b)
		}
	}
	short := map[string]int{}
	for _, m := range plan.Missing {
		short[m.Part] += m.Quantity
	}
	for _, part := range plan.Problem.Bill {
		if part.Quantity = short[part.Name]; part.Set == "" && part.Quantity > 0 && r.matched(d, &part) {
			r.problem.Bill = append(r.problem.Bill, part)
		}
	}
	for _, set := range plan.Problem.Sets() {
		r.complete(plan, set, short[set.Name], hopeless)
	}
	return r
}

// complete asks for what is missing of a set: for the strips that its begun copies
// lack, those first that take the least wood a slice, and then for new copies.
func (r *rest) complete(plan *layout.Plan, set layout.Set, missing int, hopeless []begunCopy) {
	p := &plan.Problem
	for _, c := range begunCopies(plan, set) {
		if missing <= 0 || slices.ContainsFunc(hopeless, c.is) {
			continue
		}
		missing -= c.slices
		r.begun = append(r.begun, c)
		for i, row := range set.Rows {
			r.ask(p.Shop, &p.Bill[row], strip{p.Bill[row].Name, c.slices}, c.lacks[i])
		}
	}
	for _, row := range set.Rows {
		if part := p.Bill[row]; missing > 0 {
			part.Slices = missing
			r.problem.Bill = append(r.problem.Bill, part)
		}
	}
}

// ask wants n strips, as a part by itself.
func (r *rest) ask(shop *layout.Shop, row *layout.Part, s strip, n int) {
	part := shop.Strip(row, s.slices)
	part.Name += "\x00" // for those who plan glue-ups use such names, too
	part.Slices, part.SliceThickness = 0, 0
	part.Quantity = n
	if n == 0 {
		return
	}
	if asked := r.problem.Part(part.Name); asked != nil {
		asked.Quantity += n
		return
	}
	r.strips[part.Name] = s
	r.problem.Bill = append(r.problem.Bill, part)
}

// begunCopies are the copies of a set of which some strips are there and others are
// not, those first that take the least wood a slice to complete.
func begunCopies(plan *layout.Plan, set layout.Set) []begunCopy {
	p, strips := &plan.Problem, plan.Strips()
	there := func(row, k int) int { return strips[p.Bill[row].Name][k] }
	begun := map[int]int{} // how many copies are, by their slices
	for _, row := range set.Rows {
		each := p.Bill[row].Quantity
		for k := range strips[p.Bill[row].Name] {
			begun[k] = max(begun[k], (there(row, k)+each-1)/each)
		}
	}
	var list []begunCopy
	for k, most := range begun {
		for n := 1; n <= most; n++ {
			c := begunCopy{set: set.Name, slices: k, number: n}
			for _, row := range set.Rows {
				each := p.Bill[row].Quantity
				lack := max(0, each*n-max(there(row, k), each*(n-1)))
				c.lacks = append(c.lacks, lack)
				c.volume += float64(lack) * p.Bill[row].StripVolume(k).MM3()
			}
			if c.volume > 0 {
				list = append(list, c)
			}
		}
	}
	slices.SortFunc(list, func(a, b begunCopy) int {
		return cmp.Or(cmp.Compare(a.volume*float64(b.slices), b.volume*float64(a.slices)), cmp.Compare(b.slices, a.slices), a.number-b.number)
	})
	return list
}

// left are the begun copies that were to be completed and still lack strips in a draft.
func (r *rest) left(d *Draft) []begunCopy {
	plan := d.assembled()
	made := map[strip]int{} // whole copies of a set, by their slices
	for _, set := range plan.Problem.Sets() {
		for _, c := range plan.Copies(set) {
			made[strip{set.Name, c.Slices}] = c.Count
		}
	}
	var list []begunCopy
	for _, c := range r.begun {
		if c.number > made[strip{c.set, c.slices}] {
			list = append(list, c)
		}
	}
	return list
}

// matched reports whether missing pieces of a part may be planned. Those with a match
// word are of one board: no other may give any while that stands in the plan, and once
// it is all cut only what was cut out of it.
func (r *rest) matched(d *Draft, part *layout.Part) bool {
	home, standing := d.home(part.Match)
	if home == "" || standing {
		return !standing
	}
	r.held[part.Name] = true
	var from []string
	for _, b := range r.problem.Stock {
		if d.origin(b.Mark) == home && (len(part.From) == 0 || slices.Contains(part.From, b.Mark)) {
			from = append(from, b.Mark)
		}
	}
	part.From = from
	return len(from) > 0
}

// home is the board from which pieces with a match word come, and whether it stands in
// the plan; otherwise it is the one that it was cut out of first. It is "" where there
// are no such pieces.
func (d *Draft) home(match string) (mark string, standing bool) {
	if match == "" {
		return "", false
	}
	for mark, root := range d.trees {
		for _, leaf := range root.Leaves() {
			if part := d.wanted(leaf.Part); part != nil && part.Match == match {
				return mark, true
			}
		}
	}
	for _, c := range d.record.Cut {
		if part := d.wanted(c.Part); part != nil && part.Match == match {
			return d.origin(c.Board), false
		}
	}
	return "", false
}

// origin is the board that a board was cut out of first, or itself.
func (d *Draft) origin(mark string) string {
	for _, o := range slices.Backward(d.record.Origins) {
		if o.Board == mark && o.Of != mark {
			mark = o.Of
		}
	}
	return mark
}
