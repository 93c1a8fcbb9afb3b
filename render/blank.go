package render

import (
	"math"

	"sawbill/layout"
	"sawbill/layout/steps"
)

const (
	blankMost  = 84.0 // the tallest that a blank is drawn
	blankLeast = 20.0
	stripLeast = 6.6 // a strip is drawn this wide if there is room, so that words fit

	thinMost  = 110.0 // the same for a blank of many thin strips
	thinLeast = 5.2
	tapeGap   = 3.0
)

// blank draws one trued blank with its own tapes, in several drawings one after
// the other where its pieces are too many to be named in one. Most is how tall
// it may be drawn, in mm.
func (d *boardSheet) blank(blank *steps.Blank, list []steps.Step, most float64) []*block {
	u := blank.Usable
	n := d.drawings(blank)
	var blocks []*block
	for i := range n {
		window := u
		if i > 0 {
			window.X1 = u.X1 + d.round(u.Length()*layout.Length(i)/layout.Length(n))
		}
		if i < n-1 {
			window.X2 = u.X1 + d.round(u.Length()*layout.Length(i+1)/layout.Length(n))
		}
		blocks = append(blocks, d.window(blank, list, window, most))
	}
	return blocks
}

// drawings is how many drawings a blank needs, for its strip of most pieces.
func (d *boardSheet) drawings(blank *steps.Blank) int {
	const piece, beside, most = 27.0, 50.0, 6
	pieces := 1
	for _, strip := range blank.Node.Children {
		if strip.Cut == layout.Crosscut {
			pieces = max(pieces, len(strip.Children))
		}
	}
	return min(most, int(math.Ceil(float64(pieces)*piece/(d.width()-beside))))
}

// window draws a part of a blank. Words that find no place in the drawing are
// asked to go outside on a leader; that moves things, so the drawing is made
// again until every word stands.
func (d *boardSheet) window(blank *steps.Blank, list []steps.Step, window layout.Rect, most float64) *block {
	outside := map[string]bool{}
	for {
		v := &blankView{
			boardSheet: d, blank: blank, list: list, block: newBlock(d.types),
			outside: outside, wood: window, most: most, short: map[string][]string{},
		}
		v.draw()
		if len(v.failed) == 0 {
			return v.block
		}
		for _, f := range v.failed {
			outside[f] = true
		}
	}
}

// blankView is one try at the drawing of a blank.
type blankView struct {
	*boardSheet
	*block
	blank   *steps.Blank
	wood    layout.Rect // the part of the blank that is drawn
	most    float64     // how tall it may be drawn
	list    []steps.Step
	f       frame
	across  []sideTag // readings of the rips that run the whole length
	last    []sideTag // of the others
	outside map[string]bool
	failed  []string
	hatched []Box // defects, best left free of words
	// short are the short words in the drawing by what they leave out.
	short map[string][]string
	notes []string
}

func (v *blankView) draw() {
	v.sortRips()
	y := v.title()
	left, right := v.gutters()
	u := v.wood
	wide := v.width() - left - right
	high := v.highEnough(wide)
	if most := high / float64(u.Width()) * float64(u.Length()); most < wide && high >= v.most-1e-9 {
		wide = max(most, 0.72*wide) // a short blank need not be drawn out
	}
	flat := newFrame(u, Box{left, 0, left + wide, high})
	readings := v.types.stagger(v.tape(flat), left, v.width())
	top := y + readings.height() + 2.6 + tapeGap
	v.f = newFrame(u, Box{left, top, left + wide, top + high})
	v.wooden()
	v.above(readings, top-tapeGap)
	v.line(Point{left, top - tapeGap}, Point{left + wide, top - tapeGap}, middleLine)
	v.sides(left + wide)
	v.numbers()
	bottom := v.outsideWords()
	v.pieces()
	if v.f.distorted() {
		v.notes = append(v.notes, "Not to scale across")
	}
	v.legend(bottom)
}

// highEnough is how tall the blank is drawn: to scale, unless words need more.
func (v *blankView) highEnough(wide float64) float64 {
	u := v.wood
	toScale := wide * float64(u.Width()) / float64(u.Length())
	thinnest := u.Width()
	for _, c := range v.blank.Node.Children {
		thinnest = min(thinnest, c.Width())
	}
	for _, leaf := range v.blank.Node.Leaves() {
		if leaf.Part != "" || leaf.Offcut != "" {
			thinnest = min(thinnest, leaf.Width())
		}
	}
	strips := float64(u.Width()) / float64(thinnest)
	high := min(max(toScale, stripLeast*strips, blankLeast), v.most)
	return max(high, min(thinLeast*strips, thinMost), sidePitch*float64(max(len(v.across), len(v.last))))
}
