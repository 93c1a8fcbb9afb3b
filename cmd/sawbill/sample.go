package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/samples"
)

func sampleCommand() *cli.Command {
	return &cli.Command{
		Name:      "sample",
		Usage:     "write out jobs to try sawbill with",
		UsageText: "sawbill sample [--out DIR [NAME]]",
		ArgsUsage: "the name of a sample",
		Description: "Without --out it lists the samples. A file that is there already is left alone.\n\n" +
			"   sawbill sample\n" +
			"   sawbill sample --out jobs\n" +
			"   sawbill sample --out jobs toolchest",
		Flags:  []cli.Flag{&cli.PathFlag{TakesFile: true, Name: "out", Usage: "write each sample into a folder of its name in `DIR`"}},
		Action: runSample,
	}
}

func runSample(c *cli.Context) error {
	if words := c.Args().Slice(); len(words) > 1 && strings.HasPrefix(words[1], "-") {
		// People say the name first: put it behind the flags and read again.
		behind := append([]string{c.App.Name, c.Command.Name}, words[1:]...)
		return c.App.RunContext(c.Context, append(behind, words[0]))
	}
	if err := checkWords(c, 1); err != nil {
		return err
	}
	names, err := chosenSamples(c.Args().First())
	if err != nil {
		return err
	}
	if c.Path("out") == "" {
		return listSamples(c, names)
	}
	for _, name := range names {
		if err := writeSample(c, name, c.Path("out")); err != nil {
			return err
		}
	}
	return nil
}

// chosenSamples are all samples, or the one of that name.
func chosenSamples(name string) ([]string, error) {
	entries, err := samples.Files.ReadDir(".")
	if err != nil {
		return nil, err
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	switch {
	case name == "":
		return names, nil
	case slices.Contains(names, name):
		return []string{name}, nil
	}
	return nil, usageError("unknown sample %q", name).withHint(knownWords("samples", name, names))
}

// listSamples prints each name with what the first line of its bill or, where the
// bill is yet to be made, of its design says.
func listSamples(c *cli.Context, names []string) error {
	for _, name := range names {
		first, err := samples.Files.ReadFile(path.Join(name, "bill.csv"))
		if errors.Is(err, fs.ErrNotExist) {
			first, err = samples.Files.ReadFile(path.Join(name, "design.toml"))
		}
		if err != nil {
			return err
		}
		about, _, _ := strings.Cut(string(first), "\n")
		fmt.Fprintf(c.App.Writer, "%-10s %s\n", name, strings.TrimPrefix(about, "# "))
	}
	return nil
}

// writeSample writes the files of one sample to the folder out/name, and
// nothing at all where that would change a file.
func writeSample(c *cli.Context, name, out string) error {
	paths, err := fs.Glob(samples.Files, path.Join(name, "*"))
	if err != nil {
		return err
	}
	for _, p := range paths {
		if err := checkUntouched(p, filepath.Join(out, p)); err != nil {
			return err
		}
	}
	for _, p := range paths {
		data, err := samples.Files.ReadFile(p)
		if err != nil {
			return err
		}
		to := filepath.Join(out, p)
		if err := replace(to, func(w io.Writer) error { _, err := w.Write(data); return err }); err != nil {
			return err
		}
		fmt.Fprintln(c.App.Writer, to)
	}
	return nil
}

// checkUntouched refuses a file that is there with another content than the
// sample's.
func checkUntouched(sample, to string) error {
	want, err := samples.Files.ReadFile(sample)
	if err != nil {
		return err
	}
	got, err := os.ReadFile(to)
	switch {
	case errors.Is(err, fs.ErrNotExist) || err == nil && bytes.Equal(got, want):
		return nil
	case err != nil:
		return inputError(err)
	}
	return usageError("%q is there already and differs from the sample", to).withHint("choose another folder for --out")
}
