package mip

import (
	"bufio"
	"fmt"
	"io"
)

// write writes the model in the text format for linear programs that the common
// solvers read: Minimize, Subject To, Bounds, General, End. Variable n is named
// xn.
func (m *Model) write(out io.Writer) error {
	w := bufio.NewWriter(out)
	fmt.Fprint(w, "Minimize\n cost:")
	objective := make([]term, len(m.costs))
	for i, c := range m.costs {
		objective[i] = term{c, i}
	}
	writeTerms(w, objective)
	fmt.Fprint(w, "\nSubject To\n")
	for i, r := range m.rows {
		fmt.Fprintf(w, " r%d:", i)
		writeTerms(w, r.terms)
		fmt.Fprintf(w, " >= %d\n", r.least)
	}
	fmt.Fprint(w, "Bounds\n")
	for i, n := range m.most {
		if n >= 0 {
			fmt.Fprintf(w, " 0 <= x%d <= %d\n", i, n)
		}
	}
	fmt.Fprint(w, "General\n")
	for i := range m.costs {
		fmt.Fprintf(w, " x%d\n", i)
	}
	fmt.Fprint(w, "End\n")
	return w.Flush()
}

// termsALine keeps lines short: some readers refuse long ones.
const termsALine = 8

func writeTerms(w io.Writer, terms []term) {
	for i, t := range terms {
		if i > 0 && i%termsALine == 0 {
			fmt.Fprint(w, "\n ")
		}
		fmt.Fprintf(w, " %+d x%d", t.factor, t.variable)
	}
}
