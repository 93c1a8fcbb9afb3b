package layout

// Risk is what a simulation of the cutting of a plan says of hidden defects: how often
// the stock is enough, and what makes it run short.
type Risk struct {
	Seed int64
	// AsPlanned are draws in which all of the bill is made when boards are cut as the plan
	// lists them. Finished and all else is with boards cut in the order of Order.
	AsPlanned, Finished Share
	Assumed             []AssumedHidden
	Parts               []PartAtRisk
	Spares              []SpareBoard
	Bought              []BoughtBoard
	Order               []Opening
}

// AssumedHidden is what was reckoned with in a species. RateSaid and SizeSaid tell
// whether the shop says it; otherwise it is a guess.
type AssumedHidden struct {
	Species string
	Hidden
	RateSaid, SizeSaid bool
	Boards             int
	BoardFeet          float64 // of these boards
}

// PartAtRisk is how often a row of the bill is missing in the end.
type PartAtRisk struct {
	Part    string
	Missing Share
	// Mean is how many pieces are missing on average, over all draws.
	Mean float64
	// Spared is how often all is made with one sound piece of it at hand beforehand.
	Spared Share
}

// SpareBoard is how often all is made with one more board like one of the stock.
type SpareBoard struct {
	Like     string // its mark
	Boards   int    // of its species, thickness and faces in the stock
	Finished Share
}

// BoughtBoard is how often all is made once one more board is bought, like one of the
// stock, on top of those before it. The first entry is of no board.
type BoughtBoard struct {
	Like     string
	Finished Share
}

// Opening is a board of the plan that is not yet being cut, in the order in which
// boards are best cut so that a shortage shows early.
type Opening struct {
	Board string
	// Shows is how often the board spoils a piece of a part that is missing in the end;
	// Lost is how many pieces it spoils on average.
	Shows Share
	Lost  float64
	Cuts  int // pieces that come off the saw until it is cut
}
