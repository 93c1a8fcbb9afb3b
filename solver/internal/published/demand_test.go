package published

import (
	"encoding/json"
	"testing"

	"sawbill/layout"
)

func parse(t *testing.T, text string) Case {
	t.Helper()
	var c Case
	if err := json.Unmarshal([]byte(text), &c); err != nil {
		t.Fatal(err)
	}
	return c
}

// Longest first, bars of 10 hold 6 4, 5 5 and 4: three are enough, and three
// more are given.
func TestBarsBecomeBoards(t *testing.T) {
	c := parse(t, `{"kind": "1d-stock", "stock": [{"length": 10, "cost": 1}], "optimum": {"stock_used": 3},
		"items": [{"length": 4, "copies": 2}, {"length": 5, "copies": 2}, {"length": 6, "copies": 1}]}`)
	p := c.Demand()
	if len(p.Stock) != 3+spare || p.Stock[5].Mark != "P1.6" {
		t.Fatalf("%d boards", len(p.Stock))
	}
	b := p.Stock[0]
	if b.Length != 10*layout.Millimetre || b.Width != p.Bill[0].Width || b.Cost != layout.Unity {
		t.Errorf("board %+v for part %+v", b, p.Bill[0])
	}
	if p.Bill[1].Quantity != 2 || p.Bill[1].Length != 5*layout.Millimetre {
		t.Errorf("part %+v", p.Bill[1])
	}
	if _, complaints := layout.NewProblem(p.Shop, p.Stock, p.Bill, false); len(complaints) > 0 {
		t.Errorf("refused: %v", complaints)
	}
	if got := c.Used(); got != (Outcome{3, 3}) {
		t.Errorf("needs %v", got)
	}
}

func TestPlatesBecomeBoards(t *testing.T) {
	c := parse(t, `{"kind": "2d-stock", "stock": [{"length": 20, "width": 10, "cost": 1}], "optimum": {"guillotine": null},
		"items": [{"length": 4, "width": 3, "copies": 2}],
		"computed": {"guillotine": [2, 4], "3stage_cross": [3, 5], "seconds": 1.5}}`)
	p := c.Demand()
	if len(p.Stock) != 5+spare || p.Stock[0].Width != 10*layout.Millimetre {
		t.Errorf("%d boards, the first %+v", len(p.Stock), p.Stock[0])
	}
	if got := c.Used(); got != (Outcome{2, 5}) {
		t.Errorf("needs %v", got)
	}
}

func TestPlatesWithDefectsAreOneBoard(t *testing.T) {
	c := parse(t, `{"stock": [{"length": 20, "width": 10, "copies": 1}], "defects": [{"x": 3, "y": 2, "length": 4, "width": 1}],
		"items": [{"length": 4, "width": 3, "value": 12}], "computed": {"3stage_cross": 150, "guillotine": 160}}`)
	p := c.Problem(true)
	want := layout.Rect{X1: 3 * layout.Millimetre, X2: 7 * layout.Millimetre, Y1: 2 * layout.Millimetre, Y2: 3 * layout.Millimetre}
	if len(p.Stock) != 1 || len(p.Stock[0].Defects) != 1 || p.Stock[0].Defects[0].Rect != want {
		t.Errorf("stock %+v", p.Stock)
	}
	if got := c.Cut(); got != (Outcome{150, 160}) {
		t.Errorf("at most %v", got)
	}
}

// Bars of 100 000 would be 100 m long.
func TestLongBarsAreMeasuredInTenths(t *testing.T) {
	c := parse(t, `{"kind": "1d-stock", "stock": [{"length": 100000}], "items": [{"length": 34978, "copies": 1}]}`)
	p := c.Demand()
	if got, want := p.Stock[0].Length, 10_000*layout.Millimetre; got != want {
		t.Errorf("a bar is %v, want %v", got, want)
	}
	if got, want := p.Bill[0].Length, 34978*layout.Millimetre/10; got != want {
		t.Errorf("a part is %v, want %v", got, want)
	}
}
