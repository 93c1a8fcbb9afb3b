package layout

import "math"

// Radians is the angle for the functions of package math.
func (a Angle) Radians() float64 { return float64(a) / float64(Degree) * math.Pi / 180 }

// Lean is how much further from the reference edge an edge that is ripped at an
// angle from square lies on face B than on face A, in wood of a thickness:
//
//	d = thickness * tan(angle)
//
// rounded up to a whole nanometre. The angle is at most 45 degrees.
func (a Angle) Lean(thickness Length) Length {
	return roundUp(float64(thickness) * math.Tan(a.Radians()))
}

// Lean is how much a piece of a bevelled part leans: its finished thickness times
// the tangent of its bevel, rounded up.
func (p *Part) Lean() Length { return p.Bevel.Lean(p.Thickness) }

// BevelKerf is how much of a face a rip at an angle from square takes, rounded up:
//
//	rip_kerf / cos(angle)
func (s *Shop) BevelKerf(a Angle) Length {
	return roundUp(float64(s.RipKerf) / math.Cos(a.Radians()))
}

// AngleOf is the angle, to the nearest millionth of a degree, at which an edge
// leans by lean in wood of a thickness above 0.
func AngleOf(lean, thickness Length) Angle {
	degrees := math.Atan2(float64(lean), float64(thickness)) * 180 / math.Pi
	return Angle(math.Round(degrees * float64(Degree)))
}

// roundUp is v rounded up, but for the last digits of floating point: 45 degrees
// in 20 mm lean by 20 mm.
func roundUp(v float64) Length {
	const noise = 1e-3 // nm
	return Length(math.Ceil(v - noise))
}
