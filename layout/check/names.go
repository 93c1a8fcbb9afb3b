package check

// names: every board, part, piece and offcut can be told from every other.
func names(j *job, note note) {
	marks := namesOfStock(j, note)
	namesOfBill(j, note)
	cut := map[string]bool{}
	for i := range j.plan.Boards {
		mark := j.plan.Boards[i].Board
		if cut[mark] {
			note(mark, "", "the board is cut twice")
		}
		cut[mark] = true
	}
	taken := map[string]bool{} // ids of pieces and marks of offcuts
	for _, s := range j.boards {
		for _, at := range s.spots {
			if at.Part != "" && at.part == nil {
				note(s.wood.Mark, j.place(at), "the bill has no part %q", at.Part)
			}
			for _, name := range []string{at.ID, at.Offcut} {
				nameOnce(s.wood.Mark, name, marks, taken, note)
			}
		}
	}
}

func namesOfStock(j *job, note note) map[string]bool {
	marks := map[string]bool{}
	for i := range j.plan.Problem.Stock {
		mark := j.plan.Problem.Stock[i].Mark
		if marks[mark] {
			note(mark, "", "two boards of the stock have this mark")
		}
		marks[mark] = true
	}
	return marks
}

func namesOfBill(j *job, note note) {
	seen := map[string]bool{}
	for i := range j.plan.Problem.Bill {
		name := j.plan.Problem.Bill[i].Name
		if seen[name] {
			note("", "", "two rows of the bill are called %q", name)
		}
		seen[name] = true
	}
}

func nameOnce(board, name string, marks, taken map[string]bool, note note) {
	switch {
	case name == "":
		return
	case marks[name]:
		note(board, name, "it has the mark of a board of the stock")
	case taken[name]:
		note(board, name, "two pieces or offcuts have this name")
	}
	taken[name] = true
}
