package column

import (
	"math"
	"slices"

	"sawbill/layout"
)

// bruteBevel is how a strip leans: by how much more on face B, and what its rips take
// of a face. Both are no whole millimetres.
type bruteBevel struct{ by, kerf layout.Length }

func (x *brute) setBevels() {
	x.bevels = []bruteBevel{{kerf: x.s.RipKerf}}
	for i := range x.p.Bill {
		if v := x.bevelOf(&x.p.Bill[i]); !slices.Contains(x.bevels, v) {
			x.bevels = append(x.bevels, v)
		}
	}
}

func (x *brute) bevelOf(p *layout.Part) bruteBevel {
	angle := float64(p.Bevel) / float64(layout.Degree) * math.Pi / 180
	return bruteBevel{
		layout.Length(math.Ceil(float64(p.Thickness)*math.Tan(angle) - 1e-3)),
		layout.Length(math.Ceil(float64(x.s.RipKerf)/math.Cos(angle) - 1e-3)),
	}
}

// leaningNode is node for strips that may lean: state (v, i) is that a strip which
// leans as v ended at position i on face A.
func (x *brute) leaningNode(r, u layout.Rect, planed layout.Length) front {
	lo, hi := int((u.Y1+unit-1)/unit), int(u.Y2/unit)
	type state struct{ with, without front }
	best := make([][]state, len(x.bevels))
	for v := range best {
		best[v] = make([]state, hi+1)
	}
	// after is what can follow when the next strip that leans as v may start at from(v).
	after := func(from func(next bruteBevel) layout.Length, end bool) state {
		s := state{front{}, front{}}
		if end {
			s.without.add(counts{}, 0)
		}
		for v, next := range x.bevels {
			first := int((from(next) + unit - 1) / unit)
			for a := max(lo, first); a < hi; a++ {
				for z := a + 1; z <= hi; z++ {
					rest := best[v][z]
					strip := layout.Rect{X1: u.X1, X2: u.X2, Y1: layout.Length(a) * unit, Y2: layout.Length(z) * unit}
					if v == 0 {
						off := x.offcut(strip, r.Length())
						x.join(s.with, off, rest.with)
						x.join(s.without, off, rest.without)
					}
					for _, t := range x.needs {
						if t > planed || t < planed && (v > 0 || u.Length() < x.s.MinBlank) {
							continue
						}
						f, bare := x.strip(r, strip, t, next)
						x.join(s.with, f, rest.with)
						x.join(s.with, bare, rest.with)
						x.join(s.without, bare, rest.without)
						if t == planed {
							x.join(s.with, f, rest.without)
						} else {
							x.join(s.without, f, rest.without)
						}
					}
				}
			}
		}
		return s
	}
	for i := hi; i > lo; i-- {
		for v, own := range x.bevels {
			at, room := layout.Length(i)*unit, own.by
			if v > 0 {
				room += own.kerf
			}
			best[v][i] = after(func(next bruteBevel) layout.Length {
				return at + max(own.kerf, next.kerf) + max(0, own.by-next.by)
			}, at+room <= u.Y2)
		}
	}
	return after(func(next bruteBevel) layout.Length {
		if next.by > 0 {
			return u.Y1 + next.kerf
		}
		return u.Y1
	}, true).with
}
