package render

import (
	"math"
	"slices"
)

// tagOf is a tag below a frame for what lies in a box of its drawing.
func tagOf(named Box, f frame) tag {
	return tag{at: (named.X1 + named.X2) / 2, tip: f.at.Y2 - (named.Y1+named.Y2)/2, named: named}
}

// separate moves leaders that would run on each other or over a step number a little
// aside, but never off what they name: rather they run behind step numbers.
func (b *block) separate(tags []tag, bottom float64) {
	for i := range tags {
		placed, g := tags[:i], tags[i]
		ways := aside(g)
		clear := func(x float64) bool { return apart(placed, x) && b.free(leaderBox(x, bottom-g.tip, bottom)) }
		seen := func(x float64) bool { return apart(placed, x) && b.free(leaderBox(x, bottom-g.tip, bottom-g.tip)) }
		for _, good := range []func(float64) bool{clear, seen, func(x float64) bool { return apart(placed, x) }} {
			if n := slices.IndexFunc(ways, good); n >= 0 {
				tags[i].at = ways[n]
				break
			}
		}
	}
}

// aside lists places for the leader of a tag, the nearest to its middle first. All of
// them are on what it names, unless that is so narrow that another leader may have to
// pass between.
func aside(g tag) []float64 {
	const step, inside, least = 0.4, 0.3, 0.8
	most := max(least, g.named.w()/2-inside)
	var places []float64
	for _, d := range around(most / step) {
		places = append(places, g.at+d*step)
	}
	return places
}

// apart reports whether a leader at x keeps clear of the others.
func apart(placed []tag, x float64) bool {
	return !slices.ContainsFunc(placed, func(t tag) bool { return math.Abs(t.at-x) < 0.7 })
}

func leaderBox(x, y1, y2 float64) Box { return Box{x - 0.3, y1, x + 0.3, y2} }
