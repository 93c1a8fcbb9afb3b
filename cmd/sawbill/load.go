package main

import (
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"slices"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
)

// loadProblem reads and checks the files of a job, and tells what they held and
// what is doubtful about them.
func loadProblem(c *cli.Context) (*layout.Problem, error) {
	job, err := loadJob(c, files.Input{Yard: c.Bool("yard")})
	if err != nil {
		return nil, err
	}
	return job.Problem, nil
}

// loadJob is loadProblem with more to say about the input than its files.
func loadJob(c *cli.Context, in files.Input) (*files.Job, error) {
	closeAll, err := openSources(c, map[string]*files.Source{"shop": &in.Shop, "stock": &in.Stock, "bill": &in.Bill})
	defer closeAll()
	if err != nil {
		return nil, err
	}
	job, err := files.Load(in)
	if err != nil {
		return nil, inputError(err)
	}
	tellWarnings(c.App.ErrWriter, job.Warnings)
	if in.Stock.Reader != nil {
		tellRead(c.App.Writer, in.Stock.Name, count(len(job.Stock.Boards), "board"), job.Stock.Skipped)
	}
	tellRead(c.App.Writer, in.Bill.Name, count(len(job.Problem.Bill), "kind of part"), job.Bill.Skipped)
	return job, nil
}

// loadRack reads and checks a stock for which there is no bill.
func loadRack(c *cli.Context) (*files.Rack, error) {
	var in files.Input
	closeAll, err := openSources(c, map[string]*files.Source{"shop": &in.Shop, "stock": &in.Stock})
	defer closeAll()
	if err != nil {
		return nil, err
	}
	rack, err := files.LoadStock(in)
	if err != nil {
		return nil, inputError(err)
	}
	tellWarnings(c.App.ErrWriter, rack.Warnings)
	tellRead(c.App.Writer, in.Stock.Name, count(len(rack.Boards), "board"), rack.Stock.Skipped)
	return rack, nil
}

// openSources opens the files that flags name, and tells of all that it cannot open.
// What it opened is to be closed even after an error.
func openSources(c *cli.Context, sources map[string]*files.Source) (closeAll func(), err error) {
	var open []*os.File
	closeAll = func() {
		for _, f := range open {
			f.Close() // it was only read
		}
	}
	var faults []error
	for _, flag := range slices.Sorted(maps.Keys(sources)) {
		path := c.Path(flag)
		if path == "" {
			continue
		}
		f, err := os.Open(path)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		open = append(open, f)
		*sources[flag] = files.Source{Name: path, Reader: f}
	}
	if len(faults) > 0 {
		return closeAll, inputError(errors.Join(faults...))
	}
	return closeAll, nil
}

func tellWarnings(w io.Writer, warnings layout.Complaints) {
	for _, c := range warnings {
		fmt.Fprintf(w, "warning: %s\n", c)
	}
}

// tellRead says what a file held, and which of its rows held nothing to read.
func tellRead(w io.Writer, name, held string, s files.Skipped) {
	line := name + ": " + held
	if s.Comments > 0 {
		line += ", skipped " + count(s.Comments, "comment row")
	}
	if s.Blank > 0 {
		line += ", skipped " + count(s.Blank, "blank row")
	}
	fmt.Fprintln(w, line)
}
