// Package buy decides what to buy.
//
// Where the yard's boards are known, Decide looks for those that complete a bill
// together with the rack for the least money, and proves how much less any others
// could cost. What counts is what is paid at the yard: the rack is paid for, and an
// offcut brings nothing back. So the job is planned as one in which boards of the
// rack are free and no offcut has a worth (money.go); what the solver proves of that
// job is a proof in yard money, for it holds for every plan. The answer is then held
// against the boards that an ordinary plan would buy, and single boards are left out
// or exchanged for cheaper ones as long as the bill is still completed (trial.go).
//
// Where no board of the yard is known, Ask says how much wood to ask for: what the
// rack does not give is planned out of piles of boards as a yard usually has them,
// drawn by chance.
//
// As all of the solver, the package reads no file and no clock.
package buy
