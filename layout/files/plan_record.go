package files

import (
	"time"

	"sawbill/layout"
)

// record1 is the part of a plan file that tells what has happened to the job
// before this revision; a plan to which nothing has happened has none.
type record1 struct {
	From    count       `json:"from"`
	Told    []string    `json:"told"`
	Wanted  []part1     `json:"wanted"`
	Cut     []cutPiece1 `json:"cut"`
	Started []start1    `json:"started"`
	Spent   money       `json:"spent"`
	Used    []board1    `json:"used,omitempty"`
	Origins []origin1   `json:"origins"`
	Papers  []paper1    `json:"papers"`
}

type start1 struct {
	Board string `json:"board"`
	Root  node1  `json:"root"`
}

type cutPiece1 struct {
	Part     string `json:"part"`
	Board    string `json:"board"`
	Revision count  `json:"revision"`
	Spare    bool   `json:"spare,omitempty"`
	Slices   count  `json:"slices,omitempty"`
	Wood     board1 `json:"wood"`
	rect1
}

type origin1 struct {
	Board string `json:"board"`
	Of    string `json:"of"`
	rect1
}

type paper1 struct {
	Board    string `json:"board"`
	Revision count  `json:"revision"`
	Word     string `json:"word"`
	Made     string `json:"made"`
}

func toRecord1(r *layout.Record) *record1 {
	if r == nil {
		return nil
	}
	same := func(s string) string { return s }
	return &record1{
		From: count(r.From), Told: each(r.Told, same), Wanted: each(r.Wanted, toPart1),
		Cut: each(r.Cut, func(p layout.CutPiece) cutPiece1 {
			return cutPiece1{p.Part, p.Board, count(p.Revision), p.Spare, count(p.Slices), toBoard1(p.Wood), toRect1(p.Lay)}
		}),
		Started: each(r.Started, func(s layout.Start) start1 { return start1{s.Board, toNode1(s.Root)} }), Spent: money(r.Spent), Used: each(r.Used, toBoard1),
		Origins: each(r.Origins, func(o layout.Origin) origin1 { return origin1{o.Board, o.Of, toRect1(o.Wood)} }),
		Papers: each(r.Papers, func(p layout.Paper) paper1 {
			return paper1{p.Board, count(p.Revision), p.Word, p.Made.UTC().Format(time.RFC3339Nano)}
		}),
	}
}

func (c *converter) record(r *record1) *layout.Record {
	if r == nil {
		return nil
	}
	same := func(s string) string { return s }
	return &layout.Record{
		From: int(r.From), Told: each(r.Told, same), Wanted: each(r.Wanted, c.part),
		Cut: each(r.Cut, func(p cutPiece1) layout.CutPiece {
			return layout.CutPiece{
				Part: p.Part, Board: p.Board, Revision: int(p.Revision), Spare: p.Spare, Slices: int(p.Slices),
				Wood: c.board(p.Wood), Lay: fromRect1(p.rect1),
			}
		}),
		Started: each(r.Started, func(s start1) layout.Start { return layout.Start{Board: s.Board, Root: c.node(s.Root)} }),
		Spent:   c.money("record.spent", r.Spent), Used: each(r.Used, c.board),
		Origins: each(r.Origins, func(o origin1) layout.Origin {
			return layout.Origin{Board: o.Board, Of: o.Of, Wood: fromRect1(o.rect1)}
		}),
		Papers: each(r.Papers, func(p paper1) layout.Paper {
			return layout.Paper{Board: p.Board, Revision: int(p.Revision), Word: p.Word, Made: c.time("made of a paper", p.Made)}
		}),
	}
}

// time is a time of the file, in UTC.
func (c *converter) time(key, text string) time.Time {
	made, err := time.Parse(time.RFC3339, text)
	if err != nil || made.UTC().Year() < 0 || made.UTC().Year() > 9999 {
		c.fail("%s: found %q, want a time such as 2026-01-31T10:00:00Z", key, text)
	}
	return made.UTC()
}
