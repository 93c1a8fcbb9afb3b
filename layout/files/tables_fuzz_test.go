package files

import (
	"strings"
	"testing"

	"sawbill/layout"
)

// Whatever is in the files, there is a job that is right or something to
// complain of.
func FuzzStock(f *testing.F) {
	f.Add(goodStock)
	f.Add("board;species;thickness;width;length;count;defects\nA1;ash;4/4;8,5;96;3;knot 3..4 x 1..2 | pin 5 x 2 d1/4 /B\n")
	f.Add("\ufeff# x\r\nBoard\tspecies\tthickness\twidth\tlength\tnote\r\nA1\tash\t6\"\t8\t96\"\t\"two\r\nlines\"\r\n")
	f.Add("board,species,thickness,width,length,faces\nA1,ash,\"96\"\",8,96,S4S\nA2,\"a\"\"b\",1,2,3,\"\"\"\n")
	f.Fuzz(func(t *testing.T, text string) {
		job, err := load(text, goodBill)
		if err != nil {
			return
		}
		for _, b := range job.Problem.Stock {
			if b.Length <= 0 || b.Width <= 0 || b.TipWidth <= 0 || b.Thickness <= 0 || b.Cost < 0 {
				t.Fatalf("board %+v", b)
			}
			for _, d := range b.Defects {
				if d.Rect.Empty() || !b.Frame().Contains(d.Rect) {
					t.Fatalf("board %+v: defect %v", b, d)
				}
			}
		}
	})
}

func FuzzBill(f *testing.F) {
	f.Add(goodBill)
	f.Add("part;species;thickness;width;length;quantity;priority;from\nrail;ash|elm;0,75;3;30;2;1;A1\n")
	f.Add("part,species,thickness,width,length,quantity,set,slices,slice_thickness\nstrip,ash,3/4,1,,6,top,12,1-1/2\n")
	f.Add("part,species,thickness,width,length,quantity,spare,piece\nrail,ash,3/4,3,30,2,1,shelf\nslat,ash,3/4,1,20,4,0,Shelf \n")
	f.Fuzz(func(t *testing.T, text string) {
		job, err := load(goodStock, text)
		if err != nil {
			return
		}
		for _, p := range job.Problem.Bill {
			long := p.Length > 0 || p.Set != "" && p.Slices > 0 && p.SliceThickness > 0
			if !long || p.Width <= 0 || p.Thickness <= 0 || p.Quantity < 1 || p.Spare < 0 || len(p.Species) == 0 {
				t.Fatalf("part %+v", p)
			}
		}
	})
}

// What a stock file may say of boards is what a plan file keeps.
func FuzzStockIntoPlan(f *testing.F) {
	f.Add(goodStock)
	f.Add("board,species,thickness,width,tip_width,length,count,cost,edges,faces,place,defects\nM4,elm,13/16,8,7,96,2,3.1,one,S2S,loft,rot 3..4\n")
	f.Fuzz(func(t *testing.T, text string) {
		job, err := load(text, goodBill)
		if err != nil {
			return
		}
		plan := layout.Assemble(job.Problem, nil)
		first := written(t, plan)
		again, err := ReadPlan(strings.NewReader(string(first)), "again")
		if err != nil {
			t.Fatal(err)
		}
		if second := written(t, again); string(second) != string(first) {
			t.Fatalf("written %s and then %s", first, second)
		}
	})
}
