package layout

import "slices"

// use says what one patch of a board's wood becomes, in the order in which the
// account counts it: wood that is two of these is the first of them.
type use uint8

const (
	usePart use = iota
	useOffcut
	useKerf
	useEdge
	useDefect
	useScrap
)

// patch is a rectangle put to one use.
type patch struct {
	rect Rect
	use  use
}

// patchAreas measures, in square millimetres, the wood that goes to each use.
// The board is cut into slabs at every patch's ends, each slab into cells at
// every patch's edges; a cell goes to the first use that covers it.
func patchAreas(b *Board, list []patch) [useScrap + 1]float64 {
	xs := []Length{0, b.Length}
	ys := []Length{0, b.FullWidth()}
	list = onBoard(b, list)
	for _, p := range list {
		xs = append(xs, p.rect.X1, p.rect.X2)
		ys = append(ys, p.rect.Y1, p.rect.Y2)
	}
	slices.Sort(xs)
	slices.Sort(ys)
	xs, ys = slices.Compact(xs), slices.Compact(ys)
	var area [useScrap + 1]float64
	for i := range xs[1:] {
		slab := patchesIn(list, Span{xs[i], xs[i+1]})
		for j := range ys[1:] {
			cell := Rect{xs[i], xs[i+1], ys[j], ys[j+1]}
			if wood := woodArea(b, cell); wood > 0 {
				area[firstUse(slab, cell)] += wood
			}
		}
	}
	return area
}

// onBoard clips patches to the board and drops those of which nothing is left:
// an empty rectangle can still seem to overlap a cell that surrounds it.
func onBoard(b *Board, list []patch) []patch {
	var on []patch
	for _, p := range list {
		p.rect = p.rect.Intersect(b.Frame())
		if !p.rect.Empty() {
			on = append(on, p)
		}
	}
	return on
}

func patchesIn(list []patch, slab Span) []patch {
	var in []patch
	for _, p := range list {
		if p.rect.Along().Overlaps(slab) {
			in = append(in, p)
		}
	}
	return in
}

func firstUse(list []patch, cell Rect) use {
	first := useScrap
	for _, p := range list {
		if p.use < first && p.rect.Overlaps(cell) {
			first = p.use
		}
	}
	return first
}

// woodArea is the area of a cell under the far edge, in square millimetres.
func woodArea(b *Board, cell Rect) float64 {
	if b.Width == b.TipWidth {
		return mm(cell.Length()) * mm(cell.Width())
	}
	slope := (mm(b.TipWidth) - mm(b.Width)) / mm(b.Length)
	h1 := mm(b.Width) + slope*mm(cell.X1) - mm(cell.Y1) // height of the wood over the cell's near side
	h2 := mm(b.Width) + slope*mm(cell.X2) - mm(cell.Y1)
	return meanClamped(h1, h2, mm(cell.Width())) * mm(cell.Length())
}

// meanClamped is the mean of a quantity that runs linearly from h1 to h2 and is
// held between 0 and top.
func meanClamped(h1, h2, top float64) float64 {
	above := func(level float64) float64 { // mean of max(0, h - level)
		a, c := h1-level, h2-level
		switch {
		case a <= 0 && c <= 0:
			return 0
		case a >= 0 && c >= 0:
			return (a + c) / 2
		}
		up := max(a, c)
		return up * up / (max(a, c) - min(a, c)) / 2
	}
	return above(0) - above(top)
}
