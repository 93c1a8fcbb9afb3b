package steps

import (
	"testing"

	"sawbill/layout"
)

func TestProof(t *testing.T) {
	amount := func(m layout.Money) *layout.Money { return &m }
	const least = "no plan with the same parts missing can cost less than "
	for _, c := range []struct {
		name  string
		cost  layout.Money
		bound *layout.Money
		want  string
	}{
		{"none", 412_6000, nil, "nothing is proven yet of how much less another plan could cost"},
		{"equal", 412_6000, amount(412_6000), "proven: no plan with the same parts missing costs less"},
		{"nothing is cut", 0, amount(0), "proven: no plan with the same parts missing costs less"},
		// 11.4 / 412.6 = 2.7629...%
		{"gap", 412_6000, amount(401_2000), least + "401.20 (2.77%)"},
		{"gap in tenths", 200_0000, amount(195_0000), least + "195.00 (2.5%)"},
		{"bound rounded down", 412_6000, amount(401_2099), least + "401.20 (2.77%)"},
		// 0.0001 / 412.6 is less than a hundredth of a percent.
		{"all but equal", 412_6000, amount(412_5999), least + "412.59 (0.01%)"},
		{"no gain known", 10_0000, amount(0), least + "0.00 (100%)"},
		{"below nothing", 10_0000, amount(-2_0001), least + "-2.01 (120.01%)"},
		{"below a cost of nothing", 0, amount(-1_0000), least + "-1.00"},
		{"dear", 1000 * layout.MaxMoney, amount(999 * layout.MaxMoney), least + "999000000000.00 (0.1%)"},
	} {
		if got := Proof(&layout.Plan{Totals: layout.Totals{Cost: c.cost, Bound: c.bound}}); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// A bound of a job that goes on is one of plans that leave alone what is being cut.
func TestProofOfARevisionSaysWhatIsFixed(t *testing.T) {
	bound := layout.Money(9_0000)
	plan := &layout.Plan{Totals: layout.Totals{Cost: 10_0000, Bound: &bound}, Record: &layout.Record{}}
	const least = "no plan with the same parts missing can cost less than 9.00 (10%)"
	if got := Proof(plan); got != least {
		t.Errorf("nothing is cut: %q", got)
	}
	plan.Record.Started = []layout.Start{{Board: "E1"}}
	if got, want := Proof(plan), "with the boards that are being cut as they are, "+least; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	plan.Record.Cut = []layout.CutPiece{{Slices: 4}}
	if got, want := Proof(plan), "with the boards that are being cut and the copies of glue-ups that are begun as they are, "+least; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
