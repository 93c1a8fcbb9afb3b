package layout

// query asks what boards could give of one part: a single piece in a board from
// which nothing else is cut.
type query struct {
	problem *Problem
	shop    *Shop
	part    *Part
	lies    []lie
}

func newQuery(p *Problem, part *Part) *query {
	return &query{problem: p, shop: p.Shop, part: part, lies: p.Shop.liesOf(part)}
}

// CouldGive reports whether a board, wherever it is, could give one piece of a part if
// nothing else were cut from it: by species, marks, sizes and defects.
func (p *Problem) CouldGive(part *Part, b *Board) bool {
	q := newQuery(p, part)
	return part.fromBoard(b) && q.first([]*room{newRoom(p.Shop, b, p.Shop.Grades[part.Grade])}) != nil
}

// rooms are those of the boards of the stock that are wanted, in its order.
func (q *query) rooms(wanted func(*Board) bool) []*room {
	var rooms []*room
	for i := range q.problem.Stock {
		if b := &q.problem.Stock[i]; wanted(b) {
			rooms = append(rooms, newRoom(q.shop, b, q.shop.Grades[q.part.Grade]))
		}
	}
	return rooms
}

// first is the first room that could give a piece, or nil.
func (q *query) first(rooms []*room) *room {
	for _, r := range rooms {
		for _, l := range q.lies {
			if r.holds(l) {
				return r
			}
		}
	}
	return nil
}

// lie is how one piece of a part lies in a board, and what it takes there.
type lie struct {
	length, across, thick Length // that it is cut and planed to
	lean                  Length // by which it reaches further on face B
	side                  Length // kept free beside a leaning edge
	onEdge                bool
}

// wide is how much of the board's width the piece covers on either face.
func (l lie) wide() Length { return l.across + l.lean }

// liesOf lists how a part may lie: flat and, where it may, on edge. A piece that is
// resawn needs more than one by itself, so that layers never help it in.
func (s *Shop) liesOf(p *Part) []lie {
	flat := lie{length: p.CutLength(s), across: p.CutWidth(s), thick: p.CutThickness(s)}
	if p.Bevel > 0 {
		flat.lean, flat.side = p.Lean(), s.BevelKerf(p.Bevel)
	}
	if !p.OnEdge {
		return []lie{flat}
	}
	edge := lie{length: flat.length, across: p.EdgeWidth(s), thick: p.EdgeThickness(s, 1), onEdge: true}
	return []lie{flat, edge}
}
