package render

// RackForm draws a sheet to pencil a rack into: for each board an outline with a
// tape, and a line to write on for every column of a stock file, in their order.
// It has no lengths of its own but the marks of the tape, which are empty to be
// numbered.
func RackForm(o Options) ([]Page, error) {
	s := &sheet{types: newTypesetter(), paper: o.Paper}
	s.newPage()
	s.put(formHead(s))
	for range 2 {
		s.put(formBoard(s))
	}
	return s.finish("rack form"), nil
}

func formHead(s *sheet) *block {
	b := newBlock(s.types)
	b.text("Rack form", 0, 7, style{6, true})
	y := b.lines("Better face (A) up, reference edge toward you (on a crooked board the hollow edge), butt to the left. Draw each defect in, "+
		"write its kind beside it, and both readings: along from the butt, across from the reference edge. B: on face B only.",
		44, 3.8, s.width()-44, plain())
	b.height = y + 3
	return b
}

// formFields are the columns of a stock file in their order, with the share of a
// line that each needs; a row of the form ends where its shares reach one.
func formFields() [][]formField {
	return [][]formField{
		{{"board", .16}, {"species", .24}, {"thickness", .19}, {"width", .17}, {"tip_width", .2}},
		{{"length", .2}, {"count", .14}, {"cost", .16}, {"edges", .23}, {"faces", .23}},
		{{"bow", .15}, {"crook", .16}, {"cup", .15}, {"twist", .16}, {"source", .18}, {"place", .16}},
		{{"grade", .28}, {"note", .68}},
		{{"defects", .96}},
	}
}

type formField struct {
	name  string
	share float64
}

func formBoard(s *sheet) *block {
	b := newBlock(s.types)
	b.line(Point{0, 0}, Point{s.width(), 0}, heavyLine)
	y := 8.0
	for _, row := range formFields() {
		x := 0.0
		for _, f := range row {
			end := x + f.share*s.width()
			from := b.text(f.name, x, y, plain()) + 1.5
			b.line(Point{from, y + 0.8}, Point{end - 3, y + 0.8}, thinLine)
			x = end + 0.01*s.width()
		}
		y += 8
	}
	d := Box{12, y + 2, s.width() - 10, y + 26}
	b.formOutline(d)
	b.height = d.Y2 + 8
	return b
}

// formOutline is an empty board with the marks of a tape along and across.
func (b *block) formOutline(d Box) {
	b.box(d, NoInk, Black, middleLine)
	const along, across = 48, 8
	for i := range along + 1 {
		x := d.X1 + d.w()*float64(i)/along
		long := 1.2
		if i%4 == 0 {
			long = 2.4
		}
		b.line(Point{x, d.Y1 - long}, Point{x, d.Y1}, thinLine)
	}
	for i := range across + 1 {
		y := d.Y2 - d.h()*float64(i)/across
		b.line(Point{d.X1 - 1.5, y}, Point{d.X1, y}, thinLine)
	}
	b.referenceEdge(d)
	b.text("butt", 0, (d.Y1+d.Y2)/2, plain())
	b.text("tip", d.X2+2, (d.Y1+d.Y2)/2, plain())
	b.text("reference edge", d.X1+30, d.Y2+5.2, plain())
}
