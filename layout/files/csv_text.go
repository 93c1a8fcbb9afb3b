package files

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// maxTableBytes is far more than any rack fills.
const maxTableBytes = 64 << 20

// readLines reads a text file as spreadsheets and editors write it, with or
// without a byte order mark and with any line end.
func readLines(r io.Reader) ([]string, error) {
	data, err := io.ReadAll(io.LimitReader(r, maxTableBytes+1))
	if err != nil {
		return nil, err
	}
	if len(data) > maxTableBytes {
		return nil, errors.New("is too large")
	}
	if bytes.HasPrefix(data, []byte{0xFF, 0xFE}) || bytes.HasPrefix(data, []byte{0xFE, 0xFF}) {
		return nil, errors.New(`is UTF-16 text: save it as "CSV UTF-8"`)
	}
	text := strings.TrimPrefix(string(data), "\ufeff")
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text)
	lines := strings.Split(strings.TrimSuffix(text, "\n"), "\n")
	for i, line := range lines {
		if !utf8.ValidString(line) || strings.ContainsRune(line, 0) {
			return nil, fmt.Errorf(`line %d is not UTF-8 text: save the file as "CSV UTF-8"`, i+1)
		}
	}
	return lines, nil
}
