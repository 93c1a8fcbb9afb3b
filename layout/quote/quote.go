// Package quote says what a job costs: its wood, board by board, part by part and by
// finished piece, and the shop's own lines on top.
//
// What a board costs is the cost of the whole board less the worth of what is left of
// it for the rack. That net cost is borne by the pieces that come out of the board, in
// proportion to the rough wood that their cut size takes of it, which is their length
// by their width on its face: the waste of a board is borne in that proportion, too. A
// thin piece bears as much as a thick one of the same face, for what is planed off a
// board is gone; pieces that are resawn out of one share it. Spare pieces bear nothing,
// for they are cut only where they cost nothing.
//
// Wood that was cut out of a board and is cut again later in the same job belongs to
// that first board. A board of the yard was bought for the job and is paid whole: what
// is left of it is not taken off.
//
// Amounts are whole numbers of layout.Money. The shares of a board are rounded so that
// they add up to its net cost exactly.
package quote

import "sawbill/layout"

// Quote is what a job costs.
type Quote struct {
	Boards []Board // as they were bought or lay on the rack before the job
	Parts  []Part  // in the order of the bill
	Pieces []Piece // finished pieces, in the order of the bill; nil where it names none
	// Loose is the wood of boards that gave no piece that is needed.
	Loose layout.Money
	// Wood is what all boards cost net: the sum over Boards, and of Parts and Loose.
	Wood layout.Money

	// Charges are those of the shop, nil where it has none. Labour is hours times rate;
	// Margin is the shop's share of Wood, Labour, finish and hardware together; Total is
	// the sum of all. Products are rounded half up. Total is Wood where there are no
	// charges.
	Charges               *layout.Charges
	Labour, Margin, Total layout.Money
}

// Board is what one board costs.
type Board struct {
	Mark    string // empty for boards of which an old plan knows only the sum
	Species string
	Bought  bool // of the yard: nothing is taken off
	Cost    layout.Money
	// Returned is the worth of what is left of it: of offcuts that the plan keeps as the
	// plan counts it, of wood back on the rack the same share of what that costs.
	Returned layout.Money
}

// Net is what the job bears of a board.
func (b *Board) Net() layout.Money { return b.Cost - b.Returned }

// Part is what the wood of one row of the bill costs.
type Part struct {
	Name, Piece    string
	Needed, Spares int // made: pieces, or strips of a glue-up
	Wood           layout.Money
}

// Piece is what the wood of one finished piece costs, or of the parts that belong to
// none, where Name is empty.
type Piece struct {
	Name string
	Wood layout.Money
}

// Of is the quote of a plan that has passed its check, at its shop's charges.
func Of(plan *layout.Plan) *Quote {
	q := &Quote{Charges: plan.Problem.Shop.Charges}
	for _, part := range plan.Wanted() {
		q.Parts = append(q.Parts, Part{Name: part.Name, Piece: part.Piece})
	}
	for _, g := range groupsOf(plan) {
		q.Boards = append(q.Boards, g.Board)
		q.Wood += g.Net()
		q.charge(g)
	}
	q.setPieces()
	q.setTotal()
	return q
}

// Asked reports whether a plan is to be quoted wherever its paper is made: its shop has
// charges, or its bill names a finished piece.
func Asked(plan *layout.Plan) bool {
	if plan.Problem.Shop.Charges != nil {
		return true
	}
	for _, part := range plan.Wanted() {
		if part.Piece != "" {
			return true
		}
	}
	return false
}

// setPieces adds the parts up by finished piece.
func (q *Quote) setPieces() {
	named := false
	for _, part := range q.Parts {
		i := 0
		for i < len(q.Pieces) && !layout.SamePiece(q.Pieces[i].Name, part.Piece) {
			i++
		}
		if i == len(q.Pieces) {
			q.Pieces = append(q.Pieces, Piece{Name: part.Piece})
		}
		q.Pieces[i].Wood += part.Wood
		named = named || part.Piece != ""
	}
	if !named {
		q.Pieces = nil
	}
}
