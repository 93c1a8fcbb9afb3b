package render

import (
	"fmt"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Job draws the sheet of a whole job: the boards to pull and where they are,
// the parts made and missing, what it costs, and where the wood goes.
func Job(plan *layout.Plan, o Options) ([]Page, error) {
	for _, b := range plan.Boards {
		if plan.Problem.Board(b.Board) == nil {
			return nil, fmt.Errorf("draw job: board %q is not in the stock of the plan", b.Board)
		}
	}
	j := &jobSheet{
		sheet: &sheet{types: newTypesetter(), paper: o.Paper, plan: plan},
		words: words{plan.Problem.Shop},
	}
	j.newPage()
	j.put(j.head())
	j.boards()
	j.parts()
	j.offcuts()
	j.add(j.account(), 0)
	return j.finish("job"), nil
}

type jobSheet struct {
	*sheet
	words
}

func (j *jobSheet) head() *block {
	b := newBlock(j.types)
	name := j.plan.Job
	if name == "" {
		name = "job"
	}
	look := style{8, true}
	for look.cap > titleCap && j.types.width(name, look) > j.width() {
		look.cap--
	}
	y := b.lines(name, 0, look.cap+1, j.width(), look)
	for _, line := range j.figures() {
		y = b.lines(line, 0, y+7, j.width(), plain())
	}
	b.height = y + 4
	return b
}

// figures are the cost, what is proven about it, and the yield.
func (j *jobSheet) figures() []string {
	t := j.plan.Totals
	cost := fmt.Sprintf("%s to cut, sizes in %s. Cost %s: the boards less what the kept offcuts are worth.",
		counted(len(j.plan.Boards), "board"), j.unit(), t.Cost.Cents())
	if t.Yield != nil {
		cost += fmt.Sprintf(" Yield %.1f%% (offcuts left out).", 100**t.Yield)
	}
	return []string{cost, sentence(steps.Proof(j.plan))}
}

// sentence is a text of plain letters with a capital and a full stop.
func sentence(text string) string { return strings.ToUpper(text[:1]) + text[1:] + "." }

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

func (j *jobSheet) boards() {
	cols := columns(j.width(), []string{"board", "species", "thick x wide x long", "place", "gives", "keep"},
		[]float64{20, 24, 46, 34, 62, 40})
	var rows [][]string
	for i := range j.plan.Boards {
		bp := &j.plan.Boards[i]
		b := j.plan.Problem.Board(bp.Board)
		place := b.Place
		if b.Source == layout.Yard {
			place = strings.TrimSpace("buy: yard " + place)
		}
		gives, keep := j.leaves(bp)
		width := j.reading(b.Width)
		if b.TipWidth != b.Width {
			width += " to " + j.reading(b.TipWidth)
		}
		rows = append(rows, []string{
			b.Mark, b.Species, j.reading(b.Thickness) + " x " + width + " x " + j.reading(b.Length), place, gives, keep,
		})
	}
	j.table("Boards to pull", cols, rows)
}

// leaves says what a board gives and what of it is kept.
func (j *jobSheet) leaves(bp *layout.BoardPlan) (gives, keep string) {
	made := map[string]int{}
	var order, kept []string
	for _, leaf := range bp.Root.Leaves() {
		switch {
		case leaf.Part != "":
			if made[leaf.Part] == 0 {
				order = append(order, leaf.Part)
			}
			made[leaf.Part] += leaf.Pieces()
		case leaf.Offcut != "":
			kept = append(kept, leaf.Offcut)
		}
	}
	for i, name := range order {
		order[i] = fmt.Sprintf("%d%c%s", made[name], hold, name)
	}
	return strings.Join(order, ", "), strings.Join(kept, ", ")
}

func (j *jobSheet) parts() {
	made := map[string]int{}
	for _, b := range j.plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			made[leaf.Part] += leaf.Pieces()
		}
	}
	lacking := map[string]layout.Missing{}
	for _, m := range j.plan.Missing {
		lacking[m.Part] = m
	}
	cols := columns(j.width(), []string{"part", "finished size", "made", "missing", "note"}, []float64{50, 56, 36, 34, 54})
	var rows [][]string
	for i := range j.plan.Problem.Bill {
		p := &j.plan.Problem.Bill[i]
		size := j.size(p.Length, p.Width, p.Thickness)
		asked := madeOf(made[p.Name], p.Quantity)
		if p.Set != "" {
			size, asked = j.size(p.Width, p.Thickness)+", set "+p.Set, fmt.Sprint(made[p.Name])
		}
		rows = append(rows, []string{p.Name, size, asked, short(lacking[p.Name]), p.Note})
		delete(lacking, p.Name)
	}
	for _, m := range j.plan.Missing { // sets, which are no rows of the bill
		if _, left := lacking[m.Part]; left {
			rows = append(rows, []string{m.Part, "slices of a set", "", short(m), ""})
		}
	}
	j.table("Parts", cols, rows)
	j.copies(j.words)
	j.missing(j.plan.Missing)
}

// short counts what is missing in a cell; why is said below the table.
func short(m layout.Missing) string {
	if m.Quantity == 0 {
		return "none"
	}
	return fmt.Sprintf("%d MISSING", m.Quantity)
}
