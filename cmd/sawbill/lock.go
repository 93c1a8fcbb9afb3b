package main

import (
	"fmt"
	"os"
	"path/filepath"

	"github.com/gofrs/flock"
	"github.com/urfave/cli/v2"

	"sawbill/layout"
)

// lock keeps other commands from changing the job until unlock is called, or this
// process ends in whatever way. The folder is made where there is none.
func (j job) lock() (unlock func(), err error) {
	if err := os.MkdirAll(j.dir, 0o755); err != nil {
		return nil, err
	}
	file := flock.New(filepath.Join(j.dir, ".lock"))
	held, err := file.TryLock()
	switch {
	case err != nil:
		return nil, fmt.Errorf("lock the job in %s: %w", j.dir, err)
	case !held:
		busy := &failure{class: ourFault, err: fmt.Errorf("another sawbill is working on the job in %q", j.dir)}
		return nil, busy.withHint("wait until it is done, or end it, and say this again")
	}
	return func() { file.Unlock() }, nil // nobody can do anything about a lock that stays: it goes with the process
}

// locked locks a job that is there and gives its plan, which has passed its check.
func (j job) locked(c *cli.Context) (plan *layout.Plan, unlock func(), err error) {
	file, err := os.Open(j.planPath()) // what holds no plan gets no lock
	if err != nil {
		return nil, nil, inputError(err)
	}
	file.Close() // it was only tried
	if unlock, err = j.lock(); err != nil {
		return nil, nil, err
	}
	if plan, err = readPlan(j.planPath()); err == nil {
		err = checkPlan(c, j.planPath(), plan)
	}
	if err != nil {
		unlock()
		return nil, nil, err
	}
	return plan, unlock, nil
}
