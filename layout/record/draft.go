package record

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Draft is the next revision of a plan in the making.
type Draft struct {
	former *layout.Plan
	record layout.Record
	stock  []layout.Board
	trees  map[string]*layout.Node // by the mark of the board; a draft owns them
	hurt   map[string]bool         // boards that have lost pieces
}

// Open begins the next revision of a plan that has passed its check.
func Open(former *layout.Plan) *Draft {
	d := &Draft{former: former, stock: former.Problem.Stock, trees: map[string]*layout.Node{}}
	for _, b := range former.Boards {
		d.trees[b.Board] = b.Root
	}
	if former.Record != nil {
		d.record = *former.Record
	} else {
		d.record.Wanted = former.Problem.Bill
	}
	d.record.From, d.record.Told = former.Revision, nil
	return d.clone()
}

// clone is a draft of its own with all that is in d.
func (d *Draft) clone() *Draft {
	c := &Draft{former: d.former, record: d.record, stock: slices.Clone(d.stock), trees: map[string]*layout.Node{}, hurt: map[string]bool{}}
	for i := range c.stock {
		c.stock[i].Defects = slices.Clone(c.stock[i].Defects)
	}
	for mark, root := range d.trees {
		c.trees[mark] = root.Clone()
	}
	maps.Copy(c.hurt, d.hurt)
	r := &c.record
	r.Cut, r.Started, r.Told = slices.Clone(r.Cut), slices.Clone(r.Started), slices.Clone(r.Told)
	r.Origins, r.Wanted, r.Used = slices.Clone(r.Origins), slices.Clone(r.Wanted), slices.Clone(r.Used)
	return c
}

// Shop is the shop of the job.
func (d *Draft) Shop() *layout.Shop { return d.former.Problem.Shop }

// Yard says whether boards of the yard take part.
func (d *Draft) Yard() bool { return d.former.Problem.Yard }

func (d *Draft) tell(format string, args ...any) {
	d.record.Told = append(d.record.Told, fmt.Sprintf(format, args...))
}

func (d *Draft) board(mark string) *layout.Board {
	for i := range d.stock {
		if d.stock[i].Mark == mark {
			return &d.stock[i]
		}
	}
	return nil
}

func (d *Draft) wanted(part string) *layout.Part {
	for i := range d.record.Wanted {
		if d.record.Wanted[i].Name == part {
			return &d.record.Wanted[i]
		}
	}
	return nil
}

func (d *Draft) started(mark string) bool { return d.record.IsStarted(mark) }

// start notes that a board is being cut.
func (d *Draft) start(mark string) {
	if !d.started(mark) {
		d.record.Started = append(d.record.Started, layout.Start{Board: mark, Root: d.trees[mark].Clone()})
	}
}

// sheet is the work on a board as it now is in the draft.
func (d *Draft) sheet(mark string) *steps.Sheet {
	plan := d.assembled()
	return steps.Of(plan, plan.Board(mark))
}

// place is something that people name: a board, or a node of its tree by the name
// that is written on the wood.
type place struct {
	board *layout.Board
	node  *layout.Node // nil where a board is named
	// origin is what tape and rule measure from, in the frame of the board.
	origin layout.Rect
}

// find looks a name up: the mark of a board, the name of a blank, a strip, a piece
// or an offcut. Names are told apart by case only where they must be.
func (d *Draft) find(name string) (place, error) {
	same := func(other string) bool { return strings.EqualFold(other, strings.TrimSpace(name)) }
	for i := range d.stock {
		if same(d.stock[i].Mark) {
			return place{board: &d.stock[i], origin: d.stock[i].Frame()}, nil
		}
	}
	known := slices.Collect(func(yield func(string) bool) {
		for i := range d.stock {
			if !yield(d.stock[i].Mark) {
				return
			}
		}
	})
	for _, sheet := range steps.All(d.assembled()) {
		root := d.trees[sheet.Board.Mark]
		var found *layout.Node
		root.Walk(func(n *layout.Node) {
			chalk := sheet.Name(n)
			known = append(known, chalk)
			if found == nil && n != root && same(chalk) {
				found = n
			}
		})
		if found != nil {
			return place{d.board(sheet.Board.Mark), found, wood(sheet, found)}, nil
		}
	}
	return place{}, fmt.Errorf("%q: %s", name, nobodyBears(name, known))
}

// nobodyBears says that a name is not known, and which of the known ones may have been
// meant: the nearest one, or the marks of boards, which come first.
func nobodyBears(name string, known []string) string {
	const nothing = "no board and no piece bears that name"
	if near := layout.Nearest(name, known); near != "" {
		return fmt.Sprintf("%s (did you mean %q?)", nothing, near)
	}
	const most = 12
	if len(known) > most {
		return nothing + ": want one such as " + strings.Join(known[:most], ", ")
	}
	return nothing + ": want one of " + strings.Join(known, ", ")
}

// wood is where the wood of a node lies: what truing leaves of a blank, otherwise
// its own rectangle.
func wood(sheet *steps.Sheet, n *layout.Node) layout.Rect {
	for _, b := range sheet.Blanks {
		if b.Node == n {
			return b.Usable
		}
	}
	return n.Rect
}

// problem is what is to be planned: the stock as it is, and of the bill what is not
// cut from boards that the plan no longer holds. A part of which all that is needed is
// cut stays in it as long as spare pieces of it are planned. Glue-ups stand in it as a
// whole: their strips count wherever they were cut.
func (d *Draft) problem() *layout.Problem {
	p := &layout.Problem{Shop: d.Shop(), Stock: d.stock, Yard: d.former.Problem.Yard}
	needed, spare, planned := d.cutElsewhere()
	for _, part := range d.record.Wanted {
		if part.Set == "" {
			part.Quantity -= needed[part.Name]
			part.Spare = max(0, part.Spare-spare[part.Name])
		}
		if part.Quantity > 0 || planned[part.Name] {
			p.Bill = append(p.Bill, part)
		}
	}
	return p
}

// cutElsewhere counts the finished pieces that are in no tree of the draft, by part:
// those that the bill needs, and spare ones. It also tells of which parts the trees
// hold pieces.
func (d *Draft) cutElsewhere() (needed, spare map[string]int, planned map[string]bool) {
	planned = map[string]bool{}
	now := layout.Plan{Problem: layout.Problem{Bill: d.record.Wanted}, Record: &d.record}
	for _, mark := range slices.Sorted(maps.Keys(d.trees)) {
		root := d.trees[mark]
		now.Boards = append(now.Boards, layout.BoardPlan{Board: mark, Root: root})
		for _, leaf := range root.Leaves() {
			planned[leaf.Part] = true
		}
	}
	spares := now.Spares()
	needed, spare = map[string]int{}, map[string]int{}
	for _, c := range now.CutElsewhere() {
		if spares[c.Wood.Mark] {
			spare[c.Part]++
		} else {
			needed[c.Part]++
		}
	}
	return needed, spare, planned
}

// assembled is the draft as a plan, with whatever is then missing.
func (d *Draft) assembled() *layout.Plan { return d.with(nil) }

// with is the draft as a plan, together with new trees for other boards.
func (d *Draft) with(fresh []layout.BoardCut) *layout.Plan {
	var named []layout.BoardCut
	for _, mark := range slices.Sorted(maps.Keys(d.trees)) {
		named = append(named, layout.BoardCut{Board: mark, Root: d.trees[mark]})
	}
	record := d.record
	plan := layout.AssembleWith(d.problem(), &record, named, fresh)
	plan.Job, plan.Revision, plan.Made = d.former.Job, d.former.Revision+1, d.former.Made
	return plan
}
