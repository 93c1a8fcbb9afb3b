package render

import (
	"fmt"
	"strings"
)

// Point is a place on the paper in millimetres, x to the right and y down from
// the top left corner.
type Point struct{ X, Y float64 }

// Box is an upright rectangle of paper.
type Box struct{ X1, Y1, X2, Y2 float64 }

// Overlaps reports whether the interiors of two boxes meet.
func (b Box) Overlaps(c Box) bool {
	return b.X1 < c.X2 && c.X1 < b.X2 && b.Y1 < c.Y2 && c.Y1 < b.Y2
}

// Contains reports whether c lies within b.
func (b Box) Contains(c Box) bool {
	return b.X1 <= c.X1 && c.X2 <= b.X2 && b.Y1 <= c.Y1 && c.Y2 <= b.Y2
}

func (b Box) grow(by float64) Box { return Box{b.X1 - by, b.Y1 - by, b.X2 + by, b.Y2 + by} }

func (b Box) corners() []Point {
	return []Point{{b.X1, b.Y1}, {b.X2, b.Y1}, {b.X2, b.Y2}, {b.X1, b.Y2}}
}

func (b Box) w() float64 { return b.X2 - b.X1 }
func (b Box) h() float64 { return b.Y2 - b.Y1 }

// Shape is a polygon, or a line when Open.
type Shape struct {
	Points []Point
	Open   bool
	Fill   Ink
	Stroke Ink
	Weight float64 // mm
	Dash   []float64
}

// Label is a line of text.
type Label struct {
	Text     string
	Baseline Point // its left end
	Cap      float64
	Bold     bool
	Ink      Ink
	Box      Box
	Framed   bool // a step number, in an opaque frame
}

// Scene is one page of paper.
type Scene struct {
	Width, Height float64 // mm
	Shapes        []Shape
	Labels        []Label
	// Leaders are the lines that lead from labels to what they name; no label may
	// touch one that is not its own.
	Leaders []Box
}

func (s *Scene) box(b Box, fill, stroke Ink, weight float64) {
	s.Shapes = append(s.Shapes, Shape{Points: b.corners(), Fill: fill, Stroke: stroke, Weight: weight})
}

func (s *Scene) polygon(points []Point, fill, stroke Ink, weight float64) {
	s.Shapes = append(s.Shapes, Shape{Points: points, Fill: fill, Stroke: stroke, Weight: weight})
}

func (s *Scene) line(a, b Point, weight float64, dash ...float64) {
	s.Shapes = append(s.Shapes, Shape{
		Points: []Point{a, b}, Open: true, Stroke: Black, Weight: weight, Dash: dash,
	})
}

// String is the scene as text, one thing a line, to a tenth of a millimetre.
func (s *Scene) String() string {
	var b strings.Builder
	fmt.Fprintf(&b, "page %.1f x %.1f\n", s.Width, s.Height)
	for _, sh := range s.Shapes {
		kind := "polygon"
		if sh.Open {
			kind = "line"
		}
		fmt.Fprintf(&b, "%s fill %d stroke %d weight %.2f dash %v", kind, sh.Fill, sh.Stroke, sh.Weight, sh.Dash)
		for _, p := range sh.Points {
			fmt.Fprintf(&b, " %.1f,%.1f", p.X, p.Y)
		}
		b.WriteByte('\n')
	}
	for _, l := range s.Labels {
		fmt.Fprintf(&b, "text %q at %.1f,%.1f cap %.1f bold %t\n", l.Text, l.Baseline.X, l.Baseline.Y, l.Cap, l.Bold)
	}
	return b.String()
}
