package check

import "math"

// yieldPlaces is what a yield may be missed by: it is written to six places.
const yieldPlaces = 1e-6

// yield: finished volume of parts by rough volume of boards cut less offcuts
// kept.
func yield(j *job, note note) {
	if !j.whole {
		return
	}
	var parts, rough float64
	for _, s := range j.boards {
		parts += s.finished()
		rough += s.volume() - s.offcutVolume()
	}
	stated := j.plan.Totals.Yield
	switch {
	case rough <= 0 && stated != nil:
		note("", "", "the plan says that it yields %.6f, but cuts nothing", *stated)
	case rough > 0 && stated == nil:
		note("", "", "the plan does not say what it yields; it is %.6f", parts/rough)
	case stated != nil && !(math.Abs(*stated-parts/rough) <= yieldPlaces): // so that NaN is wrong
		note("", "", "the plan says that it yields %.6f; it is %.6f", *stated, parts/rough)
	}
}
