package glueup

import (
	"cmp"
	"slices"
	"strconv"

	"sawbill/layout"
)

// Work is a design worked out: its face, its glue-ups, the rows of its bill, and
// what its maker has to know.
type Work struct {
	Design *Design
	Shop   *layout.Shop // with the units of the design
	Face   Face
	Panels []Panel
	// Rows are the slices of a face of straight rows, from the near side; nil where
	// slices are not laid in rows.
	Rows []Row
	// Slab is cut into slanted slices for a chevron; nil for other patterns.
	Slab *Slab
	Bill []layout.Part
	// Notes tell what the geometry found, Warnings what may spoil the piece.
	Notes, Warnings []string
}

// Row is the place of one slice in a face.
type Row struct {
	Panel  int // in Work.Panels
	Turned bool
}

// Slab is a slab of end grain that is sliced once more, at an angle.
type Slab struct {
	Width  layout.Length // across its stripes
	Length layout.Length // along its stripes, at least
	Rows   int           // slices that it is glued from
	Angle  layout.Angle  // of the blade from square across the stripes
	Pieces int           // slanted slices
	// PieceWidth is the width of a slanted slice; Pitch is from one to the next along
	// the slab, with the kerf; Lost is the length of the two corners that stay.
	PieceWidth, Pitch, Lost layout.Length
}

// New works a design out for a shop: its kerfs, what squaring a panel loses, and
// the width of its planer. The work is nil when a complaint is a fault; the
// complaints bear the keys of a design file as their columns.
func New(d *Design, shop *layout.Shop) (*Work, layout.Complaints) {
	c := &checker{design: d}
	c.all()
	if c.found.Err() != nil {
		return nil, c.found
	}
	its := *shop
	its.Units = d.Units
	w := &Work{Design: d, Shop: &its}
	d.Pattern.lay(w)
	w.finishPanels()
	w.frame()
	w.consider()
	return w, c.found
}

// StripLength is the length of the strips of a glue-up with so many slices
// (model section 8).
func (w *Work) StripLength(slices int) layout.Length {
	return layout.Length(slices)*w.Design.SliceThickness() +
		layout.Length(slices-1)*w.Shop.CrosscutKerf + 2*w.Shop.PanelSquare
}

// finishPanels gives every strip a name in the bill and writes the bill.
func (w *Work) finishPanels() {
	for i := range w.Panels {
		p := &w.Panels[i]
		p.Spare = w.Design.SpareSlices
		p.Sections = []int{len(p.Strips)}
		if p.Form == SideBySide {
			p.Sections = sections(p.Strips, w.Shop.PlanerWidth)
		}
		kinds := kindsOf(p)
		for j, kind := range kinds {
			name := w.partName(p, kinds, j)
			part := w.row(p, kind, name)
			for k := range p.Strips {
				if sameKind(p.Strips[k], kind) {
					p.Strips[k].Part = name
					part.Quantity++
				}
			}
			w.Bill = append(w.Bill, part)
			if w.Design.SpareStrips > 0 {
				w.Bill = append(w.Bill, w.spare(part))
			}
		}
	}
}

// kindsOf lists the kinds of strip in a panel, each once, the widest of a wood
// first.
func kindsOf(p *Panel) []Strip {
	kinds := slices.Clone(p.Strips)
	slices.SortFunc(kinds, func(a, b Strip) int {
		return cmp.Or(cmp.Compare(a.Wood, b.Wood), cmp.Compare(b.Width, a.Width))
	})
	return slices.CompactFunc(kinds, sameKind)
}

// sameKind reports whether two strips of a panel are alike.
func sameKind(a, b Strip) bool { return a.Wood == b.Wood && a.Width == b.Width }

// partName is a name for kind j of a panel: the panel, the species and, where a
// species comes in several widths, a number.
func (w *Work) partName(p *Panel, kinds []Strip, j int) string {
	name := p.Name + " " + w.Species(kinds[j].Wood)
	number, same := 0, 0
	for i, k := range kinds {
		if w.Species(k.Wood) == w.Species(kinds[j].Wood) {
			same++
			if i <= j {
				number++
			}
		}
	}
	if same > 1 {
		name += " " + strconv.Itoa(number)
	}
	return name
}

func (w *Work) row(p *Panel, kind Strip, name string) layout.Part {
	return layout.Part{
		Name: name, Species: []string{w.Species(kind.Wood)}, Grade: layout.Clear,
		Thickness: kind.Thickness, Width: kind.Width, Bevel: kind.Bevel,
		Set: p.Name, Slices: p.Slices + p.Spare, SliceThickness: w.Design.SliceThickness(),
	}
}

// spare is the row of the spare strips of a kind: a set of their own.
func (w *Work) spare(part layout.Part) layout.Part {
	part.Name += " spare"
	part.Set = part.Name
	part.Quantity = w.Design.SpareStrips
	return part
}

// Species is the species that a letter stands for.
func (w *Work) Species(letter string) string { return w.Design.Woods[letter] }

// Letters lists the letters of the woods in order.
func (d *Design) Letters() []string {
	var list []string
	for letter := range d.Woods {
		list = append(list, letter)
	}
	slices.Sort(list)
	return list
}

// frame adds the pieces of a frame to the bill: two along the face, over its ends
// too, and two between them.
func (w *Work) frame() {
	f := w.Design.Frame
	if f == nil {
		return
	}
	piece := layout.Part{
		Species: []string{w.Species(f.Wood)}, Grade: layout.Clear,
		Thickness: w.Design.Thickness, Width: f.Width, Quantity: 2,
	}
	long, short := piece, piece
	long.Name, long.Length = "frame long", w.Face.Finished.Length()+2*f.Width
	short.Name, short.Length = "frame short", w.Face.Finished.Width()
	w.Bill = append(w.Bill, long, short)
}
