package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"sawbill/layout"
	"sawbill/layout/files"
)

// readPlan reads a plan file. What is wrong with it is for the user to mend.
func readPlan(path string) (*layout.Plan, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, inputError(err)
	}
	defer f.Close()
	plan, err := files.ReadPlan(f, path)
	if err != nil {
		return nil, inputError(err)
	}
	return plan, nil
}

// writePlan replaces a plan file.
func writePlan(path string, plan *layout.Plan) error {
	return replace(path, func(w io.Writer) error { return files.WritePlan(w, plan) })
}

// replace writes a file as a whole or not at all, and makes its folder first
// where there is none.
func replace(path string, write func(io.Writer) error) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	return files.Replace(path, write)
}

// makeWritable makes a folder where there is none, and tries whether files can
// be written to it.
func makeWritable(dir string) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	f, err := os.CreateTemp(dir, ".try-*")
	if err != nil {
		return fmt.Errorf("write to %s: %w", dir, err)
	}
	return errors.Join(f.Close(), os.Remove(f.Name()))
}

// sameProblem reports whether two plans answer the same question: the same
// shop, stock, bill and yard, as a plan file holds them.
func sameProblem(a, b *layout.Plan) (bool, error) {
	var question [2]bytes.Buffer
	for i, p := range []*layout.Plan{a, b} {
		if err := files.WritePlan(&question[i], &layout.Plan{Problem: p.Problem}); err != nil {
			return false, err
		}
	}
	return bytes.Equal(question[0].Bytes(), question[1].Bytes()), nil
}

// now is the time that a plan bears: UTC, whole seconds.
func now() time.Time { return time.Now().UTC().Truncate(time.Second) }
