package render

import (
	"math"
	"strconv"
	"strings"

	"sawbill/layout"
	"sawbill/layout/glueup"
)

const panelMost = 26.0 // mm, the tallest that the end of a panel is drawn

// panel draws the strips of a panel end on, as a slice lies that is not turned, with
// their widths below and the parts that are glued by themselves above.
func (d *glueSheet) panel(p *glueup.Panel) *block {
	b := newBlock(d.types)
	wide := d.width() - stepIndent - faceSide
	scale := min(wide/paperMM(p.Width()), panelMost/paperMM(p.Height), 1)
	left, top := stepIndent, 1.0
	if len(p.Sections) > 1 {
		top = rowStep + 3
	}
	high := paperMM(p.Height) * scale
	x := left
	var tags []tag
	var ends []float64
	for _, s := range p.Strips {
		w := paperMM(s.Width) * scale
		end := Box{x, top, x + w, top + high}
		b.wood(end.corners(), d.look(s.Wood))
		b.box(end, NoInk, Black, middleLine)
		tags = append(tags, tag{at: x + w/2, tip: min(2, high/3), text: d.work.Species(s.Wood) + " " + d.reading(s.Width)})
		x += w
		ends = append(ends, x)
	}
	b.text(d.reading(p.Height)+" high", x+2, top+high/2+textCap/2, strong())
	d.sectionMarks(b, p, left, ends, top)
	names := d.types.stagger(d.fewTags(tags, p), 0, d.width())
	b.below(names, top+high)
	b.height = top + high + names.height() + 3
	return b
}

// fewTags leaves out the tags of strips that are as the two before them: what goes
// on as it began need not be read again.
func (d *glueSheet) fewTags(tags []tag, p *glueup.Panel) []tag {
	const many = 10
	if len(tags) <= many {
		return tags
	}
	var some []tag
	for i, t := range tags {
		if i < 2 || i == len(tags)-1 || t.text != tags[i-2].text {
			some = append(some, t)
		}
	}
	return some
}

// sectionMarks are brackets over the parts of a panel that are glued and planed by
// themselves.
func (d *glueSheet) sectionMarks(b *block, p *glueup.Panel, left float64, ends []float64, top float64) {
	if len(p.Sections) < 2 {
		return
	}
	from, n := left, 0
	for i, count := range p.Sections {
		n += count
		to := ends[n-1]
		b.line(Point{from + 0.5, top - 1.5}, Point{to - 0.5, top - 1.5}, heavyLine)
		text := "part " + string(rune('1'+i))
		if w := d.types.width(text, strong()); w < to-from && i < 9 {
			b.text(text, (from+to-w)/2, top-3, strong())
		}
		from = to
	}
}

// prism draws the three strips of a prism apart, end on, and glued.
func (d *glueSheet) prism(p *glueup.Panel) *block {
	b := newBlock(d.types)
	const side, top = 18.0, 2.0
	high := side * math.Cos(math.Pi/6)
	x := stepIndent
	for _, s := range p.Strips {
		lean := side / 2
		b.wood([]Point{{x, top}, {x + side, top}, {x + side + lean, top + high}, {x + lean, top + high}}, d.look(s.Wood))
		b.polygon([]Point{{x, top}, {x + side, top}, {x + side + lean, top + high}, {x + lean, top + high}}, NoInk, Black, middleLine)
		b.text(d.types.cut(d.work.Species(s.Wood), side+lean+12, strong()), x, top+high+5.5, strong())
		x += side + lean + 14
	}
	s := p.Strips[0]
	text := []string{d.gauge(s.Width) + " across face", d.reading(s.Thickness) + " thick", "blade " + degrees(s.Bevel)}
	for i, t := range text {
		b.text(t, stepIndent, top+high+5.5+lineStep*float64(i+1), plain())
	}
	b.hexagon(d, p, Point{x + side + 4, top + side}, side)
	b.text("glued, butt end toward you", x+2*side+10, top+side, plain())
	b.height = max(top+2*side, top+high+5.5+3*lineStep) + 4
	return b
}

// gauge is a length in hundredths of a millimetre or thousandths of an inch.
func (w words) gauge(l layout.Length) string {
	if w.shop.Units == layout.Inches {
		return strconv.FormatFloat(float64(l)/float64(layout.Inch), 'f', 3, 64)
	}
	return strconv.FormatFloat(paperMM(l), 'f', 2, 64)
}

// hexagon draws a slice of a prism around its middle: the strips in their order
// clockwise from the top.
func (b *block) hexagon(d *glueSheet, p *glueup.Panel, mid Point, side float64) {
	at := func(degrees float64) Point {
		sin, cos := math.Sincos(degrees * math.Pi / 180)
		return Point{mid.X + side*cos, mid.Y - side*sin}
	}
	for i, s := range p.Strips {
		from := 150 - float64(i)*120 // the top one reaches from 150° to 30°
		rhombus := []Point{mid, at(from), at(from - 60), at(from - 120)}
		b.wood(rhombus, d.look(s.Wood))
		b.polygon(rhombus, NoInk, Black, middleLine)
	}
}

// How tall a face is drawn among the steps, in mm: what is left of a page where that
// is enough.
const laidLeast, laidMost = 55.0, 95.0

// laid draws the face before the trim.
func (d *glueSheet) laid(b *block, left, most float64) faceView {
	all := d.outline()
	scale := min((d.width()-left-4)/paperMM(all.Length()), most/paperMM(all.Width()), 1)
	v := faceView{all: all, at: Point{left, 1}, scale: scale}
	for _, wood := range d.work.Face.Blocks {
		var points []Point
		for _, c := range wood.Corners {
			points = append(points, v.point(c))
		}
		b.wood(points, d.look(wood.Wood))
		b.polygon(points, NoInk, Black, thinLine)
	}
	return v
}

// rowsLaid draws the face and names the slice of every row beside it, from the near
// side on; where rows are too low for that, a list below names them all.
func (d *glueSheet) rowsLaid(most float64) *block {
	b := newBlock(d.types)
	left := stepIndent
	for i := range d.work.Rows {
		left = max(left, stepIndent+d.types.width(d.rowText(i), plain())+3)
	}
	v := d.laid(b, left, most)
	b.height = v.box(v.all).Y2 + 3
	if !d.besideRows(b, v) {
		b.height = b.lines("Rows from the near side: "+d.allRows(), stepIndent, b.height+textCap, d.width()-stepIndent, plain()) + 3
	}
	return b
}

// besideRows names the rows beside a face where there is room, and reports whether
// it named all.
func (d *glueSheet) besideRows(b *block, v faceView) bool {
	y, low, all := v.all.Y1, math.Inf(1), true
	for i, r := range d.work.Rows {
		from, to := v.point(glueup.Corner{Y: y}).Y, v.point(glueup.Corner{Y: y + d.work.Panels[r.Panel].Height}).Y
		if at := (from + to + textCap) / 2; at <= low {
			b.text(d.rowText(i), stepIndent, at, plain())
			low = at - rowStep + 0.4
		} else {
			all = false
		}
		y += d.work.Panels[r.Panel].Height
	}
	return all
}

// allRows names the slices of all rows.
func (d *glueSheet) allRows() string {
	var list []string
	for i := range d.work.Rows {
		list = append(list, held(d.rowText(i)))
	}
	return strings.Join(list, ", ") + "."
}

// placesLaid draws the face of single slices or blocks.
func (d *glueSheet) placesLaid(most float64) *block {
	b := newBlock(d.types)
	v := d.laid(b, stepIndent, most)
	b.trimLine(v.box(d.work.Face.Finished), true)
	b.height = v.box(v.all).Y2 + 3
	return b
}

// slabCut draws the slab with its stripes along it and the slanted cuts, the first
// corner to the left.
func (d *glueSheet) slabCut() *block {
	b := newBlock(d.types)
	slab := d.work.Slab
	height := d.work.Panels[0].Height
	long := height * layout.Length(slab.Rows)
	scale := min((d.width()-stepIndent-faceSide)/paperMM(long), 60/paperMM(slab.Width), 1)
	at := Box{stepIndent, 1, stepIndent + paperMM(long)*scale, 1 + paperMM(slab.Width)*scale}
	y := at.Y2
	for _, s := range d.work.Panels[0].Strips {
		h := paperMM(s.Width) * scale
		stripe := Box{at.X1, y - h, at.X2, y}
		b.wood(stripe.corners(), d.look(s.Wood))
		b.box(stripe, NoInk, Black, thinLine)
		y -= h
	}
	for i := 1; i < slab.Rows; i++ {
		x := at.X1 + paperMM(height)*scale*float64(i)
		b.line(Point{x, at.Y1}, Point{x, at.Y2}, hairline, 0.8, 0.8)
	}
	b.box(at, NoInk, Black, middleLine)
	tan := math.Tan(float64(slab.Angle) / float64(layout.Degree) * math.Pi / 180)
	for i := range slab.Pieces + 1 {
		x := at.X1 + paperMM(slab.Pitch)*scale*float64(i)
		b.line(Point{min(x, at.X2), at.Y1}, Point{min(x+at.h()*tan, at.X2), at.Y2}, heavyLine)
	}
	b.text(d.reading(slab.Width), at.X2+2, (at.Y1+at.Y2+textCap)/2, strong())
	first := Box{at.X1, 0, at.X1 + paperMM(slab.Pitch)*scale, 0}
	b.dimension(first, at.Y2+1.6, d.gauge(slab.Pitch)+" from cut to cut along the edge, the fence at "+degrees(slab.Angle))
	b.height = at.Y2 + rowStep + 4
	return b
}
