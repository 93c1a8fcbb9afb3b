// Package record follows a job over time: what is cut, what turned up in the wood,
// what was spoiled, what measures otherwise than planned, what more is wanted.
//
// Every change makes a Draft of the next revision out of a plan, and the Draft is
// completed to a plan that is whole by itself and passes the check:
//
//   - A board that is being cut stays in the plan with its whole tree of cuts, done
//     or not, for its cuts are what is true of it. A planned piece that is given up
//     becomes an offcut or scrap in the tree; wood that is off already and worth
//     keeping becomes a board of the stock, of its present size, in its own frame.
//   - A board whose pieces are all cut leaves the stock. Its pieces are in the record,
//     and its offcuts are boards of the stock.
//   - A board that nobody has touched keeps its cuts as far as they are valid.
//   - A copy of a glue-up of which strips are cut keeps its number of slices. Its
//     strips count for it wherever they were cut; slices that no begun copy gives are
//     new copies.
//
// So a change alters as few sheets as it can. What is then missing is planned out of
// boards that are still whole; only if that leaves something missing, boards are
// planned again that the former plan cuts: few of them, then all.
package record
