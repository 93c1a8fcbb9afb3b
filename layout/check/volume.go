package check

import "sawbill/layout"

// mm is a length in millimetres. Volumes are cubic millimetres in floating
// point, good to about twelve digits, for figures that are wanted to six.
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
