package bound

import "sawbill/layout"

// mostStick is the most steps along a stick.
const mostStick = 1 << 18

// stick is the most that a board is worth which is too narrow for anything to lie
// beside a part; ok is false where it is not. Parts and offcuts then follow each
// other along it, a crosscut kerf apart, so what n parts of lengths l leave of the
// board for offcuts is at most
//
//	length + kerf - sum over the parts of (l + kerf)
//
// Lengths are counted in steps, those of parts rounded down.
func (w *wood) stick() (most value, ok bool) {
	room := w.board.Length - 2*w.shop.EndTrim - 2*w.inset + w.crosscut
	parts := w.partsWithin(room)
	if len(parts) == 0 || !w.oneAbreast(parts) {
		return 0, false
	}
	unit := room
	for _, p := range parts {
		for a := p.length; a != 0; {
			unit, a = a, unit%a
		}
	}
	for room/unit > mostStick {
		unit *= 2
	}
	clear := *w // without what is known of unsound areas
	clear.unsound = nil
	best := make([]value, room/unit+1)
	for n := range best {
		if n > 0 {
			best[n] = max(best[n], best[n-1])
		}
		for _, p := range parts {
			if before := n - max(1, int(p.length/unit)); before >= 0 {
				best[n] = max(best[n], best[before]+p.price)
			}
		}
		rest := layout.Rect{X2: w.board.Length + w.crosscut - layout.Length(n)*unit, Y2: w.board.FullWidth()}
		most = max(most, best[n]+clear.offcut(rest))
	}
	return most, true
}

// stickPart is a part with the kerf behind it.
type stickPart struct {
	length, width layout.Length
	price         value
}

func (w *wood) partsWithin(room layout.Length) []stickPart {
	var parts []stickPart
	for _, c := range w.classes {
		for _, q := range c.pieces {
			if l := c.length + w.crosscut; l <= room && q.width <= w.board.FullWidth()-w.near-w.far {
				parts = append(parts, stickPart{l, q.width, q.price})
			}
		}
	}
	return parts
}

// oneAbreast reports whether neither two parts nor a part and an offcut that is
// worth something could lie side by side.
func (w *wood) oneAbreast(parts []stickPart) bool {
	narrowest := parts[0].width
	for _, p := range parts {
		narrowest = min(narrowest, p.width)
	}
	full := w.board.FullWidth()
	return 2*narrowest+w.restKerf > full && (w.worth.rate == 0 || narrowest+w.restKerf+w.shop.MinOffcutWidth > full)
}
