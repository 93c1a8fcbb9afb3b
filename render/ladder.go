package render

import (
	"cmp"
	"math"
	"slices"
)

// reach is the paper along the tape that a tag takes from its leader on.
func (t *typesetter) reach(g tag) float64 { return tagGap + t.tagWidth(g) + 1.2 }

// ladder is a set of tags with their places: rows of text, row 0 nearest the
// drawing, behind a band in which leaders may slant.
type ladder struct {
	tags []tag
	rows int
	band float64 // mm
}

// height is the paper that the texts of a ladder take beside the drawing.
func (l ladder) height() float64 {
	if len(l.tags) == 0 {
		return 0
	}
	return l.band + float64(l.rows)*rowStep
}

const (
	upright   = 3   // rows up to which leaders stay upright
	slantBand = 4.5 // mm
	// A text stays so near its place, in mm, if so many rows are enough for that.
	nearEnough = 25.0
	mostRows   = 6
)

// stagger puts the tags of a tape that runs from lo to hi in rows, so that no
// text meets another text or another's leader. A few rows are reached by upright
// leaders; where it would take more, the texts are moved aside.
func (t *typesetter) stagger(tags []tag, lo, hi float64) ladder {
	slices.SortStableFunc(tags, func(a, b tag) int { return cmp.Compare(a.at, b.at) })
	for i := range tags {
		tags[i].beside = tags[i].at
	}
	rows := t.stack(tags)
	beyond := func(g tag) bool { return g.at+t.reach(g) > hi }
	if rows <= upright && !slices.ContainsFunc(tags, beyond) {
		return ladder{tags: tags, rows: rows}
	}
	for rows = 1; rows < mostRows; rows++ {
		if t.slide(tags, rows, lo, hi) && farthest(tags) <= nearEnough {
			return ladder{tags, rows, slantBand}
		}
	}
	for !t.slide(tags, rows, lo, hi) {
		rows++
	}
	return ladder{tags, rows, slantBand}
}

// farthest is how far the farthest text is from its place.
func farthest(tags []tag) float64 {
	var most float64
	for _, g := range tags {
		most = max(most, math.Abs(g.beside-g.at))
	}
	return most
}

// stack finds rows for texts that stand right above their places.
//
// Every text stands to the right of its leader. Taken from right to left, a
// leader meets no text placed before; a text must only keep clear of the texts
// in its row and of the leaders that rise higher.
func (t *typesetter) stack(tags []tag) int {
	rows := 0
	for i := len(tags) - 1; i >= 0; i-- {
		for tags[i].row = 0; t.clash(tags[i], tags[i+1:]); tags[i].row++ {
		}
		rows = max(rows, tags[i].row+1)
	}
	return rows
}

func (t *typesetter) clash(g tag, placed []tag) bool {
	end := g.beside + t.reach(g)
	return slices.ContainsFunc(placed, func(p tag) bool { return p.beside < end && p.row >= g.row })
}

// slide gives the tags rows in turn, from the farthest to the nearest, and moves
// the texts aside until each has room up to the next text whose leader does not
// end before it: the next one in its row or a higher one. It reports whether they
// fit between lo and hi.
func (t *typesetter) slide(tags []tag, rows int, lo, hi float64) bool {
	const apart = 1.5 // between leaders
	room := func(i, j int) float64 {
		if tags[j].row >= tags[i].row {
			return t.reach(tags[i])
		}
		return apart
	}
	for i := range tags {
		tags[i].row = rows - 1 - i%rows
		tags[i].beside = max(lo, tags[i].at)
		for j := range i {
			if tags[j].row <= tags[i].row || j == i-1 {
				tags[i].beside = max(tags[i].beside, tags[j].beside+room(j, i))
			}
		}
	}
	for i := len(tags) - 1; i >= 0; i-- {
		tags[i].beside = min(tags[i].beside, hi-t.reach(tags[i]))
		for j := i + 1; j < len(tags); j++ {
			if tags[i].row <= tags[j].row || j == i+1 {
				tags[i].beside = min(tags[i].beside, tags[j].beside-room(i, j))
			}
		}
	}
	return rows > len(tags) || tags[0].beside >= lo-1e-9
}
