package risk

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// verdict is what came of a draw.
type verdict struct {
	// need is what is missing of a draw that was not finished, by row; nil: all is made.
	need []int
	// lost is how many pieces of a row each board of the plan loses if it is cut as
	// planned.
	lost []loss
}

type loss struct{ board, row, n int }

// draw is one draw of a job, a function of the seed and its number.
func (j *job) draw(seed int64, number int, bench *column.Bench) verdict {
	var spots []spot
	for id, b := range j.roots {
		if b.mean > 0 {
			spots = append(spots, b.draw(source(seed, number, id), id)...)
		}
	}
	byAppearance(spots)
	return j.judge(spots, bench)
}

// judge plays a job with defects, in the order in which they appear.
func (j *job) judge(spots []spot, bench *column.Bench) verdict {
	v := verdict{lost: j.losses(byBoard(spots, len(j.roots)))}
	if r, ok := j.play(spots, bench); !ok {
		v.need = wanted(r.need)
		return v
	}
	// A run with more defects is the same run as long as they lie in nothing that was cut.
	for n := 0; n < len(spots); {
		r, ok := j.play(spots[:n], bench)
		if !ok {
			v.need = wanted(r.need)
			return v
		}
		for n++; n < len(spots) && !r.met(spots[n-1]); {
			n++
		}
	}
	return v
}

func (j *job) play(spots []spot, bench *column.Bench) (*play, bool) {
	r := &play{j: j, bench: bench, spots: byBoard(spots, len(j.roots))}
	return r, r.run()
}

// met reports whether a defect lies in a piece that was cut.
func (r *play) met(s spot) bool {
	for _, m := range r.cuts {
		if m.root == s.root && slices.ContainsFunc(m.cut.pieces, func(p piece) bool { return p.touch.Overlaps(s.at) }) {
			return true
		}
	}
	return false
}

// losses are the pieces that boards lose if they are cut as planned.
func (j *job) losses(spots [][]layout.Rect) []loss {
	var list []loss
	r := &play{j: j, spots: spots}
	for k := range j.planned {
		rows := map[int]int{}
		for _, p := range j.planned[k].cut.pieces {
			if r.spoils(k, p) {
				rows[p.row] += p.n
			}
		}
		for row := range j.p.Bill {
			if rows[row] > 0 {
				list = append(list, loss{k, row, rows[row]})
			}
		}
	}
	return list
}
