package main

import (
	"fmt"
	"io"
	"strings"

	"sawbill/layout"
)

// printMade says how much of the bill is made: pieces, and of every glue-up slices,
// with the copies that give them.
func printMade(w io.Writer, p *layout.Plan) {
	if n := wantedPieces(p); n > 0 {
		fmt.Fprintf(w, "pieces\t%d of %d made%s\n", n-missingPieces(p), n, sparesOf(p))
	}
	missing := missingOf(p)
	for _, set := range p.Problem.Sets() {
		fmt.Fprintf(w, "slices of %s\t%d of %d made: %s\n", set.Name, set.Slices-missing[set.Name], set.Slices, copiesOf(p, set))
	}
}

// sparesOf says what is made beyond what the bill needs.
func sparesOf(p *layout.Plan) string {
	if n := len(p.Spares()); n > 0 {
		return fmt.Sprintf(", and %d spare", n)
	}
	return ""
}

// copiesOf says how many copies of a glue-up there are to glue, of how many slices.
func copiesOf(p *layout.Plan, set layout.Set) string {
	var list []string
	for _, c := range p.Copies(set) {
		list = append(list, copies(c.Count)+" of "+count(c.Slices, "slice"))
	}
	if len(list) == 0 {
		return "no copies"
	}
	return strings.Join(list, ", ")
}

func copies(n int) string {
	if n == 1 {
		return "1 copy"
	}
	return fmt.Sprint(n, " copies")
}

// wantedPieces is how many pieces the bill asks for, strips of glue-ups apart.
func wantedPieces(p *layout.Plan) int {
	n := 0
	for _, part := range p.Problem.Bill {
		if part.Set == "" {
			n += part.Quantity
		}
	}
	return n
}

// missingPieces is how many pieces the plan does not make, strips of glue-ups apart.
func missingPieces(p *layout.Plan) int {
	n := 0
	for _, m := range p.Missing {
		n += m.Quantity
	}
	return n - missingSlices(p)
}

// missingSlices is how many slices of glue-ups the plan does not make.
func missingSlices(p *layout.Plan) int {
	n, missing := 0, missingOf(p)
	for _, set := range p.Problem.Sets() {
		n += missing[set.Name]
	}
	return n
}

func wantedSlices(p *layout.Plan) int {
	n := 0
	for _, set := range p.Problem.Sets() {
		n += set.Slices
	}
	return n
}

// missingWords is "3 pieces and 2 slices", of what is missing.
func missingWords(p *layout.Plan) string {
	var words []string
	if n := missingPieces(p); n > 0 {
		words = append(words, count(n, "piece"))
	}
	if n := missingSlices(p); n > 0 {
		words = append(words, count(n, "slice"))
	}
	return strings.Join(words, " and ")
}

// missingOfWanted is the same with how many are wanted: "3 pieces of 12".
func missingOfWanted(p *layout.Plan) string {
	var words []string
	if n := missingPieces(p); n > 0 {
		words = append(words, fmt.Sprintf("%s of %d", count(n, "piece"), wantedPieces(p)))
	}
	if n := missingSlices(p); n > 0 {
		words = append(words, fmt.Sprintf("%s of %d", count(n, "slice"), wantedSlices(p)))
	}
	return strings.Join(words, " and ")
}
