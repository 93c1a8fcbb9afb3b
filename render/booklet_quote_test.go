package render

import (
	"strings"
	"testing"

	"sawbill/layout"
)

// A job is quoted in its booklet where its shop or its bill asks for that: there
// stand the wood, the shop's lines and the total.
func TestBookletHoldsTheQuote(t *testing.T) {
	shop := layout.DefaultShop(layout.Inches)
	plan := onePlan(shop, board("E1", 6*in, 96*in), []layout.Part{peg("leg", 2*in, 30*in, 3)})
	if pages := newBooklet(plan, Options{}).quote(); len(pages) > 0 {
		t.Error("nobody asked for a quote")
	}
	plan.Problem.Bill[0].Piece = "stool"
	shop.Charges = &layout.Charges{Hours: 3 * layout.Hour, Rate: 20 * layout.Unity, Margin: layout.MarginUnity / 8}
	said := strings.Join(strings.Fields(flat(newBooklet(plan, Options{}).quote())), " ")
	for _, want := range []string{"work 3 h at 20.00 60.00", "12.5% of all these", "total", "Wood by finished piece", "leg stool", "E1"} {
		if !strings.Contains(said, want) {
			t.Errorf("nothing says %q in %s", want, said)
		}
	}
}

// Two strips of a blank 62 in long give four legs, of which three are needed: the last
// is spare in the drawing, in its step, on its label and in the bill to tick off.
func TestSparesAreMarkedOnAllPaper(t *testing.T) {
	shop := layout.DefaultShop(layout.Inches)
	wood, leg := board("E1", 6*in, 96*in), peg("leg", 2*in, 30*in, 3)
	leg.Spare = 1
	plan := onePlan(shop, wood, []layout.Part{leg}, grid(shop, &wood, in, 63*in, "leg", 2*in, 30*in))
	sheets, err := Board(plan, &plan.Boards[0], Options{})
	if err != nil {
		t.Fatal(err)
	}
	job, err := Job(plan, Options{})
	if err != nil {
		t.Fatal(err)
	}
	book := newBooklet(plan, Options{})
	for _, c := range []struct {
		what  string
		pages []Page
		want  string
	}{
		{"drawing", sheets, "spare leg"}, {"steps", sheets, ", spare"},
		{"label", book.labels(), "spare leg"}, {"cover", book.cover(), "3 of 3, 1 spare"}, {"job", job, "3 of 3, 1 spare"},
	} {
		if said := strings.Join(strings.Fields(flat(c.pages)), " "); !strings.Contains(said, c.want) {
			t.Errorf("%s: nothing says %q in %s", c.what, c.want, said)
		}
	}
}

// A board that gives no piece bears its own cost: a line of its own says so, even in a
// file whose bill is empty, which the lines were once counted by.
func TestWoodOfNoPartHasALine(t *testing.T) {
	shop := layout.DefaultShop(layout.Inches)
	shop.Charges = &layout.Charges{}
	plan := onePlan(shop, board("E1", 6*in, 96*in), nil)
	plan.Boards = []layout.BoardPlan{{Board: "E1", Cost: plan.Problem.Stock[0].Cost, Root: &layout.Node{Rect: plan.Problem.Stock[0].Frame()}}}
	if said := flat(newBooklet(plan, Options{}).quote()); !strings.Contains(said, "wood of no part") {
		t.Errorf("nothing says what is of no part in %s", said)
	}
}
