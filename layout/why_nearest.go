package layout

// failing is a figure that keeps a part from all boards.
type failing uint8

// Later ones are nearer to a piece that fits.
const (
	failsThickness failing = iota // truing leaves too little of the thickness
	failsBlank                    // no board has room for the shortest blank
	failsClear                    // no wood that the grade carries
	failsWidth
	failsLength
)

// failure is the figure that fails, on the board that comes nearest to giving a
// piece.
type failure struct {
	what       failing
	lie        lie
	board      *Board
	need, have Length
	blank      Length // in which the board trues to so much
}

// nearest is the failure of the way to lie that comes nearest to fitting. There is
// a room, and none of them holds a piece.
func (q *query) nearest(rooms []*room) failure {
	best := q.failureOf(rooms, q.lies[0])
	for _, l := range q.lies[1:] {
		if f := q.failureOf(rooms, l); f.nearer(best) {
			best = f
		}
	}
	return best
}

// nearer compares failures by what fails and, where that is the same or a matter
// of size, by how much of what is needed there is.
func (f failure) nearer(g failure) bool {
	if min(f.what, g.what) < failsWidth && f.what != g.what {
		return f.what > g.what
	}
	return f.share() > g.share()
}

func (f failure) share() float64 { return float64(f.have) / float64(f.need) }

// failureOf goes from the thickness, of boards that are too thin, over the length
// and the width, of boards that are thick enough, to the nearer of these two.
func (q *query) failureOf(rooms []*room, l lie) failure {
	thick, thin := q.thickEnough(rooms, l)
	if len(thick) == 0 {
		return thin
	}
	long := failure{what: failsLength, lie: l, need: l.length}
	long.board, long.have = q.most(thick, l.length, l.ofLength)
	wide := failure{what: failsWidth, lie: l, need: l.across}
	wide.board, wide.have = q.most(thick, l.across, l.ofWidth)
	switch {
	case long.have == 0 && wide.have == 0:
		return q.narrowOnly(thick, l)
	case wide.share() > long.share():
		return wide
	}
	return long
}

// thickEnough keeps the rooms whose blanks are thick enough, or tells of the one
// that comes nearest.
func (q *query) thickEnough(rooms []*room, l lie) (kept []*room, best failure) {
	best = failure{what: failsThickness, lie: l, need: l.thick}
	for _, r := range rooms {
		have, blank := r.trues(l)
		if have >= l.thick {
			kept = append(kept, r)
		}
		if best.board == nil || have > best.have {
			best.board, best.have, best.blank = r.board, have, blank
		}
	}
	return kept, best
}

// narrowOnly is said of boards that are both too short and too narrow: how long a
// piece they give, however narrow, or why they give none at all.
func (q *query) narrowOnly(rooms []*room, l lie) failure {
	step := q.shop.figureStep()
	long := failure{what: failsLength, lie: l, need: l.length}
	long.board, long.have = q.most(rooms, l.length, func(n Length) lie { return l.ofLength(n).ofWidth(step) })
	if long.have > 0 {
		return long
	}
	longest := rooms[0]
	for _, r := range rooms {
		if r.within.Len() > longest.within.Len() {
			longest = r
		}
	}
	least, _ := longest.blankLengths(l.ofLength(step), roughRip{})
	none := failure{what: failsClear, lie: l, board: longest.board, need: least, have: max(0, longest.within.Len())}
	if none.have < none.need {
		none.what = failsBlank
	}
	return none
}

// ofLength is a lie of another length.
func (l lie) ofLength(n Length) lie {
	l.length = n
	return l
}

// ofWidth is a lie of another width.
func (l lie) ofWidth(n Length) lie {
	l.across = n
	return l
}
