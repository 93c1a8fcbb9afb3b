package render

import (
	"math"

	"sawbill/layout"
)

// frame maps a rectangle of a board to paper: the butt to the left, the
// reference edge to the bottom.
type frame struct {
	wood   layout.Rect
	at     Box     // where it lies on the paper
	sx, sy float64 // millimetres of paper for a nanometre
}

func newFrame(wood layout.Rect, at Box) frame {
	return frame{wood, at, at.w() / float64(wood.Length()), at.h() / float64(wood.Width())}
}

func (f frame) x(l layout.Length) float64 { return f.at.X1 + float64(l-f.wood.X1)*f.sx }
func (f frame) y(l layout.Length) float64 { return f.at.Y2 - float64(l-f.wood.Y1)*f.sy }

func (f frame) box(r layout.Rect) Box {
	return Box{f.x(r.X1), f.y(r.Y2), f.x(r.X2), f.y(r.Y1)}
}

// distorted reports whether the drawing is stretched across.
func (f frame) distorted() bool { return math.Abs(f.sy/f.sx-1) > 0.02 }

// kerf draws the way of a saw, never thinner than can be seen.
func (s *Scene) kerf(b Box) {
	if b.w() < b.h() {
		if d := kerfLeast - b.w(); d > 0 {
			b.X1, b.X2 = b.X1-d/2, b.X2+d/2
		}
	} else if d := kerfLeast - b.h(); d > 0 {
		b.Y1, b.Y2 = b.Y1-d/2, b.Y2+d/2
	}
	s.box(b, Black, NoInk, 0)
}

// defect shades a box by its kind.
func (s *Scene) defect(b Box, k layout.Kind) {
	h := hatchOf(k)
	s.box(b, White, NoInk, 0)
	for _, angle := range h.angles {
		s.hatch(b, angle, h.pitch, h.dash)
	}
	s.box(b, NoInk, Black, h.outline)
}

// hatch fills a box with parallel lines: those of the points p with p·n a
// multiple of the pitch, n being the normal of the angle.
func (s *Scene) hatch(b Box, angle, pitch float64, dash []float64) {
	sin, cos := math.Sincos(angle * math.Pi / 180)
	normal := Point{-sin, -cos}
	direction := Point{cos, -sin}
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, p := range b.corners() {
		d := p.X*normal.X + p.Y*normal.Y
		lo, hi = min(lo, d), max(hi, d)
	}
	for d := math.Ceil(lo/pitch) * pitch; d <= hi; d += pitch {
		from := Point{normal.X * d, normal.Y * d}
		if a, c, ok := clipLine(b, from, direction); ok {
			s.line(a, c, thinLine, dash...)
		}
	}
}

// clipLine is the part of the line through p along d that lies in a box.
func clipLine(b Box, p, d Point) (from, to Point, ok bool) {
	lo, hi := math.Inf(-1), math.Inf(1)
	for _, axis := range [][4]float64{{p.X, d.X, b.X1, b.X2}, {p.Y, d.Y, b.Y1, b.Y2}} {
		at, by, least, most := axis[0], axis[1], axis[2], axis[3]
		if math.Abs(by) < 1e-9 {
			if at < least || at > most {
				return from, to, false
			}
			continue
		}
		t1, t2 := (least-at)/by, (most-at)/by
		lo, hi = max(lo, min(t1, t2)), min(hi, max(t1, t2))
	}
	return Point{p.X + lo*d.X, p.Y + lo*d.Y}, Point{p.X + hi*d.X, p.Y + hi*d.Y}, hi-lo > 0.2
}

// rounded is a box with round corners.
func rounded(b Box, r float64) []Point {
	const steps = 6
	var points []Point
	for i, c := range []Point{{b.X2 - r, b.Y2 - r}, {b.X1 + r, b.Y2 - r}, {b.X1 + r, b.Y1 + r}, {b.X2 - r, b.Y1 + r}} {
		for j := range steps + 1 {
			sin, cos := math.Sincos((float64(i) + float64(j)/steps) * math.Pi / 2)
			points = append(points, Point{c.X + r*cos, c.Y + r*sin})
		}
	}
	return points
}
