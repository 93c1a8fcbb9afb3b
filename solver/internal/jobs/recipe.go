package jobs

import (
	"fmt"
	"math/rand"
	"strings"

	"sawbill/layout"
)

// Named is a job that tables and tests call by its name.
type Named struct {
	Name    string
	Problem *layout.Problem
}

// recipe describes a job: the bill as a shop would write it, and the stock by
// what kind of boards lie in the rack. Measures are as written at the bench, in
// the recipe's unit; where two are named, a board is drawn between them.
type recipe struct {
	name  string
	unit  layout.Unit
	seed  int64
	racks []rack
	bill  []row
}

// rack is a pile of boards that are of one kind.
type rack struct {
	boards    int
	species   string
	thickness string
	length    string // "72 to 120"
	width     string
	tapered   int    // one board in so many is tapered; 0: none
	faults    string // one defect on so much length; "": clean boards
	faces     layout.Faces
	edges     layout.Edges
}

// row is a row of the bill: section and length as "3/4 x 2 x 28".
type row struct {
	name, species, size string
	quantity            int
	grade               string
	priority            int
}

// problem is the job of a recipe in the default shop of its unit: same recipe,
// same job. It panics on a measure that cannot be read.
func (r *recipe) problem() *layout.Problem {
	rng := rand.New(rand.NewSource(r.seed))
	p := &layout.Problem{Shop: layout.DefaultShop(r.unit)}
	for i, k := range r.racks {
		if _, known := p.Shop.Price[k.species]; !known {
			p.Shop.Price[k.species] = layout.Money(6+2*len(p.Shop.Price)) * layout.Unity
		}
		for n := range k.boards {
			b := r.board(rng, &k)
			b.Base = fmt.Sprint(string(rune('A'+i)), n+1)
			b.Mark = b.Base
			b.Cost, _ = p.Shop.DefaultCost(&b)
			p.Stock = append(p.Stock, b)
		}
	}
	for _, w := range r.bill {
		p.Bill = append(p.Bill, r.part(w))
	}
	return p
}

func (r *recipe) part(w row) layout.Part {
	size := strings.Split(w.size, " x ")
	return layout.Part{
		Name: w.name, Species: strings.Split(w.species, "|"), Quantity: w.quantity, Priority: w.priority,
		Thickness: r.measure(size[0]), Width: r.measure(size[1]), Length: r.measure(size[2]), Grade: w.grade,
	}
}

func (r *recipe) measure(text string) layout.Length {
	l, err := layout.ParseLength(text, r.unit)
	if err != nil {
		panic("jobs: " + err.Error())
	}
	return l
}

// between draws a measure from "72 to 120", in whole steps.
func (r *recipe) between(rng *rand.Rand, text string) layout.Length {
	from, to, _ := strings.Cut(text, " to ")
	lo, hi, step := r.measure(from), r.measure(to), step(r.unit)
	return lo + layout.Length(rng.Intn(int((hi-lo)/step)+1))*step
}

// step is the finest mark that the boards of a shop are measured to.
func step(u layout.Unit) layout.Length {
	if u == layout.Millimetres {
		return 5 * layout.Millimetre
	}
	return layout.Inch / 8
}

func (r *recipe) board(rng *rand.Rand, k *rack) layout.Board {
	b := layout.Board{
		Species: k.species, Thickness: r.measure(k.thickness), Faces: k.faces, Edges: k.edges,
		Length: r.between(rng, k.length), Width: r.between(rng, k.width),
	}
	b.TipWidth = b.Width
	if k.tapered > 0 && rng.Intn(k.tapered) == 0 {
		b.TipWidth -= layout.Length(1+rng.Intn(int(b.Width/4/step(r.unit)))) * step(r.unit)
	}
	if k.faults == "" {
		return b
	}
	apart := r.measure(k.faults)
	for x := layout.Length(rng.Int63n(int64(apart))); x < b.Length; x += apart/2 + layout.Length(rng.Int63n(int64(apart))) {
		if d := fault(rng, &b, x/step(r.unit)*step(r.unit), step(r.unit)); !d.Rect.Empty() {
			b.Defects = append(b.Defects, d)
		}
	}
	return b
}
