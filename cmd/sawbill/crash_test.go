package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"sawbill/layout/check"
)

var kills = flag.Int("kills", 200, "how often the crash test kills a change")

// A change that is killed at whatever moment leaves a job that opens, with every
// revision before it, and no lock. Several jobs are tried side by side, to be quick.
func TestKilledChangesLeaveTheJobReadable(t *testing.T) {
	const jobs = 4
	var group sync.WaitGroup
	revisions := make([]int, jobs)
	for k := range jobs {
		j := crashJob(t)
		group.Go(func() { revisions[k] = killChanges(t, j, *kills/jobs, rand.New(rand.NewPCG(1, uint64(k)))) })
	}
	group.Wait()
	t.Logf("%d kills, revisions %v", *kills, revisions)
	if *kills >= 100 && slices.Max(revisions) < 3 {
		t.Errorf("no change came so far that it could have gone wrong: revisions %v", revisions)
	}
}

func crashJob(t *testing.T) job {
	t.Helper()
	dir := t.TempDir()
	write := func(name, text string) string {
		path := filepath.Join(dir, name)
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return path
	}
	stock := write("stock.csv", "board,species,thickness,width,length,count\nA,ash,4/4,3,40,3\n")
	bill := write("bill.csv", "part,species,thickness,width,length,quantity\nrail,ash,3/4,1,16,2\n")
	j := job{filepath.Join(dir, "bench")}
	args := []string{"sawbill", "plan", "--stock", stock, "--bill", bill, "--job", j.dir, "--rounds", "1"}
	if code := run(context.Background(), args, strings.NewReader(""), io.Discard, io.Discard); code != 0 {
		t.Fatalf("plan: exit code %d", code)
	}
	return j
}

// killChanges kills change after change of a job, every other one while its files are
// written, and looks at the job each time. It gives the revision that was reached.
func killChanges(t *testing.T, j job, kills int, moments *rand.Rand) int {
	reached := 1
	for n := range kills {
		sawbill := exec.Command("sawbill", "found", "--job", j.dir, "--rounds", "1", "A.3", "pin 39 x 2 d1/16")
		if err := sawbill.Start(); err != nil {
			t.Error(err)
			return reached
		}
		if n%2 == 0 || j.hasAside(reached) {
			time.Sleep(time.Duration(moments.IntN(250)) * time.Millisecond)
		} else {
			j.awaitAside(reached)
			time.Sleep(time.Duration(moments.IntN(15_000)) * time.Microsecond)
		}
		sawbill.Process.Kill() // it may have ended by itself
		sawbill.Wait()         // that it was killed is no news
		plans, err := j.revisions()
		if err != nil {
			t.Error(err)
			return reached
		}
		for i, p := range plans {
			if p.Revision != i+1 {
				t.Errorf("revision %d stands at place %d", p.Revision, i+1)
			}
			if found := check.Plan(p); i+1 >= reached && len(found) > 0 {
				t.Errorf("revision %d: %v", p.Revision, found)
			}
		}
		reached = len(plans)
	}
	unlock, err := j.lock()
	if err != nil {
		t.Error(err)
		return reached
	}
	unlock()
	return reached
}

// awaitAside waits until a revision is kept beside the plan, a few seconds at most.
func (j job) awaitAside(revision int) {
	for n := 0; n < 5000 && !j.hasAside(revision); n++ {
		time.Sleep(time.Millisecond)
	}
}

func (j job) hasAside(revision int) bool {
	_, err := os.Stat(filepath.Join(j.dir, fmt.Sprintf("plan-%d.json", revision)))
	return err == nil
}

// Whoever comes second is told so, and changes nothing.
func TestTwoCommandsAtOnce(t *testing.T) {
	j := job{t.TempDir()}
	unlock, err := j.lock()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := j.lock(); err == nil || !strings.Contains(err.Error(), "another sawbill is working on the job in ") {
		t.Errorf("the second lock says %v", err)
	}
	unlock()
	again, err := j.lock()
	if err != nil {
		t.Fatalf("the lock stays: %v", err)
	}
	again()
}
