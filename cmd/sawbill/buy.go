package main

import (
	"slices"
	"time"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/solver/buy"
)

func buyCommand() *cli.Command {
	return &cli.Command{
		Name:      "buy",
		Usage:     "which boards of the yard to buy, or how much wood to ask for",
		UsageText: "sawbill buy [--stock FILE] --bill FILE [--shop FILE] [--out FILE] [options]",
		Description: "Where the stock has boards with the source yard, it lists the cheapest of them that\n" +
			"complete the bill together with the rack. Only what is paid at the yard counts: the\n" +
			"rack is paid for, and an offcut brings nothing back.\n" +
			"Where it has none, it says of each species and thickness how much to ask for, and\n" +
			"how narrow and how short a board may be. Nothing is written but the list.\n\n" +
			"   sawbill buy --stock rack.csv --bill bill.csv --shop shop.toml\n" +
			"   sawbill buy --stock rack.csv --bill bill.csv --out shopping.csv --time 1m\n" +
			"   sawbill buy --bill bill.csv --rounds 20 --seed 7",
		Flags: []cli.Flag{
			stockFlag(), billFlag(), shopFlag(),
			&cli.PathFlag{TakesFile: true, Name: "out", Usage: "also write the list as a table, a CSV `FILE`"},
			&cli.DurationFlag{Name: "time", Value: 20 * time.Second, Usage: "think no longer than `TIME`, such as 30s or 5m; 0 thinks until nothing is left to try, or Ctrl-C"},
			&cli.IntFlag{Name: "rounds", Usage: "think for `N` rounds, however long they take unless --time is given too; the same rounds and seed give the same list"},
			&cli.Int64Flag{Name: "seed", Usage: "search in another order, and draw other piles of boards, for each `N`"},
			jsonFlag(),
		},
		Action: runBuy,
	}
}

func runBuy(c *cli.Context) error {
	if err := checkWords(c, 0, "bill"); err != nil {
		return err
	}
	l, err := limitsOf(c)
	if err != nil {
		return err
	}
	out := onlyJSON(c)
	problem, known, err := loadBuying(c)
	if err != nil {
		return err
	}
	if known {
		return buyBoards(c, out, l, problem)
	}
	return askForWood(c, out, l, problem)
}

// loadBuying reads the files of a job for which wood is to be bought; known says
// whether the stock has boards of the yard. Where it has none, a bill is no worse for
// asking for what no board of the stock could give.
func loadBuying(c *cli.Context) (problem *layout.Problem, known bool, err error) {
	atYard := func(b layout.Board) bool { return b.Source == layout.Yard }
	job, err := loadJob(c, files.Input{Yard: true, More: func(s *layout.Shop, stock []layout.Board, bill []layout.Part) []layout.Board {
		if slices.ContainsFunc(stock, atYard) {
			return nil
		}
		return buy.Orderable(s, stock, bill)
	}})
	if err != nil {
		return nil, false, err
	}
	problem = job.Problem
	problem.Stock = problem.Stock[:len(job.Stock.Boards)] // without what might be ordered
	return problem, slices.ContainsFunc(problem.Stock, atYard), nil
}
