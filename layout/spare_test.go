package layout

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Of a part of which two are needed, what is more is spare: first what was planned so,
// then the last ones; pieces that are cut already count.
func TestSpares(t *testing.T) {
	leaf := func(id string, spare bool, layers int) *Node {
		return &Node{Part: "rail", ID: id, Spare: spare, Layers: layers}
	}
	board := func(leaves ...*Node) BoardPlan { return BoardPlan{Root: &Node{Children: leaves}} }
	cut := func(id string, spare bool) CutPiece {
		return CutPiece{Part: "rail", Spare: spare, Wood: Board{Mark: id}}
	}
	for _, test := range []struct {
		what   string
		boards []BoardPlan
		cut    []CutPiece
		want   []string
	}{
		{"none too many", []BoardPlan{board(leaf("a", false, 0), leaf("b", true, 0))}, nil, nil},
		{"planned so", []BoardPlan{board(leaf("a", true, 0)), board(leaf("b", false, 0), leaf("c", false, 0))}, nil, []string{"a"}},
		{"the last ones", []BoardPlan{board(leaf("a", false, 0)), board(leaf("b", false, 3))}, nil, []string{"b2", "b3"}},
		{"cut already", []BoardPlan{board(leaf("a", false, 0), leaf("b", false, 0))}, []CutPiece{cut("x", true)}, []string{"x"}},
		{"cut, and held still", []BoardPlan{board(leaf("a", false, 0), leaf("b", false, 0))}, []CutPiece{cut("a", false)}, nil},
		{"of the cut ones the last", nil, []CutPiece{cut("x", false), cut("y", false), cut("z", false)}, []string{"z"}},
	} {
		t.Run(test.what, func(t *testing.T) {
			p := &Plan{Problem: Problem{Bill: []Part{{Name: "rail", Quantity: 2, Spare: 3}}}, Boards: test.boards}
			if test.cut != nil {
				p.Record = &Record{Wanted: p.Problem.Bill, Cut: test.cut}
			}
			want := map[string]bool{}
			for _, id := range test.want {
				want[id] = true
			}
			if diff := cmp.Diff(want, p.Spares()); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
