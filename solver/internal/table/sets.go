package main

import (
	"context"
	"io"

	"sawbill/solver/internal/jobs"
)

// set is a group of cases that are measured in the same way.
type set struct {
	name, about string
	print       func(context.Context, settings, io.Writer) error
}

// sets are all sets, in the order in which they are printed.
func sets() []set {
	return []set{
		{"plates", "published plates, any number of copies, one board", freePlates},
		{"limited", "published plates, limited copies, one board", limitedPlates},
		{"defects", "published plates with defects, one board", defectPlates},
		{"bars", "published bars: as few as possible", publishedBars},
		{"stock", "published plates: as few as possible", publishedStock},
		{"few", "1 to 5 boards, 5 to 13 pieces", whole(jobs.Few)},
		{"flat", "the same, of boards that do not taper", whole(jobs.FewFlat)},
		{"small", "3 to 5 boards, 8 to 30 pieces", whole(jobs.Small)},
		{"shop", "15 to 40 boards, 60 to 200 pieces", whole(jobs.Shop)},
		{"warped", "the same, of warped boards, with bevels and the rest", whole(jobs.ShopWarped)},
		{"large", "200 boards, 1500 pieces", whole(one(jobs.Large))},
		{"huge", "1500 boards, 10 000 pieces", whole(one(jobs.Huge))},
		{"mip", "small plain jobs, against general solvers for integer programs", programs},
	}
}

func names() []string {
	var all []string
	for _, s := range sets() {
		all = append(all, s.name)
	}
	return all
}

func one(job func() jobs.Named) func() []jobs.Named {
	return func() []jobs.Named { return []jobs.Named{job()} }
}
