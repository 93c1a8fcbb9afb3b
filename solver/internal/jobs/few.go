package jobs

import "fmt"

// Few are jobs of one to five boards, two to four kinds and 5 to 13 pieces by chance, not all
// of which can be made whole.
func Few() []Named { return few("few-", short) }

// FewFlat are the same of boards that do not taper.
func FewFlat() []Named {
	like := short
	like.tapered = 0
	return few("flat-", like)
}

func few(name string, like rack) []Named {
	var jobs []Named
	for i := range 20 {
		boards := 1 + i%5
		size := Size{Boards: boards, Kinds: 2 + i%3, Pieces: 3 + 2*boards}
		jobs = append(jobs, Named{fmt.Sprint(name, i+1), drawn(size, int64(1000+i), like)})
	}
	return jobs
}
