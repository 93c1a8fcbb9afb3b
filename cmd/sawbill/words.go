package main

import (
	"math"
	"strings"

	"github.com/urfave/cli/v2"
)

// manyWords is as many words as anybody may type.
const manyWords = math.MaxInt

// checkWords refuses a command line that cli would half ignore: a flag behind a
// word that is none, flags that are missing, or more words than most.
func checkWords(c *cli.Context, most int, needed ...string) error {
	words := c.Args().Slice()
	for i, word := range words {
		if len(word) > 1 && strings.HasPrefix(word, "-") {
			return usageError("flag %q stands behind %q", word, words[max(i-1, 0)]).
				withHint("flags come first, then " + c.Command.ArgsUsage)
		}
	}
	if len(words) > most {
		return usageError("%q is one word too many", words[most]).withHint(seeHelp(c))
	}
	for _, flag := range needed {
		if c.String(flag) == "" {
			return usageError("--%s is missing", flag).withHint(seeHelp(c))
		}
	}
	return nil
}
