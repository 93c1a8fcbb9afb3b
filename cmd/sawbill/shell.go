package main

import (
	"fmt"

	"github.com/urfave/cli/v2"
)

// completions are what makes a shell complete the commands and flags of sawbill: it
// asks the program itself.
func completions() map[string]string {
	const bash = `_sawbill() {
  local words last="${COMP_WORDS[$COMP_CWORD]}"
  if [ "$last" = "--" ]; then last="-"; fi
  words=$("${COMP_WORDS[@]:0:$COMP_CWORD}" "$last" --generate-bash-completion 2>/dev/null)
  COMPREPLY=($(compgen -W "$words" -- "${COMP_WORDS[$COMP_CWORD]}"))
}
complete -o bashdefault -o default -F _sawbill sawbill
`
	return map[string]string{
		"bash": bash,
		"zsh":  "autoload -U +X bashcompinit && bashcompinit\n" + bash,
	}
}

func completionCommand() *cli.Command {
	return &cli.Command{
		Name:      "completion",
		Usage:     "print what makes a shell complete commands and flags",
		UsageText: "sawbill completion bash|zsh|fish",
		ArgsUsage: "a shell",
		Description: "   source <(sawbill completion bash)\n" +
			"   sawbill completion fish | source",
		Action: runCompletion,
	}
}

func runCompletion(c *cli.Context) error {
	if err := checkWords(c, 1); err != nil {
		return err
	}
	shell := c.Args().First()
	text := completions()[shell]
	if shell == "fish" {
		fish, err := c.App.ToFishCompletion()
		if err != nil {
			return err
		}
		text = fish
	}
	if text == "" {
		return usageError("shell %q: want bash, zsh or fish", shell)
	}
	fmt.Fprint(c.App.Writer, text)
	return nil
}
