package render

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// descriptions of a piece, the fullest first. The first few say everything.
func (v *blankView) descriptions(n *layout.Node) [][]string {
	name, size := v.work.Name(n), v.sizeOf(n)
	if n.Offcut != "" {
		return [][]string{{"KEEP " + name, size}, {"KEEP " + name + "  " + size}, {"KEEP " + name}, {v.shortName(n)}}
	}
	if n.Show != layout.Through {
		size += ", show " + n.Show.String()
	}
	size += v.way(n)
	part := v.partName(n)
	return [][]string{
		{part, name, size},
		{part + "  " + name, size},
		{part + "  " + name + "  " + size},
		{part + "  " + name},
		{part + "  " + v.shortName(n)},
		{v.shortName(n)},
	}
}

// partName is what a part is called in the drawing.
func (v *blankView) partName(n *layout.Node) string {
	if v.work.Spare(n) {
		return "spare " + n.Part
	}
	return n.Part
}

// full reports whether a description says everything.
func full(n *layout.Node, option int) bool {
	return option < 2 || n.Part != "" && option < 3
}

// sizeOf is the finished size of a part, or the size of an offcut.
func (v *blankView) sizeOf(n *layout.Node) string {
	part := v.plan.Problem.Part(n.Part)
	switch {
	case part == nil:
		return v.cleanSize(n)
	case part.Length == 0: // of a set: the plan chooses
		return v.size(n.Length(), part.Width, part.Thickness)
	}
	return v.size(part.Length, part.Width, part.Thickness)
}

// way says of a part that it is not cut flat and by itself, and of a strip how many
// slices it gives.
func (v *blankView) way(n *layout.Node) string {
	text := ""
	if n.OnEdge {
		text += ", on edge"
	}
	if n.Part != "" && n.Pieces() > 1 {
		text += fmt.Sprintf(", %d resawn", n.Pieces())
	}
	if n.Slices > 0 {
		text += ", " + counted(n.Slices, "slice")
	}
	return text
}

// shortName is the end of a name: what sets it apart on its board.
func (v *blankView) shortName(n *layout.Node) string {
	return strings.TrimPrefix(v.work.Name(n), v.board.Mark+"-")
}

// ground is what a word may stand on.
type ground uint8

const (
	offHatch ground = iota
	overHatch
)

// describe writes lines, the first bold, into an area if there is room: off the
// hatched wood, or over it on a white ground.
func (v *blankView) describe(area Box, lines []string, where ground) bool {
	const step = 5.2
	var w float64
	for i, l := range lines {
		w = max(w, v.types.width(l, firstStrong(i)))
	}
	h := 1.3*textCap + float64(len(lines)-1)*step
	n := len(v.taken)
	if where == offHatch {
		v.taken = append(v.taken, v.hatched...)
	}
	at, ok := v.place(area, w, h)
	v.taken = v.taken[:n]
	if !ok {
		return false
	}
	if where == overHatch {
		v.box(Box{at.X, at.Y, at.X + w, at.Y + h}.grow(0.4), White, NoInk, 0)
	}
	for i, l := range lines {
		x := at.X + (w-v.types.width(l, firstStrong(i)))/2
		v.text(l, x, at.Y+1.05*textCap+float64(i)*step, firstStrong(i))
	}
	return true
}

func firstStrong(line int) style {
	if line == 0 {
		return strong()
	}
	return plain()
}
