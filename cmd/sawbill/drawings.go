package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/render"
)

// redraw draws a whole plan, writes its steps, and removes what is left of the
// drawings of the former one, if any: only files that its boards were drawn to.
func (j job) redraw(c *cli.Context, former, plan *layout.Plan, o render.Options) error {
	stale := j.drawn(former)
	written, err := j.drawBoards(c, plan, eachBoard(plan), o)
	if err != nil {
		return err
	}
	for _, path := range written {
		delete(stale, path)
	}
	for path := range stale {
		if err := os.Remove(path); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
	}
	return j.drawWhole(c, plan, o)
}

// drawWhole draws and writes what is about the job as a whole.
func (j job) drawWhole(c *cli.Context, plan *layout.Plan, o render.Options) error {
	if err := j.drawJob(c, plan, o); err != nil {
		return err
	}
	if err := j.writeBooklet(c, plan, o); err != nil {
		return err
	}
	if err := j.writeSteps(c, plan, o.Order); err != nil {
		return err
	}
	return j.requote(c, plan)
}

// drawJob draws the sheet that belongs to no board.
func (j job) drawJob(c *cli.Context, plan *layout.Plan, o render.Options) error {
	pages, err := render.Job(plan, o)
	if err != nil {
		return err
	}
	return writePages(c, pages, func(page int) string { return filepath.Join(j.dir, pageFile("job", page)) })
}

// drawBoards draws some boards of a plan and gives the files it wrote.
func (j job) drawBoards(c *cli.Context, plan *layout.Plan, boards []*layout.BoardPlan, o render.Options) ([]string, error) {
	stems := fileStems(plan.Problem.Stock)
	var written []string
	for _, b := range boards {
		pages, err := render.Board(plan, b, o)
		if err != nil {
			return written, err
		}
		file := func(page int) string { return j.pagePath(stems[b.Board], page) }
		if err := writePages(c, pages, file); err != nil {
			return written, err
		}
		for i := range pages {
			written = append(written, file(i+1))
		}
	}
	return written, nil
}

// writePages writes pages to the files of their numbers and names these on one
// line.
func writePages(c *cli.Context, pages []render.Page, file func(page int) string) error {
	var names []string
	for i, page := range pages {
		path := file(i + 1)
		if err := replace(path, page.WritePNG); err != nil {
			return err
		}
		if i > 0 {
			path = filepath.Base(path)
		}
		names = append(names, path)
	}
	fmt.Fprintln(c.App.Writer, strings.Join(names, ", "))
	return nil
}

func (j job) pagePath(stem string, page int) string {
	return filepath.Join(j.dir, "boards", pageFile(stem, page))
}

// drawn are the files in which the folder holds drawings of a plan's boards.
func (j job) drawn(plan *layout.Plan) map[string]bool {
	found := map[string]bool{}
	if plan == nil {
		return found
	}
	stems := fileStems(plan.Problem.Stock)
	for _, b := range plan.Boards {
		for page := 1; ; page++ {
			path := j.pagePath(stems[b.Board], page)
			if _, err := os.Lstat(path); err != nil {
				break
			}
			found[path] = true
		}
	}
	return found
}

func eachBoard(plan *layout.Plan) []*layout.BoardPlan {
	var boards []*layout.BoardPlan
	for i := range plan.Boards {
		boards = append(boards, &plan.Boards[i])
	}
	return boards
}

// drawForm draws a sheet to pencil a rack into, to a file whose name ends in
// .png, however that is spelt, and its further pages beside it.
func drawForm(c *cli.Context, path string, o render.Options) error {
	pages, err := render.RackForm(o)
	if err != nil {
		return err
	}
	stem := strings.TrimSuffix(path, filepath.Ext(path))
	return writePages(c, pages, func(page int) string { return pageFile(stem, page) })
}
