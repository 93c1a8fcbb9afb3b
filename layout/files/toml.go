package files

import (
	"errors"
	"io"
	"slices"
	"strings"

	"github.com/BurntSushi/toml"

	"sawbill/layout"
)

// readKeys reads a TOML file: its keys, and the line on which each stands. name is
// the file's name in complaints.
func readKeys(r io.Reader, table layout.Table, name string) (map[string]any, map[string]int, layout.Complaints) {
	lines, err := readLines(r)
	if err != nil {
		return nil, nil, layout.Complaints{{Table: table, Row: layout.WholeTable, Want: err.Error(), File: name}}
	}
	var keys map[string]any
	if _, err := toml.Decode(strings.Join(lines, "\n")+"\n", &keys); err != nil {
		return nil, keyLines(lines), layout.Complaints{notTOML(err, table, name)}
	}
	return keys, keyLines(lines), nil
}

// notTOML is a complaint about a file that the TOML library cannot read.
func notTOML(err error, table layout.Table, name string) layout.Complaint {
	c := layout.Complaint{Table: table, Row: layout.WholeTable, Want: "is not TOML: " + err.Error(), File: name}
	var parse toml.ParseError
	if errors.As(err, &parse) {
		c.Want = "is not TOML: " + parse.Message + `; text and fractions are written in quotes, such as "1/8"`
		c.Line = parse.Position.Line
	}
	return c
}

// placeOf is which of the known words a text is, whatever its capitals.
func placeOf(text string, known []string) (int, bool) {
	i := slices.IndexFunc(known, func(k string) bool { return strings.EqualFold(text, k) })
	return max(0, i), i >= 0
}
