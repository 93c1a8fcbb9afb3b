package main

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"slices"
	"time"

	"github.com/google/renameio/v2"

	"sawbill/layout"
)

// costs are the least costs that any solve has found, by job. They are kept in a
// text file, a line a job: name, cost, time of the solve.
type costs map[string]least

// least is the least cost found, with nothing missing, and how long the solve
// that found it was allowed to take.
type least struct {
	cost layout.Money
	in   time.Duration
}

// String writes the cost; nothing is known of a job without one.
func (l least) String() string {
	if l == (least{}) {
		return "-"
	}
	return l.cost.Cents()
}

// note takes a cost that is less than what is known.
func (c costs) note(job string, cost layout.Money, in time.Duration) {
	if before, known := c[job]; !known || cost < before.cost {
		c[job] = least{cost, in}
	}
}

// readBest reads the file; where there is none, nothing is known.
func readBest(name string) (costs, error) {
	data, err := os.ReadFile(name)
	if errors.Is(err, fs.ErrNotExist) {
		return costs{}, nil
	}
	if err != nil {
		return nil, err
	}
	known := costs{}
	lines := bufio.NewScanner(bytes.NewReader(data))
	for lines.Scan() {
		var job, cost, in string
		if _, err := fmt.Sscan(lines.Text(), &job, &cost, &in); err != nil {
			return nil, fmt.Errorf("%s: line %q: %w", name, lines.Text(), err)
		}
		money, err := layout.ParseMoney(cost)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		took, err := time.ParseDuration(in)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		known[job] = least{money, took}
	}
	return known, lines.Err()
}

// write writes the file if the settings say so.
func (s settings) write(known costs) error {
	if !s.keep {
		return nil
	}
	var text bytes.Buffer
	for _, job := range slices.Sorted(maps.Keys(known)) {
		fmt.Fprintf(&text, "%-14s %12v %v\n", job, known[job].cost, known[job].in)
	}
	return renameio.WriteFile(s.best, text.Bytes(), 0o644)
}
