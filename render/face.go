package render

import (
	"fmt"
	"math"

	"sawbill/layout"
	"sawbill/layout/glueup"
)

// Face draws the finished face of a design true to scale, at its own size where the
// paper allows: the woods, the trim line, and beyond it what trimming cuts off.
func Face(work *glueup.Work, o Options) Page {
	d := newGlueSheet(work, o)
	d.newPage()
	d.put(d.faceHead())
	legend := d.legend()
	d.put(d.facePicture(d.bottom() - d.y - legend.height))
	d.put(legend)
	return d.finish(d.title() + ", face")[0]
}

// glueSheet is a sheet about a glue-up.
type glueSheet struct {
	*sheet
	words
	work *glueup.Work
}

func newGlueSheet(work *glueup.Work, o Options) *glueSheet {
	return &glueSheet{&sheet{types: newTypesetter(), paper: o.Paper}, words{work.Shop}, work}
}

// title is the name of the piece.
func (d *glueSheet) title() string {
	if d.work.Design.Name != "" {
		return d.work.Design.Name
	}
	return d.work.Design.Pattern.Name()
}

func (d *glueSheet) faceHead() *block {
	b := newBlock(d.types)
	look := style{markCap - 3, true}
	for look.cap > titleCap && d.types.width(d.title(), look) > d.width() {
		look.cap--
	}
	b.text(d.types.cut(d.title(), d.width(), look), 0, look.cap+1, look)
	f := d.work.Face.Finished
	size := fmt.Sprintf("Finished %s, %s thick, %s. Seen from above, end grain up.",
		d.size(f.Length(), f.Width()), d.reading(d.work.Design.Thickness), d.unit())
	if frame := d.work.Design.Frame; frame != nil {
		size += fmt.Sprintf(" With its frame %s.", d.size(f.Length()+2*frame.Width, f.Width()+2*frame.Width))
	}
	b.height = b.lines(size, 0, look.cap+8.5, d.width(), strong()) + 3
	return b
}

// scaleFor is the largest simple scale, 1 to n, at which a size fits a room.
func scaleFor(w, h, roomW, roomH float64) float64 {
	for _, n := range []float64{1, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, 20, 30, 50, 100, 200} {
		if w/n <= roomW && h/n <= roomH {
			return n
		}
	}
	return math.Ceil(max(w/roomW, h/roomH))
}

const faceSide = 30.0 // for the readings beside a face

// facePicture draws the face in a room of a height.
func (d *glueSheet) facePicture(room float64) *block {
	b := newBlock(d.types)
	f := d.work.Face.Finished
	all := d.outline()
	n := scaleFor(paperMM(all.Length()), paperMM(all.Width()), d.width()-2*faceSide, room-2*rowStep-6)
	v := faceView{all: all, scale: 1 / n}
	v.at = Point{(d.width() - paperMM(all.Length())/n) / 2, 2}
	for _, piece := range d.frame() {
		b.framePiece(v.box(piece), d.look(d.work.Design.Frame.Wood))
	}
	for i := range d.work.Face.Blocks {
		d.drawBlock(b, v, &d.work.Face.Blocks[i])
	}
	trim := v.box(f)
	b.trimLine(trim, d.work.Design.Trim > 0)
	b.dimension(trim, v.box(all).Y2+1.6, d.reading(f.Length()))
	b.upDimension(trim, v.box(all).X1-2, d.reading(f.Width()))
	b.height = v.box(all).Y2 + rowStep + 4
	scale := "True size: print at 100 percent."
	if n != 1 {
		scale = fmt.Sprintf("Drawn at 1 to %g: print at 100 percent.", n)
	}
	b.text(scale, 0, b.height+textCap, plain())
	b.height += textCap + 3
	return b
}

// outline is what the blocks cover.
func (d *glueSheet) outline() layout.Rect {
	r := d.work.Face.Sawn
	for i := range d.work.Face.Blocks {
		b := d.work.Face.Blocks[i].Bounds()
		r = layout.Rect{X1: min(r.X1, b.X1), X2: max(r.X2, b.X2), Y1: min(r.Y1, b.Y1), Y2: max(r.Y2, b.Y2)}
	}
	for _, b := range d.frame() {
		r = layout.Rect{X1: min(r.X1, b.X1), X2: max(r.X2, b.X2), Y1: min(r.Y1, b.Y1), Y2: max(r.Y2, b.Y2)}
	}
	return r
}

// faceView maps the face to paper: its near side down.
type faceView struct {
	all   layout.Rect
	at    Point // where the far left corner of all lies
	scale float64
}

func (v faceView) point(c glueup.Corner) Point {
	return Point{v.at.X + paperMM(c.X-v.all.X1)*v.scale, v.at.Y + paperMM(v.all.Y2-c.Y)*v.scale}
}

func (v faceView) box(r layout.Rect) Box {
	a, b := v.point(glueup.Corner{X: r.X1, Y: r.Y2}), v.point(glueup.Corner{X: r.X2, Y: r.Y1})
	return Box{a.X, a.Y, b.X, b.Y}
}

// drawBlock draws a block within the trim as wood, and what is cut off as an outline
// only.
func (d *glueSheet) drawBlock(b *block, v faceView, wood *glueup.Block) {
	var points []Point
	for _, c := range wood.Corners {
		points = append(points, v.point(c))
	}
	kept := clipped(points, v.box(d.work.Face.Finished))
	if len(kept) > 2 {
		b.wood(kept, d.look(wood.Wood))
	}
	b.polygon(points, NoInk, Black, hairline)
	if len(kept) > 2 {
		b.polygon(kept, NoInk, Black, thinLine)
	}
}

// look is that of a letter: by the order of the woods of the design.
func (d *glueSheet) look(letter string) woodLook {
	looks := woodLooks()
	for i, l := range d.work.Design.Letters() {
		if l == letter {
			return looks[i%len(looks)]
		}
	}
	return looks[0]
}

// trimLine is the line to which a face is trimmed: heavy, and dashed where something
// is cut off.
func (b *block) trimLine(at Box, cuts bool) {
	dash := []float64{4, 1.6}
	if !cuts {
		dash = nil
	}
	c := at.corners()
	for i := range c {
		b.line(c[i], c[(i+1)%4], heavyLine, dash...)
	}
}

// dimension is a line below a drawing with a reading in its middle, or beyond its end
// where it is too short.
func (b *block) dimension(of Box, y float64, text string) {
	w := b.types.width(text, strong())
	y += textCap / 2
	x := (of.X1 + of.X2 - w) / 2
	if w+4 < of.w() {
		b.line(Point{of.X1, y}, Point{x - 1.2, y}, hairline)
		b.line(Point{x + w + 1.2, y}, Point{of.X2, y}, hairline)
	}
	for _, end := range []float64{of.X1, of.X2} {
		b.line(Point{end, y - 1.4}, Point{end, y + 1.4}, hairline)
	}
	if w+4 >= of.w() {
		x = of.X2 + 2
		b.line(Point{of.X1, y}, Point{of.X2, y}, hairline)
	}
	b.text(text, x, y+textCap/2, strong())
}

// upDimension is a line to the left of a drawing, with its reading to the left of
// that.
func (b *block) upDimension(of Box, x float64, text string) {
	b.line(Point{x, of.Y1}, Point{x, of.Y2}, hairline)
	for _, end := range []float64{of.Y1, of.Y2} {
		b.line(Point{x - 1.4, end}, Point{x + 1.4, end}, hairline)
	}
	w := b.types.width(text, strong())
	b.text(text, x-2-w, (of.Y1+of.Y2+textCap)/2, strong())
}

// legend names the woods, and what the lines mean.
func (d *glueSheet) legend() *block {
	b := newBlock(d.types)
	const high, wide = 5.4, 11.0
	x, y := 0.0, 1.0
	for _, letter := range d.work.Design.Letters() {
		n := 0
		for _, block := range d.work.Face.Blocks {
			if block.Wood == letter {
				n++
			}
		}
		if n == 0 {
			continue
		}
		text := fmt.Sprintf("%s, %d blocks", d.work.Species(letter), n)
		w := wide + 2 + d.types.width(text, strong()) + 7
		if x > 0 && x+w > d.width() {
			x, y = 0, y+high+2
		}
		swatch := Box{x, y, x + wide, y + high}
		b.wood(swatch.corners(), d.look(letter))
		b.box(swatch, NoInk, Black, thinLine)
		b.text(d.types.cut(text, d.width()-x-wide-2, strong()), x+wide+2, y+(high+textCap)/2, strong())
		x += w
	}
	if f := d.work.Design.Frame; f != nil {
		text := fmt.Sprintf("frame of long grain, %s, %s wide", d.work.Species(f.Wood), d.reading(f.Width))
		if x > 0 && x+wide+2+d.types.width(text, strong()) > d.width() {
			x, y = 0, y+high+2
		}
		b.framePiece(Box{x, y, x + wide, y + high}, d.look(f.Wood))
		b.text(d.types.cut(text, d.width()-x-wide-2, strong()), x+wide+2, y+(high+textCap)/2, strong())
	}
	b.height = b.lines(d.trimNote(), 0, y+high+6, d.width(), plain()) + 2
	return b
}

// trimNote says what lies beyond the finished face.
func (d *glueSheet) trimNote() string {
	note := "Heavy line: the finished face. Beyond it"
	if d.work.Design.Frame != nil {
		note += ", before the frame goes on"
	}
	note += ": what is trimmed off"
	if trim := d.work.Design.Trim; trim > 0 {
		note += fmt.Sprintf(", %s on every side at least", d.reading(trim))
	}
	return note + "."
}
