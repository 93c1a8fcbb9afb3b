package files

import (
	"slices"

	"sawbill/layout"
)

// LoadMore reads a bill of further parts for a job that goes on and checks it as Load
// does, against the stock as it now is.
func LoadMore(source Source, shop *layout.Shop, stock []layout.Board, yard bool) (parts []layout.Part, warnings layout.Complaints, err error) {
	bill, found := ReadBill(source.Reader, source.Name, shop)
	problem, more := layout.NewProblem(shop, stock, bill.Parts, yard)
	more = slices.DeleteFunc(more, func(c layout.Complaint) bool { return c.Table != layout.BillTable })
	all := merge(found, more, &Shop{}, &Stock{}, bill)
	if err := all.Err(); err != nil {
		return nil, nil, err
	}
	return problem.Bill, all.Warnings(), nil
}
