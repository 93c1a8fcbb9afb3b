package main

import (
	"context"
	"io"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
	"sawbill/solver/internal/jobs"
	"sawbill/solver/internal/mip"
	"sawbill/solver/internal/published"
)

func TestSheet(t *testing.T) {
	var out strings.Builder
	s := newSheet(&out, "case  ", "   cost", "met")
	s.row("a", 12, "yes")
	s.row("bcd", "3.50", "no")
	want := `| case   |    cost | met |
| ------ | ------: | --: |
| a      |      12 | yes |
| bcd    |    3.50 |  no |
`
	if diff := cmp.Diff(want, out.String()); diff != "" {
		t.Error(diff)
	}
}

func TestFlags(t *testing.T) {
	s, err := parse([]string{"-set", "bars,mip", "-time", "3s", "-seeds", "4"}, io.Discard)
	if err != nil || !cmp.Equal(s.sets, []string{"bars", "mip"}) || s.time != 3*time.Second || s.seeds != 4 {
		t.Errorf("%+v, %v", s, err)
	}
	if s, err := parse([]string{"-set", "all"}, io.Discard); err != nil || !cmp.Equal(s.sets, names()) {
		t.Errorf("%+v, %v", s, err)
	}
	for _, args := range [][]string{{"-set", "none"}, {"-set", "shop,none"}, {"shop"}, {"-time", "3"}} {
		if _, err := parse(args, io.Discard); err == nil {
			t.Errorf("%q is not refused", args)
		}
	}
}

// Only a lower cost is noted, and what is written reads the same.
func TestBestCostsRoundTrip(t *testing.T) {
	name := filepath.Join(t.TempDir(), "best.txt")
	known, err := readBest(name)
	if err != nil || len(known) != 0 {
		t.Fatalf("%v, %v from no file", known, err)
	}
	known.note("settle", 1234567, time.Minute)
	known.note("settle", 1234568, time.Hour)
	known.note("frames", 1100, time.Hour)
	known.note("frames", 1000, time.Second)
	if err := (settings{best: name, keep: true}).write(known); err != nil {
		t.Fatal(err)
	}
	read, err := readBest(name)
	if err != nil {
		t.Fatal(err)
	}
	want := costs{"settle": {1234567, time.Minute}, "frames": {1000, time.Second}}
	if !cmp.Equal(read, want, cmp.AllowUnexported(least{})) {
		t.Errorf("read %v, want %v", read, want)
	}
}

// The costs that the project keeps are of jobs that exist.
func TestBestCostsAreOfJobs(t *testing.T) {
	known, err := readBest(filepath.Join("testdata", "best.txt"))
	if err != nil {
		t.Fatal(err)
	}
	named := map[string]bool{}
	for _, j := range append(append(jobs.Shop(), jobs.Small()...), jobs.Large(), jobs.Huge()) {
		named[j.Name] = true
	}
	for job := range known {
		if !named[job] {
			t.Errorf("there is no job %q", job)
		}
	}
	for _, j := range jobs.Shop() {
		if _, ok := known[j.Name]; !ok {
			t.Errorf("no cost of %q is known", j.Name)
		}
	}
}

func TestMoments(t *testing.T) {
	at := func(s time.Duration, cost layout.Money) moment { return moment{at: s * time.Second, cost: cost} }
	w := &watch{seen: []moment{at(2, 90), at(5, 80)}, ended: at(12, 80)}
	if _, ok := w.at(time.Second); ok {
		t.Error("something is known before the first plan")
	}
	for _, tc := range []struct {
		after time.Duration
		want  layout.Money
	}{{2, 90}, {4, 90}, {5, 80}, {11, 80}, {12, 80}, {99, 80}} {
		if m, ok := w.at(tc.after * time.Second); !ok || m.cost != tc.want {
			t.Errorf("after %d s: %v, want %v", tc.after, m.cost, tc.want)
		}
	}
	if got := w.found(); got != 5*time.Second {
		t.Errorf("found after %v", got)
	}
	if diff := cmp.Diff([]time.Duration{time.Second, 10 * time.Second, 20 * time.Second}, settings{time: 20 * time.Second}.moments()); diff != "" {
		t.Error(diff)
	}
}

func TestSummary(t *testing.T) {
	var s summary
	s.add(0.02, true, 0.01, true)
	s.add(0.04, true, 0, false)
	s.add(0, false, -0.005, true)
	s.short = 2
	want := "gap 3.00 % on average, 4.00 % at worst, of 2; above the best known 0.25 % on average, 1.00 % at worst, of 2; 2 not complete"
	if got := s.String(); got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// Ours is as good only when nothing is missing and it is not dearer.
func TestAsGood(t *testing.T) {
	for _, tc := range []struct {
		cost    layout.Money
		missing int
		want    string
	}{{9, 0, "yes"}, {10, 0, "yes"}, {11, 0, "no"}, {9, 1, "no"}} {
		var out strings.Builder
		table := newSheet(&out, "job", "solver", "variables", "rows", "ours", "seconds", "proven", "theirs", "seconds", "proven", "ratio", "as good")
		w := &watch{ended: moment{at: time.Second, cost: tc.cost, missing: tc.missing}}
		compare(table, stated{jobs.Named{Name: "x"}, &mip.Model{}}, w, "p", theirs{answer: mip.Answer{Cost: 10, Proven: true}, took: time.Second})
		if got := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(out.String()), "|")); !strings.HasSuffix(got, " "+tc.want) {
			t.Errorf("cost %v, %d missing: %s", tc.cost, tc.missing, got)
		}
	}
}

// A plate of 10 by 10 and parts of 5 by 5 worth 3: four of them, or as many as
// there are copies.
func TestCutPlate(t *testing.T) {
	two := 2
	for _, tc := range []struct {
		copies *int
		want   float64
	}{{nil, 12}, {&two, 6}} {
		c := published.Case{
			Stock: []published.Stock{{Length: 10, Width: 10}},
			Items: []published.Item{{Length: 5, Width: 5, Value: 3, Copies: tc.copies}},
		}
		if found, exact := cutPlate(&c); found != tc.want || !exact {
			t.Errorf("found %v, proven %v, want %v", found, exact, tc.want)
		}
	}
}

// Published cases that are not there are an error of the command.
func TestNoCases(t *testing.T) {
	t.Setenv("SAWBILL_BENCH", t.TempDir())
	if err := run(context.Background(), []string{"-set", "plates"}, io.Discard, io.Discard); err == nil {
		t.Error("no error")
	}
}
