package render

import (
	"sawbill/layout"
	"sawbill/layout/steps"
)

const (
	sectionMost   = 24.0 // mm, the tallest that a section is drawn
	sectionLeft   = 16.0 // for the words face A and face B
	sectionMargin = 4.0
)

// sections draws a trued blank across the grain where strips of it are ripped at a
// bevel, and lengths of its strips where these are, and how they lie at the saw; nil where
// none are.
func (d *boardSheet) sections(blank *steps.Blank, run []steps.Step) []*block {
	if !bevels(run) {
		return nil
	}
	var list []*block
	for _, r := range rippedIn(blank, run) {
		list = append(list, d.section(r, blank.Thickness, run))
	}
	return append(list, d.setups(run))
}

// ripped is wood that is ripped right through: a trued blank, or a length of a strip.
type ripped struct {
	name string
	lies layout.Rect
	kids []*layout.Node
	part bool // of the blank: a length of a strip
}

// rippedIn lists the blank and the lengths of its strips that are ripped at a bevel.
func rippedIn(blank *steps.Blank, run []steps.Step) []ripped {
	all := []ripped{{name: blank.Name, lies: blank.Usable, kids: blank.Node.Children}}
	for _, strip := range blank.Node.Children {
		for _, n := range strip.Children {
			if n.Cut == layout.Rip {
				all = append(all, ripped{lies: n.Rect, kids: n.Children, part: true})
			}
		}
	}
	var list []ripped
	for _, r := range all {
		for i := range run {
			if s := &run[i]; s.Operation == steps.BevelRip && r.through(s) {
				if r.part {
					r.name = steps.Chalk(s.Piece)
				}
				list = append(list, r)
				break
			}
		}
	}
	return list
}

// through reports whether a step rips all of it.
func (r *ripped) through(s *steps.Step) bool {
	beside := r.part && (s.Kerf.Y2 <= r.lies.Y1 || s.Kerf.Y1 >= r.lies.Y2) // of the whole blank
	return s.Rips() && !s.NoCut && !beside && s.Kerf.X1 <= r.lies.X1 && s.Kerf.X2 >= r.lies.X2
}

func bevels(run []steps.Step) bool {
	for _, s := range run {
		if s.Operation == steps.BevelRip {
			return true
		}
	}
	return false
}

// sectionView maps a place across the wood, on face A or B, to paper: the
// reference edge to the left, face A up, as it is seen from the tip end.
type sectionView struct {
	*boardSheet
	*block
	ripped
	at    Box
	scale float64 // mm of paper for a nanometre
}

func (d *boardSheet) section(r ripped, thickness layout.Length, run []steps.Step) *block {
	wide := d.width() - sectionLeft - sectionMargin
	scale := min(wide/float64(r.lies.Width()), sectionMost/float64(thickness))
	v := &sectionView{boardSheet: d, block: newBlock(d.types), ripped: r, scale: scale}
	v.text("Section of "+r.name, 0, textCap+1, style{textCap + 0.5, true})
	low := v.lines("Seen from the tip end, reference edge on the left. "+sentence(v.angles(run)), 0, textCap+1+lineStep, v.width(), plain())
	v.at = Box{sectionLeft, 0, sectionLeft + scale*float64(r.lies.Width()), scale * float64(thickness)}
	tags := d.types.stagger(v.tags(run), sectionLeft, d.width())
	top := low + 3 + tags.height() + 2
	v.at = shift(v.at, 0, top)
	v.above(tags, v.at.Y1)
	v.wood(run)
	v.text("face A", 0, v.at.Y1+textCap, plain())
	v.text("face B", 0, v.at.Y2, plain())
	v.height = v.at.Y2 + 4
	return v.block
}

// angles names the angles of the blade in a run of steps, and what they make an
// edge lean.
func (v *sectionView) angles(run []steps.Step) string {
	seen := map[layout.Angle]bool{}
	text := ""
	for _, s := range run {
		if s.Angle > 0 && v.through(&s) && !seen[s.Angle] {
			if text != "" {
				text += "; "
			}
			text += "blade " + degrees(s.Angle) + " from square, B leans out by " + v.reading(s.Lean)
			seen[s.Angle] = true
		}
	}
	return text
}

// point is a place across the wood on a face.
func (v *sectionView) point(y layout.Length, f layout.Face) Point {
	at := Point{v.at.X1 + v.scale*float64(y-v.lies.Y1), v.at.Y1}
	if f == layout.FaceB {
		at.Y = v.at.Y2
	}
	return at
}

// tags are the settings of the rips that go right through the wood, above their
// kerfs.
func (v *sectionView) tags(run []steps.Step) []tag {
	var tags []tag
	for _, s := range run {
		if v.through(&s) {
			text := v.reading(s.Setting)
			if s.Down != layout.Through {
				text += ", " + s.Down.String() + " down"
			}
			at := v.point((s.Kerf.Y1+s.Kerf.Y2)/2, layout.FaceA).X
			tags = append(tags, tag{at: min(at, v.at.X2), number: s.Number, text: text})
		}
	}
	return tags
}

// wood draws what is ripped, what it is ripped into and the ways of the saw.
func (v *sectionView) wood(run []steps.Step) {
	v.box(v.at, WasteTone, NoInk, 0)
	for _, n := range v.kids {
		v.strip(n)
	}
	for _, s := range run {
		if v.through(&s) {
			k := s.Kerf.Across()
			v.slanted(k, s.Lean, s.Lean, Black, NoInk)
		}
	}
	v.box(v.at, NoInk, Black, heavyLine)
	v.line(Point{v.at.X1 - 1.2, v.at.Y1 - 1.2}, Point{v.at.X1 - 1.2, v.at.Y2 + 1.2}, heavyLine)
	for _, n := range v.kids {
		v.stripName(n)
	}
}

// slanted draws a piece or a kerf by its extent on face A and the leans of its
// edges, within the wood.
func (v *sectionView) slanted(a layout.Span, near, far layout.Length, fill, stroke Ink) {
	u := v.lies.Across()
	inside := func(y layout.Length) layout.Length { return max(u.Lo, min(u.Hi, y)) }
	v.polygon([]Point{
		v.point(inside(a.Lo), layout.FaceA), v.point(inside(a.Hi), layout.FaceA),
		v.point(inside(a.Hi+far), layout.FaceB), v.point(inside(a.Lo+near), layout.FaceB),
	}, fill, stroke, middleLine)
}

func (v *sectionView) strip(n *layout.Node) {
	switch {
	case n.Offcut != "":
		v.slanted(n.Across(), n.Lean, n.Lean, OffcutTone, Black)
	case gives(n):
		v.slanted(n.Across(), n.Lean, n.Lean, White, Black)
	}
}

// stripName writes a strip's name in the middle of its section, if it fits there.
func (v *sectionView) stripName(n *layout.Node) {
	if !gives(n) {
		return
	}
	top, low := (v.at.Y1+v.at.Y2-textCap)/2-0.4, (v.at.Y1+v.at.Y2+textCap)/2+0.4
	// What leans away below and above the words is not theirs.
	lean := v.scale * float64(n.Lean) / v.at.h()
	left := v.point(n.Y1, layout.FaceA).X + lean*(low-v.at.Y1) + 0.5
	right := v.point(n.Y2, layout.FaceA).X + lean*(top-v.at.Y1) - 0.5
	name := v.work.Name(n)
	if v.types.width(name, strong()) > right-left {
		name = name[min(len(name), len(v.board.Mark)+1):]
	}
	w, mid := v.types.width(name, strong()), (left+right)/2
	box := Box{mid - w/2, top, mid + w/2, low}
	if v.free(box.grow(0.3)) && w <= right-left && v.at.h() > 1.8*textCap {
		v.text(name, box.X1, box.Y2-0.4, strong())
	}
}

// gives reports whether anything below a node is wanted.
func gives(n *layout.Node) bool {
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" || leaf.Offcut != "" {
			return true
		}
	}
	return false
}
