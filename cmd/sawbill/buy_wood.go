package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/solver"
	"sawbill/solver/buy"
)

// pilesOfEach is how many piles of each wood are planned.
const pilesOfEach = 20

var errNoPile = errors.New("there was no time to plan a single pile of boards")

// askForWood says how much wood to ask for.
func askForWood(c *cli.Context, out io.Writer, l limits, p *layout.Problem) error {
	tellUnknownWoods(c.App.ErrWriter, p)
	var advice *buy.Advice
	err := l.think(c, func(ctx context.Context, solve solver.Options) (err error) {
		advice, err = buy.Ask(ctx, p, buy.AskOptions{Solve: solve, Share: shareOfTime, Piles: pilesOfEach})
		return err
	})
	if err != nil {
		return err
	}
	list := asking(p, advice)
	if err := writeList(c, func(w io.Writer) error { return files.WriteAskingTable(w, list) }); err != nil {
		return err
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
