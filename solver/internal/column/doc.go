// Package column finds the best way to cut one board when every part has a
// price: the pricing problem of a cutting-stock search in which every board is
// different. One way to cut one board is a column.
//
// The programme is the guillotine recursion of Gilmore & Gomory (1965) and
// Beasley (1985), with defects as in Hahn (1968) and Scheithauer & Terno (1988),
// run over the levels in which wood is cut. From the inside out:
//
//   - cell (cell.go): a length of a strip, ripped once more into parts of that
//     same length;
//   - strip (strip.go): one rip of a trued blank, crosscut into cells;
//   - blank (blank.go): a trued length of the board, ripped into strips; a piece
//     that is ripped rough first holds several of them (rough.go);
//   - board (best.go): rough crosscuts into blanks.
//
// Positions lie on a grid (grid.go). On the grid whose unit is the greatest
// common divisor of all sizes, kerfs, trims and defect edges, with every start,
// every end and every height allowed (Exact), the best column on the grid is the
// best column, but for some boards, where it is a column of the best kind that the
// grid holds (restricts in board.go): tapered or warped ones that credit offcuts, and
// those with bevelled parts. Quick allows fewer positions and a coarser grid; what it
// finds is valid, not proven best.
//
// Everything that does not depend on prices is worked out once, by New. What
// blocks a strip depends only on the defects that it meets, so strips that meet
// none, or the same ones in the same places, share one profile (profile.go).
//
// A board that is not flat or not straight gives more in short blanks. In what
// thicknesses strips may be, depends on the length and the width of the trued piece
// (thickness.go, mode.go); where the wood begins and how far defects may reach, on
// the length of the blank (lie.go). Quick then tries blanks as short as thick parts
// need them (cuts_short.go), and rough rips where machines or a cup ask for narrow
// pieces (rough_lines.go).
//
// A part may lie in the wood in several ways: flat or on edge, in one layer or in
// several that are resawn (way.go). One leaf cut in a way is worth as many pieces as
// it has layers.
//
// Strips that are ripped at a bevel lean (lean.go). What they take of their neighbours
// depends on how these lean, so the rips of a trued node then run in layers, one for
// every lean that the next strip may have.
//
// Where copies of parts are limited, Within finds a good column quickly, and
// BestLimited (limited.go) the best: labels that count pieces run through the same
// levels, bounded by what the programme without limits says.
//
// Where several boards share limits, Together (together.go) carries the same labels
// on from board to board.
//
// Letters: a is the grid index of a blank's start, e of its end; i and j are
// positions along, y positions across; h indexes heights; t thicknesses; c
// classes of parts with one thickness and one length; z zones of a class, the
// stretches along the board over which a piece of the class meets the same
// defects.
package column
