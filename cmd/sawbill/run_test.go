package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const (
	oneBoard = "board,species,thickness,width,length\nA1,ash,4/4,6,60\n"
	fewRails = "part,species,thickness,width,length,quantity\nrail,ash,3/4,2,20,2\n"
)

// Whoever has seen enough gets the best plan so far, checked and written, even
// if that is none: then all parts are missing, and it says so.
func TestStoppedPlanIsWritten(t *testing.T) {
	stock, bill := writeFile(t, "stock.csv", oneBoard), writeFile(t, "bill.csv", fewRails)
	job := filepath.Join(t.TempDir(), "bench")
	ctx, stop := context.WithCancel(context.Background())
	stop()
	var out, complaints bytes.Buffer
	code := run(ctx, []string{"sawbill", "plan", "--stock", stock, "--bill", bill, "--job", job}, nil, &out, &complaints)
	if made := !strings.Contains(out.String(), "missing: "); made && code != 0 || !made && code != 3 {
		t.Errorf("exit code %d after\n%s%s", code, &out, &complaints)
	}
	for _, name := range []string{"plan.json", "job.png"} {
		if _, err := os.Stat(filepath.Join(job, name)); err != nil {
			t.Error(err)
		}
	}
	if code := run(context.Background(), []string{"sawbill", "verify", job}, nil, &out, &complaints); code != 0 {
		t.Errorf("verify: exit code %d: %s", code, &complaints)
	}
}

// The app keeps state; each run must begin with a new one.
func TestRunsDoNotRememberEachOther(t *testing.T) {
	stock := writeFile(t, "stock.csv", oneBoard)
	var out, complaints bytes.Buffer
	if code := run(context.Background(), []string{"sawbill", "rack", "--stock", stock}, nil, &out, &complaints); code != 0 {
		t.Fatalf("exit code %d: %s", code, &complaints)
	}
	if code := run(context.Background(), []string{"sawbill", "rack"}, nil, &out, &complaints); code != 2 {
		t.Errorf("without --stock: exit code %d, want 2", code)
	}
	if !strings.Contains(complaints.String(), "error: --stock is missing") {
		t.Errorf("complaints: %s", &complaints)
	}
}

func writeFile(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}
