package mip_test

import (
	"context"
	"math"
	"testing"
	"time"

	"sawbill/layout"
	"sawbill/solver"
	"sawbill/solver/internal/jobs"
	"sawbill/solver/internal/mip"
)

// TestProgramsAgreeWithOurs holds the models and our search against each other:
// a proven answer of a program is never dearer than a plan of ours that the
// checker has passed, and in two dimensions ours is as good. (Bars longer than
// 1.6 m may come out dearer while the search lays them on a grid of two
// millimetres.)
func TestProgramsAgreeWithOurs(t *testing.T) {
	programs := mip.Programs()
	if len(programs) == 0 {
		t.Log("no solver for integer programs on the path: nothing was compared")
		return
	}
	for _, j := range jobs.Bars()[:2] {
		if theirs, ours := compare(t, programs[0], j, mip.Bars(j.Problem)); theirs > ours {
			t.Errorf("%s: proven to cost %v at least, ours costs %v", j.Name, theirs, ours)
		}
	}
	for _, j := range jobs.Panels()[:3] {
		if theirs, ours := compare(t, programs[0], j, mip.Panels(j.Problem)); theirs != ours {
			t.Errorf("%s: proven to cost %v, ours costs %v", j.Name, theirs, ours)
		}
	}
}

func compare(t *testing.T, program mip.Program, j jobs.Named, m *mip.Model) (theirs, ours layout.Money) {
	t.Helper()
	answer, err := program.Solve(context.Background(), m, time.Minute)
	if err != nil {
		t.Fatal(err)
	}
	plan, _, err := solver.Solve(context.Background(), j.Problem, solver.Options{Rounds: 10})
	if err != nil {
		t.Fatal(err)
	}
	if len(plan.Missing) > 0 || !answer.Proven {
		t.Fatalf("%s: missing %v, proven %v", j.Name, plan.Missing, answer.Proven)
	}
	return layout.Money(math.Round(answer.Cost)), plan.Totals.Cost
}
