package main

import (
	"io"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/files"
	"sawbill/layout/record"
	"sawbill/layout/steps"
)

func jsonFlag() cli.Flag {
	return &cli.BoolFlag{Name: "json", Usage: "say the result as JSON, and nothing else, for another program to read"}
}

// onlyJSON is where JSON goes if the user asked for it, otherwise nil. From then on
// nothing else is said on standard output.
func onlyJSON(c *cli.Context) io.Writer {
	if !c.Bool("json") {
		return nil
	}
	out := c.App.Writer
	c.App.Writer = io.Discard
	return out
}

// writeReport writes what a command says of a plan, if out is not nil, and gives back
// what it has to say besides.
func writeReport(out io.Writer, r files.Report, besides error) error {
	if out == nil {
		return besides
	}
	if err := files.WriteReport(out, r); err != nil {
		return err
	}
	return besides
}

// reportOf is what there is to say of a plan by itself.
func reportOf(p *layout.Plan) files.Report {
	return files.Report{
		Plan: p, CheckWord: steps.CheckWord(p), Cut: cutPieces(p), ToCut: toCut(p), Offcuts: offcutMarks(p),
	}
}

// changeReport is that of a revision, with what is new about it.
func changeReport(former, p *layout.Plan) files.Report {
	r := reportOf(p)
	r.Changed, r.Gone, r.Wood = record.Changed(p), gone(former, p), newWood(former, p)
	return r
}

// brokenRules are the violations of a plan, a line each.
func brokenRules(p *layout.Plan) []string {
	var lines []string
	for _, v := range check.Plan(p) {
		lines = append(lines, v.String())
	}
	return lines
}
