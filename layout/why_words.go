package layout

import (
	"fmt"
	"strings"
)

// noBoardMarked is said of a part that the marks of its row keep from all boards.
const noBoardMarked = "from and not_from leave no board that could give it"

// woods are the species of a part: "ash or elm".
func (p *Part) woods() string { return strings.Join(p.Species, " or ") }

// whyNone says which figure fails on all the rooms, and whether shorter pieces would
// fit in what is left; after is empty or " left".
func (q *query) whyNone(rooms, left []*room, after string) string {
	f := q.nearest(rooms)
	wood := q.part.woods() + after
	if len(q.part.From)+len(q.part.NotFrom) > 0 {
		wood += " that may give it"
	}
	why := q.sayFailure(f, wood)
	if f.what == failsLength {
		why += q.shorter(left)
	}
	return why
}

func (q *query) sayFailure(f failure, wood string) string {
	say := func(l Length) string { return l.Format(q.shop.Units, q.shop.Fraction) }
	have := max(0, f.have)
	have -= have % q.shop.figureStep()
	edge := ""
	if f.lie.onEdge {
		edge = " on edge"
	}
	switch f.what {
	case failsThickness:
		return fmt.Sprintf("needs %s thick%s; the thickest %s trues to %s in a blank of %s (%s)",
			say(f.need), edge, wood, say(have), say(f.blank), f.board.Mark)
	case failsBlank:
		return fmt.Sprintf("needs a blank of %s; the longest %s has %s between its trims (%s)",
			say(f.need), wood, say(have), f.board.Mark)
	case failsClear:
		return fmt.Sprintf("needs %s wood; the %s has none (%s)", q.grade(), wood, f.board.Mark)
	case failsWidth:
		return fmt.Sprintf("needs %s wide%s; the %s gives no %s width over %s at %s (%s)",
			say(f.need), edge, wood, q.grade(), say(have), say(f.lie.length), f.board.Mark)
	}
	return fmt.Sprintf("needs %s; the %s gives no %s length over %s (%s)", say(f.need), wood, q.grade(), say(have), f.board.Mark)
}

// grade is what the part's row calls its grade.
func (q *query) grade() string {
	if q.part.Grade == "" {
		return Clear
	}
	return q.part.Grade
}

// sayShort writes a volume that is missing as the shop counts wood: "3.2 board feet
// short" or, in a shop that works in millimetres, in cubic metres.
func (s *Shop) sayShort(v *Volume) string {
	if s.Units == Millimetres {
		return fmt.Sprintf("%.4f m³ short, finished", max(0.0001, v.MM3()/1e9))
	}
	return fmt.Sprintf("%.1f board feet short, finished", max(0.1, v.BoardFeet()))
}
