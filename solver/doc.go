// Package solver decides how to cut: for one board exactly, for a whole job as
// well as time allows.
//
// The job is a cutting-stock problem in which every board is different: choose
// at most one column a board, cover the demand, pay for the boards.
//
//   - One board: package column finds the best column at given part values, and
//     columns that keep within what is still wanted (pricer.go holds boards that
//     are ready).
//   - The first plan (first.go) prices each board at most once.
//   - Part values (values.go) start from the cost of wood and move towards what
//     the parts really cost in the present plan.
//   - A plan for the whole is made by diving in the linear programme over columns
//     (dive.go), and cutting the last boards of it anew (dive_tail.go): after each pass of
//     the proof, or at first where nothing is to be proven, and now and then. Of very
//     many boards some are cut anew in that way, time and again (dive_part.go).
//   - The search (search.go) takes a few boards apart in every round (tasks.go,
//     and a neighbourhood a file: pick_*.go) and plans them again by column
//     generation and the best choice among their columns (regrow.go,
//     restricted.go), several tasks side by side (parallel.go).
//   - A job with glue-ups (glueups.go) is a search over compositions (composition.go):
//     how many copies there are, of how many slices. Each is tried as a job of its own
//     with a row for every strip (strips.go, trial.go). A linear programme over all
//     strips (guide.go) says where to begin, and proves a bound (copies.go).
//   - What is proven comes from passes over all boards at prices that fit (proof.go,
//     attempt.go), which heed what else binds every plan (heeds.go); it takes turns with
//     the search (pace.go). Each pass sketches the cuttings with which boards are bounded;
//     cuts are made of these, and the search lets blanks start where they do.
//   - Small jobs are searched as a whole as well (small.go), and what is missing is
//     sought by cutting a few boards anew together (short.go), at prices that rank
//     pieces as layout.Score does (small_rank.go).
//   - Pieces that match are given one board each word before the search begins, which
//     the linear programme chooses (match.go).
//   - What boards can by no means make whole is shown without a plan (require.go);
//     package buy builds on that.
//   - A last pass makes the plan tidier for hardly any money (tidy.go), spare pieces are
//     laid into its scrap (spare.go), and package snug takes needless cuts out.
//
// The package prints nothing, reads no file and no clock. Whoever calls decides
// when to stop, by the context or by a number of rounds; with the same rounds and
// seed the answer is the same.
package solver
