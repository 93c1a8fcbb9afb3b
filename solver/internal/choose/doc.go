// Package choose picks from prepared columns: at most one for each group, so that
// demand is covered at least cost, shortfall being paid for by the piece.
//
//	minimise   sum of the costs of the chosen columns + sum of penalty*shortfall
//	for every kind i:  pieces made + shortfall >= demand
//
// It is branch and bound (Land & Doig 1960) over the linear relaxation, to whose
// groups a column that does nothing at no cost is added, so that exactly one
// column a group is chosen.
//
//   - Before it begins (instance.go), counts beyond the demand are cut off, and
//     of two columns the one that costs no less and makes no more goes.
//   - The relaxation (relax.go, package lp) gives prices of the kinds and a
//     fractional choice, in floating point. Nothing is believed of it.
//   - The bound (bound.go) is worked out from the prices in whole numbers by
//     Lagrange's relaxation (Geoffrion 1974), which is valid at any prices; rounding
//     can make it weaker, never wrong. At the relaxation's prices it is as good as
//     the relaxation, and better once groups are settled, because counts are cut
//     off at what is still wanted.
//   - Columns, and the leaving out of a group, that cannot beat the best choice
//     known are struck out by the same numbers (reduced-cost fixing; Dantzig,
//     Fulkerson & Johnson 1954).
//   - Fractions are rounded and polished into choices, one group at a time
//     (round.go) and two at a time (pairs.go).
//   - A node splits (split.go) on whether a group is used, then on how many
//     pieces of a kind a group makes (as Ryan & Foster 1981 split on what columns
//     have in common).
//   - Groups with the same columns are alike, and their choices are put in order
//     (alike.go). What is left in small numbers is enumerated (enumerate.go).
//
// There is no chance and no clock in it; work is limited by a number of nodes.
package choose
