// Package exhaust finds the best plans of tiny jobs by trying every position of
// a coarse grid at every level in which wood is cut. Only tests use it: it is the
// plain truth that bounds, board routine and search are held against, so it shares
// no code and no idea with them.
//
// A board is rough crosscut, each blank perhaps rough ripped, trued, ripped into
// strips, these crosscut into cells, and cells perhaps ripped again; what lies
// between the cuts is a part, an offcut or waste. For every piece that can come
// about, a front holds the ways to cut it up, one for each vector of counts of
// parts: the one whose offcuts are worth the most. Fronts of neighbours are
// joined by adding every way of the one to every way of the other, within what
// the bill asks for. Nothing is left out because it looks bad.
//
// Kerfs, trims, sizes and defects are best whole units of the grid; then, without
// taper, some best plan lies on the grid. Otherwise what is found is the best of
// the plans on the grid. Warp, machine widths, bevels, parts on edge, resawing,
// matching and glue-ups are not known here.
package exhaust
