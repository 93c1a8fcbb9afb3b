// Package lp solves linear programmes to which columns are added all the time:
//
//	minimise cost*x  where every row's sum is at least, at most or equal to its
//	right-hand side, and x >= 0
//
// It is the revised simplex method (Dantzig 1951; Dantzig & Orchard-Hays 1954)
// with the inverse of the basis held whole, meant for up to some 300 rows and
// ten thousand sparse columns. It knows nothing about what rows and columns stand
// for.
//
//   - A programme (program.go) keeps its basis, so that Solve goes on from where
//     it stood when columns were added, forbidden or allowed, or right-hand sides
//     were changed.
//   - Every row has a logical variable that takes up its slack. Every variable
//     is at least 0, and one that is fixed (the logical of an equation, a
//     forbidden column) is at most 0 too; what is not in the basis is 0.
//   - A basis that violates bounds but has no attractive column is mended by the
//     dual simplex method (dual.go; Lemke 1954), any other by minimising the sum
//     of violations (repair.go; Wolfe 1965).
//   - Then the primal method (primal.go) lowers the cost. Columns are priced from
//     a short list that a full pass fills now and then (pricing.go).
//   - Ties are broken in favour of large pivots (Harris 1973). Where steps stay
//     without progress, right-hand sides are shifted a little (shift.go; Charnes
//     1952), and in the last resort the smallest index wins (Bland 1977).
//   - The inverse (inverse.go) is worked out afresh after so many pivots, or when
//     the answer does not satisfy its equations closely.
//
// There is no chance and no clock in it: the same calls give the same numbers on
// the same kind of processor.
//
// Letters: m is the number of rows; j and q are variables, the first m of them
// logical; i and r are seats of the basis; x are the values of the variables in
// their seats, y the duals by row, alpha a column as the basis sees it.
package lp
