package main

import (
	"fmt"
	"strings"

	"github.com/urfave/cli/v2"
)

func manCommand() *cli.Command {
	return &cli.Command{
		Name:        "man",
		Usage:       "print the manual page",
		UsageText:   "sawbill man",
		Description: "   sawbill man >sawbill.1 && man ./sawbill.1",
		Action:      runMan,
	}
}

func runMan(c *cli.Context) error {
	if err := checkWords(c, 0); err != nil {
		return err
	}
	c.App.Description = markdown(c.App.Description)
	for _, command := range c.App.Commands {
		describe(command)
	}
	page, err := c.App.ToManWithSection(1)
	if err != nil {
		return err
	}
	fmt.Fprint(c.App.Writer, page)
	return nil
}

// describe puts the whole help of a command where the library looks for its usage, for
// it leaves the description out.
func describe(command *cli.Command) {
	command.Usage += "\n\n"
	for line := range strings.Lines(command.UsageText) {
		command.Usage += markdown("   " + strings.TrimLeft(line, " "))
	}
	command.Usage += "\n\n" + markdown(command.Description)
	command.UsageText = ""
}

// markdown is a text of the help in the language of which the library makes the page:
// what is set in from the margin there is an example here.
func markdown(help string) string {
	lines := strings.Split(help, "\n")
	for i, line := range lines {
		if example, set := strings.CutPrefix(line, "   "); set {
			lines[i] = "    " + example
		} else {
			lines[i] = strings.NewReplacer("*", `\*`, "_", `\_`, "[", `\[`, "<", `\<`).Replace(line)
		}
	}
	return strings.Join(lines, "\n")
}
