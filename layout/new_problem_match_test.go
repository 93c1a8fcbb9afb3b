package layout

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Parts that are to come from one board need a board that may give them all.
func TestMatchWantsOneBoardForAll(t *testing.T) {
	shop, stock := DefaultShop(Inches), rack()
	other := stock[0]
	other.Mark, other.Base, other.Species = "Z1", "Z1", "beech"
	stock = append(stock, other)
	left, right := rail(), rail()
	left.Name, left.Match, left.Species = "left", "pair", []string{stock[0].Species}
	right.Name, right.Match = "right", "pair"
	for _, c := range []struct {
		species []string
		want    []string
	}{
		{[]string{stock[0].Species}, nil},
		{[]string{"beech", stock[0].Species}, nil},
		{[]string{"beech"}, []string{`bill row 1: match: found "pair", want parts that one board may give: by species and marks none may give all that bear this word`}},
	} {
		right.Species = c.species
		_, cs := NewProblem(shop, slices.Clone(stock), []Part{left, right}, false)
		if diff := cmp.Diff(c.want, tell(cs.Faults())); diff != "" {
			t.Errorf("%v (-want +got):\n%s", c.species, diff)
		}
	}
}
