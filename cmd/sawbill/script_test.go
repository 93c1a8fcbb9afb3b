package main

import (
	"context"
	"errors"
	"flag"
	"os"
	"os/exec"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "write what the commands say into the scripts that compare it")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"sawbill": func() { os.Exit(run(context.Background(), os.Args, os.Stdin, os.Stdout, os.Stderr)) },
	})
}

// The scripts show every command as a person meets it.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/script",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		UpdateScripts:       *update,
		Cmds:                map[string]func(*testscript.TestScript, bool, []string){"exits": exits},
	})
}

// exits runs a command that must end with an exit code: exits 3 sawbill plan …
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits CODE COMMAND [ARG...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		var exit *exec.ExitError
		if !errors.As(err, &exit) {
			ts.Fatalf("%v", err)
		}
		got = exit.ExitCode()
	}
	if got != want {
		ts.Fatalf("%v: exit code %d, want %d", args[1:], got, want)
	}
}
