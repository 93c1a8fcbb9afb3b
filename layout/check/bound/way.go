package bound

import (
	"sort"

	"sawbill/layout"
)

// way is how a part may lie in the wood: flat or on edge, in one layer or in several.
type way struct {
	part                     *layout.Part
	layers                   int
	lean                     lean
	thickness, width, length layout.Length // of the leaf, allowances included
	longest                  layout.Length // the longest blank that is thick enough, or somewhat more
}

// lean is how strips are ripped whose edges lean: how much further from the reference
// edge they lie on face B, and what one rip takes of a face.
type lean struct{ by, kerf layout.Length }

// beside is what is lost beside an edge that leans less than a strip: nothing beside
// a square one.
func (l lean) beside() layout.Length {
	if l.by == 0 {
		return 0
	}
	return l.kerf
}

// ways lists the ways of the parts that have a price and that the board can give by
// species, marks and size, in any number of layers that its thickness holds.
func (w *wood) ways(p *layout.Problem, prices map[string]layout.Money) []way {
	var list []way
	for i := range p.Bill {
		part := &p.Bill[i]
		if prices[part.Name] <= 0 || !p.Allows(part, w.board) {
			continue
		}
		list = append(list, w.layered(way{part: part, lean: w.leanOf(part), width: part.Width + w.shop.WidthAllowance}, part.Thickness)...)
		if part.OnEdge && part.Bevel == 0 {
			list = append(list, w.layered(way{part: part, lean: w.leanOf(part), width: part.Thickness + w.shop.WidthAllowance}, part.Width)...)
		}
	}
	for i := range list {
		l := &list[i].lean
		l.by, l.kerf = w.stepDown(l.by), w.stepDown(l.kerf)
	}
	return list
}

func (w *wood) leanOf(part *layout.Part) lean {
	if part.Bevel == 0 {
		return lean{0, w.shop.RipKerf}
	}
	return lean{part.Lean(), w.shop.BevelKerf(part.Bevel)}
}

// stepDown is a size across, rounded down to the grid where that stands for places
// themselves: what took more room still has room.
func (w *wood) stepDown(size layout.Length) layout.Length {
	if !w.y.sole {
		return size
	}
	return w.y.at(w.y.down(size))
}

// stepUp is the length of a blank as it may be once its ends are rounded down to the grid:
// less than a unit longer.
func (w *wood) stepUp(length layout.Length) layout.Length {
	if !w.x.sole {
		return length
	}
	return length + w.x.unit
}

// layered lists a way in one layer, thick by itself, and where the part may be resawn
// in as many as the board holds:
//
//	n * (thick + thickness_allowance) + (n-1) * (resaw_kerf + 2 * face_skim)
func (w *wood) layered(v way, thick layout.Length) []way {
	v.length = v.part.Length + w.shop.LengthAllowance
	most := 1
	if v.part.Resaw && v.part.Bevel == 0 && v.length >= w.shop.MinBlank {
		most = mostLayers
	}
	var list []way
	for n := layout.Length(1); n <= layout.Length(most); n++ {
		v.layers = int(n)
		v.thickness = n*(thick+w.shop.ThicknessAllowance) + (n-1)*(w.shop.ResawKerf+2*w.shop.FaceSkim)
		if v.longest = w.longestOf(&v); v.longest < w.leastBlank(v.length) {
			break
		}
		list = append(list, v)
	}
	return list
}

// mostLayers is far more than any board gives of a part of a millimetre.
const mostLayers = 1000

// leastBlank is how short a blank may be that holds a length of a part.
func (w *wood) leastBlank(length layout.Length) layout.Length {
	least := length + 2*w.inset
	if w.machined() {
		least = max(least, w.shop.MinBlank)
	}
	return least
}

// machined reports whether every trued blank goes over a machine.
func (w *wood) machined() bool {
	return w.board.Faces == layout.FacesRough || w.board.Edges != layout.EdgesBoth || w.board.Crook > 0
}

// longestOf is the longest blank that is thick enough for a part lying in a way, where
// it is as narrow as may be, or somewhat more; negative where none is.
func (w *wood) longestOf(v *way) layout.Length {
	across, most := v.width+v.lean.by+2*v.lean.beside(), w.board.FullWidth()-w.near-w.far
	if m := w.shop.MachineWidth(); m > 0 {
		most = min(most, m)
	}
	if across > most {
		return -1
	}
	step := max(1, w.board.Length/2048)
	n := sort.Search(2048+2, func(i int) bool {
		return w.thickIn(v, layout.Length(i)*step) < v.thickness-layout.Micrometre
	})
	if n == 0 {
		return -1
	}
	return w.stepUp(layout.Length(n) * step)
}

// thickIn is what a blank so long finishes to at most that holds a part lying in a
// way: by section 6 of the model,
//
//	T - skim - bow (l/L)^2 - cup (w/W)^2 - twist/2 (l/L) (w/W)
//
// where w is the part's width and, unless the blank is as wide as the board, the joint
// of the edge that was ripped rough.
func (w *wood) thickIn(v *way, blank layout.Length) layout.Length {
	b := w.board
	wide := max(v.width, min(v.width+w.shop.EdgeJoint, b.Width, b.TipWidth))
	along := min(1, float64(blank)/float64(b.Length))
	across := min(1, float64(wide)/float64(b.FullWidth()))
	left := float64(b.Thickness) - float64(b.Bow)*along*along - float64(b.Cup)*across*across - float64(b.Twist)/2*along*across
	if b.Faces == layout.FacesRough {
		left -= 2 * float64(w.shop.FaceSkim)
	}
	return layout.Length(left) + 1
}

// stepped is a shift rounded down, but not so far that a strip or an offcut could begin
// at an earlier position: blanks of which that is the same are worked out once.
func (w *wood) stepped(shift layout.Length) layout.Length {
	return max(0, w.y.at(w.y.down(shift)), w.y.at(w.y.down(shift+w.near))-w.near)
}

// shift is how far from y = 0 the wood of a blank of some length begins at least:
// crook (l/L)^2, with the ends of the blank and the wood rounded down to the grid.
func (w *wood) shift(blank layout.Length) layout.Length {
	blank -= w.stepUp(0)
	along := min(1, max(0, float64(blank)/float64(w.board.Length)))
	return w.stepDown(max(0, layout.Length(float64(w.board.Crook)*along*along)-layout.Micrometre))
}
