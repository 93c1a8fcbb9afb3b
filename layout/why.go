package layout

import "fmt"

// whyMissing says in a sentence what keeps n pieces of a part from being made, so
// that a maker can act on it; see query.why.
func (p *Problem) whyMissing(part *Part, n int, used []BoardPlan) string {
	lack := new(Volume)
	lack.Add(part.Volume(), n)
	why, _ := newQuery(p, part).why(lack, used)
	return why
}

// whyNoSlices says of a glue-up that lacks n slices what keeps the shortest strips
// of a row from being made: the first row that no board left could give.
func (p *Problem) whyNoSlices(set Set, n int, used []BoardPlan) string {
	first := ""
	for _, i := range set.Rows {
		row := &p.Bill[i]
		strip := p.Shop.Strip(row, p.Shop.LeastSlices(row))
		lack := new(Volume)
		lack.Add(row.StripVolume(1), row.Quantity*n)
		why, could := newQuery(p, &strip).why(lack, used)
		if !could {
			return fmt.Sprintf("strips of %s: %s", row.Name, why)
		}
		if first == "" {
			first = why
		}
	}
	return first
}

// why looks at what the boards that a plan leaves uncut could give by themselves:
//
//   - no board may give the part, or only one whose match words it shares;
//   - a board could give one, so that only the search fell short;
//   - boards are left, and a figure fails on all of them: see failure;
//   - none that could give one is left: the stock is used up, by a volume;
//   - none could give one even before anything was cut.
//
// Where a board that takes no part could give one, it is named. lack is the
// finished volume of what is missing. could says that a board left could give one.
func (q *query) why(lack *Volume, used []BoardPlan) (why string, could bool) {
	all := q.rooms(func(b *Board) bool { return q.problem.Allows(q.part, b) })
	if len(all) == 0 {
		return q.whyNoBoard() + q.standby(), false
	}
	if mark := q.problem.matchedTo(q.part, used); mark != "" && q.first(all) != nil {
		return fmt.Sprintf("match %q keeps it on %s, which has no more room", q.part.Match, mark), false
	}
	left := uncut(all, used)
	if r := q.first(left); r != nil {
		return q.whyNotFound(r.board, lack, left), true
	}
	switch {
	case len(left) == len(all) || q.first(all) == nil:
		return q.whyNone(all, left, "") + q.standby(), false
	case len(left) == 0:
		return "stock used up: " + q.shop.sayShort(lack) + q.standby(), false
	}
	return q.whyNone(left, left, " left") + q.standby(), false
}

// whyNoBoard says what keeps all boards from giving the part, sizes apart.
func (q *query) whyNoBoard() string {
	from := q.rooms(q.part.fromBoard)
	switch {
	case len(from) > 0:
		return fmt.Sprintf("all %s that may give it is on hold or at the yard", q.part.woods())
	case len(q.part.From)+len(q.part.NotFrom) > 0:
		return noBoardMarked
	}
	return fmt.Sprintf("no %s in the stock", q.part.woods())
}

// whyNotFound is said where board b could give one and is left uncut.
func (q *query) whyNotFound(b *Board, lack *Volume, left []*room) string {
	wood := new(Volume)
	for _, r := range left {
		wood.Add(r.board.Volume(), 1)
	}
	if lack.Cmp(wood) <= 0 {
		return fmt.Sprintf("%s could give one: a longer search may find how", b.Mark)
	}
	short := new(Volume)
	short.Add(lack, 1)
	short.Add(wood, -1)
	return fmt.Sprintf("stock all but used up: %s; %s could give one", q.shop.sayShort(short), b.Mark)
}

// standby names a board that takes no part and could give one, one at the yard
// first, or nothing.
func (q *query) standby() string {
	for _, source := range []Source{Yard, Hold} {
		idle := func(b *Board) bool {
			return b.Source == source && !q.problem.Takes(b) && q.part.fromBoard(b)
		}
		if r := q.first(q.rooms(idle)); r != nil {
			return fmt.Sprintf("; %s (%s) could give one", r.board.Mark, source)
		}
	}
	return ""
}

// matchedTo is the board that gives pieces of the part's match word already, to
// which the word then keeps it, or "".
func (p *Problem) matchedTo(part *Part, used []BoardPlan) string {
	if part.Match == "" {
		return ""
	}
	for _, u := range used {
		for _, leaf := range u.Root.Leaves() {
			if made := p.Part(leaf.Part); made != nil && made.Match == part.Match {
				return u.Board
			}
		}
	}
	return ""
}

// uncut keeps the rooms of boards that a plan does not cut.
func uncut(rooms []*room, used []BoardPlan) []*room {
	cut := map[string]bool{}
	for _, u := range used {
		cut[u.Board] = true
	}
	var left []*room
	for _, r := range rooms {
		if !cut[r.board.Mark] {
			left = append(left, r)
		}
	}
	return left
}
