package jobs

import (
	"fmt"
	"math/rand"

	"sawbill/layout"
)

// Bars are small jobs in one dimension: bars as wide as the parts, of several
// lengths and costs, with a kerf and end trims. The whole job is then which
// lengths share a bar.
func Bars() []Named {
	var jobs []Named
	for i := range 8 {
		jobs = append(jobs, Named{fmt.Sprint("bars-", i+1), bars(int64(i)+1, 5+i/2, 14+3*i)})
	}
	return jobs
}

// bars is a job of so many kinds and pieces, and of three lengths of bar.
func bars(seed int64, kinds, pieces int) *layout.Problem {
	rng := rand.New(rand.NewSource(seed))
	p := &layout.Problem{Shop: plainShop()}
	p.Shop.CrosscutKerf, p.Shop.EndTrim = 3*mm, 10*mm
	for i, length := range []int{1200, 1800, 2400} {
		for n := range pieces / 3 {
			b := planed(fmt.Sprint(string(rune('A'+i)), n+1), layout.Length(length)*mm, 40*mm)
			b.Cost = layout.Money(length/100+rng.Intn(3)) * layout.Unity
			p.Stock = append(p.Stock, b)
		}
	}
	for i := range kinds {
		length := layout.Length(220+7*rng.Intn(100)) * mm
		p.Bill = append(p.Bill, plainPart(i, length, 40*mm, pieces*(i+1)/kinds-pieces*i/kinds))
	}
	return p
}

// Panels are small jobs in two dimensions: clean planed boards without trims,
// and few sizes of part.
func Panels() []Named {
	var jobs []Named
	for i := range 6 {
		jobs = append(jobs, Named{fmt.Sprint("panels-", i+1), panels(int64(i)+1, 3+i/3, 9+2*i)})
	}
	return jobs
}

func panels(seed int64, kinds, pieces int) *layout.Problem {
	rng := rand.New(rand.NewSource(seed))
	p := &layout.Problem{Shop: plainShop()}
	p.Shop.CrosscutKerf, p.Shop.RipKerf = 4*mm, 4*mm
	for i := range 3 + pieces/5 {
		b := planed(fmt.Sprint("P", i+1), layout.Length(600+50*rng.Intn(9))*mm, layout.Length(140+20*rng.Intn(5))*mm)
		b.Cost = layout.Money(b.Length/mm*b.Width/mm/1000) * layout.Unity
		p.Stock = append(p.Stock, b)
	}
	for i := range kinds {
		length, width := layout.Length(180+20*rng.Intn(12))*mm, layout.Length(40+10*rng.Intn(6))*mm
		p.Bill = append(p.Bill, plainPart(i, length, width, pieces*(i+1)/kinds-pieces*i/kinds))
	}
	return p
}

const mm = layout.Millimetre

// plainShop is a millimetre shop without kerfs, trims, losses, credit and limits.
func plainShop() *layout.Shop {
	usual := layout.DefaultShop(layout.Millimetres)
	return &layout.Shop{
		Units: layout.Millimetres, Fraction: usual.Fraction, RipAgain: true,
		Grades: usual.Grades, Kinds: usual.Kinds, Clearance: map[layout.Kind]layout.Clearance{},
		Price: map[string]layout.Money{},
	}
}

func planed(mark string, length, width layout.Length) layout.Board {
	return layout.Board{
		Mark: mark, Base: mark, Species: "birch", Thickness: 18 * mm, Length: length, Width: width, TipWidth: width,
		Faces: layout.FacesPlaned, Edges: layout.EdgesBoth,
	}
}

func plainPart(i int, length, width layout.Length, quantity int) layout.Part {
	return layout.Part{
		Name: fmt.Sprint("part-", i+1), Species: []string{"birch"}, Thickness: 18 * mm,
		Length: length, Width: width, Grade: layout.Clear, Quantity: quantity,
	}
}
