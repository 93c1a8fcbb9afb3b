package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/urfave/cli/v2"
)

// How sawbill says that something went wrong.
//
//   - Only this package talks to people, and only here.
//   - Messages begin in lower case, end without a full stop and quote what the
//     user wrote.
//   - Each complaint is a line that begins with "error:"; what can be done about
//     it follows in lines that begin with "hint:".
//   - The class of an error, and nothing else, decides the exit code.

// class says whose turn it is after an error.
type class int

const (
	ourFault   class = iota // anything that is not one of the others
	badInput                // the command line or a file has to be put right
	partsShort              // a valid plan was written, but parts are missing
	planBroken              // a plan fails its check, or its bound is not proven
)

// exitCodes is the one table from error class to exit code.
var exitCodes = [...]int{ourFault: 1, badInput: 2, partsShort: 3, planBroken: 4}

// failure is an error with its class and hints.
type failure struct {
	class class
	err   error
	hints []string
}

func (f *failure) Error() string { return f.err.Error() }

func (f *failure) Unwrap() error { return f.err }

// withHint adds a line that says what can be done.
func (f *failure) withHint(hint string) *failure {
	return &failure{f.class, f.err, append(f.hints, hint)}
}

// inputError says that what the user gave cannot be used.
func inputError(err error) *failure { return &failure{class: badInput, err: err} }

// usageError says that the command line cannot be understood.
func usageError(format string, args ...any) *failure {
	return inputError(fmt.Errorf(format, args...))
}

// report prints err, if any, and gives the exit code.
func report(stderr io.Writer, err error) int {
	if err == nil {
		return 0
	}
	var f *failure
	if !errors.As(err, &f) {
		f = &failure{class: ourFault, err: err}
	}
	for line := range strings.Lines(err.Error()) {
		fmt.Fprintf(stderr, "error: %s\n", strings.TrimRight(line, "\n"))
	}
	for _, hint := range f.hints {
		fmt.Fprintf(stderr, "hint: %s\n", hint)
	}
	return exitCodes[f.class]
}

// usageFault turns a complaint of cli into one of ours.
func usageFault(c *cli.Context, err error, _ bool) error {
	if f := new(failure); errors.As(err, &f) {
		return err
	}
	fault := usageError("%w", err)
	if strings.Contains(err.Error(), "for flag -time:") {
		fault = fault.withHint("a time has a unit, such as 2s or 5m")
	}
	return fault.withHint(seeHelp(c))
}

func seeHelp(c *cli.Context) string {
	if c.Command == nil || c.Command.Name == "" || c.Command.Name == c.App.Name {
		return "see sawbill help"
	}
	return "see sawbill help " + c.Command.Name
}
