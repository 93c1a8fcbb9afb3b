package render

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// sheet flows blocks onto pages.
type sheet struct {
	types *typesetter
	paper Paper
	plan  *layout.Plan // nil on a form
	of    string       // the mark of the board that the sheets are about, if they are about one
	pages []*Scene
	y     float64 // where the next block goes on the last page
	// running heads every page after the first.
	running func() *block
}

// width is the width between the margins.
func (s *sheet) width() float64 {
	w, _ := s.paper.size()
	return w - 2*margin
}

func (s *sheet) bottom() float64 {
	_, h := s.paper.size()
	return h - margin - footerTop
}

func (s *sheet) newPage() {
	w, h := s.paper.size()
	s.pages = append(s.pages, &Scene{Width: w, Height: h})
	s.y = margin
	if len(s.pages) > 1 && s.running != nil {
		s.put(s.running())
	}
}

// put sets a block on the last page.
func (s *sheet) put(b *block) {
	b.moved(s.pages[len(s.pages)-1], margin, s.y)
	s.y += b.height
}

// room reports whether a height is left on the last page.
func (s *sheet) room(h float64) bool {
	return len(s.pages) > 0 && s.y+h <= s.bottom()
}

// add sets a block, on a new page if it must, together with so much after it.
func (s *sheet) add(b *block, after float64) {
	if !s.room(b.height + after) {
		s.newPage()
	}
	s.put(b)
}

// finish foots every page.
func (s *sheet) finish(name string) []Page {
	var pages []Page
	for i, p := range s.pages {
		foot := newBlock(s.types)
		foot.line(Point{0, 0}, Point{s.width(), 0}, middleLine)
		foot.text(s.types.cut(steps.SafetyFirst, s.width(), strong()), 0, 5.2, strong())
		where := fmt.Sprintf("%s, sheet %d of %d", name, i+1, len(s.pages))
		right := s.width() - s.types.width(where, plain())
		foot.text(where, right, 11.2, plain())
		if s.plan != nil {
			foot.text(s.types.cut(s.imprint(), right-4, plain()), 0, 11.2, plain())
		}
		foot.moved(p, margin, s.bottom()+2)
		pages = append(pages, Page{p})
	}
	return pages
}

// imprint says which plan a sheet belongs to: of a board whose cuts are older than
// the plan, the one that they are from. The check word and the revision come first,
// so that a long job name cannot push them off.
func (s *sheet) imprint() string {
	word, revision, made := steps.CheckWord(s.plan), s.plan.Revision, s.plan.Made
	if p := s.plan.Record.Paper(s.of); p != nil {
		word, revision, made = p.Word, p.Revision, p.Made
	}
	text := fmt.Sprintf("Check word %s · revision %d", word, revision)
	if !made.IsZero() {
		text += " · " + made.Format("2006-01-02")
	}
	if s.plan.Job != "" {
		text += " · job " + s.plan.Job
	}
	return text
}
