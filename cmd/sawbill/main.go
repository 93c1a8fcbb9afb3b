// Command sawbill finds out how to cut a bill of parts from a rack of rough
// boards, and draws what to do at the saw.
package main

import (
	"context"
	"os"
)

func main() {
	os.Exit(run(context.Background(), os.Args, os.Stdin, os.Stdout, os.Stderr))
}
