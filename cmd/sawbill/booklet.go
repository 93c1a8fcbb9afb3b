package main

import (
	"fmt"
	"io"
	"path/filepath"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/render"
)

// writeBooklet writes all the paper of a job as one file to print.
func (j job) writeBooklet(c *cli.Context, plan *layout.Plan, o render.Options) error {
	pages, err := render.Booklet(plan, o)
	if err != nil {
		return err
	}
	path := filepath.Join(j.dir, "job.pdf")
	err = replace(path, func(w io.Writer) error { return render.WritePDF(w, pages, plan.Made) })
	if err == nil {
		fmt.Fprintln(c.App.Writer, path)
	}
	return err
}
