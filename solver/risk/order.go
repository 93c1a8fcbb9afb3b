package risk

import (
	"cmp"
	"context"
	"slices"

	"sawbill/layout"
)

// order is the boards of the plan that are not being cut, those first that most likely
// show a shortage for the work that it takes to cut them, with the draws in that order.
// Where fewer of these are finished the plan's own order stays.
//
// A board shows a shortage in a draw if it spoils a piece of a part that is missing in
// the end. To do what weighs most per time first makes the sum of the times at which
// it is done, each with its weight, least (Smith 1956); here the weight is how often a
// board shows a shortage, and the time is counted in pieces that come off the saw.
// Among boards that are even in this, those come first that lose most pieces for it.
func (s *simulation) order(ctx context.Context) ([]layout.Opening, *simulation, error) {
	shows, lost := make([]int, len(s.planned)), make([]int, len(s.planned))
	for _, d := range s.draws {
		shown := map[int]bool{}
		for _, l := range d.lost {
			lost[l.board] += l.n
			if d.need != nil && d.need[l.row] > 0 {
				shown[l.board] = true
			}
		}
		for k := range shown {
			shows[k]++
		}
	}
	turn := slices.Clone(s.turn)
	slices.SortStableFunc(turn, func(a, b int) int {
		perCut := func(n []int, k int) float64 { return float64(n[k]) / float64(max(1, s.planned[k].cut.saws)) }
		return cmp.Or(
			cmp.Compare(btoi(s.planned[b].open), btoi(s.planned[a].open)),
			cmp.Compare(perCut(shows, b), perCut(shows, a)), cmp.Compare(perCut(lost, b), perCut(lost, a)))
	})
	other, err := s.inTurn(ctx, turn)
	if err != nil {
		return nil, nil, err
	}
	if other.finished() < s.finished() {
		other = s
	}
	var list []layout.Opening
	for _, k := range other.turn {
		if b := &s.planned[k]; !b.open {
			list = append(list, layout.Opening{
				Board: b.wood.board.Mark, Shows: s.share(shows[k]), Cuts: b.cut.saws,
				Lost: float64(lost[k]) / float64(len(s.draws)),
			})
		}
	}
	return list, other, nil
}

// inTurn is the same job with boards cut in another order, and the same hidden defects.
func (s *simulation) inTurn(ctx context.Context, turn []int) (*simulation, error) {
	j := *s.job
	j.turn = turn
	other := &simulation{job: &j, o: s.o}
	return other, other.run(ctx)
}
