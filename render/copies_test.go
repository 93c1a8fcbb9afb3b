package render

import (
	"strings"
	"testing"

	"sawbill/layout"
)

// gluedPlan makes two copies of a set, of 12 slices of 1 in each, that take three strips
// each, 13-7/8 in long; 6 of 30 slices are missing.
func gluedPlan() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	b := board("C7", 6*in, 48*in)
	row := peg("tray strip", 3*in/2, 0, 3)
	row.Set, row.Slices, row.SliceThickness = "tray", 30, in
	blank := grid(shop, &b, in, 31*in, row.Name, row.Width, shop.StripLength(&row, 12))
	n := 0
	for _, leaf := range blank.Leaves() {
		if n++; n > 6 {
			leaf.Part = ""
		}
		if leaf.Part != "" {
			leaf.Slices = 12
		}
	}
	return onePlan(shop, b, []layout.Part{row}, blank)
}

// Which strips are glued together stands on the sheet of the job and on the cover; how
// many slices a strip gives, at the strip and on its label.
func TestSheetsSayWhatIsGlued(t *testing.T) {
	plan := gluedPlan()
	job, err := Job(plan, Options{})
	if err != nil {
		t.Fatal(err)
	}
	boards, err := Board(plan, &plan.Boards[0], Options{})
	if err != nil {
		t.Fatal(err)
	}
	b := newBooklet(plan, Options{})
	glued := []string{"2 copies of 12 slices", "3 tray strip", "13-7/8", "24 of 30", "6 slices of tray MISSING"}
	for _, c := range []struct {
		what  string
		pages []Page
		want  []string
	}{
		{"job", job, glued},
		{"cover", b.cover(), glued},
		{"board", boards, []string{"13-7/8 x 1-1/2 x 3/4, show B, 12 slices"}},
		{"labels", b.labels(), []string{"13-7/8 long, 12 slices"}},
	} {
		said := strings.NewReplacer(string(hold), " ", "–", "-").Replace(strings.Join(strings.Fields(flat(c.pages)), " "))
		for _, want := range c.want {
			if !strings.Contains(said, want) {
				t.Errorf("%s: nothing says %q", c.what, want)
			}
		}
	}
}
