package main

import (
	"context"
	"fmt"
	"io"
	"math"

	"sawbill/layout"
	"sawbill/solver"
)

func publishedBars(ctx context.Context, s settings, out io.Writer) error {
	return demands(ctx, s, out, "bpp-1d")
}

func publishedStock(ctx context.Context, s settings, out io.Writer) error {
	return demands(ctx, s, out, "stock-2d")
}

// demands prints how few plates or bars meet the demand of each case of a
// folder. A case is met when ours is not above the upper end of what was
// published. It is proven when the bound, rounded up to whole plates, is ours.
func demands(ctx context.Context, s settings, out io.Writer, folder string) error {
	cases, err := s.read(folder)
	if err != nil {
		return err
	}
	table := newSheet(out, "case              ", "   value", "   ours", "   bound", "found in s", "ended in s", "proven", "met")
	met, proven := 0, 0
	for _, c := range cases {
		w, err := observe(ctx, c.Demand(), s.time, solver.Options{Workers: s.workers})
		if err != nil {
			return err
		}
		if ctx.Err() != nil {
			return nil
		}
		m, want := w.ended, c.Used()
		ours := m.cost.Float()
		ok := m.missing == 0 && ours <= want.High
		sure := m.missing == 0 && m.bound != nil && wholePlates(*m.bound) >= ours
		met, proven = met+count(ok), proven+count(sure)
		table.row(c.Name, span(want), ourCount(m), amount(m.bound), seconds(w.found()), seconds(m.at), yes(sure), yes(ok))
	}
	fmt.Fprintf(out, "\n%d cases: met %d, proven %d\n", len(cases), met, proven)
	return nil
}

// wholePlates is the bound in plates that cost 1 each, of which only whole ones
// can be cut.
func wholePlates(bound layout.Money) float64 { return math.Ceil(bound.Float()) }

// ourCount writes how many plates a plan cuts, and how many pieces it lacks.
func ourCount(m moment) string {
	if m.missing > 0 {
		return fmt.Sprintf("%v-%d", m.cost.Float(), m.missing)
	}
	return fmt.Sprint(m.cost.Float())
}
