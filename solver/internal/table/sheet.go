package main

import (
	"fmt"
	"io"
	"strings"
)

// sheet prints a table row by row, as rows become known, in a form that
// DEVELOPERS.md can hold. The first column is set left, the others right.
type sheet struct {
	out    io.Writer
	widths []int
}

// newSheet prints the head. A column is as wide as its head says, blanks and all.
func newSheet(out io.Writer, heads ...string) *sheet {
	s := &sheet{out: out}
	rule := make([]any, len(heads))
	cells := make([]any, len(heads))
	for i, h := range heads {
		s.widths = append(s.widths, len(h))
		cells[i], rule[i] = strings.TrimSpace(h), strings.Repeat("-", len(h)-1)+":"
	}
	rule[0] = strings.Repeat("-", len(heads[0]))
	s.row(cells...)
	s.row(rule...)
	return s
}

// row prints one row.
func (s *sheet) row(cells ...any) {
	var line strings.Builder
	for i, c := range cells {
		if i == 0 {
			fmt.Fprintf(&line, "| %-*v ", s.widths[i], c)
			continue
		}
		fmt.Fprintf(&line, "| %*v ", s.widths[i], c)
	}
	fmt.Fprintln(s.out, line.String()+"|")
}

// percent writes a share such as 0.0123 as "1.23 %".
func percent(share float64) string { return fmt.Sprintf("%.2f %%", 100*share) }

// yes writes an answer.
func yes(b bool) string {
	if b {
		return "yes"
	}
	return "no"
}
