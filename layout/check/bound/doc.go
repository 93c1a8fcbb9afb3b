// Package bound proves a lower bound on the cost of a plan from the prices that
// the plan carries, and from nothing else. It shares no code with the solver and
// takes its time: it is there so that nobody need believe the solver.
//
// # What prices prove
//
// Let p(i) >= 0 be a price for each piece of part i, d(i) the pieces that a plan
// makes, and c(b) the cost of board b. A valid plan with the same parts missing
// makes the same pieces: it cuts some boards, and what it cuts from board b, at
// these prices and with the worth of the offcuts, is worth at most best(b, p), the
// most that any cutting of that board alone can be worth. So it costs
//
//	sum over boards cut of (c(b) - offcuts of b)
//	  >= sum of d(i) p(i) - sum over boards cut of (best(b, p) - c(b))
//	  >= sum of d(i) p(i) - sum over all boards of max(0, best(b, p) - c(b)).
//
// That is the Lagrangian dual of the plan in which the demand is priced out
// (Geoffrion 1974), the bound of Dantzig & Wolfe (1960) and of the cutting stock
// programmes of Gilmore & Gomory (1961, 1965). Any prices will do, and anything
// that is no less than best(b, p) may stand in its place: the bound is lower then,
// and still valid.
//
// # Glue-ups
//
// A set's strips may have any length that gives whole slices, so there is a price for
// each row and each number of slices, and best(b, p) is over all of them. In the place
// of d(i) p(i) stands the least that copies with as many slices as the plan makes can
// be worth (strips.go).
//
// # What stands in the place of best(b, p)
//
// The recursion over the levels in which wood is cut, from the inside out: the
// last rip of one length (stack.go), the lengths of a strip (strip.go), the strips
// of a blank (blank.go), the blanks of a board (lengths.go). It is the best way to
// cut a board under rules that are never stricter than those of a valid plan:
//
//   - A place x is known by its position floor(x/g) on a grid alone (axis.go). A
//     piece of size s, cut off by a kerf k, takes floor((s+k)/g) positions. As
//     floor(a)+floor(b) <= floor(a+b), whatever fits on the board fits on the
//     grid: floor is superadditive, a dual feasible function (Fekete & Schepers
//     2001). What fits on the grid may not fit on the board, unless all places that
//     matter lie on it: then a position is one place.
//   - A part meets a defect only if it does so from every place that its position
//     stands for; the far edge is taken where it is best for the piece, and a
//     micrometre out, as the checker allows.
//   - An offcut counts from the first place of its first position to the last
//     place of its last: at most one position larger each way. Its worth is
//     rounded up. Where the far edge cuts into a strip, an offcut crosscut from it
//     is taken for as high as the highest of a band of heights (measure.go).
//   - A trued blank may hold strips of any thicknesses that its board can give.
//   - A rough rip before truing counts as a rip that costs its kerf and the joint
//     of one edge, if that is less than the kerf of a rip. An offcut that is as long as
//     its blank may have come from one: then it may lie where truing would take wood,
//     and the strips beside it have a joint to lose.
//   - A blank is as thick as the shortest blank between two cells would be, ripped to
//     the width of the part; so a cup costs nothing but parts that are too wide. The
//     wood of a crooked board begins where it does in that shortest blank, and defects
//     reach as far across as in the shortest blank of the board.
//   - Machines limit how wide a strip is; what a rough rip for their sake costs beyond
//     the above is not reckoned with.
//   - A strip that leans loses a kerf beside the reference edge, and its wedge beside
//     the far edge. Of what lies beyond it, it keeps its kerf, however that leans. Parts
//     that lean otherwise than their strip lose a kerf before them where they are the first,
//     and the least wedge behind the last, in square strips, and nothing in others.
//   - Layers are counted as far as the thickness of the board goes, whatever quantity
//     is wanted.
//   - Metal is a defect that no grade accepts; kerfs may meet it.
//   - Of a board so narrow that nothing lies beside a part, nothing is reckoned with
//     but its length (stick.go), where that says more.
//   - Copies are not limited, and match is ignored: the same holds for best(b, p).
//
// That a length of a strip holds a part, and a strip one unless the far edge cuts into it,
// relaxes nothing: otherwise an offcut as high as the strip, or as long as the blank, is
// worth no less.
//
// Where the grid divides all sizes, and none of the other rules is relaxed, it
// finds best(b, p) itself.
//
// # How it gets there
//
// A board of which no part has a price gives offcuts alone, and they are worth no more
// than the credit for all of its wood. The others are looked at on a rough grid first,
// which is a relaxation like any grid and proves most of what plans state. Where sizes
// lie on no mark of a rule, a much finer one comes last.
//
// Positions are taken together in cells at first, along the board and across it,
// and a step between two cells is worth what the best step between any of their
// positions could be: the longest piece, the widest strip. The best way over
// cells is no less than the best way over positions. Then only those cells are
// split which the best way leads over (chain.go). Boards are looked at level by
// level, more finely each time, until together they prove what the plan states or
// until every best way leads over single positions (prove.go). A board that is
// worth no more than it costs needs no closer look.
//
// Values are whole numbers, hundredths of a ten-thousandth of the currency, and
// sums over boards are exact.
//
// Letters: i and h are positions along, j and k across; a is where a blank
// begins, and e the position at which the next piece may begin after it; k and e
// lie behind the kerf. c numbers classes of parts of one thickness, lean and length, z
// the zones of a class: stretches along the board where it meets the same
// defects.
package bound
