package render

import (
	"sawbill/layout"
	"sawbill/layout/steps"
)

// setups shows how the wood lies at the saw for the bevels of a run of steps: a
// picture for each way, as one sees it from behind the piece.
func (d *boardSheet) setups(run []steps.Step) *block {
	b := newBlock(d.types)
	half := d.width() / 2
	var low float64
	if from(run, steps.Far) {
		low = max(low, b.setup(0, half-4, setup{"B", "A", "Face B down, far edge against the fence; the wedge falls free", true}))
	}
	if from(run, steps.Reference) {
		low = max(low, b.setup(half, half-4, setup{"A", "B", "Face A down, the bevelled edge tight against a fence with no gap below", false}))
	}
	b.height = b.lines("Settings are read at the table. Between the two, turn the piece over sideways, never end for end. "+
		"If your fence is on the other side of the blade, all is mirrored.", 0, low+lineStep, d.width(), plain()) + 3
	return b
}

// from reports whether a bevel is ripped from an edge.
func from(run []steps.Step, edge steps.From) bool {
	for _, s := range run {
		if s.Operation == steps.BevelRip && s.From == edge && s.Down != layout.Through {
			return true
		}
	}
	return false
}

// setup is one picture: the faces, what it says, and whether the edge at the fence
// is square.
type setup struct {
	down, up, text string
	square         bool
}

// setup draws table, fence, blade and wood, and gives the y of its last line.
func (b *block) setup(x, width float64, s setup) float64 {
	const high, lean, table, fence = 12.0, 7.0, 19.0, 92.0
	b.line(Point{x + 8, table + 0.5}, Point{x + 104, table + 0.5}, heavyLine)
	b.box(Box{x + fence, table - 15, x + fence + 5, table}, OffcutTone, Black, middleLine)
	edge := lean
	if s.square {
		edge = 0
	}
	const blade = 40.0 // where it meets the table
	top := table - high
	b.polygon([]Point{{x + blade, table}, {x + fence, table}, {x + fence - edge, top}, {x + blade - lean, top}}, White, Black, middleLine)
	// Beyond the blade: the wedge or what is left.
	b.polygon([]Point{{x + blade - 3, table}, {x + 20, table}, {x + 20, top}, {x + blade - 3 - lean, top}}, WasteTone, Black, thinLine)
	if !s.square {
		b.polygon([]Point{{x + blade - 3, table}, {x + 20, table}, {x + 20, top}, {x + blade - 3 - lean, top}}, White, Black, thinLine)
	}
	b.polygon([]Point{
		{x + blade - 2.3, table + 3}, {x + blade - 0.7, table + 3},
		{x + blade - 0.7 - 20*lean/high, table - 17}, {x + blade - 2.3 - 20*lean/high, table - 17},
	}, Black, NoInk, 0)
	b.text("face "+s.up, x+fence-34, top+textCap+0.8, plain())
	b.text("face "+s.down, x+fence-34, table-1, plain())
	b.text("fence", x+fence+6.5, table-6, plain())
	b.setLine(x+blade, x+fence, table+4.5)
	return b.lines(s.text, x, table+13, width, plain())
}

// setLine is the line of a dimension at the table, with its word.
func (b *block) setLine(x1, x2, y float64) {
	w := b.types.width("set", plain())
	mid := (x1 + x2) / 2
	b.line(Point{x1, y}, Point{mid - w/2 - 1.5, y}, thinLine)
	b.line(Point{mid + w/2 + 1.5, y}, Point{x2, y}, thinLine)
	for _, x := range []float64{x1, x2} {
		b.line(Point{x, y - 1.5}, Point{x, y + 1.5}, thinLine)
	}
	b.text("set", mid-w/2, y+textCap/2, plain())
}
