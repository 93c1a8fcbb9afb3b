package render

import (
	"slices"
	"strings"

	"sawbill/layout/steps"
)

// layers draws how the wood of a blank is resawn: rows of pictures, one for each
// piece of it, the first with a heading and the last with what they mean; nil where
// nothing is.
func (d *boardSheet) layers(run []steps.Step) []*block {
	var pieces []*layerView
	for len(run) > 0 {
		n := 1
		for n < len(run) && run[n].Resawn == run[0].Resawn {
			n++
		}
		if run[0].Resawn != "" {
			pieces = append(pieces, d.layered(run[:n]))
		}
		run = run[n:]
	}
	if len(pieces) == 0 {
		return nil
	}
	head := newBlock(d.types)
	head.height = head.lines("Resaw, standing on a sawn edge, planed face against the fence", 0, textCap+1, d.width(),
		style{textCap + 0.5, true}) + 2
	rows := d.inRows(pieces)
	rows[0] = head.over(rows[0])
	last := len(rows) - 1
	rows[last] = rows[last].over(d.layerNote(pieces))
	return rows
}

// inRows sets pictures side by side as far as they fit.
func (d *boardSheet) inRows(pieces []*layerView) []*block {
	const apart = 8.0
	var rows []*block
	x := 0.0
	for _, p := range pieces {
		if len(rows) == 0 || x+p.wide > d.width() {
			rows, x = append(rows, newBlock(d.types)), 0
		}
		row := rows[len(rows)-1]
		p.moved(&row.Scene, x, 0)
		row.height = max(row.height, p.height)
		x += p.wide + apart
	}
	return rows
}

// layerView draws one piece as it stands on its edge at the fence, its layers side
// by side. list are its resaws, some with a joint after them, and then what
// finishes the slices one by one. It is not to scale.
type layerView struct {
	*boardSheet
	*block
	list []steps.Step
	top  float64
	slab float64 // width of a layer on paper
	wide float64 // of the whole picture
}

const (
	slabMost  = 20.0
	slabHigh  = 14.5
	resawGap  = 3.0
	fenceWide = 4.0
)

func (d *boardSheet) layered(list []steps.Step) *layerView {
	v := &layerView{boardSheet: d, block: newBlock(d.types), list: list}
	slabs := slabsOf(list)
	y := v.lines(v.heading(), 0, textCap+0.5, v.width(), strong())
	v.top = y + badgeHeight + 3
	v.slab = min(slabMost, (v.width()-fenceWide-4)/float64(len(slabs))-resawGap)
	v.box(Box{0, v.top - 2, fenceWide, v.top + slabHigh}, FormTone, Black, middleLine)
	for i, s := range slabs {
		v.layer(i, s, i < len(slabs)-1)
	}
	v.kerfs()
	end := v.x(len(slabs)-1) + v.slab + 4
	v.line(Point{0, v.top + slabHigh}, Point{end, v.top + slabHigh}, heavyLine)
	v.wide = min(v.width(), max(end, v.types.width(v.heading(), strong())))
	v.height = v.top + slabHigh + badgeHeight + 3
	return v
}

// x is where a layer begins on paper, counted from 0 at the fence.
func (v *layerView) x(i int) float64 { return fenceWide + float64(i)*(v.slab+resawGap) }

// heading says what is resawn, how thick it is before, and where the fence stands.
func (v *layerView) heading() string {
	s := &v.list[0]
	thick := s.OffSize.Thickness + v.shop.ResawKerf + s.RestSize.Thickness
	return s.Resawn + ", " + v.size(s.OffSize.Length, s.OffSize.Width, thick) + held(": set "+v.reading(s.Setting))
}

// slab is a layer as the saw leaves it. It has no name where it is waste, and no step
// where nothing is left to be done to it.
type slab struct {
	name string
	step *steps.Step
}

// slabsOf lists the layers that the resaws of a piece leave, whatever becomes of them.
func slabsOf(list []steps.Step) []slab {
	var slabs []slab
	rest := ""
	for i := range list {
		if s := &list[i]; s.Operation == steps.Resaw && !s.NoCut {
			slabs, rest = append(slabs, slab{name: chalk(s.Off)}), chalk(s.Rest)
		}
	}
	slabs = append(slabs, slab{name: rest})
	for i := range list {
		s := &list[i]
		if n := slices.IndexFunc(slabs, func(l slab) bool { return l.name != "" && l.name == chalk(s.Off) }); n >= 0 && !s.Jointed {
			slabs[n].step = s
		}
	}
	return slabs
}

// layer draws one slab with what it becomes; the last is what remains.
func (v *layerView) layer(i int, s slab, sawn bool) {
	b := Box{v.x(i), v.top, v.x(i) + v.slab, v.top + slabHigh}
	v.box(b, White, Black, middleLine)
	skim := 0.0
	if v.shop.FaceSkim > 0 {
		skim = 1.4
	}
	if sawn {
		v.box(Box{b.X2 - skim, b.Y1, b.X2, b.Y2}, WasteTone, NoInk, 0)
		v.box(Box{b.X2, b.Y1, b.X2 + resawGap, b.Y2}, Black, NoInk, 0)
	}
	if i > 0 {
		v.box(Box{b.X1, b.Y1, b.X1 + skim, b.Y2}, WasteTone, NoInk, 0)
	}
	name := v.types.cut(strings.TrimPrefix(s.name, v.board.Mark+"-"), v.slab-3.5, strong())
	mid := (b.X1 + b.X2) / 2
	v.text(name, mid-v.types.width(name, strong())/2, b.Y1+textCap+1.5, strong())
	if done := s.step; done != nil && (done.Operation == steps.Plane || done.NoCut) {
		v.badge(done.Number, mid-v.types.badgeWidth(done.Number)/2, b.Y2-badgeHeight-1.2)
	}
}

// kerfs puts the numbers of the resaws above their kerfs and those of the joints
// below them.
func (v *layerView) kerfs() {
	n := 0
	for _, s := range v.list {
		switch mid := v.x(n) - resawGap/2 - v.types.badgeWidth(s.Number)/2; {
		case s.Operation == steps.Resaw && !s.NoCut:
			n++
			v.badge(s.Number, v.x(n)-resawGap/2-v.types.badgeWidth(s.Number)/2, v.top-badgeHeight-1)
		case s.Jointed:
			v.badge(s.Number, mid, v.top+slabHigh+1)
		}
	}
}

// layerNote says what is black and what is grey.
func (d *boardSheet) layerNote(pieces []*layerView) *block {
	notes := []string{"Black: the kerf, " + d.reading(d.shop.ResawKerf)}
	if skim := d.shop.FaceSkim; skim > 0 {
		notes = append(notes, "grey: "+d.reading(skim)+" off each sawn face")
	}
	if slices.ContainsFunc(pieces, (*layerView).joints) {
		notes = append(notes, "a number below: joint the face that lies against the fence next")
	}
	b := newBlock(d.types)
	b.height = b.lines(strings.Join(append(notes, "not to scale"), " · "), 0, textCap+0.5, d.width(), plain()) + 3
	return b
}

func (v *layerView) joints() bool {
	return slices.ContainsFunc(v.list, func(s steps.Step) bool { return s.Jointed })
}
