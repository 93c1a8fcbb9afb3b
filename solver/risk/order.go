package risk

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// order is the boards of the plan that are not being cut, those first that most likely
// show a shortage for the work that it takes to cut them.
//
// A board shows a shortage in a draw if it spoils a piece of a part that is missing in
// the end. To do what weighs most per time first makes the sum of the times at which
// it is done, each with its weight, least (Smith 1956); here the weight is how often a
// board shows a shortage, and the time is counted in pieces that come off the saw.
// Among boards that are even in this, those come first that lose most pieces for it.
func (s *simulation) order() []layout.Opening {
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
	var list []layout.Opening
	for k := range s.planned {
		if b := &s.planned[k]; !b.open {
			list = append(list, layout.Opening{
				Board: b.wood.board.Mark, Shows: s.share(shows[k]), Cuts: b.cut.saws,
				Lost: float64(lost[k]) / float64(len(s.draws)),
			})
		}
	}
	slices.SortStableFunc(list, func(a, b layout.Opening) int {
		perCut := func(x float64, o layout.Opening) float64 { return x / float64(max(1, o.Cuts)) }
		return cmp.Or(
			cmp.Compare(perCut(b.Shows.Value(), b), perCut(a.Shows.Value(), a)),
			cmp.Compare(perCut(b.Lost, b), perCut(a.Lost, a)))
	})
	return list
}
