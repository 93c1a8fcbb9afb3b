package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"

	"sawbill/layout"
)

// setAside keeps the plan file, of the given revision, as plan-N.json as well, or
// under the next such name that is free, and gives that name. The plan file itself
// stays, so that the job can be read at every moment.
func (j job) setAside(revision int) (string, error) {
	now, err := os.ReadFile(j.planPath())
	if err != nil {
		return "", err
	}
	for n := 1; ; n++ {
		name := fmt.Sprintf("plan-%d.json", revision)
		if n > 1 {
			name = fmt.Sprintf("plan-%d-%d.json", revision, n)
		}
		path := filepath.Join(j.dir, name)
		there, err := os.ReadFile(path)
		switch {
		case errors.Is(err, fs.ErrNotExist):
			return path, replace(path, func(w io.Writer) error { _, err := w.Write(now); return err })
		case err != nil:
			return "", err
		case bytes.Equal(there, now):
			return path, nil // a change before this one did not come further
		}
	}
}

// revisions are the plans of the job's folder that can be read, the present one
// last. What a person put there under such a name is left out if it is no plan.
func (j job) revisions() ([]*layout.Plan, error) {
	now, err := readPlan(j.planPath())
	if err != nil {
		return nil, err
	}
	entries, err := os.ReadDir(j.dir)
	if err != nil {
		return nil, err
	}
	aside := regexp.MustCompile(`^plan-([0-9]+)(-[0-9]+)?\.json$`)
	var plans []*layout.Plan
	for _, e := range entries {
		m := aside.FindStringSubmatch(e.Name())
		if m == nil {
			continue
		}
		plan, err := readPlan(filepath.Join(j.dir, e.Name()))
		if err == nil && strconv.Itoa(plan.Revision) == m[1] && plan.Revision < now.Revision {
			plans = append(plans, plan)
		}
	}
	slices.SortStableFunc(plans, func(a, b *layout.Plan) int { return a.Revision - b.Revision })
	return append(plans, now), nil
}
