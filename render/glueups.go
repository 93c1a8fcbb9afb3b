package render

import (
	"fmt"

	"sawbill/layout/glueup"
	"sawbill/layout/steps"
)

// GlueUps draws the steps from the strips of a design to its finished face, on as
// many pages as they take.
func GlueUps(work *glueup.Work, o Options) []Page {
	d := newGlueSheet(work, o)
	d.newPage()
	d.put(d.stepsHead())
	for i, s := range work.Steps() {
		d.step(i+1, &s)
	}
	d.remarks()
	return d.finish(d.title() + ", steps")
}

func (d *glueSheet) stepsHead() *block {
	b := newBlock(d.types)
	b.text(d.types.cut(d.title()+": from strips to the face", d.width(), style{titleCap + 1, true}), 0, titleCap+2, style{titleCap + 1, true})
	y := titleCap + 9
	b.warningSign(0, y)
	b.height = b.lines(steps.SafetyFirst+" "+string(steps.CautionDust), 6, y, d.width()-6, strong()) + 1
	b.height = b.lines("Sizes in "+d.unit()+" unless they say otherwise. The sheets of the boards say how the strips are cut; this is what comes after.",
		0, b.height+lineStep, d.width(), plain()) + 3
	return b
}

const stepIndent = 10.0

// step sets one step: its number and title, its cautions, what to do, its picture.
// They stay together where a page can hold them.
func (d *glueSheet) step(number int, s *glueup.Step) {
	b := newBlock(d.types)
	b.line(Point{0, 0}, Point{d.width(), 0}, hairline)
	b.box(Box{d.width() - tickSize - 0.5, 1.6, d.width() - 0.5, 1.6 + tickSize}, White, Black, middleLine)
	b.badge(number, 0, 1.6)
	y := b.lines(s.Title, stepIndent, 1.6+(badgeHeight+textCap)/2, d.width()-stepIndent-8, style{textCap + 0.7, true})
	for _, c := range s.Cautions {
		y += lineStep
		b.warningSign(stepIndent, y)
		y = b.lines(string(c), stepIndent+6, y, d.width()-stepIndent-6, strong())
	}
	for _, line := range s.Lines {
		y = b.lines(line, stepIndent, y+lineStep, d.width()-stepIndent, plain())
	}
	b.height = y + 3
	most := laidMost
	if left := d.bottom() - d.y - b.height - 4; laidLeast <= left {
		most = min(most, left)
	}
	picture := d.picture(s, most)
	if picture == nil {
		d.add(b, 0)
		return
	}
	d.add(b, picture.height)
	d.add(picture, 0)
}

// remarks are what the geometry and the table of woods have to say.
func (d *glueSheet) remarks() {
	for i, text := range d.work.Warnings {
		b := newBlock(d.types)
		y := textCap + 2
		if i == 0 {
			b.line(Point{0, 0}, Point{d.width(), 0}, hairline)
		}
		b.warningSign(0, y)
		b.height = b.lines(text, stepIndent, y, d.width()-stepIndent, strong()) + 1
		d.add(b, 0)
	}
	for _, text := range d.work.Notes {
		b := newBlock(d.types)
		b.text("–", 4, textCap+2, plain())
		b.height = b.lines(text, stepIndent, textCap+2, d.width()-stepIndent, plain()) + 1
		d.add(b, 0)
	}
}

// picture draws what a step needs drawn, about so high at most, or gives nil.
func (d *glueSheet) picture(s *glueup.Step, most float64) *block {
	switch s.Picture {
	case glueup.StripEnds:
		if p := &d.work.Panels[s.Panel]; p.Form == glueup.Hexagon {
			return d.prism(p)
		}
		return d.panel(&d.work.Panels[s.Panel])
	case glueup.RowsLaid:
		return d.rowsLaid(most)
	case glueup.SlabCut:
		return d.slabCut()
	case glueup.PlacesLaid:
		return d.placesLaid(most)
	}
	return nil
}

// rowText names the slice of a row.
func (d *glueSheet) rowText(i int) string {
	r := d.work.Rows[i]
	text := fmt.Sprintf("%d: %s", i+1, d.work.Panels[r.Panel].Name)
	if r.Turned {
		text += " turned"
	}
	return text
}
