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
			if boards = leftOf(m, stock); len(boards) > 0 {
				a.warn(column, m, "which no board bears: taken for what is left of it, "+strings.Join(marksAt(boards, stock), ", "))
			} else {
				a.fault(column, m, "which no board bears"+cmp.Or(didYouMean(m, marksOf(stock)), ": leave it out if that board is gone"))
			}
		}
		for _, i := range boards {
			named[i] = true
		}
	}
	var all []int
	for i := range stock {
		if named[i] {
			all = append(all, i)
		}
	}
	return marksAt(all, stock)
}

// bearers are the boards, by index, that bear a mark, alone or before count.
func bearers(mark string, stock []Board) []int {
	var boards []int
	for i, b := range stock {
		if strings.EqualFold(b.Mark, mark) || strings.EqualFold(b.Base, mark) {
			boards = append(boards, i)
		}
	}
	return boards
}

// leftOf are the boards, by index, that are left of what bore a mark once, as the
// record and the offcuts of a plan are marked: E1-K1 and E1-2 of E1. Of A4 in a row with
// a count they are A4.2, which was not cut, and A4.1-K1.
func leftOf(mark string, stock []Board) []int {
	left := regexp.MustCompile(`(?i)^` + regexp.QuoteMeta(mark) + `(\.[0-9]+)?(-.+)?$`)
	var boards []int
	for i, b := range stock {
		if left.MatchString(b.Mark) {
			boards = append(boards, i)
		}
	}
	return boards
}

func marksAt(boards []int, stock []Board) []string {
	var marks []string
	for _, i := range boards {
		marks = append(marks, stock[i].Mark)
	}
	return marks
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
