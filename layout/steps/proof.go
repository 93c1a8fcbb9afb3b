package steps

import (
	"math/big"
	"slices"
	"strconv"
	"strings"

	"sawbill/layout"
)

// Proof says what is proven of the cost of a plan, in the words that the summary
// and the job's sheet share: in a job that goes on, of plans that leave what is being
// cut as it is. It is no sentence of its own: it begins in lower case and has no full
// stop.
func Proof(plan *layout.Plan) string {
	t, fixed := plan.Totals, FixedBy(plan.Record)
	switch {
	case t.Bound == nil:
		return "nothing is proven yet of how much less another plan could cost"
	case *t.Bound == t.Cost:
		return "proven: " + fixed + "no plan with the same parts missing costs less"
	}
	return fixed + "no plan with the same parts missing can cost less than " + Bound(t)
}

// FixedBy says what no plan can change any more, in words that a sentence goes on after;
// it is empty where nothing is cut.
func FixedBy(r *layout.Record) string {
	if r == nil {
		return ""
	}
	var what []string
	if len(r.Started) > 0 {
		what = append(what, "the boards that are being cut")
	}
	if slices.ContainsFunc(r.Cut, func(c layout.CutPiece) bool { return c.Slices > 0 }) {
		what = append(what, "the copies of glue-ups that are begun")
	}
	if len(what) == 0 {
		return ""
	}
	return "with " + strings.Join(what, " and ") + " as they are, "
}

// Bound writes the bound of a plan that has one with its gap: 401.20 (2.8%). The
// bound is rounded down and the gap, in percent of the cost, up, so that neither
// says more than is proven. The gap is left out where the cost is not above 0.
func Bound(t layout.Totals) string {
	text := t.Bound.CentsDown()
	if t.Cost > 0 {
		text += " (" + percentUp(int64(t.Cost-*t.Bound), int64(t.Cost)) + ")"
	}
	return text
}

// percentUp writes a share of a whole above 0 in percent, rounded up to
// hundredths.
func percentUp(share, whole int64) string {
	n := new(big.Int).Mul(big.NewInt(-share), big.NewInt(10_000)) // a product of money can be more than 64 bits
	n.Div(n, big.NewInt(whole))                                   // Div rounds down, and this is the negative
	hundredths, _ := n.Neg(n).Float64()
	return strconv.FormatFloat(hundredths/100, 'f', -1, 64) + "%"
}
