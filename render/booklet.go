package render

import (
	"fmt"
	"slices"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Booklet draws all the paper of a job for one print: a cover with the boards to
// pull, the bill to tick off and the settings of the machines in order; the sheets
// of every board; labels to cut out for parts and offcuts; sections of the
// strips at their true size, where they fit; and the quote, where it is asked for. The
// plan must have passed its check.
func Booklet(plan *layout.Plan, o Options) ([]Page, error) {
	for _, b := range plan.Boards {
		if plan.Problem.Board(b.Board) == nil {
			return nil, fmt.Errorf("draw booklet: board %q is not in the stock of the plan", b.Board)
		}
	}
	book := newBooklet(plan, o)
	pages := book.cover()
	for i := range plan.Boards {
		board, err := Board(plan, &plan.Boards[i], o)
		if err != nil {
			return nil, err
		}
		pages = append(pages, board...)
	}
	pages = append(pages, book.labels()...)
	pages = append(pages, book.templates()...)
	return append(pages, book.quote()...), nil
}

type booklet struct {
	words
	plan   *layout.Plan
	o      Options
	sheets []*steps.Sheet
}

func newBooklet(plan *layout.Plan, o Options) *booklet {
	return &booklet{words{plan.Problem.Shop}, plan, o, steps.AllIn(plan, o.Order)}
}

// newSheet begins a part of the booklet.
func (b *booklet) newSheet() *sheet {
	s := &sheet{types: newTypesetter(), paper: b.o.Paper, plan: b.plan}
	s.newPage()
	return s
}

// cover is what is read before anything is cut.
func (b *booklet) cover() []Page {
	s := b.newSheet()
	s.put(b.title(s))
	b.pull(s)
	b.bill(s)
	b.settingsTable(s)
	return s.finish("cover")
}

// title names the job and the plan, and says what comes before all cutting.
func (b *booklet) title(s *sheet) *block {
	t := newBlock(s.types)
	name := b.plan.Job
	if name == "" {
		name = "job"
	}
	look := style{markCap, true}
	for look.cap > titleCap && s.types.width(name, look) > s.width() {
		look.cap--
	}
	word, bold := fmt.Sprintf("Revision %d, check word %s", b.plan.Revision, steps.CheckWord(b.plan)), style{titleCap, true}
	y := t.lines(name, 0, look.cap+1, s.width(), look)
	if right := s.width() - s.types.width(word, bold); s.types.width(name, look) < right-8 {
		t.text(word, right, y, bold)
		y += 2 // the name is large, and reaches below its line
	} else {
		y = t.lines(word, 0, y+9, s.width(), bold)
	}
	y = t.lines("Each board has the check word that its sheets must bear. Paper with another word is of another plan: away with it. "+
		"Sizes in "+b.unit()+".", 0, y+7, s.width(), plain())
	t.warningSign(0, y+8)
	t.height = t.lines(steps.SafetyFirst+" "+string(steps.CautionDust), 6, y+8, s.width()-6, strong()) + 4
	return t
}

// pull lists the boards by their places, so that one walk along the rack fetches
// them all.
func (b *booklet) pull(s *sheet) {
	boards := slices.Clone(b.sheets)
	slices.SortStableFunc(boards, func(x, y *steps.Sheet) int { return strings.Compare(x.Board.Place, y.Board.Place) })
	cols := columns(s.width(), []string{"", "board", "place", "species", "thick x wide x long", "steps", "check word", "note"},
		[]float64{8, 20, 36, 36, 58, 22, 30, 48})
	var rows [][]string
	for _, sheet := range boards {
		board := sheet.Board
		place := board.Place
		if board.Source == layout.Yard {
			place = strings.TrimSpace("buy: yard " + place)
		}
		width := b.reading(board.Width)
		if board.TipWidth != board.Width {
			width += " to " + b.reading(board.TipWidth)
		}
		rows = append(rows, []string{
			tickCell, board.Mark, place, board.Species,
			b.reading(board.Thickness) + " x " + width + " x " + b.reading(board.Length), b.stepRange(sheet), b.word(board.Mark), board.Note,
		})
	}
	s.table("Boards to pull, by place", cols, rows)
}

// word is the check word that the sheets of a board bear.
func (b *booklet) word(mark string) string {
	if p := b.plan.Record.Paper(mark); p != nil {
		return p.Word
	}
	return steps.CheckWord(b.plan)
}

// stepRange is where the work on a board begins and ends.
func (b *booklet) stepRange(sheet *steps.Sheet) string {
	if len(sheet.Steps) == 0 {
		return ""
	}
	lo, hi := sheet.Steps[0].Number, 0
	for _, s := range sheet.Steps {
		lo, hi = min(lo, s.Number), max(hi, s.Number)
	}
	return numbers(lo, hi)
}

func numbers(lo, hi int) string {
	if lo == hi {
		return fmt.Sprint(lo)
	}
	return fmt.Sprintf("%d–%d", lo, hi)
}
