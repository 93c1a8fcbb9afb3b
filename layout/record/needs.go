package record

import (
	"maps"

	"sawbill/layout"
)

// need is what boards are to give besides what is fixed: pieces by part, strips of
// copies that are begun, and slices of new copies by set. What is none is left out.
type need struct {
	parts  map[string]int
	strips map[strip]int
	slices map[string]int
}

func (n need) equal(o need) bool {
	return maps.Equal(n.parts, o.parts) && maps.Equal(n.strips, o.strips) && maps.Equal(n.slices, o.slices)
}

// needs is what a plan makes beyond what is fixed, which is the plan of the boards
// that are being cut, or nil for nothing.
func needs(plan, fixed *layout.Plan) need {
	n := need{map[string]int{}, map[strip]int{}, map[string]int{}}
	missing, made := map[string]int{}, map[string]int{}
	for _, m := range plan.Missing {
		missing[m.Part] += m.Quantity
	}
	if fixed != nil {
		for _, b := range fixed.Boards {
			for _, leaf := range b.Root.Leaves() {
				made[leaf.Part] += leaf.Pieces()
			}
		}
	}
	for _, part := range plan.Problem.Bill {
		if left := part.Quantity - missing[part.Name] - made[part.Name]; part.Set == "" && left > 0 {
			n.parts[part.Name] = left
		}
	}
	for _, set := range plan.Problem.Sets() {
		if left := set.Slices - missing[set.Name] - n.complete(plan, fixed, set); left > 0 {
			n.slices[set.Name] = left
		}
	}
	return n
}

// complete notes the strips that a plan adds to copies of a set of which some are
// fixed, and gives the slices of these.
func (n need) complete(plan, fixed *layout.Plan, set layout.Set) int {
	if fixed == nil {
		return 0
	}
	p, there, total := &plan.Problem, fixed.Strips(), 0
	for _, c := range plan.Copies(set) {
		begun := 0
		for _, row := range set.Rows {
			each := p.Bill[row].Quantity
			begun = max(begun, (there[p.Bill[row].Name][c.Slices]+each-1)/each)
		}
		begun = min(begun, c.Count)
		total += begun * c.Slices
		for _, row := range set.Rows {
			part := &p.Bill[row]
			if lack := part.Quantity*begun - there[part.Name][c.Slices]; lack > 0 {
				n.strips[strip{part.Name, c.Slices}] += lack
			}
		}
	}
	return total
}
