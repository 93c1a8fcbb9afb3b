package risk

import (
	"context"
	"slices"
	"strings"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// kind is boards of the stock that are alike in species, thickness and faces; one more
// of them is like the one of middle volume.
type kind struct {
	like   *layout.Board
	boards int
	wood   *wood
	root   *root
}

func fold(species string) string { return strings.ToLower(strings.TrimSpace(species)) }

// kinds are those that could give something of the bill, in the order of layout.Tally.
func (s *simulation) kinds() []kind {
	boards := slices.DeleteFunc(slices.Clone(s.plan.Problem.Stock), func(b layout.Board) bool { return b.Source == layout.Hold })
	var list []kind
	for _, g := range layout.Tally(s.p.Shop, boards) {
		slices.SortStableFunc(g.Boards, func(a, b *layout.Board) int { return a.Volume().Cmp(b.Volume()) })
		like := g.Boards[len(g.Boards)/2]
		more := *like
		more.Mark, more.Source = "one more like "+like.Mark, layout.Rack
		k := kind{like, len(g.Boards), s.woodOf(&more), newRoot(s.o.Rates, &more)}
		if slices.ContainsFunc(k.wood.most, func(n int) bool { return n > 0 }) {
			list = append(list, k)
		}
	}
	return list
}

// mostBought is the most boards that are bought in turn.
const mostBought = 8

// buy adds boards to the draws that run short: one of each kind, and then in turn that
// kind which finishes most of them, as long as that helps.
func (s *simulation) buy(ctx context.Context) ([]layout.SpareBoard, []layout.BoughtBoard, error) {
	var spares []layout.SpareBoard
	kinds := s.kinds()
	short := s.shortages()
	bought := []layout.BoughtBoard{{Finished: s.share(len(s.draws) - len(short))}}
	for n := 0; n < mostBought && (n == 0 || len(short) > 0); n++ {
		best, least := -1, s.badness(short)
		var after []shortage
		for i := range kinds {
			rest, err := s.withOneMore(ctx, short, &kinds[i], n*len(kinds)+i)
			if err != nil {
				return nil, nil, err
			}
			if n == 0 {
				spares = append(spares, layout.SpareBoard{
					Like: kinds[i].like.Mark, Boards: kinds[i].boards, Finished: s.share(len(s.draws) - len(rest)),
				})
			}
			if b := s.badness(rest); b.less(least) {
				best, least, after = i, b, rest
			}
		}
		if best < 0 {
			break
		}
		short = after
		bought = append(bought, layout.BoughtBoard{Like: kinds[best].like.Mark, Finished: s.share(len(s.draws) - len(short))})
	}
	return spares, bought, nil
}

// shortage is a draw that was not finished, and what is missing.
type shortage struct {
	draw int
	need []int
}

func (s *simulation) shortages() []shortage {
	var list []shortage
	for i := range s.draws {
		if need := s.draws[i].need; need != nil {
			list = append(list, shortage{i, need})
		}
	}
	return list
}

// withOneMore is what is still short with one more board, the n-th that is tried.
func (s *simulation) withOneMore(ctx context.Context, short []shortage, k *kind, n int) ([]shortage, error) {
	after := make([][]int, len(short))
	err := each(ctx, s.o.Workers, len(short), func(bench *column.Bench, i int) {
		id := len(s.roots) + n
		var spots []spot
		if k.root.mean > 0 {
			spots = k.root.draw(source(s.o.Seed, short[i].draw, id), id)
		}
		r := &play{j: s.job, bench: bench, need: slices.Clone(short[i].need), spots: byBoard(spots, id+1)}
		r.fill(pile{{k.wood, id}})
		after[i] = wanted(r.need)
	})
	var rest []shortage
	for i, need := range after {
		if need != nil && wants(need) {
			rest = append(rest, shortage{short[i].draw, need})
		}
	}
	return rest, err
}

// badness ranks shortages: first by how many draws are short, then by how much is
// missing in them.
type badness struct {
	draws  int
	volume float64
}

func (s *simulation) badness(short []shortage) badness {
	b := badness{draws: len(short)}
	for _, d := range short {
		for i, n := range d.need {
			b.volume += float64(n) * s.volume[i]
		}
	}
	return b
}

func (b badness) less(c badness) bool {
	return b.draws < c.draws || b.draws == c.draws && b.volume < c.volume
}
