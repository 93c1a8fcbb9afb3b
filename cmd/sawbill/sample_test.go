package main

import (
	"bytes"
	"context"
	"errors"
	"io/fs"
	"path"
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/files"
	"sawbill/samples"
	"sawbill/solver"
)

// A newcomer's first plan must be a whole one, soon.
func TestSamplesCanBeMade(t *testing.T) {
	names, err := chosenSamples("")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		if hasDesign(name) {
			continue
		}
		job, err := files.Load(files.Input{
			Shop:  sampleFile(t, name, "shop.toml"),
			Stock: sampleFile(t, name, "stock.csv"),
			Bill:  sampleFile(t, name, "bill.csv"),
			Yard:  name == "bookcase", // of which the rack has too little wood
		})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if len(job.Warnings) > 0 {
			t.Errorf("%s: %v", name, job.Warnings)
		}
		plan, _, err := solver.Solve(context.Background(), job.Problem, solver.Options{Rounds: 1})
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if len(plan.Missing) > 0 {
			t.Errorf("%s: missing %v", name, plan.Missing)
		}
		if faults := check.Plan(plan); len(faults) > 0 {
			t.Errorf("%s: %v", name, faults)
		}
	}
}

// hasDesign reports whether a sample is a design, of which glueup makes the bill.
func hasDesign(name string) bool {
	_, err := fs.Stat(samples.Files, path.Join(name, "design.toml"))
	return err == nil
}

// A sample of a design is worked out without a warning, and its bill and stock make
// a problem.
func TestSampleDesignsCanBeWorkedOut(t *testing.T) {
	names, err := chosenSamples("")
	if err != nil {
		t.Fatal(err)
	}
	designs := 0
	for _, name := range names {
		if !hasDesign(name) {
			continue
		}
		designs++
		work, err := files.LoadDesign(sampleFile(t, name, "design.toml"), sampleFile(t, name, "shop.toml"))
		if err != nil {
			t.Fatal(err)
		}
		if len(work.Warnings) > 0 {
			t.Errorf("%s: %v", name, work.Warnings)
		}
		var bill bytes.Buffer
		if err := files.WriteBill(&bill, name, work.Design.Units, work.Bill); err != nil {
			t.Fatal(err)
		}
		_, err = files.Load(files.Input{
			Shop: sampleFile(t, name, "shop.toml"), Stock: sampleFile(t, name, "stock.csv"),
			Bill: files.Source{Name: "bill.csv", Reader: &bill},
		})
		var found layout.Complaints
		errors.As(err, &found)
		for _, c := range found.Faults() {
			t.Errorf("%s: %v", name, c)
		}
	}
	if designs < 3 {
		t.Errorf("%d designs among the samples", designs)
	}
}

func sampleFile(t *testing.T, sample, name string) files.Source {
	t.Helper()
	text, err := fs.ReadFile(samples.Files, path.Join(sample, name))
	if err != nil {
		t.Fatal(err)
	}
	return files.Source{Name: name, Reader: strings.NewReader(string(text))}
}
