// Package risk tells how likely a stock is enough although its wood holds defects that
// nobody sees before it is cut, by simulating the cutting of a plan many times.
//
// In a draw (draw.go) every board gets hidden defects (hidden.go): Poisson in number
// by its rough board feet, uniform in place, clipped to the board, through both faces,
// accepted by no grade. The boards are then cut one after the other as planned
// (play.go). Whoever cuts does not know where the defects are: a defect shows when a
// piece is cut whose wood it overlaps, and spoils that piece; in an offcut it goes on
// unseen.
//
// What is spoiled is wanted again, as in package layout/record: it comes from wood that
// is free (fill.go), which is the uncut boards of the rack and the offcuts that the
// record would put into the stock; only where these do not give it, a board of the plan
// that nobody has touched is cut in another way (again.go). How a piece of wood is cut
// for what is missing (wood.go) depends on that alone and not on the draw, so it is
// worked out once and remembered.
//
// Boards that are cut later can still be cut in another way, so it matters which come
// first. The plan's order is tried, and one in which a shortage shows early (order.go);
// what is said of parts and of more boards is of the better of the two.
//
// The answer is a low one: the wood of a spoiled piece is thrown away, wood is taken
// in one of two orders, and hardly more than one way to cut each piece of it is tried. Who
// plans again with more time may finish a job that runs short here.
//
// # More defects never help
//
// A defect more may lead the replanning to other wood, which happens to be sound. So
// that no draw is finished because of a defect, a draw counts as finished only if it is
// finished with the first k of its defects alone, too, for every k, none included;
// defects are ordered by the share of their rates at which they appear. With all rates
// multiplied by a factor the defects of a draw are the first ones of those at the higher
// rates: a higher factor never raises the chance. Nor does one more board lower it: it
// is taken only when all other wood is used up.
package risk
