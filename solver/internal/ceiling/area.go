package ceiling

import (
	"math"

	"sawbill/layout"
)

const mm2 = float64(layout.Millimetre) * float64(layout.Millimetre)

// area is how much sound wood there is at most in a strip of the board, from the
// butt to any place: what offcuts are measured with. It is additive along.
type area struct {
	w      *Board
	low    layout.Length // where the strip begins across, at the least
	height layout.Length // of the strip, at the most
	holes  []hole
}

// hole is a stretch of the strip that a defect covers across by at least so
// much. No two overlap as rectangles, so they may be taken off together.
type hole struct {
	along layout.Span
	cover layout.Length
}

// newArea measures a strip that begins at low; cover says how much of a defect
// it holds across, for certain.
func (w *Board) newArea(low, height layout.Length, cover func(spot layout.Rect) layout.Length) area {
	a := area{w: w, low: low, height: height}
	for _, s := range w.spots {
		if c := cover(s); c > 0 {
			a.holes = append(a.holes, hole{s.Along(), c})
		}
	}
	return a
}

// upTo is the area from the butt to x, square millimetres.
func (a *area) upTo(x layout.Length) float64 {
	x = min(max(x, 0), a.w.wood.Length)
	sum := a.outline(x)
	for _, h := range a.holes {
		if x > h.along.Lo {
			sum -= float64(min(x, h.along.Hi)-h.along.Lo) * float64(h.cover)
		}
	}
	return sum / mm2
}

// outline is the area up to x without regard to defects: the strip's height, or
// what the slanting far edge leaves of it.
func (a *area) outline(x layout.Length) float64 {
	b := a.w.wood
	height, butt, tip := float64(a.height), float64(b.Width-a.low), float64(b.TipWidth-a.low)
	if butt == tip {
		return float64(x) * max(0, min(height, butt))
	}
	at := func(x float64) float64 { return butt + (tip-butt)*x/float64(b.Length) }
	cross := func(level float64) float64 { // where the edge is at a level, held within 0 and x
		return min(max((level-butt)/(tip-butt)*float64(b.Length), 0), float64(x))
	}
	// Between these places the height is the strip's, a straight line, or nothing.
	p, q := cross(height), cross(0)
	from, to := min(p, q), max(p, q)
	level := func(x float64) float64 { return max(0, min(height, at(x))) }
	piece := func(lo, hi float64) float64 { return (hi - lo) * (level(lo) + level(hi)) / 2 }
	return piece(0, from) + piece(from, to) + piece(to, float64(x))
}

// rough is the worth of an offcut of the board's width from low on, between two
// places, at most: no more than all sound wood there, and no more than the largest
// rectangle.
func (w *Board) rough(lo, hi, low layout.Length) Value {
	return min(w.sound(lo, hi), Value(math.Ceil(w.rectangle(lo, hi, low)*w.rate))+1)
}

// sound is the worth of all sound wood between two places.
func (w *Board) sound(lo, hi layout.Length) Value {
	return Value(math.Ceil((w.whole.upTo(hi)-w.whole.upTo(lo))*w.rate)) + 1
}

// rectangle is the area of the largest rectangle from low up to the far edge
// between two places. Under a slanting edge it begins where the board is wide and
// ends at x, and (x - lo) * far(x) is a parabola.
func (w *Board) rectangle(lo, hi, low layout.Length) float64 {
	b := w.wood
	slope := float64(b.TipWidth-b.Width) / float64(b.Length)
	wide, length := float64(b.Width-low)+slope*float64(lo), float64(hi-lo)
	if slope > 0 {
		wide = float64(b.Width-low) + slope*float64(hi)
	}
	if fall := math.Abs(slope); fall > 0 {
		length = min(length, max(0, wide)/(2*fall))
		wide -= fall * length
	}
	return length * max(0, wide) / mm2
}
