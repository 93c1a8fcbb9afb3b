package render

import (
	"fmt"
	"strings"
	"testing"

	"sawbill/layout"
)

// chances are pages of chances: none, all, and as many boards as there may be, with
// marks too long for their place.
func chances(t testing.TB, o Options) map[string]Page {
	t.Helper()
	pages := map[string]Page{}
	for name, counts := range map[string][]int{
		"certain": {2000}, "hopeless": {0, 0, 3}, "steep": {20, 1900, 1999}, "many": {0, 200, 700, 1100, 1500, 1600, 1900, 1990, 2000},
	} {
		r := &layout.Risk{Finished: layout.Share{Count: counts[0], Of: 2000}}
		for i, n := range counts {
			b := layout.BoughtBoard{Finished: layout.Share{Count: n, Of: 2000}}
			if i > 0 {
				b.Like = fmt.Sprint("long mark of a board ", i)
			}
			r.Bought = append(r.Bought, b)
		}
		plan := &layout.Plan{Job: "trial", Problem: layout.Problem{Shop: layout.DefaultShop(layout.Inches)}}
		pages["chances-"+name] = Chances(plan, r, o)[0]
	}
	return pages
}

// Each chance stands in figures at its point, each board under it.
func TestChancesSayAll(t *testing.T) {
	text := chances(t, Options{})["chances-steep"].Scene.String()
	for _, want := range []string{`"1.0%"`, `"95.0%"`, `"99.9%"`, `"none"`, `"like long mark of a board"`, `"2000 simulated`} {
		if !strings.Contains(text, strings.Trim(want, `"`)) {
			t.Errorf("%s is not on the page", want)
		}
	}
}
