package layout

import (
	"fmt"
	"strings"

	"github.com/agnivade/levenshtein"
)

// Nearest is the known word most like a word, without regard to case, or ""
// when none is near enough to have been meant. Of two that are equally near it
// is the first.
func Nearest(word string, known []string) string {
	word = strings.ToLower(strings.TrimSpace(word))
	n := len([]rune(word))
	best, least := "", min(4, n, 1+(n+1)/2) // two letters swapped are two edits
	for _, k := range known {
		if d := levenshtein.ComputeDistance(word, strings.ToLower(k)); d < least {
			best, least = k, d
		}
	}
	return best
}

// WantOneOf says which words are known, and which of them may have been meant.
func WantOneOf(word string, known []string) string {
	return "want one of " + strings.Join(known, ", ") + didYouMean(word, known)
}

// didYouMean names the nearest known word, or says nothing.
func didYouMean(word string, known []string) string {
	if near := Nearest(word, known); near != "" {
		return fmt.Sprintf(" (did you mean %q?)", near)
	}
	return ""
}
