package layout

// NewProblem checks a job as it was asked for, once and in full, and reports
// all that is wrong with it; after it nobody checks again. The problem is nil
// when a complaint is a fault.
//
// The bill's From and NotFrom may hold marks of single boards or of the rows
// that several boards come from (Base); in the problem they are marks of single
// boards. Boards that are Unpriced get the shop's default cost, and defects
// that reach over the board are clipped. The arguments are left as they are.
//
// A part that no board could hold is a fault; a bill that asks for more than
// the stock can give is not.
func NewProblem(shop *Shop, stock []Board, bill []Part, yard bool) (*Problem, Complaints) {
	var cs Complaints
	checkShop(&cs, shop)
	p := &Problem{Shop: shop, Yard: yard}
	p.Stock = newStock(&cs, shop, stock)
	checkPriced(&cs, shop, stock)
	p.Bill = newBill(&cs, shop, bill)
	checkTogether(&cs, p)
	if cs.Err() != nil {
		return nil, cs
	}
	return p, cs
}

// CheckShop checks a shop by itself, as NewProblem does.
func CheckShop(shop *Shop) Complaints {
	var cs Complaints
	checkShop(&cs, shop)
	return cs
}

// NewStock checks a shop and a stock for which there is no bill, as NewProblem
// does. The boards are nil when a complaint is a fault.
func NewStock(shop *Shop, stock []Board) ([]Board, Complaints) {
	var cs Complaints
	checkShop(&cs, shop)
	checked := newStock(&cs, shop, stock)
	checkPriced(&cs, shop, stock)
	if cs.Err() != nil {
		return nil, cs
	}
	return checked, cs
}
