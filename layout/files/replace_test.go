package files

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"
)

func TestReplaceWritesAllOrNothing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "plan.json")
	write := func(text string, fail error) error {
		return Replace(path, func(w io.Writer) error {
			if _, err := io.WriteString(w, text); err != nil {
				return err
			}
			return fail
		})
	}
	if err := write("first", nil); err != nil {
		t.Fatal(err)
	}
	full := errors.New("the disk is full")
	if err := write("second", full); !errors.Is(err, full) {
		t.Errorf("got %v, want it to wrap %v", err, full)
	}
	got, err := os.ReadFile(path)
	if err != nil || string(got) != "first" {
		t.Errorf("the file holds %q, %v, want the first text", got, err)
	}
	if left, _ := os.ReadDir(filepath.Dir(path)); len(left) != 1 {
		t.Errorf("%d files are left, want 1", len(left))
	}
}

func TestReplaceNeedsAFolder(t *testing.T) {
	path := filepath.Join(t.TempDir(), "missing", "plan.json")
	if err := Replace(path, func(io.Writer) error { return nil }); err == nil {
		t.Error("a file was written into a folder that does not exist")
	}
}
