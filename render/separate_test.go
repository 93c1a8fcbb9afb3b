package render

import (
	"math/rand"
	"testing"
)

// A leader that was moved out of the way of a step number once ended in the piece
// beside the knot that it named. Now it ends on what it names, whatever stands there.
func TestLeadersEndOnWhatTheyName(t *testing.T) {
	const bottom = 60.0
	rng, types := rand.New(rand.NewSource(7)), newTypesetter()
	for range 2000 {
		b := newBlock(types)
		for n := range 12 {
			b.badge(n+1, 100*rng.Float64(), 50*rng.Float64())
		}
		var tags []tag
		for range 1 + rng.Intn(3) {
			x, y := 100*rng.Float64(), 50*rng.Float64()
			tags = append(tags, tagOf(Box{x, y, x + 3 + 20*rng.Float64(), y + 8*rng.Float64()}, frame{at: Box{0, 0, 130, 57}}))
		}
		b.separate(tags, bottom)
		for _, g := range tags {
			if g.at < g.named.X1 || g.named.X2 < g.at {
				t.Fatalf("the leader of %.1f stands at %.1f", g.named, g.at)
			}
		}
	}
}

// The badge takes the paper from 20 to 25 across and from 30 to 35 down. The thing is
// at 18 to 24: its middle is hidden, its left end is not.
func TestALeaderKeepsClearOfAStepNumberWhereItCan(t *testing.T) {
	b := newBlock(newTypesetter())
	b.badge(1, 20, 30)
	tags := []tag{tagOf(Box{18, 10, 24, 12}, frame{at: Box{0, 0, 100, 57}})}
	b.separate(tags, 60)
	if at := tags[0].at; at < 18.3 || at > 19.7 {
		t.Errorf("the leader stands at %.2f", at)
	}
}

// Where a thing is no wider than the step number below it the leader runs behind that.
func TestALeaderRunsBehindAStepNumber(t *testing.T) {
	b := newBlock(newTypesetter())
	b.badge(1, 20, 30)
	lines := len(b.Shapes)
	tags := []tag{tagOf(Box{21, 10, 24, 12}, frame{at: Box{0, 0, 100, 57}})}
	b.separate(tags, 60)
	b.leader(tags[0].at, 11, 60)
	if got := len(b.Shapes) - lines; tags[0].at != 22.5 || got != 2 {
		t.Errorf("the leader stands at %.2f, in %d lines", tags[0].at, got)
	}
}
