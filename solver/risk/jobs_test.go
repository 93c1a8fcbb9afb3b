package risk

import (
	"context"
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/jobs"
)

// randomPlan is the plan of a random job, with rates of hidden defects that depend on
// its number and of which some are 0.
func randomPlan(t *testing.T, seed int64) *layout.Plan {
	t.Helper()
	size := jobs.Size{Boards: 3 + int(seed%5), Kinds: 1 + int(seed%4), Pieces: 4 + int(seed%9)}
	p := jobs.Varied(size, seed)
	if seed%2 == 1 {
		p = jobs.Warped(size, seed)
	}
	for i, species := range []string{"ash", "elm", "beech"} {
		p.Shop.Hidden[species] = layout.Hidden{Per10BF: layout.Rate((seed+int64(i))%4) * layout.RateUnity / 2}
	}
	if seed%5 == 0 && len(p.Bill) > 1 && p.Bill[0].Species[0] == p.Bill[1].Species[0] {
		p.Bill[0].Match, p.Bill[1].Match = "pair", "pair"
	}
	plan, _, err := solver.Solve(&jobs.Patience{Context: context.Background(), Looks: 60}, p, solver.Options{Rounds: 1, Workers: 1, Seed: seed})
	if err != nil {
		t.Fatalf("seed %d: %v", seed, err)
	}
	return plan
}

const randomJobs = 24

// tried counts, over all random jobs, what the tests below are about: without any of it
// they would show nothing.
type tried struct{ differ, fell, again, pieces int }

// What holds of every job is tried on random ones, and nothing panics.
func TestRandomJobs(t *testing.T) {
	var n tried
	for seed := range int64(randomJobs) {
		plan := randomPlan(t, seed)
		n.workers(t, seed, plan)
		n.moreDefects(t, seed, plan)
		n.check(t, seed, plan)
		moreBoards(t, seed, plan)
	}
	if n.differ < randomJobs/2 || n.fell < randomJobs || n.again < randomJobs || n.pieces < 20*randomJobs {
		t.Errorf("too little was tried: %+v", n)
	}
}

func risk(t *testing.T, plan *layout.Plan, o Options) *layout.Risk {
	t.Helper()
	r, err := Of(context.Background(), plan, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// Same seed, same answer, whatever the number of workers; another seed, another answer.
func (n *tried) workers(t *testing.T, seed int64, plan *layout.Plan) {
	first := risk(t, plan, Options{Draws: 40, Workers: 1, Seed: seed})
	for _, workers := range []int{2, 5} {
		if diff := cmp.Diff(first, risk(t, plan, Options{Draws: 40, Workers: workers, Seed: seed}), cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("seed %d with %d workers:\n%s", seed, workers, diff)
		}
	}
	other := risk(t, plan, Options{Draws: 40, Workers: 1, Seed: seed + 1})
	if !cmp.Equal(first, other, cmpopts.IgnoreFields(layout.Risk{}, "Seed")) {
		n.differ++
	}
}

// With all rates multiplied no draw that was not finished is finished.
func (n *tried) moreDefects(t *testing.T, seed int64, plan *layout.Plan) {
	bench := new(column.Bench)
	finished := make([]bool, 60)
	for _, factor := range []layout.Rate{0, 1, 2, 5} {
		rates := *plan.Problem.Shop
		rates.Hidden = map[string]layout.Hidden{}
		for species, h := range plan.Problem.Shop.Hidden {
			h.Per10BF *= factor
			rates.Hidden[species] = h
		}
		j := newJob(plan, &rates)
		for i := range finished {
			before, now := finished[i], j.draw(seed, i, bench).need == nil
			if factor > 0 && now && !before {
				t.Errorf("seed %d, draw %d: finished only at %d times the rates", seed, i, factor)
			}
			if before && !now {
				n.fell++
			}
			finished[i] = now
		}
		if factor == 0 && len(plan.Missing) == 0 && slices.Contains(finished, false) {
			t.Errorf("seed %d: not finished without a hidden defect", seed)
		}
	}
}

// One more board never makes it worse, nor does the next one, nor the order of boards.
func moreBoards(t *testing.T, seed int64, plan *layout.Plan) {
	r := risk(t, plan, Options{Draws: 40, Seed: seed})
	if r.Finished.Count < r.AsPlanned.Count {
		t.Errorf("seed %d: the order that is advised is worse than that of the plan", seed)
	}
	for _, s := range r.Spares {
		if s.Finished.Count < r.Finished.Count {
			t.Errorf("seed %d: fewer are finished with one more like %s", seed, s.Like)
		}
	}
	for i, b := range r.Bought {
		if i > 0 && b.Finished.Count < r.Bought[i-1].Finished.Count {
			t.Errorf("seed %d: board %d makes it worse", seed, i)
		}
	}
}

// What was cut in a draw is a valid plan of the boards with all of their defects: no
// piece that counts as made lies in one, and what is missing is what the draw says.
func (n *tried) check(t *testing.T, seed int64, plan *layout.Plan) {
	j := newJob(plan, plan.Problem.Shop)
	bench := new(column.Bench)
	for i := range 4 {
		var spots []spot
		for id, b := range j.roots {
			spots = append(spots, b.draw(source(seed, i, id), id)...)
		}
		r, _ := j.play(spots, bench)
		cut := asPlan(r)
		for _, v := range check.Plan(cut) {
			t.Fatalf("seed %d, draw %d: %v", seed, i, v)
		}
		missing := map[string]int{}
		for _, m := range cut.Missing {
			missing[m.Part] = m.Quantity
		}
		for row, need := range wanted(r.need) {
			if name := j.p.Bill[row].Name; !j.matched[row] && missing[name] != need {
				t.Errorf("seed %d, draw %d: %s: missing are %d, and the draw says %d", seed, i, name, missing[name], need)
			}
		}
		n.again += len(r.cuts) - len(j.planned)
		for _, m := range r.cuts {
			n.pieces += len(m.cut.pieces)
		}
	}
}

// asPlan is what was cut as a plan of its own: each piece of wood is a board with the
// defects that hide in it, and what is spoiled is scrap.
func asPlan(r *play) *layout.Plan {
	const hidden = layout.Kind("hidden")
	shop := *r.j.p.Shop
	shop.Kinds = map[layout.Kind]bool{hidden: false}
	for kind, sound := range r.j.p.Shop.Kinds {
		shop.Kinds[kind] = sound
	}
	p := &layout.Problem{Shop: &shop, Bill: slices.Clone(r.j.p.Bill), Yard: true}
	for i := range p.Bill {
		p.Bill[i].Match = "" // pieces that are made anew leave the others over
	}
	var cuts []layout.BoardCut
	for n, m := range r.cuts {
		b := m.wood.board
		for _, at := range r.spots[m.root] {
			at.X1, at.X2 = at.X1-m.wood.corner.X1, at.X2-m.wood.corner.X1
			at.Y1, at.Y2 = at.Y1-m.wood.corner.Y1, at.Y2-m.wood.corner.Y1+m.wood.slack
			if at = at.Intersect(b.Frame()); !at.Empty() {
				b.Defects = append(slices.Clone(b.Defects), layout.Defect{Kind: hidden, Rect: at})
			}
		}
		mark := b.Mark
		b.Mark = fmt.Sprintf("%s~%d", mark, n)
		for i := range p.Bill {
			part := &p.Bill[i]
			if slices.Contains(part.From, mark) {
				part.From = append(slices.Clone(part.From), b.Mark)
			}
			if slices.Contains(part.NotFrom, mark) {
				part.NotFrom = append(slices.Clone(part.NotFrom), b.Mark)
			}
		}
		p.Stock = append(p.Stock, b)
		if root := soundTree(r, m, p); root != nil {
			cuts = append(cuts, layout.BoardCut{Board: b.Mark, Root: root})
		}
	}
	return layout.Assemble(p, cuts)
}

// soundTree is the tree of a cut with scrap for what is spoiled, or nil where nothing
// is left.
func soundTree(r *play, m made, p *layout.Problem) *layout.Node {
	root := m.cut.root.Clone()
	at := 0
	for _, leaf := range root.Leaves() {
		leaf.Offcut, leaf.ID = "", ""
		if leaf.Part == "" {
			continue
		}
		if r.spoils(m.root, m.cut.pieces[at]) {
			*leaf = layout.Node{Rect: leaf.Rect}
		}
		at++
	}
	if tidied(root, p) == 0 {
		return nil
	}
	return root
}

// tidied drops what holds no part, planes no thinner than what is left needs and gives
// that.
func tidied(n *layout.Node, p *layout.Problem) (need layout.Length) {
	if n.Part != "" {
		return p.Shop.NeedOf(n, p.Part(n.Part))
	}
	n.Children = slices.DeleteFunc(n.Children, func(c *layout.Node) bool {
		inside := tidied(c, p)
		need = max(need, inside)
		return inside == 0
	})
	if n.Trued {
		n.Thickness = need
	}
	if len(n.Children) == 0 {
		n.Cut = layout.NoCut
	}
	return need
}
