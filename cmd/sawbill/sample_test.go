package main

import (
	"context"
	"io/fs"
	"path"
	"strings"
	"testing"

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
		job, err := files.Load(files.Input{
			Shop:  sampleFile(t, name, "shop.toml"),
			Stock: sampleFile(t, name, "stock.csv"),
			Bill:  sampleFile(t, name, "bill.csv"),
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

func sampleFile(t *testing.T, sample, name string) files.Source {
	t.Helper()
	text, err := fs.ReadFile(samples.Files, path.Join(sample, name))
	if err != nil {
		t.Fatal(err)
	}
	return files.Source{Name: name, Reader: strings.NewReader(string(text))}
}
