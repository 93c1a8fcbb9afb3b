package files

import (
	"regexp"
	"strings"
)

var (
	tableLine = regexp.MustCompile(`^\s*\[([^\[\]]+)\]`)
	keyLine   = regexp.MustCompile(`^\s*([^=#\[\]]+?)\s*=`)
)

// keyLines finds the line of every key of a TOML file, which its library does
// not tell. Keys are joined with their table: price.ash.
func keyLines(lines []string) map[string]int {
	at := map[string]int{}
	table := ""
	for i, line := range lines {
		if m := tableLine.FindStringSubmatch(line); m != nil {
			table = bareKey(m[1])
			at[table] = i + 1
		} else if m := keyLine.FindStringSubmatch(line); m != nil {
			at[join(table, bareKey(m[1]))] = i + 1
		}
	}
	return at
}

// bareKey takes the quotes and spaces out of a dotted key.
func bareKey(key string) string {
	parts := strings.Split(key, ".")
	for i, p := range parts {
		parts[i] = strings.Trim(strings.TrimSpace(p), `"'`)
	}
	return strings.Join(parts, ".")
}
