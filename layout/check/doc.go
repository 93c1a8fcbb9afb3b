// Package check replays a plan from first principles and lists every way in
// which it breaks the rules of a valid plan. It trusts nobody: apart from plain
// types (Length, Span, Rect, Money, Board, Part, Shop, Node, Plan) it shares no
// geometry and no formula with what makes plans, so that one mistake cannot
// hide in both.
//
// The rules are called V1 to V14, each in the file of its name. Beside them:
//
//	form     the plan is so malformed that it cannot be replayed
//	name     an unknown or repeated board, part, piece id or offcut mark
//	record   what is said to be cut, or being cut, and stands otherwise in the plan
//	cost     the cost of a board, the total cost
//	bound    the lower bound, its prices
//	yield    the yield
//	account  where the wood of a board went
//
// Arithmetic is exact: a length is a whole number of nanometres, and quotients
// (taper, crook, warp) are rounded after a division in big integers. Such a
// quotient, and the lean of a bevel, may be missed by one micrometre.
package check
