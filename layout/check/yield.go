package check

import (
	"math"

	"sawbill/layout"
)

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

// cubic millimetres below: good to about twelve digits, for figures that are
// wanted to six.

func mm(l layout.Length) float64 { return float64(l) / float64(layout.Millimetre) }

// volume is the rough volume of the board: thickness by mean width by length.
func (s *sawn) volume() float64 {
	return mm(s.wood.Thickness) * (mm(s.wood.Width) + mm(s.wood.TipWidth)) / 2 * mm(s.wood.Length)
}

// finished is the finished volume of all parts of the board.
func (s *sawn) finished() float64 {
	var sum float64
	for _, at := range s.spots {
		if at.part != nil {
			p := at.part
			long := mm(p.Length)
			if p.Set != "" { // a strip counts its slices
				long = float64(at.Slices) * mm(p.SliceThickness)
			}
			sum += float64(at.pieces()) * long * mm(p.Width) * mm(p.Thickness)
		}
	}
	return sum
}

// offcutVolume is the rough volume of what counts of the offcuts kept.
func (s *sawn) offcutVolume() float64 {
	var sum float64
	for _, at := range s.spots {
		if r := s.clean(at); at.Offcut != "" && r.Y1 < r.Y2 {
			sum += mm(r.X2-r.X1) * mm(r.Y2-r.Y1) * mm(s.wood.Thickness)
		}
	}
	return sum
}
