// Package published reads cases of cutting and packing from the literature, so
// that the board routine and the search can be measured against values worked
// out by others. The cases themselves are not part of this project.
package published

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"

	"sawbill/layout"
)

// Case is one published case.
type Case struct {
	Name  string  `json:"name"`
	Kind  string  `json:"kind"`
	Stock []Stock `json:"stock"`
	Items []Item  `json:"items"`

	Defects   []Defect           `json:"defects"`
	Optimum   Optimum            `json:"optimum"`
	BestKnown *float64           `json:"best_known"`
	Computed  map[string]Outcome `json:"computed"`
}

// Optimum is what a published source proves best; nil where it does not say.
type Optimum struct {
	StockUsed  *float64 `json:"stock_used"`
	Guillotine *float64 `json:"guillotine"`
}

// Outcome is a computed value, or an interval.
type Outcome struct{ Low, High float64 }

// UnmarshalJSON reads a number or a pair of numbers.
func (o *Outcome) UnmarshalJSON(text []byte) error {
	var pair []float64
	if err := json.Unmarshal(text, &pair); err == nil && len(pair) == 2 {
		*o = Outcome{pair[0], pair[1]}
		return nil
	}
	var one *float64
	if err := json.Unmarshal(text, &one); err != nil {
		return err
	}
	if one != nil {
		*o = Outcome{*one, *one}
	}
	return nil
}

// Stock is a plate or bar; Copies nil stands for any number.
type Stock struct {
	Length int  `json:"length"`
	Width  int  `json:"width"`
	Cost   int  `json:"cost"`
	Copies *int `json:"copies"`
}

// Item is a kind of rectangle; Copies nil stands for any number.
type Item struct {
	Length int  `json:"length"`
	Width  int  `json:"width"`
	Value  int  `json:"value"`
	Copies *int `json:"copies"`
}

// Defect is a rectangle of one plate that nothing may touch.
type Defect struct {
	Stock  int `json:"stock"`
	X      int `json:"x"`
	Y      int `json:"y"`
	Length int `json:"length"`
	Width  int `json:"width"`
}

// Read reads the cases of one set below dir, in order of their file names.
func Read(dir, set string) ([]Case, error) {
	files, err := filepath.Glob(filepath.Join(dir, set, "*.json"))
	if err != nil {
		return nil, err
	}
	var cases []Case
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			return nil, err
		}
		var c Case
		if err := json.Unmarshal(text, &c); err != nil {
			return nil, fmt.Errorf("%s: %w", file, err)
		}
		cases = append(cases, c)
	}
	return cases, nil
}

// Dir is where the cases lie: the value of the variable SAWBILL_BENCH, else the
// folder shared/bench beside the project's root, which is above from.
func Dir(from string) string {
	if dir := os.Getenv("SAWBILL_BENCH"); dir != "" {
		return dir
	}
	return filepath.Join(from, "..", "shared", "bench")
}

// Problem is the case as a job without kerfs, trims and offcuts: plates are
// planed boards with straight edges, one unit is one millimetre, or a tenth or a
// hundredth where that would make boards longer than any may be. Values are not
// part of it.
func (c *Case) Problem(ripAgain RipAgain) *layout.Problem {
	shop := layout.DefaultShop(layout.Millimetres)
	*shop = layout.Shop{
		Units: layout.Millimetres, Fraction: shop.Fraction, RipAgain: bool(ripAgain),
		Grades: shop.Grades, Kinds: shop.Kinds, Clearance: map[layout.Kind]layout.Clearance{},
	}
	p := &layout.Problem{Shop: shop}
	mm := c.unit
	for i, s := range c.Stock {
		b := layout.Board{
			Mark: fmt.Sprint("P", i+1), Species: "plate", Thickness: thickness,
			Width: mm(max(1, s.Width)), TipWidth: mm(max(1, s.Width)), Length: mm(s.Length),
			Cost: layout.Money(s.Cost), Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
		}
		b.Base = b.Mark
		for _, d := range c.Defects {
			if d.Stock == i {
				b.Defects = append(b.Defects, layout.Defect{Kind: layout.Hole, Rect: layout.Rect{
					X1: mm(d.X), X2: mm(d.X + d.Length), Y1: mm(d.Y), Y2: mm(d.Y + d.Width)}})
			}
		}
		p.Stock = append(p.Stock, copies(b, s.Copies)...)
	}
	for i, it := range c.Items {
		part := layout.Part{
			Name: fmt.Sprint("i", i+1), Species: []string{"plate"}, Thickness: thickness,
			Length: mm(it.Length), Width: mm(max(1, it.Width)), Grade: layout.Clear, Quantity: 1 << 20,
		}
		if it.Copies != nil {
			part.Quantity = *it.Copies
		}
		p.Bill = append(p.Bill, part)
	}
	return p
}

// RipAgain says whether cells may be ripped once more.
type RipAgain bool

const thickness = 20 * layout.Millimetre

// longest is how long a board may be.
const longest = 30_000 * layout.Millimetre

// unit is n units of the case.
func (c *Case) unit(n int) layout.Length {
	unit := layout.Millimetre
	for _, s := range c.Stock {
		for layout.Length(s.Length)*unit > longest {
			unit /= 10
		}
	}
	return layout.Length(n) * unit
}

func copies(b layout.Board, n *int) []layout.Board {
	if n == nil || *n == 1 {
		return []layout.Board{b}
	}
	var all []layout.Board
	for i := range *n {
		c := b
		c.Mark = fmt.Sprintf("%s.%d", b.Base, i+1)
		all = append(all, c)
	}
	return all
}
