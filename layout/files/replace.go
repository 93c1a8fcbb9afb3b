package files

import (
	"bufio"
	"errors"
	"fmt"
	"io"

	"github.com/google/renameio/v2"
)

// Replace writes a file as a whole or not at all: what write writes goes to a
// temporary file beside path, which then takes its place. After an error the
// file at path is as it was.
func Replace(path string, write func(io.Writer) error) (err error) {
	pending, err := renameio.NewPendingFile(path, renameio.WithPermissions(0o644), renameio.WithExistingPermissions())
	if err != nil {
		return fmt.Errorf("write %s: %w", path, err)
	}
	defer func() {
		if cleanup := pending.Cleanup(); cleanup != nil {
			err = errors.Join(err, cleanup)
		}
	}()
	out := bufio.NewWriter(pending)
	for _, step := range []func() error{
		func() error { return write(out) },
		out.Flush,
		pending.CloseAtomicallyReplace,
	} {
		if err := step(); err != nil {
			return fmt.Errorf("write %s: %w", path, err)
		}
	}
	return nil
}
