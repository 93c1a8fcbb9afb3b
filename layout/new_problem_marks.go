package layout

import (
	"cmp"
	"regexp"
	"strings"
)

// resolveMarks gives the marks of single boards that marks stand for, in the
// order of the stock.
func resolveMarks(a about, column string, marks []string, stock []Board) []string {
	named := make([]bool, len(stock))
	for _, m := range marks {
		boards := bearers(m, stock)
		if len(boards) == 0 {
			a.fault(column, m, "which no board bears"+cmp.Or(didYouMean(m, marksOf(stock)), ": leave it out if that board is gone"))
		}
		for _, i := range boards {
			named[i] = true
		}
	}
	var resolved []string
	for i, b := range stock {
		if named[i] {
			resolved = append(resolved, b.Mark)
		}
	}
	return resolved
}

// bearers are the boards, by index, that bear a mark, alone or before count; where
// none does, those that are left of what bore it once.
func bearers(mark string, stock []Board) []int {
	left := leftOf(mark)
	var bear, lefts []int
	for i, b := range stock {
		switch {
		case strings.EqualFold(b.Mark, mark) || strings.EqualFold(b.Base, mark):
			bear = append(bear, i)
		case left.MatchString(b.Mark):
			lefts = append(lefts, i)
		}
	}
	if len(bear) > 0 {
		return bear
	}
	return lefts
}

// leftOf matches the marks of what is left of a board, as the record and the offcuts of
// a plan have them: E1-K1 and E1-2 of E1. Of A4 in a row with a count they are A4.2,
// which was not cut, and A4.1-K1.
func leftOf(mark string) *regexp.Regexp {
	return regexp.MustCompile(`(?i)^` + regexp.QuoteMeta(mark) + `(\.[0-9]+)?(-.+)?$`)
}

func marksOf(stock []Board) []string {
	var marks []string
	for _, b := range stock {
		marks = append(marks, b.Mark)
		if b.Base != b.Mark && b.Base != "" {
			marks = append(marks, b.Base)
		}
	}
	return marks
}
