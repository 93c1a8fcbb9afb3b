package risk

import (
	"cmp"
	"encoding/binary"
	"math/rand/v2"
	"slices"

	"sawbill/layout"
)

// root is a board of the stock as hidden defects see it.
type root struct {
	board *layout.Board
	mean  float64 // number of its hidden defects
	size  layout.Hidden
	sound []layout.Rect // where there are none: finished pieces would have shown them
}

// newRoot reckons with what the shop says of the species of a board.
func newRoot(shop *layout.Shop, b *layout.Board) *root {
	h, _, _ := shop.HiddenOf(b.Species)
	return &root{board: b, mean: h.Per10BF.Float() * b.Volume().BoardFeet() / 10, size: h}
}

// spot is a hidden defect: where it lies in the frame of its board, and the share of
// the rates at which it appears, 0 to 1.
type spot struct {
	root int
	at   layout.Rect
	from float64
}

// source is the generator of one board in one draw: a function of the seed and both,
// so that it does not matter who draws first.
func source(seed int64, draw, board int) *rand.Rand {
	var key [32]byte
	binary.LittleEndian.PutUint64(key[0:], uint64(seed))
	binary.LittleEndian.PutUint64(key[8:], uint64(draw))
	binary.LittleEndian.PutUint64(key[16:], uint64(board))
	return rand.New(rand.NewChaCha8(key))
}

// draw puts hidden defects into a board: the arrivals of a Poisson process of rate 1
// before the mean. Their centres are uniform over the wood; what reaches over the board
// is clipped.
func (b *root) draw(rng *rand.Rand, id int) []spot {
	var spots []spot
	for at := rng.ExpFloat64(); at <= b.mean; at += rng.ExpFloat64() {
		r := b.place(rng)
		if !slices.ContainsFunc(b.sound, r.Overlaps) {
			spots = append(spots, spot{id, r, at / b.mean})
		}
	}
	return spots
}

// place is where one defect lies.
func (b *root) place(rng *rand.Rand) layout.Rect {
	var x, y layout.Length
	for {
		x = layout.Length(rng.Int64N(int64(b.board.Length)))
		y = layout.Length(rng.Int64N(int64(b.board.FullWidth())))
		if y < b.board.Far(x) {
			break
		}
	}
	x, y = x-b.size.Length/2, y-b.size.Width/2
	r := layout.Rect{X1: x, X2: x + b.size.Length, Y1: y, Y2: y + b.size.Width}
	return r.Intersect(b.board.Frame())
}

// byAppearance sorts the defects of all boards of a draw.
func byAppearance(spots []spot) {
	slices.SortStableFunc(spots, func(a, b spot) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(a.root, b.root))
	})
}

// byBoard sorts them by their boards, of which there are n.
func byBoard(spots []spot, n int) [][]layout.Rect {
	list := make([][]layout.Rect, n)
	for _, s := range spots {
		list[s.root] = append(list[s.root], s.at)
	}
	return list
}
