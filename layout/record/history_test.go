package record_test

import (
	"bytes"
	"cmp"
	"fmt"
	"slices"
	"testing"

	diff "github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/files"
	"sawbill/layout/quote"
	"sawbill/layout/record"
	"sawbill/layout/steps"
)

const in = layout.Inch

// randomJob draws a small rack and a bill that it can mostly give.
func randomJob(t *rapid.T) *layout.Problem {
	length := func(lo, hi int, what string) layout.Length {
		return in / 4 * layout.Length(rapid.IntRange(4*lo, 4*hi).Draw(t, what))
	}
	shop := layout.DefaultShop(layout.Inches)
	if rapid.Bool().Draw(t, "no trim") {
		shop.EndTrim = 0
	}
	var stock []layout.Board
	for i := range rapid.IntRange(2, 4).Draw(t, "boards") {
		b := layout.Board{
			Mark: fmt.Sprint("B", i+1), Species: rapid.SampledFrom([]string{"ash", "elm"}).Draw(t, "species"),
			Thickness: in, Width: length(4, 8, "width"), Length: length(30, 70, "length"), Cost: layout.Unpriced,
			Edges: layout.Edges(rapid.IntRange(0, 2).Draw(t, "edges")), Faces: layout.Faces(rapid.IntRange(0, 1).Draw(t, "faces")),
		}
		b.Base, b.TipWidth = b.Mark, b.Width
		if rapid.IntRange(1, 4).Draw(t, "taper") == 1 {
			b.TipWidth = length(4, 8, "tip")
		}
		for range rapid.IntRange(0, 2).Draw(t, "defects") {
			b.Defects = append(b.Defects, defectIn(t, b.Frame()))
		}
		stock = append(stock, b)
	}
	var bill []layout.Part
	for i := range rapid.IntRange(1, 3).Draw(t, "parts") {
		bill = append(bill, layout.Part{
			Name: fmt.Sprint("part ", i+1), Species: []string{"ash", "elm"}, Thickness: rapid.SampledFrom([]layout.Length{in / 2, 3 * in / 4}).Draw(t, "thickness"),
			Width: length(1, 3, "width"), Length: length(6, 24, "length"), Quantity: rapid.IntRange(1, 6).Draw(t, "quantity"), Spare: rapid.IntRange(0, 2).Draw(t, "spare"),
			Grade: rapid.SampledFrom([]string{layout.Clear, layout.OneFace, layout.Sound}).Draw(t, "grade"),
		})
	}
	bill = append(bill, randomSet(t)...)
	if rapid.IntRange(0, 3).Draw(t, "match") == 0 {
		bill[0].Match = "pair"
	}
	p, faults := layout.NewProblem(shop, stock, bill, false)
	if p == nil {
		t.Skip(faults)
	}
	return p
}

// randomSet draws the rows of a glue-up, or none.
func randomSet(t *rapid.T) []layout.Part {
	if rapid.Bool().Draw(t, "no glue-up") {
		return nil
	}
	row := layout.Part{
		Species: []string{"ash", "elm"}, Thickness: rapid.SampledFrom([]layout.Length{in / 2, 3 * in / 4}).Draw(t, "strip"),
		Width: in, Grade: layout.Sound, Set: "tray",
		Slices: rapid.IntRange(3, 14).Draw(t, "slices"), SliceThickness: in * layout.Length(rapid.IntRange(2, 3).Draw(t, "slice")),
	}
	light, dark := row, row
	light.Name, light.Quantity = "light", rapid.IntRange(1, 3).Draw(t, "light")
	dark.Name, dark.Quantity, dark.Width = "dark", rapid.IntRange(1, 2).Draw(t, "dark"), 3*in/2
	return []layout.Part{light, dark}
}

// defectIn draws a defect that lies on wood that fills a frame.
func defectIn(t *rapid.T, frame layout.Rect) layout.Defect {
	x := layout.Length(rapid.Int64Range(0, int64(frame.Length()-in)/int64(in)).Draw(t, "x")) * in
	y := layout.Length(rapid.Int64Range(0, max(0, int64(frame.Width()-in)/int64(in))).Draw(t, "y")) * in
	return layout.Defect{
		Kind: rapid.SampledFrom([]layout.Kind{layout.Knot, layout.Check, layout.Rot, layout.Metal, layout.Pin}).Draw(t, "kind"),
		Face: layout.Face(rapid.IntRange(0, 2).Draw(t, "face")), Rect: layout.Rect{X1: x, X2: x + in, Y1: y, Y2: y + in/2},
	}
}

// Whatever happens to a job: every revision passes the check and is whole in its
// file, what is cut never changes, and the wood of the stock lies in the boards that
// it came from, nowhere twice.
func TestHistories(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first, err := plainly(randomJob(t))
		if err != nil {
			t.Fatal(err)
		}
		h := &history{first: first, plan: first, solve: always(plainly)}
		for range rapid.IntRange(1, 6).Draw(t, "changes") {
			h.change(t)
		}
		for _, restock := range []func(*layout.Plan) ([]layout.Board, []layout.Origin){record.After, record.Now} {
			stock, origins := restock(h.plan)
			wantSoundStock(t, first, stock, origins, h.plan.Record)
		}
	})
}

type history struct {
	first, plan *layout.Plan
	solve       record.Solve
	before      []*layout.Plan // earlier revisions
}

func (h *history) change(t *rapid.T) {
	d := record.Open(h.plan)
	spoiled := ""
	var err error
	if len(h.before) > 0 && rapid.IntRange(0, 7).Draw(t, "back") == 0 {
		h.back(t)
		return
	}
	switch names := h.names(t); rapid.IntRange(0, 5).Draw(t, "what") {
	case 0, 1:
		err = d.Cut(names[0])
	case 2:
		frame, unknown := d.Frame(names[0])
		if unknown != nil || frame.Length() <= 2*in || frame.Width() <= in {
			return
		}
		err = d.Found(names[0], []layout.Defect{defectIn(t, frame)})
	case 3:
		spoiled = names[0]
		err = d.Spoiled(spoiled)
	case 4:
		frame, unknown := d.Frame(names[0])
		if unknown != nil {
			return
		}
		err = d.Measured(names[0], record.Sizes{
			Width:     max(in/2, frame.Width()-in/4*layout.Length(rapid.IntRange(0, 4).Draw(t, "narrower"))),
			Thickness: in / 16 * layout.Length(rapid.IntRange(8, 14).Draw(t, "thickness")),
		})
	case 5:
		part := rapid.SampledFrom(h.first.Problem.Bill).Draw(t, "of")
		err = d.More(cmp.Or(part.Set, part.Name), rapid.IntRange(1, 2).Draw(t, "more"))
	}
	if err != nil {
		t.Log("refused:", err)
		return // the draft is given up
	}
	next, err := d.Complete(h.solve)
	if err != nil {
		t.Fatal(err)
	}
	t.Log(next.Record.Told, next.Record.Origins, next.Record.Started)
	h.wantSound(t, next, spoiled)
	h.before, h.plan = append(h.before, h.plan), next
}

// back goes back to an earlier revision: it is the same plan but for its number.
func (h *history) back(t *rapid.T) {
	earlier := rapid.SampledFrom(h.before).Draw(t, "to")
	next := record.Back(earlier, h.plan)
	if next.Revision != h.plan.Revision+1 || len(record.Changed(next)) > 0 {
		t.Errorf("revision %d, new sheets for %q", next.Revision, record.Changed(next))
	}
	for _, v := range check.Plan(next) {
		t.Errorf("back to revision %d: %v", earlier.Revision, v)
	}
	if d := diff.Diff(earlier.Boards, next.Boards); d != "" {
		t.Errorf("back to revision %d it is another plan: %s", earlier.Revision, d)
	}
	wantAllPieces(t, next)
	h.before, h.plan = append(h.before, h.plan), next
}

// names are a board of the plan or a piece, blank or strip of it, or a piece that is
// cut, if there is one.
func (h *history) names(t *rapid.T) []string {
	var names []string
	for _, s := range steps.All(h.plan) {
		names = append(names, s.Board.Mark)
		for i := range s.Steps {
			for _, id := range []string{s.Steps[i].Off, s.Steps[i].Rest} {
				if id != "" {
					names = append(names, steps.Chalk(id))
				}
			}
		}
	}
	if r := h.plan.Record; r != nil {
		for _, c := range r.Cut {
			names = append(names, c.Wood.Mark)
		}
	}
	for _, b := range h.plan.Problem.Stock {
		names = append(names, b.Mark)
	}
	return []string{rapid.SampledFrom(names).Draw(t, "name")}
}

func (h *history) wantSound(t *rapid.T, next *layout.Plan, spoiled string) {
	for _, v := range check.Plan(next) {
		t.Errorf("after %q: %v", next.Record.Told, v)
	}
	var file, again bytes.Buffer
	if err := files.WritePlan(&file, next); err != nil {
		t.Fatal(err)
	}
	text := file.String()
	read, err := files.ReadPlan(&file, "plan.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range check.Plan(read) {
		t.Errorf("read again, after %q: %v", next.Record.Told, v)
	}
	if err := files.WritePlan(&again, read); err != nil || again.String() != text {
		t.Fatalf("read and written again the plan is another one (%v)", err)
	}
	if h.plan.Record != nil {
		for _, c := range h.plan.Record.Cut {
			i := slices.IndexFunc(next.Record.Cut, func(d layout.CutPiece) bool { return d.Wood.Mark == c.Wood.Mark })
			switch {
			case i < 0 && c.Wood.Mark != spoiled:
				t.Errorf("%s is no longer cut", c.Wood.Mark)
			case i >= 0 && !diff.Equal(c, next.Record.Cut[i]):
				t.Errorf("%s has changed: %s", c.Wood.Mark, diff.Diff(c, next.Record.Cut[i]))
			}
		}
	}
	wantAllPieces(t, next)
	wantTrueSteps(t, next)
	wantQuote(t, h.first, next)
}

// wantQuote holds a quote against the boards that the job began with: they alone cost
// anything, and what they cost net is borne by the parts to the last ten-thousandth.
func wantQuote(t *rapid.T, first, plan *layout.Plan) {
	q := quote.Of(plan)
	var boards layout.Money
	for _, b := range q.Boards {
		if was := first.Problem.Board(b.Mark); was == nil || was.Cost != b.Cost {
			t.Errorf("the quote has a board %q that costs %v", b.Mark, b.Cost)
		}
		if b.Returned < 0 || b.Returned > b.Cost {
			t.Errorf("of board %q, which costs %v, %v comes back", b.Mark, b.Cost, b.Returned)
		}
		boards += b.Net()
	}
	parts := q.Loose
	for _, p := range q.Parts {
		parts += p.Wood
	}
	if boards != q.Wood || parts != q.Wood {
		t.Errorf("boards cost %v, parts %v, all wood %v", boards, parts, q.Wood)
	}
	for i, p := range plan.Record.Wanted {
		missing := 0
		for _, m := range plan.Missing {
			if m.Part == p.Name {
				missing = m.Quantity
			}
		}
		if p.Set == "" && q.Parts[i].Needed+missing != p.Quantity {
			t.Errorf("%s: the quote has %d, %d are missing of %d", p.Name, q.Parts[i].Needed, missing, p.Quantity)
		}
	}
}

// wantAllPieces holds the record against the bill: each piece wanted is cut,
// planned or missing, what is more than that is spare, and ids are told apart.
func wantAllPieces(t *rapid.T, plan *layout.Plan) {
	count := map[string]int{}
	ids := map[string]bool{}
	for _, c := range plan.Record.Cut {
		count[c.Part]++
		if ids[c.Wood.Mark] {
			t.Errorf("two pieces are called %s", c.Wood.Mark)
		}
		ids[c.Wood.Mark] = true
	}
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part != "" && !plan.Record.IsCut(leaf.ID) {
				count[leaf.Part] += leaf.Pieces()
			}
		}
	}
	for _, m := range plan.Missing {
		count[m.Part] += m.Quantity
	}
	spare := map[string]int{}
	for id := range plan.Spares() {
		spare[partOf(plan, id)]++
	}
	for _, p := range plan.Record.Wanted {
		if p.Set != "" {
			continue
		}
		if count[p.Name] < p.Quantity || count[p.Name] > p.Quantity+p.Spare || count[p.Name]-p.Quantity != spare[p.Name] {
			t.Errorf("%d of %s are cut, planned or missing; %d are wanted", count[p.Name], p.Name, p.Quantity)
		}
	}
	wantAllSlices(t, plan)
}

// partOf is the part of a piece that is cut or planned.
func partOf(plan *layout.Plan, id string) string {
	for _, c := range plan.Record.Cut {
		if c.Wood.Mark == id {
			return c.Part
		}
	}
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if slices.Contains(leaf.PieceIDs(), id) {
				return leaf.Part
			}
		}
	}
	return ""
}

// wantSoundStock traces wood of the stock, and the pieces that are cut, back to the
// first boards: there each lies inside, and none overlaps another.
func wantSoundStock(t *rapid.T, first *layout.Plan, stock []layout.Board, from []layout.Origin, done *layout.Record) {
	type place struct {
		mark string
		wood layout.Rect
	}
	origins := map[string]layout.Origin{}
	for _, o := range from {
		origins[o.Board] = o
	}
	if boards, faults := layout.NewStock(first.Problem.Shop, stock); boards == nil && len(stock) > 0 {
		t.Errorf("the stock cannot be used: %v", faults)
	}
	for _, b := range stock {
		if b.Length <= 0 || b.Width <= 0 || b.TipWidth <= 0 || b.Thickness <= 0 {
			t.Errorf("%s measures %v x %v..%v x %v", b.Mark, b.Length, b.Width, b.TipWidth, b.Thickness)
		}
		for _, d := range b.Defects {
			if !b.Frame().Contains(d.Rect) {
				t.Errorf("%s: a %s lies at %v, off its wood", b.Mark, d.Kind, d.Rect)
			}
		}
	}
	var lying []place
	add := func(mark string, wood layout.Rect) {
		for o, cut := origins[mark]; cut; o, cut = origins[mark] {
			wood = layout.Rect{X1: wood.X1 + o.Wood.X1, X2: wood.X2 + o.Wood.X1, Y1: wood.Y1 + o.Wood.Y1, Y2: wood.Y2 + o.Wood.Y1}
			if !o.Wood.Contains(wood) && mark != o.Of {
				t.Errorf("%s at %v is not inside %v of %s", mark, wood, o.Wood, o.Of)
			}
			mark = o.Of
		}
		if b := first.Problem.Board(mark); b == nil || !b.Frame().Contains(wood) {
			t.Errorf("%v does not lie on board %q", wood, mark)
		}
		lying = append(lying, place{mark, wood})
	}
	for _, b := range stock {
		add(b.Mark, b.Frame())
	}
	if done != nil {
		for _, c := range done.Cut {
			if !slices.ContainsFunc(stock, func(b layout.Board) bool { return b.Mark == c.Board }) {
				add(c.Board, c.Lay)
			}
		}
	}
	for i, a := range lying {
		for _, b := range lying[:i] {
			if a.mark == b.mark && a.wood.Overlaps(b.wood) {
				t.Errorf("wood of %s is there twice: %v and %v", a.mark, a.wood, b.wood)
			}
		}
	}
}
