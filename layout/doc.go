// Package layout knows the wood and the cuts: exact lengths, areas and money,
// boards with their defects, parts, the shop, the tree of cuts, whole plans and
// what makes one plan better than another.
//
// It reads no files, draws nothing and optimises nothing. Data goes one way:
// the files package fills a Problem, the solver turns it into a Plan, the check
// package replays the plan, the steps and render packages put it on paper.
//
// Everything is measured in the board's own frame: face A up, the reference
// edge toward you; x runs along the grain from the butt, y runs across from the
// reference edge.
package layout
