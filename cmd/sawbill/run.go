package main

import (
	"context"
	"io"
	"runtime/debug"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
)

// run is the whole program: it carries out one command line and returns its
// exit code. Results go to stdout, everything else to stderr.
func run(ctx context.Context, args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	return report(stderr, newApp(stdin, stdout, stderr).RunContext(ctx, args))
}

// newApp builds the app afresh for every run: cli keeps state in it.
func newApp(stdin io.Reader, stdout, stderr io.Writer) *cli.App {
	app := &cli.App{
		Name:  "sawbill",
		Usage: "how to cut a bill of parts from a rack of rough boards",
		Description: "Start with a job that is there already:\n\n" +
			"   sawbill sample --out jobs\n" +
			"   sawbill plan --stock jobs/toolchest/stock.csv --bill jobs/toolchest/bill.csv --shop jobs/toolchest/shop.toml --job toolchest",
		Version:              version(),
		HideHelpCommand:      true,
		EnableBashCompletion: true,
		Flags:                []cli.Flag{cli.HelpFlag}, // cli leaves it out where help is a command of ours
		Reader:               stdin,
		Writer:               stdout,
		ErrWriter:            stderr,
		Commands: []*cli.Command{
			planCommand(), buyCommand(), verifyCommand(), drawCommand(),
			cutCommand(), foundCommand(), spoiledCommand(), measuredCommand(), moreCommand(),
			historyCommand(), backCommand(), restockCommand(), quoteCommand(),
			rackCommand(), riskCommand(), glueupCommand(), sampleCommand(), completionCommand(), manCommand(), helpCommand(),
		},
		Action:         noCommand,
		OnUsageError:   usageFault,
		ExitErrHandler: func(*cli.Context, error) {}, // run alone decides how the program ends
	}
	for _, c := range app.Commands {
		c.OnUsageError = usageFault
		c.HideHelpCommand = true
	}
	return app
}

// noCommand is what runs when the first word is no command.
func noCommand(c *cli.Context) error {
	if !c.Args().Present() {
		return cli.ShowAppHelp(c)
	}
	return unknownCommand(c)
}

func helpCommand() *cli.Command {
	return &cli.Command{
		Name:      "help",
		Usage:     "show what a command does",
		UsageText: "sawbill help [COMMAND]",
		Action: func(c *cli.Context) error {
			switch {
			case !c.Args().Present():
				return cli.ShowAppHelp(c)
			case c.App.Command(c.Args().First()) == nil:
				return unknownCommand(c)
			}
			return cli.ShowCommandHelp(c, c.Args().First())
		},
	}
}

func unknownCommand(c *cli.Context) error {
	var names []string
	for _, command := range c.App.Commands {
		names = append(names, command.Name)
	}
	word := c.Args().First()
	return usageError("unknown command %q", word).withHint(knownWords("commands", word, names))
}

// knownWords names the word that was meant, or all that are known.
func knownWords(what, word string, known []string) string {
	if near := layout.Nearest(word, known); near != "" {
		return "did you mean " + near + "?"
	}
	return "the " + what + " are " + strings.Join(known, ", ")
}

// version is what the build says of itself.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" {
		return "(devel)"
	}
	return info.Main.Version
}
