package check

import (
	"testing"

	"sawbill/layout"
)

// begunPlan is the good plan once the work on P1 has begun.
func begunPlan() *layout.Plan {
	p := goodPlan()
	p.Record = &layout.Record{Wanted: p.Problem.Bill, Started: []layout.Start{{Board: "P1", Root: down(p, 0).Clone()}}}
	return p
}

func TestBegunPlanPasses(t *testing.T) {
	for _, v := range Plan(begunPlan()) {
		t.Error(v)
	}
}

// What was given up is cut up in the tree that the board was begun with alone.
func TestGivenUpSinceBegunPasses(t *testing.T) {
	p := begunPlan()
	n := down(p, 0, 0, 1)
	*n = layout.Node{Rect: n.Rect}
	if found := Plan(p); finds(found, "record", "") {
		t.Errorf("found %v", found)
	}
}

// A file may hold any tree as the one that a board was begun with. Two that stood
// for each other in part had the steps index out of range, two pieces in one place
// kept them going for ever.
func TestBrokenBegun(t *testing.T) {
	root := func(p *layout.Plan) *layout.Node { return p.Record.Started[0].Root }
	for _, c := range []struct {
		what, rule, piece string
		wreck             func(*layout.Plan)
	}{
		{"nothing", "form", "missing from the tree", func(p *layout.Plan) { p.Record.Started[0].Root = nil }},
		{"twice", "record", "twice that it is being cut", func(p *layout.Plan) {
			p.Record.Started = append(p.Record.Started, p.Record.Started[0])
		}},
		{"of no board", "record", "has no cuts of it", func(p *layout.Plan) { p.Record.Started[0].Board = "P9" }},
		{"fewer blanks", "record", "cut otherwise than the record says", func(p *layout.Plan) {
			root(p).Children = root(p).Children[:1]
		}},
		{"another place", "record", "cut otherwise than the record says", func(p *layout.Plan) {
			root(p).Children[0].Children[1].Children[0].X2 -= millimetre
		}},
		{"two in one place", "record", "as it was begun: it overlaps its neighbour", func(p *layout.Plan) {
			kids := root(p).Children[0].Children[1].Children
			root(p).Children[0].Children[1].Children = append(kids, kids[0].Clone())
		}},
	} {
		t.Run(c.what, func(t *testing.T) {
			p := begunPlan()
			c.wreck(p)
			wantViolation(t, p, c.rule, c.piece)
		})
	}
}
