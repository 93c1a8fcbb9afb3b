package render

import "math"

// woodLook is how a species is drawn in a face: a tone and a hatch, so that woods
// can be told apart in black and white.
type woodLook struct {
	fill  Ink
	hatch hatch
}

// woodLooks are the looks in the order of the woods of a design, light to dark as
// far as it goes. There are as many as a design may have woods.
func woodLooks() []woodLook {
	dots := []float64{0.4, 1.1}
	return []woodLook{
		{White, hatch{}},
		{WasteTone, hatch{}},
		{White, hatch{[]float64{45}, 1.5, nil, 0}},
		{OffcutTone, hatch{[]float64{0}, 2.4, dots, 0}},
		{White, hatch{[]float64{90}, 0.9, nil, 0}},
		{OffcutTone, hatch{[]float64{45, 135}, 1.6, nil, 0}},
		{White, hatch{[]float64{0, 90}, 1.3, nil, 0}},
		{WasteTone, hatch{[]float64{135}, 1.0, nil, 0}},
	}
}

// wood fills a convex polygon with a look.
func (s *Scene) wood(points []Point, look woodLook) {
	s.polygon(points, look.fill, NoInk, 0)
	for _, angle := range look.hatch.angles {
		s.hatchPolygon(points, angle, look.hatch.pitch, look.hatch.dash)
	}
}

// hatchPolygon fills a convex polygon with the lines of hatch.
func (s *Scene) hatchPolygon(points []Point, angle, pitch float64, dash []float64) {
	sin, cos := math.Sincos(angle * math.Pi / 180)
	normal, along := Point{-sin, -cos}, Point{cos, -sin}
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, p := range points {
		d := p.X*normal.X + p.Y*normal.Y
		lo, hi = min(lo, d), max(hi, d)
	}
	for d := math.Ceil(lo/pitch) * pitch; d <= hi; d += pitch {
		from, to, ok := chord(points, normal, along, d)
		if ok {
			s.line(from, to, thinLine, dash...)
		}
	}
}

// chord is the part in a convex polygon of the line of points p with p·normal = d.
func chord(points []Point, normal, along Point, d float64) (from, to Point, ok bool) {
	lo, hi := math.Inf(1), math.Inf(-1)
	for i, p := range points {
		q := points[(i+1)%len(points)]
		a, b := p.X*normal.X+p.Y*normal.Y-d, q.X*normal.X+q.Y*normal.Y-d
		if a*b > 0 || a == b {
			continue
		}
		part := a / (a - b)
		at := (p.X+part*(q.X-p.X))*along.X + (p.Y+part*(q.Y-p.Y))*along.Y
		lo, hi = min(lo, at), max(hi, at)
	}
	place := func(at float64) Point {
		return Point{normal.X*d + along.X*at, normal.Y*d + along.Y*at}
	}
	if hi-lo < 0.2 {
		return from, to, false
	}
	return place(lo), place(hi), true
}

// clipped is the part of a convex polygon that lies in a box (Sutherland & Hodgman
// 1974); it may have no points.
func clipped(points []Point, b Box) []Point {
	for _, inside := range []func(Point) float64{
		func(p Point) float64 { return p.X - b.X1 }, func(p Point) float64 { return b.X2 - p.X },
		func(p Point) float64 { return p.Y - b.Y1 }, func(p Point) float64 { return b.Y2 - p.Y },
	} {
		var kept []Point
		for i, p := range points {
			q := points[(i+1)%len(points)]
			d, e := inside(p), inside(q)
			if d >= 0 {
				kept = append(kept, p)
			}
			if d*e < 0 {
				kept = append(kept, Point{p.X + d/(d-e)*(q.X-p.X), p.Y + d/(d-e)*(q.Y-p.Y)})
			}
		}
		points = kept
	}
	return points
}
