package column

import (
	"math"
	"sort"

	"sawbill/layout"
)

// availableIn is the thickness that a trued piece of the board finishes to. It is
// worked out in floating point first: only where that comes near the thickness of
// some parts does it matter how it is rounded.
func (w *Board) availableIn(blank layout.Rect) layout.Length {
	b := w.wood
	if b.Flat() {
		return w.shop.Available(b)
	}
	along := float64(blank.Length()) / float64(b.Length)
	across := float64(max(0, b.WoodWidth(blank))) / float64(b.FullWidth())
	loss := float64(b.Bow)*along*along + float64(b.Cup)*across*across + float64(b.Twist)/2*along*across
	left := w.shop.Available(b) - layout.Length(math.Ceil(loss))
	const near = layout.Micrometre
	for i := range w.thicks {
		if d := w.thicks[i].thickness - left; -near < d && d < near {
			return w.shop.AvailableIn(b, blank)
		}
	}
	return left
}

// thickest is no less than what any trued piece finishes to that holds a part so
// long and so wide.
func (w *Board) thickest(length, width layout.Length) layout.Length {
	length += 2 * max(w.end, w.shop.Snipe)
	if w.wood.Faces == layout.FacesRough {
		length = max(length, w.shop.MinBlank)
	}
	return w.shop.AvailableIn(w.wood, layout.Rect{X2: length, Y2: width})
}

// tooWide reports whether a piece of the board must be ripped before the machines
// take it.
func (w *Board) tooWide(blank layout.Rect) bool {
	most := w.shop.MachineWidth()
	return most > 0 && w.wood.WoodWidth(blank) > most
}

// cupped reports whether a piece of the board would finish to parts of more
// thicknesses in narrower pieces.
func (w *Board) cupped(blank layout.Rect) bool {
	if w.wood.Cup == 0 && w.wood.Twist == 0 {
		return false
	}
	whole := w.availableIn(blank)
	blank.Y2 = blank.Y1
	narrow := w.availableIn(blank)
	for i := range w.thicks {
		if t := w.thicks[i].thickness; whole < t && t <= narrow {
			return true
		}
	}
	return false
}

// ripsFirst reports whether some blank may have to be ripped before it is trued,
// for the sake of the machines or of a thickness.
func (w *Board) ripsFirst() bool {
	frame := w.wood.Frame()
	return w.tooWide(frame) || w.wood.Cup > 0 || w.wood.Twist > 0
}

// narrower lists the widths that pieces of a blank must not exceed, so that the
// machines take them, or that they finish to a thickness to which the whole blank
// does not.
func (w *Board) narrower(whole layout.Rect) []layout.Length {
	var widths []layout.Length
	if w.tooWide(whole) {
		widths = append(widths, w.shop.MachineWidth())
	}
	if !w.cupped(whole) {
		return widths
	}
	avail := w.availableIn(whole)
	for i := range w.thicks {
		if t := w.thicks[i].thickness; t > avail {
			widths = append(widths, w.widestFor(whole, t))
		}
	}
	return widths
}

// widestFor is the widest piece along a blank, on the grid, that finishes to a
// thickness; 0 where none does.
func (w *Board) widestFor(whole layout.Rect, thickness layout.Length) layout.Length {
	n := sort.Search(w.y.n, func(j int) bool {
		whole.Y2 = whole.Y1 + w.y.at(j+1)
		return w.availableIn(whole) < thickness
	})
	return w.y.at(n)
}
