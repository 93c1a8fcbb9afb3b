package files

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"sawbill/layout"
)

// smallPlan is a plan file with one of everything that the cases below break.
const smallPlan = `{"format": "sawbill-plan/1", "job": "j", "revision": 1, "made": "2026-01-31T10:00:00Z",
"shop": {"units": "in", "fraction": 32, "rip_kerf": 1, "crosscut_kerf": 1, "rough_rip_kerf": 1, "resaw_kerf": 1,
 "end_trim": 1, "edge_joint": 1, "end_square": 1, "face_skim": 1, "snipe": 0, "panel_square": 1, "length_allowance": 0,
 "width_allowance": 0, "thickness_allowance": 0, "min_blank": 1, "max_blank": null, "min_rip_length": 1, "min_rip": 1,
 "min_crosscut": 1, "min_offcut_length": 1, "min_offcut_width": 1, "offcut_credit": 0.6, "rip_again": true,
 "price": {"ash": 7.25}, "price_unit": "bf", "clearance": {"check": [1, 0]},
 "grades": {"clear": {"show": [], "back": []}}, "kinds": {"knot": "sound"}, "hidden": {"ash": {"per_10bf": 0.25, "length": 75}},
 "quote": {"hours": 2.5, "rate": 40, "margin": 0.125}},
"stock": [{"board": "A1.1", "species": "ash", "thickness": 10, "width": 20, "length": 30, "cost": 1.2345,
 "defects": [{"kind": "knot", "face": "", "x1": 0, "x2": 1, "y1": 0, "y2": 1}]}],
"bill": [{"part": "rail", "species": ["ash"], "thickness": 1, "width": 2, "length": 3, "quantity": 4, "from": ["A1"]}],
"boards": [{"board": "A1.1", "cost": 1.2345,
 "account": {"parts": 1, "planing": 0, "kerf": 0, "edges": 0, "offcuts": 0, "defects": 0, "scrap": 0},
 "root": {"x1": 0, "x2": 30, "y1": 0, "y2": 20, "cut": "crosscut", "children": [{"x1": 1, "x2": 2, "y1": 3, "y2": 4}]}}],
"missing": [{"part": "rail", "quantity": 4}], "later": [{"x": 1}],
"totals": {"cost": 1.2345, "bound": null, "gap": null, "yield": null, "prices": {"rail": 0.5}, "price_bound": -0.25}}`

func TestReadSmallPlan(t *testing.T) {
	plan, err := ReadPlan(strings.NewReader(smallPlan), "plan.json")
	if err != nil {
		t.Fatal(err)
	}
	b := plan.Problem.Stock[0]
	if b.TipWidth != 20 || b.Edges != layout.EdgesRough || b.Cost != 12345 {
		t.Errorf("what a row leaves out is not as it should be: %+v", b)
	}
	part := plan.Problem.Bill[0]
	if part.Grade != layout.Clear || len(part.From) != 1 || part.From[0] != "A1.1" {
		t.Errorf("what a row leaves out is not as it should be: %+v", part)
	}
	if *plan.Totals.PriceBound != -2500 || plan.Totals.Prices["rail"] != 5000 {
		t.Errorf("totals are %+v", plan.Totals)
	}
}

func TestReadPlanRefuses(t *testing.T) {
	for _, test := range []struct{ old, new, want string }{
		{`sawbill-plan/1`, `sawbill-plan/2`, `format: found "sawbill-plan/2", want "sawbill-plan/1"`},
		{`"format": "sawbill-plan/1", `, ``, `format: the key is missing, want "sawbill-plan/1"`},
		{`"totals"`, `"total"`, `totals: the key is missing`},
		{`"cost": 1.2345, "bound"`, `"bound"`, `totals.cost: the key is missing`},
		{`"end_square": 1, `, ``, `shop.end_square: the key is missing`},
		{`"x1": 1,`, ``, `boards[0].root.children[0].x1: the key is missing`},
		{`"x1": 1,`, `"x1": null,`, `boards[0].root.children[0].x1: found null, want a value`},
		{`"x1": 1,`, `"x1": 1, "x1": 1,`, `boards[0].root.children[0].x1: the key is there twice`},
		{`"x1": 1,`, `"x1": 1, "X1": 1,`, `boards[0].root.children[0].X1: the key is there twice`},
		{`"x1": 1,`, `"x1": 1.5,`, `found 1.5, want whole nanometres of at most 30 m`},
		{`"x1": 1,`, `"x1": 30000000001,`, `found 30000000001, want whole nanometres of at most 30 m`},
		{`"x1": 1,`, `"x1": 99999999999999999999,`, `found 99999999999999999999, want whole nanometres of at most 30 m`},
		{`"children": [{`, `"children": [null, {`, `boards[0].root.children[0]: found null, want a value`},
		{`"cut": "crosscut"`, `"cut": "cross"`, `cut: found "cross", want one of crosscut, rip (did you mean "crosscut"?)`},
		{`"face": ""`, `"face": "C"`, `stock A1.1: face of a defect: found "C", want one of A, B`},
		{`[1, 0]}`, `[1, 0, 3]}`, `shop.clearance.check: want a list of 2`},
		{`[1, 0]}`, `{}}`, `shop.clearance.check: found an object, want one value`},
		{`"per_10bf": 0.25`, `"per_10bf": 0.25e0`, `found 0.25e0, want a number from 0 to 1000 with at most six decimals`},
		{`"per_10bf": 0.25, `, ``, `shop.hidden.ash.per_10bf: the key is missing`},
		{`"hours": 2.5`, `"hours": 1e1`, `found 1e1, want a number from 0 to 10000 with at most six decimals`},
		{`"rate": 40`, `"rate": -1`, `shop.quote.rate: found -1, want an amount from 0 to 1000000000`},
		{`"margin": 0.125`, `"margin": 11`, `found 11, want a number from 0 to 10 with at most six decimals`},
		{`"quantity": 4,`, `"quantity": -1,`, `found -1, want a whole number from 0 to 1000000`},
		{`"cost": 1.2345, "bound"`, `"cost": 1.23456, "bound"`, `found 1.23456, want an amount with at most four decimals`},
		{`"cost": 1.2345, "bound"`, `"cost": 1e2, "bound"`, `found 1e2, want an amount with at most four decimals`},
		{`"cost": 1.2345,
 "acc`, `"cost": -1,
 "acc`, `boards A1.1: cost: found -1, want an amount from 0 to 1000000000`},
		{`0.6`, `1.0`, `found 1.0, want a share from 0 to less than 1`},
		{`"fraction": 32`, `"fraction": 0`, `shop.fraction: found 0, want 2, 4, 8, 16, 32 or 64`},
		{`"rip_kerf": 1`, `"rip_kerf": -1`, `shop.rip_kerf: found -1, want a length of 0 or more`},
		{`"length": 30`, `"length": 0`, `stock A1.1: length: found 0, want a length of more than 0`},
		{`2026-01-31T`, `2026-13-31T`, `made: found "2026-13-31T10:00:00Z", want a time such as 2026-01-31T10:00:00Z`},
		{`"bill": [{`, `"bill": [{"part": "rail", "species": [], "thickness": 1, "width": 2, "quantity": 4}, {`, `bill: two parts are called "rail"`},
		{`"part": "rail"`, `"part": 7`, `json: cannot unmarshal number into Go struct field part1.bill.part of type string`},
		{`"later"`, `"later": ` + strings.Repeat(`[`, 200) + strings.Repeat(`]`, 200) + `, "more"`, `later` + strings.Repeat(`[0]`, 100) + `: nests more than 100 deep`},
		{`-0.25}}`, `-0.25}} {}`, `is no plan file: invalid character '{' after top-level value`},
		{`-0.25}}`, `-0.25}`, `is no plan file: unexpected end of JSON input`},
		{`"j"`, "\"\xff\"", `is not UTF-8`},
	} {
		text := strings.Replace(smallPlan, test.old, test.new, 1)
		if text == smallPlan {
			t.Fatalf("%q is not in the plan", test.old)
		}
		_, err := ReadPlan(strings.NewReader(text), "plan.json")
		if err == nil || err.Error() != "plan.json: "+test.want {
			t.Errorf("%s instead of %s:\n got %v\nwant plan.json: %s", test.new, test.old, err, test.want)
		}
	}
}

// A figure that JSON cannot hold is an error, not a broken file.
func TestWritePlanRefusesWhatIsNotFinite(t *testing.T) {
	nan := math.NaN()
	plan := &layout.Plan{Problem: layout.Problem{Shop: layout.DefaultShop(layout.Inches)}}
	plan.Totals.Yield = &nan
	if err := WritePlan(&bytes.Buffer{}, plan); err == nil {
		t.Error("a yield that is no number was written")
	}
}

func FuzzReadPlan(f *testing.F) {
	f.Add([]byte(smallPlan))
	f.Add([]byte(`{"format": "sawbill-plan/1", "boards": [{"root": {"children": [[], null]}}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		plan, err := ReadPlan(bytes.NewReader(data), "plan.json")
		if err != nil {
			return
		}
		first := written(t, plan)
		again, err := ReadPlan(bytes.NewReader(first), "again")
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(first, written(t, again)) {
			t.Fatal("written twice, the bytes differ")
		}
	})
}
