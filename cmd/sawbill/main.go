// Command sawbill finds out how to cut a bill of parts from a rack of rough
// boards, and draws what to do at the saw.
package main

import (
	"context"
	"os"
	"runtime/debug"
)

// memoryLimit, in bytes, has the garbage of very large jobs collected in time; what
// GOMEMLIMIT says counts for more.
const memoryLimit = 1_600 << 20

func main() {
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(memoryLimit)
	}
	os.Exit(run(context.Background(), os.Args, os.Stdin, os.Stdout, os.Stderr))
}
