package check

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// Violation is one way in which a plan breaks one rule.
type Violation struct {
	Rule  string // "V1" to "V14", "form", "name", "record", "cost", "bound", "yield" or "account"
	Board string // the board's mark; empty when the plan as a whole is meant
	Where string // a piece id, an offcut mark or a rectangle; empty for the whole board
	What  string // what is wrong, with its figures, in plain words
}

// String is the violation on one line.
func (v Violation) String() string {
	var place []string
	for _, s := range []string{v.Board, v.Where} {
		if s != "" {
			place = append(place, s)
		}
	}
	if len(place) == 0 {
		return v.Rule + ": " + v.What
	}
	return v.Rule + ": " + strings.Join(place, ", ") + ": " + v.What
}

// report records a violation at a node of the board that is looked at; a nil
// node stands for the whole board.
type report func(at *spot, format string, args ...any)

// note records a violation at a place that needs no node.
type note func(board, where, format string, args ...any)

func (s *sawn) reporter(rule string) report {
	add := s.job.reporter(rule)
	return func(at *spot, format string, args ...any) {
		where := ""
		if at != nil {
			where = s.job.place(at)
		}
		add(s.wood.Mark, where, format, args...)
	}
}

func (j *job) reporter(rule string) note {
	return func(board, where, format string, args ...any) {
		what := fmt.Sprintf(format, j.spoken(args)...)
		j.found = append(j.found, Violation{rule, board, where, what})
	}
}

// spoken turns lengths, rectangles and money into words, in the units of the shop.
func (j *job) spoken(args []any) []any {
	words := make([]any, len(args))
	for i, a := range args {
		switch a := a.(type) {
		case layout.Length:
			words[i] = j.say(a)
		case layout.Rect:
			words[i] = j.sayRect(a)
		case layout.Money:
			words[i] = sayMoney(a)
		default:
			words[i] = a
		}
	}
	return words
}

// place names a node: by its id, its mark, or where it lies.
func (j *job) place(at *spot) string {
	switch {
	case at.ID != "":
		return at.ID
	case at.Offcut != "":
		return "offcut " + at.Offcut
	case at.Part != "":
		return at.Part + " at " + j.sayRect(at.Rect)
	}
	return j.sayRect(at.Rect)
}

// say writes a length as the shop writes it, exactly. What is far off any shop
// is left in nanometres.
func (j *job) say(l layout.Length) string {
	if l < -absurd || l > absurd {
		return fmt.Sprintf("%d nm", int64(l))
	}
	return l.Exact(j.shop.Units)
}

// sayMoney writes an amount. What is far off any account is left in
// ten-thousandths.
func sayMoney(m layout.Money) string {
	const limit = 1000 * layout.MaxMoney
	if m < -limit || m > limit {
		return fmt.Sprintf("%d ten-thousandths", int64(m))
	}
	return m.String()
}

func (j *job) sayRect(r layout.Rect) string {
	return fmt.Sprintf("x %s to %s, y %s to %s", j.say(r.X1), j.say(r.X2), j.say(r.Y1), j.say(r.Y2))
}
