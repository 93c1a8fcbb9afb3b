// Package steps turns a checked plan into the work of a person at the saw: an
// ordered list of cuts, each with the piece in hand, the end or edge to measure
// from, the distance to set, what comes off, what is left and the caution that
// belongs to it. The drawings and the step files are both made from here, so
// that their numbers agree.
//
// Three rules make every setting good at the moment it is used:
//
//   - A rough board is cut from its tip toward its butt, always measured from
//     the butt. So the readings of one tape on the uncut board stay true until
//     the last cut.
//   - A trued blank is ripped from its jointed edge and a strip is crosscut from
//     its squared end; the fresh kerf is the next reference. A last piece that ends
//     where the tip is square is cut from that.
//   - Too little waste to hold between fence and blade is never trimmed that
//     way: the piece is cut wide first and then trimmed from its sawn edge.
//
// Edges that lean are ripped by turns from the far edge, with face B down, and from
// the edge that this leaves, with face A down; see bevel.go. Layers are resawn last,
// when the wood has its length and width; see resaw.go.
//
// A trued blank is its usable rectangle: jointed at the reference edge, squared
// at the butt end, good for at least that size. Its far edge and tip end may
// still be rough, and then a piece that reaches them has a cut of its own
// there, even where the plan leaves nothing beyond.
//
// Words: the chalk name of a piece is what is written on the wood. It stays on
// what is left of a piece while pieces come off it; the id adds how many cuts
// ago that was, so that no two pieces of a job ever share an id.
package steps
