package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"
	"time"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/steps"
	"sawbill/solver"
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
			&cli.PathFlag{Name: "out", Usage: "also write the list as a table, a CSV `FILE`"},
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
	read := len(job.Stock.Boards)
	known = len(problem.Stock) == read
	problem.Stock = problem.Stock[:read]
	return problem, known, nil
}

func buyBoards(c *cli.Context, out io.Writer, l limits, p *layout.Problem) error {
	ctx, end := l.begin(c)
	defer end()
	bar := newProgress(c.App.ErrWriter, l.rounds, l.time)
	defer bar.done()
	o := buy.Options{Solve: solver.Options{Seed: l.seed, Rounds: l.rounds, Observer: bar.observer()}, Share: shareOfTime}
	if l.time > 0 {
		o.Trials = math.MaxInt // time bounds them
	}
	answer, err := buy.Decide(ctx, p, o)
	if err != nil {
		return err
	}
	list := files.Buying{
		Shop: p.Shop, Boards: answer.Boards, Paid: answer.Paid, Bound: answer.Bound, Proof: buyingProof(answer), Missing: answer.Plan.Missing,
	}
	if path := c.Path("out"); path != "" {
		if err := replace(path, func(w io.Writer) error { return files.WriteBuyingTable(w, list) }); err != nil {
			return err
		}
	}
	printBuying(c.App.Writer, list)
	if out != nil {
		if err := files.WriteBuying(out, list); err != nil {
			return err
		}
	}
	return notBought(answer.Plan)
}

// buyingProof says what is proven of what is paid.
func buyingProof(a *buy.Answer) string {
	which := "that complete the bill"
	if len(a.Plan.Missing) > 0 {
		which = "that leave the same parts missing"
	}
	switch {
	case a.Paid == 0 && len(a.Plan.Missing) == 0:
		return "the rack completes the bill"
	case a.Bound == nil:
		return "nothing is proven yet of how much less other boards could cost"
	case *a.Bound == a.Paid:
		return "proven: no boards of the yard " + which + " cost less"
	}
	return "no boards of the yard " + which + " can cost less than " + steps.Bound(layout.Totals{Cost: a.Paid, Bound: a.Bound})
}

// notBought is an error where not even the whole yard completes the bill, as far as is
// known.
func notBought(plan *layout.Plan) error {
	if len(plan.Missing) == 0 {
		return nil
	}
	short := &failure{class: partsShort, err: fmt.Errorf("%s missing, whatever is bought at the yard", missingOfWanted(plan))}
	return short.withHint("give it longer with --time, or look for other boards; without any of the yard in the stock sawbill buy says how much to ask for")
}

// pilesOfEach is how many piles of each wood are planned.
const pilesOfEach = 20

var errNoPile = errors.New("there was no time to plan a single pile of boards")

func askForWood(c *cli.Context, out io.Writer, l limits, p *layout.Problem) error {
	tellUnknownWoods(c.App.ErrWriter, p)
	ctx, end := l.begin(c)
	defer end()
	bar := newProgress(c.App.ErrWriter, l.rounds, l.time)
	defer bar.done()
	advice, err := buy.Ask(ctx, p, buy.AskOptions{
		Solve: solver.Options{Seed: l.seed, Rounds: l.rounds, Observer: bar.observer()}, Share: shareOfTime, Piles: pilesOfEach,
	})
	if err != nil {
		return err
	}
	list := asking(p, advice)
	if path := c.Path("out"); path != "" {
		if err := replace(path, func(w io.Writer) error { return files.WriteAskingTable(w, list) }); err != nil {
			return err
		}
	}
	printAsking(c.App.Writer, list)
	if out != nil {
		if err := files.WriteAsking(out, list); err != nil {
			return err
		}
	}
	switch {
	case slices.ContainsFunc(advice.Woods, func(w buy.Wanted) bool { return w.Piles == 0 }):
		return (&failure{class: partsShort, err: errNoPile}).withHint("give it longer with --time")
	case len(advice.Not) > 0:
		return &failure{class: partsShort, err: fmt.Errorf("%s of part that no bought board helps", count(len(advice.Not), "kind"))}
	}
	return nil
}

// tellUnknownWoods warns of species that neither the stock nor the shop names, for
// they may be misspelt.
func tellUnknownWoods(w io.Writer, p *layout.Problem) {
	var known, told []string
	for species := range p.Shop.Price {
		known = append(known, species)
	}
	slices.Sort(known)
	for _, b := range p.Stock {
		known = append(known, b.Species)
	}
	if len(known) == 0 {
		return
	}
	same := func(s string) func(string) bool {
		return func(t string) bool { return layout.SameSpecies(s, t) }
	}
	for _, part := range p.Bill {
		for _, species := range part.Species {
			if slices.ContainsFunc(known, same(species)) || slices.ContainsFunc(told, same(species)) {
				continue
			}
			told = append(told, species)
			line := fmt.Sprintf("warning: part %q: neither the stock nor the shop's prices name %s", part.Name, strings.TrimSpace(species))
			if near := layout.Nearest(species, known); near != "" {
				line += fmt.Sprintf(" (did you mean %q?)", near)
			}
			fmt.Fprintln(w, line)
		}
	}
}
