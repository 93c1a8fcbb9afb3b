// Package ceiling says what one board can be worth at most: a bound from above
// on the value of its best cutting when every part has a price, for any number
// of copies. It is what a proven lower bound on the cost of whole plans is made
// of (Gilmore & Gomory 1961; Dantzig & Wolfe 1960).
//
// It solves a relaxation of the cutting of one board: every valid cutting is a
// solution of it with at least the same value, so its optimum is a bound. What is
// relaxed, and nothing else:
//
//   - A position x is known as floor(x/unit) only. A piece of size s with a kerf
//     k behind it moves the position on by floor((s+k)/unit): floor(a)+floor(b) is
//     at most floor(a+b), so whatever fits in truth fits here (Lueker 1983; Fekete
//     & Schepers 2001). Defects block a position only if they block all that it
//     stands for; a slanting far edge is taken where it is widest.
//   - A trued blank may hold strips of every thickness that its board can give,
//     whether or not they can be planed one by one.
//   - A rough rip before truing is taken for a rip that costs no more than its
//     kerf and one joint.
//   - A blank is thick enough for a part where the shortest blank of its kind would
//     be if it were ripped to the part's width; so a cup costs nothing but parts that
//     are too wide. The wood of a crooked board begins where it does in the shortest
//     blank, and defects reach as far across as in the shortest of the board's.
//   - A machine limits how wide a strip is, not what a rough rip for its sake costs.
//   - Strips that lean lose a kerf beside the reference edge and the wedge beside the
//     far edge; what they take of strips that lean otherwise is their kerf alone.
//   - Where everything that a place may be measured from is a multiple of the unit, a
//     position stands for one place: some best cutting has all places on the grid
//     (Herz 1972), the starts of blanks included. For the tree and the side of every
//     defect on which each cut lies given, places are bounded by differences that are
//     whole numbers of units, and what offcuts are worth is linear in the places along
//     and in those across. What a bevel or a crook takes across is rounded down to the
//     unit, and no length changes by a whole one when places move to the grid: so a
//     blank may be nearly a unit longer than it is thick enough for.
//     Under a slanting edge places are rounded towards the end at which the board is wide,
//     where all that fitted before fits: an offcut ends less than a unit short of where it
//     did, at the narrow side, and is taken for a unit longer there.
//   - Elsewhere an offcut is taken one position larger each way, under a slanting edge only
//     across. What is ripped off a blank before it is trued loses nothing to edges and
//     ends, but the strips beside it have a joint to lose; two such offcuts side by side
//     are worth no more than one. Worth is rounded up.
//   - Metal is like any other defect.
//   - Under a slanting edge what defects take of an offcut is told by the lowest of a band
//     of heights.
//   - Strips of nearly the same height, or of the same height where they meet the
//     same defects, are valued together, each part of them as the best of them
//     (offers.go).
//   - Where blanks start and end is known to a cell only, a few inches at first
//     and smaller where it matters (crosscut.go): a blank is worth what the longest
//     one between its two cells would be.
//
// That a cell holds a part, and a strip one unless the far edge cuts into it, relaxes
// nothing: otherwise an offcut as high as the strip, or along the whole blank, is worth more.
//
// The cutting with which a bound was found can be told (sketch.go). On flat boards in whole
// marks it is mostly a valid one, or nearly.
//
// The levels are those of package column, from the inside out: cell, strip,
// blank, board. The two packages share no code, for one must never be more than
// the truth and the other never less.
package ceiling
