// Package samples holds jobs to run as they stand: each is a folder with a
// stock, a bill and a shop file, or with a design of end grain in place of the bill. They are embedded, so that an installed
// program can write them out.
package samples

import "embed"

// Files holds one folder a sample, named after it.
//
//go:embed bookcase/*.csv bookcase/*.toml
//go:embed toolchest/*.csv toolchest/*.toml stools/*.csv stools/*.toml
//go:embed hallbench/*.csv hallbench/*.toml trugs/*.csv trugs/*.toml
//go:embed draughts/*.csv draughts/*.toml breadboard/*.csv breadboard/*.toml lamptable/*.csv lamptable/*.toml
var Files embed.FS
