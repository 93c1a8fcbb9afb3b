package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"

	"github.com/urfave/cli/v2"

	"sawbill/layout/files"
	"sawbill/layout/glueup"
	"sawbill/layout/steps"
	"sawbill/render"
)

func glueupCommand() *cli.Command {
	return &cli.Command{
		Name:      "glueup",
		Usage:     "from a design of end grain to its strips: bill, face and steps",
		UsageText: "sawbill glueup --design FILE --out DIR [--shop FILE] [--paper PAPER]",
		Description: "Works out which strips a face needs, in which glue-ups, and how many slices of\n" +
			"each. It writes DIR/bill.csv for sawbill plan, DIR/face.png with the finished face\n" +
			"and DIR/steps.png with the work from the strips on. The shop says what the saw and\n" +
			"the squaring of a panel take, and how wide the planer is.\n\n" +
			"   sawbill glueup --design board.toml --out board\n" +
			"   sawbill glueup --design board.toml --shop shop.toml --out board --paper a4",
		Flags: []cli.Flag{
			&cli.PathFlag{TakesFile: true, Name: "design", Usage: "the piece and its pattern, a TOML `FILE`"},
			&cli.PathFlag{TakesFile: true, Name: "out", Usage: "the folder `DIR` to write to"},
			shopFlag(), paperFlag(),
		},
		Action: runGlueup,
	}
}

func runGlueup(c *cli.Context) error {
	if err := checkWords(c, 0, "design", "out"); err != nil {
		return err
	}
	o, err := paperOf(c)
	if err != nil {
		return err
	}
	work, err := loadDesign(c)
	if err != nil {
		return err
	}
	if err := makeWritable(c.Path("out")); err != nil {
		return err
	}
	for _, warning := range work.Warnings {
		fmt.Fprintln(c.App.ErrWriter, "warning:", warning)
	}
	printWork(c.App.Writer, work)
	if err := writeWork(c, work, o); err != nil {
		return err
	}
	for _, caution := range cautionsOf(work) {
		fmt.Fprintln(c.App.Writer, "caution:", caution)
	}
	fmt.Fprintln(c.App.Writer, "caution:", steps.SafetyFirst)
	return nil
}

// cautionsOf lists the cautions of all steps, each once.
func cautionsOf(work *glueup.Work) []steps.Caution {
	var list []steps.Caution
	for _, s := range work.Steps() {
		for _, c := range s.Cautions {
			if !slices.Contains(list, c) {
				list = append(list, c)
			}
		}
	}
	return list
}

// loadDesign reads and works out the design.
func loadDesign(c *cli.Context) (*glueup.Work, error) {
	var design, shop files.Source
	closeAll, err := openSources(c, map[string]*files.Source{"design": &design, "shop": &shop})
	defer closeAll()
	if err != nil {
		return nil, err
	}
	work, err := files.LoadDesign(design, shop)
	if err != nil {
		return nil, inputError(err)
	}
	return work, nil
}

// printWork tells the counts and what there is to know.
func printWork(w io.Writer, work *glueup.Work) {
	f, d := work.Face.Finished, work.Design
	say := work.Say
	fmt.Fprintf(w, "finished %s x %s x %s, %s\n", say(f.Length()), say(f.Width()), say(d.Thickness), count(len(work.Face.Blocks), "block"))
	for i := range work.Panels {
		p := &work.Panels[i]
		spare := ""
		if p.Spare > 0 {
			spare = fmt.Sprintf(", %d of them to spare", p.Spare)
		}
		n := max(p.Slices+p.Spare, work.LeastSlices())
		fmt.Fprintf(w, "set %s: %s in a copy; %s %s thick%s; strips for %d slices are %s long\n",
			p.Name, count(len(p.Strips), "strip"), count(p.Slices+p.Spare, "slice"), say(d.SliceThickness()), spare,
			n, say(work.StripLength(n)))
	}
	for i := range work.Bill {
		part := &work.Bill[i]
		line := fmt.Sprintf("  %s: %d x %s, %s thick, %s wide", part.Name, part.Quantity, part.Species[0], say(part.Thickness), work.Fine(part.Width))
		if part.Bevel > 0 {
			line += ", bevel " + part.Bevel.String() + "°"
		}
		fmt.Fprintln(w, line)
	}
	for _, note := range work.Notes {
		fmt.Fprintln(w, note)
	}
}

// writeWork writes the bill and draws the face and the steps.
func writeWork(c *cli.Context, work *glueup.Work, o render.Options) error {
	out := c.Path("out")
	name := work.Design.Name
	if name == "" {
		name = work.Design.Pattern.Name()
	}
	bill := filepath.Join(out, "bill.csv")
	if err := replace(bill, func(w io.Writer) error {
		return files.WriteBill(w, name+": strips for the glue-ups.", work.Design.Units, work.Bill)
	}); err != nil {
		return err
	}
	fmt.Fprintln(c.App.Writer, bill)
	pages := map[string][]render.Page{"face": {render.Face(work, o)}, "steps": render.GlueUps(work, o)}
	for _, stem := range []string{"face", "steps"} {
		for i, page := range pages[stem] {
			path := filepath.Join(out, pageFile(stem, i+1))
			if err := replace(path, page.WritePNG); err != nil {
				return err
			}
			fmt.Fprintln(c.App.Writer, path)
		}
	}
	return removePages(out, "steps", len(pages["steps"])+1)
}

// removePages removes what a longer design has left: the pages of a drawing from one
// on, as far as they follow each other.
func removePages(dir, stem string, page int) error {
	for ; ; page++ {
		err := os.Remove(filepath.Join(dir, pageFile(stem, page)))
		if errors.Is(err, fs.ErrNotExist) {
			return nil
		}
		if err != nil {
			return err
		}
	}
}
