package ceiling

import "sawbill/layout"

// plain is a strip as if nothing were in its way: what it is worth depends on its
// length alone.
type plain struct {
	lane   *lane
	height int      // index of its range of heights
	stacks []stacks // by class of the lane
	worth  []Value  // by number of positions along
	rest   []Value  // by position: the most with a last offcut that starts no later, less its start
	rate   float64  // worth of a nanometre of offcut; 0 where there is none
}

// newPlain lays cells and offcuts along a strip, as chain does, from its start. What holds no
// part is one offcut from there on.
func (b *Bench) newPlain(l *lane, h int, worth []Value, s []stacks) plain {
	w := b.w
	n := w.places()
	p := plain{lane: l, height: h, stacks: s, worth: make([]Value, n+1)}
	if tall := w.tall(l, l.heights[h]); w.rate > 0 && tall >= w.shop.MinOffcutWidth {
		p.rate = w.rate * float64(tall) / mm2
		p.rest = make([]Value, n+1)
	}
	v, gap, most, former := p.worth, w.offcutGap(), none, Value(0)
	for i := range v[1:] {
		v[i+1] = none
	}
	if !l.bare {
		v[0] = none
	}
	for i := 0; i <= n; i++ {
		bare := Value(0)
		if k := i - gap; p.rate > 0 && k >= 0 {
			bare = p.after(w.x.upTo(i) + w.soon - w.shop.CrosscutKerf)
			if v[k] >= 0 {
				most = max(most, v[k]-p.before(w.x.at(k)))
			}
			if most > none {
				v[i] = max(v[i], most+bare)
			}
		}
		if l.bare {
			v[i] = max(v[i], bare)
		}
		if i > 0 {
			v[i] = max(v[i], v[i-1])
		}
		if p.rate > 0 {
			p.rest[i] = none
			if v[i] >= 0 {
				p.rest[i] = v[i] - p.before(w.x.at(i))
			}
			if i > 0 {
				p.rest[i] = max(p.rest[i], p.rest[i-1])
			}
		}
		former = max(former, v[i], bare)
		for k := range worth {
			if to := i + l.classes[k].advance; worth[k] > 0 && to <= n {
				v[to] = max(v[to], former+worth[k])
			}
		}
	}
	return p
}

func (p *plain) before(x layout.Length) Value { return Value(p.rate * float64(x)) }
func (p *plain) after(x layout.Length) Value  { return Value(p.rate*float64(x)) + 2 }

// in is what the strip is worth in a blank from a to e, with positions counted from
// where things may begin in it.
func (p *plain) in(w *Board, a, e layout.Length) Value {
	best := max(0, p.worth[max(0, w.x.down(e-a-2*w.inset+w.shop.CrosscutKerf))])
	if p.rate == 0 {
		return best
	}
	// With an offcut the parts may lie as far out as the offcut may.
	room := e - a - 2*w.end + w.over()
	if w.inset > w.end {
		best = max(best, p.worth[max(0, w.x.down(room+w.shop.CrosscutKerf))])
	}
	if k := w.x.down(room - w.shop.MinOffcutLength); k >= 0 && p.rest[k] > none {
		best = max(best, p.rest[k]+p.after(room))
	}
	return best
}
