package check

import (
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// Two ways of measuring agree: the account that a plan is made with and the one
// worked out here, on any taper, edges, trims, losses and defects, whether or
// not the plan is then valid.
func TestAccountByTwoRoutes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := func(name string, lo, hi int) layout.Length {
			return layout.Length(rapid.IntRange(lo, hi).Draw(t, name)) * millimetre / 10
		}
		p := goodJob()
		p.Shop.EndTrim, p.Shop.EdgeJoint = length("trim", 0, 1000), length("joint", 0, 200)
		p.Shop.EndSquare, p.Shop.RipKerf = length("square", 0, 200), length("kerf", 0, 100)
		b := &p.Stock[0]
		b.TipWidth = length("tip", 10, 2000)
		b.Edges = layout.Edges(rapid.IntRange(0, 2).Draw(t, "edges"))
		for i := range b.Defects {
			x, y := length("x", 0, 19_000), length("y", 0, 1900)
			b.Defects[i].Rect = layout.Rect{X1: x, X2: x + length("long", 1, 9000), Y1: y, Y2: y + length("wide", 1, 900)}
		}
		plan := layout.Assemble(&p, []layout.BoardCut{{Board: "P1", Root: roughTree()}})
		for _, v := range Plan(plan) {
			if v.Rule == "account" {
				t.Fatal(v)
			}
		}
	})
}
