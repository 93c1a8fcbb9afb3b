package layout

import "testing"

// scoreBill has volumes of 1, 2, 4 and 8 mm³ and priorities 1, 2, 2 and blank.
func scoreBill() *Problem {
	part := func(name string, priority int, length Length) Part {
		return Part{
			Name: name, Priority: priority, Quantity: 9,
			Length: length * Millimetre, Width: Millimetre, Thickness: Millimetre,
		}
	}
	return &Problem{Bill: []Part{part("a", 1, 1), part("b", 2, 2), part("c", 2, 4), part("d", 0, 8)}}
}

// Each row is a score that is better than all those below it.
func TestScoreOrder(t *testing.T) {
	p := scoreBill()
	order := []struct {
		why   string
		score Score
	}{
		{"nothing missing, cheap", NewScore(p, []int{0, 0, 0, 0}, 5)},
		{"nothing missing, dear", NewScore(p, []int{0, 0, 0, 0}, 900)},
		{"8 mm³ of the last rank", NewScore(p, []int{0, 0, 0, 1}, 0)},
		{"16 mm³ of the last rank", NewScore(p, []int{0, 0, 0, 2}, 0)},
		{"2 mm³ of rank 2", NewScore(p, []int{0, 1, 0, 0}, 0)},
		{"2 mm³ of rank 2 and some of the last", NewScore(p, []int{0, 1, 0, 1}, 0)},
		{"4 mm³ of rank 2, cheap", NewScore(p, []int{0, 0, 1, 0}, 7)},
		{"4 mm³ of rank 2, dear", NewScore(p, []int{0, 2, 0, 0}, 8)},
		{"6 mm³ of rank 2", NewScore(p, []int{0, 1, 1, 0}, 0)},
		{"1 mm³ of rank 1", NewScore(p, []int{1, 0, 0, 0}, 0)},
		{"1 mm³ of rank 1 and some of rank 2", NewScore(p, []int{1, 1, 0, 0}, 0)},
		{"2 mm³ of rank 1", NewScore(p, []int{2, 0, 0, 0}, 0)},
	}
	for i, a := range order {
		for k, b := range order {
			got, want := a.score.Compare(b.score), i-k
			if got < 0 != (want < 0) || got > 0 != (want > 0) {
				t.Errorf("%q against %q: %d", a.why, b.why, got)
			}
		}
		if a.score.Complete() != (i < 2) {
			t.Errorf("%q: complete is %v", a.why, a.score.Complete())
		}
	}
}

func TestScoreOfPlan(t *testing.T) {
	p := scoreBill()
	plan := &Plan{Problem: *p, Missing: []Missing{{Part: "d", Quantity: 2}, {Part: "b", Quantity: 1}}}
	plan.Totals.Cost = 12
	if got := plan.Score().Compare(NewScore(p, []int{0, 1, 0, 2}, 12)); got != 0 {
		t.Errorf("the score of the plan differs from that of its figures: %d", got)
	}
}
