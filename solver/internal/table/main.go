// Table measures the solver on named cases and prints what it finds as tables.
//
//	go run ./solver/internal/table -set shop -time 60s
//
// Run it from the project's root, on a machine that does nothing else.
package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"runtime/debug"
	"slices"
	"strings"
	"time"
)

// memoryLimit, in bytes, is that of the command.
const memoryLimit = 1_600 << 20

func main() {
	debug.SetMemoryLimit(memoryLimit)
	ctx, cancel := signal.NotifyContext(context.Background(), os.Interrupt)
	defer cancel()
	if err := run(ctx, os.Args[1:], os.Stdout, os.Stderr); err != nil {
		fmt.Fprintln(os.Stderr, "error:", err)
		os.Exit(1)
	}
}

// settings are what the flags say.
type settings struct {
	sets    []string
	only    string        // part of a case's name; "": all
	time    time.Duration // of a solve
	seeds   int
	workers int
	root    string // of the project
	best    string // file of the best costs known
	keep    bool   // better costs go into that file
}

func run(ctx context.Context, args []string, out, complaints io.Writer) error {
	s, err := parse(args, complaints)
	if err != nil {
		return err
	}
	for _, set := range sets() {
		if !slices.Contains(s.sets, set.name) {
			continue
		}
		fmt.Fprintf(out, "\n%s: %s\n\n", set.name, set.about)
		if err := set.print(ctx, s, out); err != nil {
			return fmt.Errorf("%s: %w", set.name, err)
		}
		if ctx.Err() != nil {
			return nil
		}
	}
	return nil
}

func parse(args []string, complaints io.Writer) (settings, error) {
	var s settings
	flags := flag.NewFlagSet("table", flag.ContinueOnError)
	flags.SetOutput(complaints)
	chosen := flags.String("set", "shop", "sets to measure, with commas: "+strings.Join(names(), ", ")+"; or all")
	flags.StringVar(&s.only, "only", "", "measure only cases with this in their `name`")
	flags.DurationVar(&s.time, "time", 10*time.Second, "time of one solve")
	flags.IntVar(&s.seeds, "seeds", 1, "how many seeds each job is solved with")
	flags.IntVar(&s.workers, "workers", 0, "how many tasks at once; 0: one a processor")
	flags.StringVar(&s.root, "root", ".", "the project's root, from which published cases are found")
	flags.StringVar(&s.best, "best", "solver/internal/table/testdata/best.txt", "`file` of the best costs known")
	flags.BoolVar(&s.keep, "update-best", false, "write better costs into that file")
	if err := flags.Parse(args); err != nil {
		return s, err
	}
	if flags.NArg() > 0 {
		return s, fmt.Errorf("%q is no flag", flags.Arg(0))
	}
	s.sets = strings.Split(*chosen, ",")
	if *chosen == "all" {
		s.sets = names()
	}
	for _, name := range s.sets {
		if !slices.Contains(names(), name) {
			return s, fmt.Errorf("no set %q: there are %s", name, strings.Join(names(), ", "))
		}
	}
	return s, nil
}
