package exhaust

import (
	"testing"

	"sawbill/layout"
)

// TestRefuses shows that no job is tried as if what it asks for were not there.
func TestRefuses(t *testing.T) {
	for name, change := range map[string]func(p *layout.Problem){
		"five kinds of part": func(p *layout.Problem) {
			for range 4 {
				p.Bill = append(p.Bill, p.Bill[0])
			}
		},
		"a narrow planer": func(p *layout.Problem) { p.Shop.PlanerWidth = inch },
		"crook":           func(p *layout.Problem) { p.Stock[0].Crook = inch },
		"matching":        func(p *layout.Problem) { p.Bill[0].Match = "door" },
	} {
		t.Run(name, func(t *testing.T) {
			p := job(func(p *layout.Problem, _ *layout.Shop, _ *layout.Board) { add(p, "a", 1, 4, 4, 8) })
			change(p)
			defer func() {
				if recover() == nil {
					t.Error("it is tried all the same")
				}
			}()
			New(p, inch)
		})
	}
}
