// Package snug takes the needless cuts out of a plan: those that only take a sliver
// off, or a piece of waste, because a piece lies a little off its neighbour. A plan
// that was sought on a grid of positions has some.
//
// What lies between two neighbours of a cut is one kerf at least. Where it is more
// there are two cuts, and one where it is no more. So the wood between them is given to
// another place of the same row, where it costs no cut (gaps.go): beyond the first or the
// last, where wood comes off in any case; between two others that lie apart already; to
// an offcut, which grows; to a rough blank, whose waste comes off with that at its tip
// (grow.go). What lies between those places moves along. And a strip that is wider than
// anything in it is ripped to what is in it, not to its own width first (narrow.go).
//
// The same pieces are made at the same sizes. None comes to lie on a mark of the wood
// that it did not touch before, no offcut becomes smaller (kept.go), and what a change
// is worth is what a person has to do at the saw (work.go): fewer cuts, or fewer that
// take off a sliver, and no more cautions. The checker passes every board that is
// changed. Strips that are ripped at a bevel, and what lies beside them, stay where they
// are.
package snug
