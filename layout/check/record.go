package check

// recorded: a piece that the record says is cut, and that the plan still shows on its
// board, is that part there, in that place and of as many slices; and each is cut once.
// What was cut from boards that the plan no longer holds is beyond this package.
func recorded(j *job, note note) {
	if j.plan.Record == nil {
		return
	}
	at := map[string]*spot{}
	board := map[string]string{}
	j.eachPart(func(s *sawn, leaf *spot) {
		for n := range leaf.pieces() {
			at[layerID(leaf, n)], board[layerID(leaf, n)] = leaf, s.wood.Mark
		}
	})
	seen := map[string]bool{}
	for i := range j.plan.Record.Cut {
		c := &j.plan.Record.Cut[i]
		id := c.Wood.Mark
		if seen[id] {
			note(c.Board, id, "the record says twice that it is cut")
		}
		seen[id] = true
		leaf := at[id]
		if leaf == nil {
			continue
		}
		if leaf.Part != c.Part || leaf.Slices != c.Slices || leaf.Rect != c.Lay || board[id] != c.Board {
			note(c.Board, id, "it was cut as %s at %v with %d slices; the plan has it as %s at %v with %d",
				c.Part, c.Lay, c.Slices, leaf.Part, leaf.Rect, leaf.Slices)
		}
	}
}
