package layout

import "slices"

// checkDefects gives the defects of a board, clipped to it.
func checkDefects(a about, shop *Shop, b *Board) []Defect {
	var clipped []Defect
	for _, d := range b.Defects {
		if _, known := shop.Kinds[d.Kind]; !known {
			a.fault("defects", string(d.Kind), WantOneOf(string(d.Kind), shop.kindWords()))
		}
		in, ok := clip(a, shop, b, d)
		if ok {
			clipped = append(clipped, in)
		}
	}
	return clipped
}

// clip cuts off what lies beyond the board's frame. A defect beyond the frame,
// or beyond the far edge of a board with taper, is on no wood at all.
func clip(a about, shop *Shop, b *Board, d Defect) (Defect, bool) {
	in := d
	in.Rect = d.Rect.Intersect(b.Frame())
	switch {
	case b.Length <= 0 || b.FullWidth() <= 0:
		return d, true // the board itself is at fault
	case d.Rect.Empty():
		a.fault("defects", describe(shop, d), "want a place with some length and width")
		return d, false
	case in.Rect.Empty(), in.Rect.Y1 >= max(b.Far(in.Rect.X1), b.Far(in.Rect.X2)):
		a.fault("defects", describe(shop, d), "which lies wholly off the board")
		return d, false
	case in.Rect != d.Rect:
		a.warn("defects", describe(shop, d), "which reaches over the board and is taken as "+describe(shop, in))
	}
	return in, true
}

// describe writes a defect in the notation of the stock file.
func describe(shop *Shop, d Defect) string {
	at := func(l Length) string { return l.Format(shop.Units, shop.Fraction) }
	text := string(d.Kind) + " " + at(d.Rect.X1) + ".." + at(d.Rect.X2) +
		" x " + at(d.Rect.Y1) + ".." + at(d.Rect.Y2)
	if d.Face != Through {
		text += " /" + d.Face.String()
	}
	return text
}

// kindWords are the kinds that the shop knows, in order.
func (s *Shop) kindWords() []string {
	var words []string
	for k := range s.Kinds {
		words = append(words, string(k))
	}
	slices.Sort(words)
	return words
}
