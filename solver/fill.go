package solver

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// fillIn lays pieces that the best plan leaves missing into what it keeps or wastes of
// the boards that it cuts, those of a better rank first; nothing else moves. It
// reports whether the plan became better.
func (s *search) fillIn() bool {
	if s.filled == s.best {
		return false
	}
	s.filled = s.best
	f := &filler{s: s, st: s.best.copy(), scraps: map[int]*column.Scrap{}, laid: map[int]bool{}}
	rows := make([]int, 0, len(s.p.Bill))
	for i, n := range f.st.missing {
		if n > 0 && s.givable(i) {
			rows = append(rows, i)
		}
	}
	slices.SortStableFunc(rows, func(a, b int) int { return cmp.Compare(s.p.Bill[a].Rank(), s.p.Bill[b].Rank()) })
	left := slices.Clone(f.st.missing)
	for _, row := range rows {
		for left[row] > 0 && !s.workers[0].stop() {
			n := f.lay(row, left[row])
			if n == 0 {
				break
			}
			left[row] -= n
		}
	}
	return len(f.laid) > 0 && s.improve(f.filled())
}

// filler is a plan into which pieces are laid.
type filler struct {
	s      *search
	st     *state
	scraps map[int]*column.Scrap
	laid   map[int]bool // by board
}

// lay lays one leaf of a row, of no more pieces than most, where that takes the least
// work at the saw, and tells how many it gives.
func (f *filler) lay(row, most int) int {
	for at := range column.Places {
		for _, b := range f.st.used() {
			if !f.s.gives[b][row] {
				continue
			}
			if n := f.scrap(b).Lay(row, most, at); n > 0 {
				f.laid[b] = true
				return n
			}
		}
	}
	return 0
}

// scrap is what a board wastes when nothing is kept of it.
func (f *filler) scrap(board int) *column.Scrap {
	if f.scraps[board] == nil {
		p := f.s.p
		need := func(leaf *layout.Node) layout.Length { return p.Shop.NeedOf(leaf, p.Part(leaf.Part)) }
		f.scraps[board] = column.NewScrap(p, &p.Stock[board], column.Bare(f.st.cuts[board].Root), need)
	}
	return f.scraps[board]
}

// filled is the plan with what was laid; what is then left over and large enough is
// kept.
func (f *filler) filled() *state {
	price := prices(f.s.p, f.s.values, f.st.missing)
	for b := range f.laid {
		root := f.scraps[b].Root()
		root.Walk(func(n *layout.Node) { n.Spare = false })
		cut := f.s.quick.board(b).CutOf(column.Column{Root: root}, price)
		f.st.set(b, &cut)
	}
	return f.st
}
