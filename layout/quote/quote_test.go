package quote

import (
	"math/big"
	"math/rand"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

const in = layout.Inch

func leaf(part, id string, x, width layout.Length) *layout.Node {
	return &layout.Node{Rect: layout.Rect{X1: x, X2: x + 20*in, Y2: width}, Part: part, ID: id}
}

// shelf is a plan with one board, 60 by 6 in, that costs 10 and gives two sides of 20
// by 4 and one back of 20 by 2; its offcut of 10 by 6 is a sixth of it, and worth 0.6
// of that, 1.
func shelf() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	board := layout.Board{Mark: "E1", Species: "elm", Thickness: in, Width: 6 * in, TipWidth: 6 * in, Length: 60 * in, Cost: 10 * layout.Unity}
	keep := &layout.Node{Rect: layout.Rect{X1: 50 * in, X2: 60 * in, Y2: 6 * in}, Offcut: "E1-K1"}
	return &layout.Plan{
		Problem: layout.Problem{Shop: shop, Stock: []layout.Board{board}, Bill: []layout.Part{
			{Name: "side", Quantity: 2, Spare: 1, Piece: "shelf"}, {Name: "back", Quantity: 1, Piece: " Shelf"}, {Name: "peg", Quantity: 1},
		}},
		Boards: []layout.BoardPlan{{Board: "E1", Cost: board.Cost, Root: &layout.Node{
			Rect: board.Frame(),
			Children: []*layout.Node{
				leaf("side", "E1-1a", 0, 4*in), leaf("side", "E1-1b", 0, 4*in), leaf("back", "E1-1c", 0, 2*in), keep,
			},
		}}},
	}
}

// The board costs 9 net. Sides take 160 square inches of its face and the back 40, so
// they bear four fifths and one fifth: 7.2 and 1.8. Of the rest: 2.5 hours at 40 are
// 100, finish 10 and hardware 1 make 120 with the wood, and a quarter on top 150.
func TestQuote(t *testing.T) {
	plan := shelf()
	plan.Problem.Shop.Charges = &layout.Charges{
		Hours: 5 * layout.Hour / 2, Rate: 40 * layout.Unity, Finish: 10 * layout.Unity, Hardware: layout.Unity, Margin: layout.MarginUnity / 4,
	}
	want := &Quote{
		Boards: []Board{{Mark: "E1", Species: "elm", Cost: 100000, Returned: 10000}},
		Parts: []Part{
			{Name: "side", Piece: "shelf", Needed: 2, Wood: 72000}, {Name: "back", Piece: " Shelf", Needed: 1, Wood: 18000}, {Name: "peg"},
		},
		Pieces: []Piece{{"shelf", 90000}, {"", 0}},
		Wood:   90000, Charges: plan.Problem.Shop.Charges,
		Labour: 1000000, Margin: 300000, Total: 1500000,
	}
	if diff := cmp.Diff(want, Of(plan)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestQuoteOfSomethingElse(t *testing.T) {
	for _, test := range []struct {
		what   string
		change func(p *layout.Plan)
		want   func(q *Quote)
	}{
		{"a board of the yard is paid whole", func(p *layout.Plan) { p.Problem.Stock[0].Source = layout.Yard },
			func(q *Quote) {
				q.Boards[0].Bought, q.Boards[0].Returned = true, 0
				q.Wood, q.Total, q.Pieces[0].Wood, q.Parts[0].Wood, q.Parts[1].Wood = 100000, 100000, 100000, 80000, 20000
			}},
		// One side is needed: the other is spare and bears nothing. 80 to 40: 6 and 3.
		{"a spare piece", func(p *layout.Plan) { p.Problem.Bill[0].Quantity = 1 },
			func(q *Quote) {
				q.Parts[0].Needed, q.Parts[0].Spares = 1, 1
				q.Parts[0].Wood, q.Parts[1].Wood = 60000, 30000
			}},
		// Two sides out of one leaf share its 80 square inches: 80 to 40.
		{"resawn", func(p *layout.Plan) {
			root := p.Boards[0].Root
			root.Children = append(root.Children[:1:1], root.Children[2:]...)
			root.Children[0].Layers = 2
		}, func(q *Quote) { q.Parts[0].Wood, q.Parts[1].Wood = 60000, 30000 }},
		{"no finished piece", func(p *layout.Plan) { p.Problem.Bill[0].Piece, p.Problem.Bill[1].Piece = "", "" },
			func(q *Quote) { q.Parts[0].Piece, q.Parts[1].Piece, q.Pieces = "", "", nil }},
		{"nothing came out of it", func(p *layout.Plan) { p.Boards[0].Root.Children = p.Boards[0].Root.Children[3:] },
			func(q *Quote) {
				q.Loose, q.Pieces[0].Wood = 90000, 0
				for i := range q.Parts {
					q.Parts[i].Needed, q.Parts[i].Wood = 0, 0
				}
			}},
	} {
		t.Run(test.what, func(t *testing.T) {
			want := Of(shelf())
			test.want(want)
			plan := shelf()
			test.change(plan)
			if diff := cmp.Diff(want, Of(plan)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// The board is all cut, its offcut back on the rack at 1.5, of which 0.6 is 0.9; a side
// was cut out of wood of it later. All belongs to the one board, which costs 9.1 net.
func TestQuoteOfARecord(t *testing.T) {
	plan := shelf()
	p := &plan.Problem
	used := p.Stock[0]
	cut := func(part, id, board string, width layout.Length) layout.CutPiece {
		return layout.CutPiece{Part: part, Board: board, Wood: layout.Board{Mark: id}, Lay: layout.Rect{X2: 20 * in, Y2: width}}
	}
	p.Stock = []layout.Board{{Mark: "E1-K1", Cost: 15000, Source: layout.Rack}, {Mark: "E2", Cost: 70000}}
	plan.Boards = nil
	plan.Record = &layout.Record{
		Wanted: p.Bill, Spent: 104000, Used: []layout.Board{used, {Mark: "E1-2", Cost: 4000}},
		Cut:     []layout.CutPiece{cut("side", "E1-1a", "E1", 4*in), cut("back", "E1-1c", "E1", 2*in), cut("side", "E1-2a", "E1-2", 4*in)},
		Origins: []layout.Origin{{Board: "E1-K1", Of: "E1"}, {Board: "E1-2", Of: "E1"}},
	}
	p.Bill = nil
	q := Of(plan)
	if diff := cmp.Diff([]Board{{Mark: "E1", Species: "elm", Cost: 100000, Returned: 9000}}, q.Boards); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if q.Parts[0].Wood != 72800 || q.Parts[1].Wood != 18200 || q.Wood != 91000 {
		t.Errorf("sides %v, back %v, wood %v; want 7.28, 1.82 and 9.1", q.Parts[0].Wood, q.Parts[1].Wood, q.Wood)
	}
	plan.Record.Origins = append(plan.Record.Origins, layout.Origin{Board: "E1", Of: "E1-2"}) // no plan of ours
	if q := Of(plan); q.Wood != q.Parts[0].Wood+q.Parts[1].Wood {
		t.Errorf("of origins in a circle: %+v", q)
	}
	plan.Record.Origins = plan.Record.Origins[:2]
	plan.Record.Used = nil // a plan of old: what it spent is known as a sum
	if q := Of(plan); q.Boards[0].Mark != "" || q.Boards[0].Cost != 104000 || q.Parts[0].Needed != 2 {
		t.Errorf("of an old plan: %+v", q)
	}
}

// Shares add up, and none is a ten-thousandth or more from its exact amount.
func TestApportion(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	for range 5000 {
		amount := layout.Money(rng.Int63n(int64(layout.MaxMoney)))
		weights := []*big.Rat{big.NewRat(1+rng.Int63n(9), 1)}
		for range rng.Intn(6) {
			weights = append(weights, big.NewRat(rng.Int63n(1000), 1+rng.Int63n(7)))
		}
		sum := new(big.Rat)
		for _, w := range weights {
			sum.Add(sum, w)
		}
		left := amount
		for i, share := range apportion(amount, weights, sum) {
			left -= share
			exact := new(big.Rat).Mul(new(big.Rat).SetInt64(int64(amount)), new(big.Rat).Quo(weights[i], sum))
			off := exact.Sub(exact, new(big.Rat).SetInt64(int64(share)))
			if off.Abs(off).Cmp(big.NewRat(1, 1)) >= 0 {
				t.Fatalf("%v of %v for %v", share, amount, weights[i])
			}
		}
		if left != 0 {
			t.Fatalf("%v of %v is left", left, amount)
		}
	}
}
