package main

import (
	"context"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"sawbill/layout"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/published"
)

// plateWork bounds the work on a plate with limited copies; the hardest of the
// published ones needs about ten seconds.
const plateWork = 600_000_000

// plateTime is within what a plate is to be met.
const plateTime = 10 * time.Second

func freePlates(ctx context.Context, s settings, out io.Writer) error {
	return plates(ctx, s, out, "gcut-unbounded", "small-unbounded")
}

func limitedPlates(ctx context.Context, s settings, out io.Writer) error {
	return plates(ctx, s, out, "classic-bounded", "gcut-bounded")
}

func defectPlates(ctx context.Context, s settings, out io.Writer) error {
	return plates(ctx, s, out, "derived-defects")
}

// plates prints the most that the board routine cuts from each plate of some
// folders of which something is known to compare it with.
func plates(ctx context.Context, s settings, out io.Writer, folders ...string) error {
	cases, err := s.read(folders...)
	if err != nil {
		return err
	}
	cases = slices.DeleteFunc(cases, func(c published.Case) bool { return c.Cut().High == 0 })
	table := newSheet(out, "plate               ", "       value", "    ours", "seconds", "proven", "met")
	met, proven := 0, 0
	for _, c := range cases {
		if ctx.Err() != nil {
			return nil
		}
		start := time.Now()
		found, exact := cutPlate(&c)
		took, want := time.Since(start), c.Cut()
		ok := want.Low <= found && found <= want.High && took <= plateTime
		met, proven = met+count(ok), proven+count(exact)
		table.row(c.Name, span(want), number(found), seconds(took), yes(exact), yes(ok))
	}
	fmt.Fprintf(out, "\n%d cases: met %d, proven %d\n", len(cases), met, proven)
	return nil
}

// cutPlate is the most that may be cut from the plate of a case, with a last rip,
// and whether that is proven. An item is worth its value in whole money, so that
// the worth of a limit can be told in fractions of it.
func cutPlate(c *published.Case) (float64, bool) {
	p := c.Problem(true)
	price, limits := make([]column.Value, len(c.Items)), make([]int, len(c.Items))
	limited := false
	for i, it := range c.Items {
		price[i], limits[i] = column.FromMoney(layout.Money(it.Value)*layout.Unity), -1
		if it.Copies != nil {
			limits[i], limited = *it.Copies, true
		}
	}
	board := column.New(p, &p.Stock[0], column.Exact())
	if !limited {
		return worth(new(column.Bench).Best(board, price)), true
	}
	best, exact := new(column.Bench).BestLimited(board, price, limits, plateWork)
	return worth(best), exact
}

func worth(c column.Column) float64 {
	return float64(c.Value) / float64(column.FromMoney(layout.Unity))
}

// read reads the published cases of some folders that the settings choose.
func (s settings) read(folders ...string) ([]published.Case, error) {
	dir := published.Dir(s.root)
	var chosen []published.Case
	for _, folder := range folders {
		cases, err := published.Read(dir, folder)
		if err != nil {
			return nil, err
		}
		for _, c := range cases {
			if strings.Contains(c.Name, s.only) {
				chosen = append(chosen, c)
			}
		}
	}
	if len(chosen) == 0 {
		return nil, fmt.Errorf("no published cases in %q", dir)
	}
	return chosen, nil
}

// span writes a number, or an interval as "23..24".
func span(o published.Outcome) string {
	if o.Low == o.High {
		return number(o.Low)
	}
	return number(o.Low) + ".." + number(o.High)
}

// number writes a whole number, however large.
func number(v float64) string { return fmt.Sprintf("%.0f", v) }

func seconds(d time.Duration) string { return fmt.Sprintf("%.2f", d.Seconds()) }

func count(b bool) int {
	if b {
		return 1
	}
	return 0
}
