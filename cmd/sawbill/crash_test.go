package main

import (
	"context"
	"flag"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"sawbill/layout/check"
)

var kills = flag.Int("kills", 25, "how often the crash test kills a change")

// A change that is killed at whatever moment leaves a job that opens, with every
// revision before it, and no lock.
func TestKilledChangesLeaveTheJobReadable(t *testing.T) {
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
	moments := rand.New(rand.NewPCG(1, 2))
	reached := 1
	for range *kills {
		sawbill := exec.Command("sawbill", "found", "--job", j.dir, "--rounds", "1", "A.3", "pin 39 x 2 d1/16")
		if err := sawbill.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(time.Duration(moments.IntN(150)) * time.Millisecond)
		if err := sawbill.Process.Kill(); err != nil {
			t.Fatal(err)
		}
		sawbill.Wait() // that it was killed is no news
		plans, err := j.revisions()
		if err != nil {
			t.Fatal(err)
		}
		for i, p := range plans {
			if found := check.Plan(p); len(found) > 0 || p.Revision != i+1 {
				t.Fatalf("revision %d stands at place %d: %v", p.Revision, i+1, found)
			}
		}
		reached = len(plans)
	}
	unlock, err := j.lock()
	if err != nil {
		t.Fatal(err)
	}
	unlock()
	t.Logf("%d kills, %d revisions", *kills, reached)
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
