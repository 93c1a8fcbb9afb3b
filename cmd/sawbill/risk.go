package main

import (
	"path/filepath"
	"strconv"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/render"
	"sawbill/solver/risk"
)

func riskCommand() *cli.Command {
	return &cli.Command{
		Name:      "risk",
		Usage:     "how likely the stock is enough, whatever hides in the wood",
		UsageText: "sawbill risk --job DIR [--draws N] [--seed N] [--shop FILE] [--json] [--plot FILE] [--paper PAPER]",
		Description: "Simulates the cutting of a job many times, each time with other hidden defects: a\n" +
			"defect shows when a piece that it reaches into is cut, and the rest is planned again\n" +
			"out of the wood that is left. How many there are and how large is said in the shop's\n" +
			"tables [hidden.SPECIES] and otherwise a guess. Tells which parts run short, what one\n" +
			"more board or piece of each kind would change, and in what order of boards a\n" +
			"shortage shows early. It changes nothing about the job.\n\n" +
			"   sawbill risk --job toolchest\n" +
			"   sawbill risk --job toolchest --draws 10000 --plot chance.png",
		Flags: []cli.Flag{
			jobFlag(),
			&cli.IntFlag{Name: "draws", Value: 2000, Usage: "simulate `N` times"},
			&cli.Int64Flag{Name: "seed", Usage: "draw other hidden defects for each `N`"},
			&cli.PathFlag{TakesFile: true, Name: "shop", Usage: "a TOML `FILE` that says how much hides in the wood; otherwise the shop of the plan does"},
			&cli.PathFlag{TakesFile: true, Name: "plot", Usage: "also draw the chance against the boards that are bought, as a PNG `FILE`"},
			paperFlag(), jsonFlag(),
		},
		Action: runRisk,
	}
}

// mostDraws keeps a slip of the pen from filling the memory.
const mostDraws = 1_000_000

func runRisk(c *cli.Context) error {
	if err := checkWords(c, 0, "job"); err != nil {
		return err
	}
	if n := c.Int("draws"); n < 1 || n > mostDraws {
		return usageError("--draws %q: want a number from 1 to %d", strconv.Itoa(n), mostDraws)
	}
	plot := c.Path("plot")
	if plot != "" && !strings.EqualFold(filepath.Ext(plot), ".png") {
		return usageError("--plot %q: want a name that ends in .png", plot)
	}
	o, err := paperOf(c)
	if err != nil {
		return err
	}
	out := onlyJSON(c)
	path := job{c.Path("job")}.planPath()
	plan, err := readPlan(path)
	if err != nil {
		return err
	}
	if err := checkPlan(c, path, plan); err != nil {
		return err
	}
	found, err := simulate(c, plan)
	if err != nil {
		return err
	}
	printRisk(c.App.Writer, plan, found)
	if plot != "" {
		if err := drawChances(c, plot, plan, found, o); err != nil {
			return err
		}
	}
	if out != nil {
		return files.WriteRisk(out, found)
	}
	return nil
}

// simulate draws as often as it was asked for, unless the user has waited long enough.
func simulate(c *cli.Context, plan *layout.Plan) (*layout.Risk, error) {
	rates, err := ratesOf(c, plan)
	if err != nil {
		return nil, err
	}
	ctx, end := limits{}.begin(c)
	defer end()
	found, err := risk.Of(ctx, plan, risk.Options{Seed: c.Int64("seed"), Draws: c.Int("draws"), Rates: rates})
	if err != nil {
		return nil, usageError("interrupted before all draws were made").withHint("fewer are made with --draws")
	}
	return found, nil
}

// ratesOf is a shop that says how much hides in the wood: that of --shop, or the plan's.
func ratesOf(c *cli.Context, plan *layout.Plan) (*layout.Shop, error) {
	if c.Path("shop") == "" {
		return plan.Problem.Shop, nil
	}
	var in files.Source
	closeAll, err := openSources(c, map[string]*files.Source{"shop": &in})
	defer closeAll()
	if err != nil {
		return nil, err
	}
	shop, err := files.LoadShop(in)
	if err != nil {
		return nil, inputError(err)
	}
	return shop, nil
}

func drawChances(c *cli.Context, path string, plan *layout.Plan, found *layout.Risk, o render.Options) error {
	stem := strings.TrimSuffix(path, filepath.Ext(path))
	return writePages(c, render.Chances(plan, found, o), func(page int) string { return pageFile(stem, page) })
}
