package choose

import "testing"

// Each board makes the piece that the other makes for less: 5 + 5. To change one
// alone leaves a piece missing at 100; to change both gives 3 + 3.
func TestTwoChangeTogether(t *testing.T) {
	q := &job{2, []int{1, 1}, []int64{100, 100}, []Column{
		{0, 5, []int{1, 0}}, {0, 3, []int{0, 1}}, {1, 3, []int{1, 0}}, {1, 5, []int{0, 1}},
	}}
	s := newSearch(newInstance(q.groups, q.demand, q.penalty, q.columns), 0)
	s.begin([]int{0, 3})
	if s.cost != 10 {
		t.Fatalf("one at a time: %d", s.cost)
	}
	s.rank([]bool{true, true, true, true, true, true})
	s.pairUp(s.best)
	if cost := s.costOf(s.best); cost != 6 {
		t.Errorf("two at a time: %d", cost)
	}
}
