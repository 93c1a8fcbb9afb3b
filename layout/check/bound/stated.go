package bound

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/check"
)

// misstated lists what is wrong with what a plan says about its bound, before
// anything is reckoned. That prices are not negative and name parts of the bill,
// and that price_bound, bound and cost are in this order, the check has seen.
func misstated(t *layout.Totals) []check.Violation {
	switch {
	case t.PriceBound == nil:
		return []check.Violation{violation("the plan carries prices, but does not say what they prove")}
	case t.Prices == nil:
		return []check.Violation{violation("the plan says that its prices prove %v, but carries none", *t.PriceBound)}
	}
	return nil
}

func violation(format string, args ...any) check.Violation {
	return check.Violation{Rule: "bound", What: fmt.Sprintf(format, args...)}
}
