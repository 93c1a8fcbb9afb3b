package layout

import (
	"fmt"
	"strings"
)

// plainMarks gives the text in lower case and in the plain characters of the
// grammar of ParseLength.
func plainMarks(text string) string {
	var b strings.Builder
	for _, r := range text {
		if f, ok := vulgarFractions[r]; ok {
			fmt.Fprintf(&b, " %d/%d", f[0], f[1])
			continue
		}
		b.WriteRune(plainRune(r))
	}
	return strings.ToLower(strings.TrimSpace(b.String()))
}

func plainRune(r rune) rune {
	switch r {
	case '′', '’', '‘', 'ʹ', '`', '´', 'ʼ':
		return '\''
	case '″', '”', '“', '„', 'ʺ', '˝', '〃', '‟':
		return '"'
	case '–', '—', '‑', '‐', '−', '‒':
		return '-'
	case '⁄', '∕':
		return '/'
	case '\u00a0', '\u2007', '\u2009', '\u200a', '\u202f', '\t', '\n', '\r':
		return ' '
	}
	return r
}

// vulgarFractions are the fractions that have a character of their own.
var vulgarFractions = map[rune][2]int{
	'½': {1, 2}, '⅓': {1, 3}, '⅔': {2, 3}, '¼': {1, 4}, '¾': {3, 4},
	'⅕': {1, 5}, '⅖': {2, 5}, '⅗': {3, 5}, '⅘': {4, 5}, '⅙': {1, 6}, '⅚': {5, 6},
	'⅐': {1, 7}, '⅛': {1, 8}, '⅜': {3, 8}, '⅝': {5, 8}, '⅞': {7, 8}, '⅑': {1, 9}, '⅒': {1, 10},
}
