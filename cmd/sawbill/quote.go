package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/quote"
)

func quoteCommand() *cli.Command {
	return &cli.Command{
		Name:      "quote",
		Usage:     "what a job costs: its wood by part and by finished piece, and the shop's own lines",
		UsageText: "sawbill quote --job DIR [--shop FILE] [--json]",
		Description: "A board costs what it cost less the worth of what is kept of it; boards of the yard\n" +
			"are paid whole. Its pieces share that by the face of the board that they take. Hours,\n" +
			"finish, hardware and margin are those of the table quote of the shop; with --shop\n" +
			"those of another shop file take their place in the job. The margin is a share of all\n" +
			"the rest together, added on top. Writes DIR/quote.csv, too.\n\n" +
			"   sawbill quote --job toolchest\n" +
			"   sawbill quote --job toolchest --shop shop.toml",
		Flags: []cli.Flag{
			jobFlag(), &cli.PathFlag{TakesFile: true, Name: "shop", Usage: "take the table quote out of `FILE` into the job"}, jsonFlag(),
		},
		Action: runQuote,
	}
}

func runQuote(c *cli.Context) error {
	if err := checkWords(c, 0, "job"); err != nil {
		return err
	}
	out := onlyJSON(c)
	j := job{c.Path("job")}
	plan, unlock, err := j.locked(c)
	if err != nil {
		return err
	}
	defer unlock()
	if c.IsSet("shop") {
		if plan, err = j.recharge(c, plan); err != nil {
			return err
		}
	}
	q := quote.Of(plan)
	if err := j.writeQuote(q); err != nil {
		return err
	}
	printQuote(c.App.Writer, plan, q)
	if out != nil {
		return files.WriteQuoteReport(out, reportOf(plan), q)
	}
	return nil
}

// recharge takes what --shop says of quotes into the plan of a job. No cut changes, so
// revision, check word and sheets stay; the booklet gets another quote.
func (j job) recharge(c *cli.Context, plan *layout.Plan) (*layout.Plan, error) {
	var source files.Source
	closeAll, err := openSources(c, map[string]*files.Source{"shop": &source})
	defer closeAll()
	if err != nil {
		return nil, err
	}
	said, err := files.LoadShop(source)
	switch why := unpriced(plan.Problem.Shop, plan.Problem.Stock); {
	case err != nil:
		return nil, inputError(err)
	case said.Charges == nil:
		return nil, usageError("%s: there is no table [quote] in it", source.Name)
	case why != "":
		return nil, usageError("the plan counts no money: %s", why).withHint("give the shop prices or the boards costs, and plan again")
	}
	shop := *plan.Problem.Shop
	shop.Charges = said.Charges
	next := *plan
	next.Problem.Shop = &shop
	o, err := drawnLast(plan.Print)
	if err != nil {
		return nil, err
	}
	if err := writePlan(j.planPath(), &next); err != nil {
		return nil, err
	}
	return &next, j.writeBooklet(c, &next, o)
}

func (j job) quotePath() string { return filepath.Join(j.dir, "quote.csv") }

func (j job) writeQuote(q *quote.Quote) error {
	return replace(j.quotePath(), func(w io.Writer) error { return files.WriteQuote(w, q) })
}

// requote writes the quote of a job again where there is one or the job asks for it.
func (j job) requote(c *cli.Context, plan *layout.Plan) error {
	if _, err := os.Stat(j.quotePath()); errors.Is(err, fs.ErrNotExist) && !quote.Asked(plan) {
		return nil
	}
	err := j.writeQuote(quote.Of(plan))
	if err == nil {
		fmt.Fprintln(c.App.Writer, j.quotePath())
	}
	return err
}
