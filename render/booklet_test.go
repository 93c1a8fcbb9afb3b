package render

import (
	"bytes"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// The booklet holds the sheets of every board and a label for every piece and
// every offcut, and says every caution of its settings.
func TestBookletHoldsAllPaperOfAJob(t *testing.T) {
	for name, plan := range plans(t) {
		for _, order := range []steps.Order{steps.ByBoard, steps.BySetup} {
			pages, err := Booklet(plan, Options{Order: order})
			if err != nil {
				t.Fatal(err)
			}
			var all strings.Builder
			for _, p := range pages {
				all.WriteString(texts(p.Scene) + "\n")
			}
			book := newBooklet(plan, Options{Order: order})
			labels := strings.NewReplacer("\n", "", " ", "").Replace(flat(book.labels())) // a long name takes two lines
			for _, s := range steps.List(plan, order) {
				for _, id := range []string{s.Offcut, nameOfPart(s)} {
					if id = strings.ReplaceAll(id, " ", ""); !strings.Contains(labels, id) {
						t.Errorf("%s by %s: no label for %s", name, order, id)
					}
				}
			}
			for i := range plan.Boards {
				sheets, err := Board(plan, &plan.Boards[i], Options{Order: order})
				if err != nil || !strings.Contains(all.String(), texts(sheets[0].Scene)) {
					t.Errorf("%s: the sheets of %s are not in the booklet (%v)", name, plan.Boards[i].Board, err)
				}
			}
		}
	}
}

// A label of an offcut once left out the second of its defects.
func TestLabelsOfOffcutsSayWhatTheyHold(t *testing.T) {
	board := &layout.Board{Mark: "SY1", Species: "sycamore", Length: layout.Inch, Width: layout.Inch, TipWidth: layout.Inch, Defects: []layout.Defect{
		{Kind: layout.Pin, Rect: layout.Rect{X2: 2, Y2: 2}}, {Kind: layout.Stain, Rect: layout.Rect{X2: 2, Y2: 2}},
	}}
	leaf := &layout.Node{Rect: layout.Rect{X2: layout.Inch, Y2: layout.Inch}, Offcut: "SY1-K1"}
	b := &booklet{words: words{layout.DefaultShop(layout.Inches)}, plan: &layout.Plan{}}
	sheet := &steps.Sheet{Board: board, Plan: &layout.BoardPlan{Root: &layout.Node{Children: []*layout.Node{leaf}}}}
	got := b.offcutSlip(sheet, &steps.Step{Board: "SY1", Offcut: "SY1-K1"}).lines[2]
	types, wide := newTypesetter(), b.newSheet().width()/slipsAcross-5
	if cut := types.cut(got, wide, plain()); !strings.Contains(cut, "stain") {
		t.Errorf("the label says %q", cut)
	}
}

// A long name of a wood once pushed out whether the offcut is rough or planed.
func TestLabelsOfOffcutsSayWhetherTheyArePlaned(t *testing.T) {
	board := &layout.Board{Mark: "C3", Species: "mountain sweet chestnut", Length: layout.Inch, Width: layout.Inch, TipWidth: layout.Inch}
	leaf := &layout.Node{Rect: layout.Rect{X2: layout.Inch, Y2: layout.Inch}, Offcut: "C3-K1"}
	b := &booklet{words: words{layout.DefaultShop(layout.Inches)}, plan: &layout.Plan{}}
	sheet := &steps.Sheet{Board: board, Plan: &layout.BoardPlan{Root: &layout.Node{Children: []*layout.Node{leaf}}}}
	step := &steps.Step{Board: "C3", Offcut: "C3-K1"}
	types, wide := newTypesetter(), b.newSheet().width()/slipsAcross-5
	want := (&boardSheet{words: b.words, board: board, work: sheet}).surface(step)
	if cut := types.cut(b.offcutSlip(sheet, step).lines[0], wide, plain()); !strings.Contains(cut, want) {
		t.Errorf("the label says %q, which is not %q", cut, want)
	}
}

func nameOfPart(s *steps.Step) string {
	if s.Part == "" {
		return ""
	}
	return s.Off
}

func flat(pages []Page) string {
	var all []string
	for _, p := range pages {
		all = append(all, texts(p.Scene))
	}
	return strings.Join(all, "\n")
}

// The settings name every step that cuts, once, and point to all its cautions; each
// page says in full what its letters stand for.
func TestSettingsCarryTheirCautions(t *testing.T) {
	for name, plan := range plans(t) {
		for _, order := range []steps.Order{steps.ByBoard, steps.BySetup} {
			book := newBooklet(plan, Options{Order: order})
			list := book.settings()
			key := keyOf(list)
			seen := map[int]bool{}
			for _, set := range list {
				letters := key.of(set)
				for _, s := range set.steps {
					if seen[s.Number] {
						t.Errorf("%s: step %d twice", name, s.Number)
					}
					seen[s.Number] = true
					for _, c := range s.Cautions {
						if !strings.Contains(letters, key.letter(c)) {
							t.Errorf("%s: step %d lacks %q", name, s.Number, c)
						}
					}
				}
			}
			for _, s := range steps.List(plan, order) {
				if !s.NoCut && !seen[s.Number] {
					t.Errorf("%s: step %d is not listed", name, s.Number)
				}
			}
			wantCautionsOnTheirPages(t, name, book, key)
		}
	}
}

// wantCautionsOnTheirPages looks for the text of every caution on each page that has
// its letter beside a setting.
func wantCautionsOnTheirPages(t *testing.T, name string, book *booklet, key cautionKey) {
	t.Helper()
	s := book.newSheet()
	book.settingsTable(s)
	for i, page := range s.pages {
		text := strings.Join(strings.Fields(texts(page)), " ")
		for _, l := range page.Labels {
			for _, item := range strings.Split(l.Text, ", ") {
				letter, _, _ := strings.Cut(item, string(hold))
				at := slices.IndexFunc(key, func(c steps.Caution) bool { return key.letter(c) == letter })
				if at >= 0 && !strings.Contains(text, strings.Join(strings.Fields(string(key[at])), " ")) {
					t.Errorf("%s: page %d has the letter %s, but not %q", name, i+1, letter, key[at])
				}
			}
		}
	}
}

// With more cautions than letters, and lists of steps in ranges.
func TestLettersAndNumbers(t *testing.T) {
	for n, want := range map[int]string{0: "A", 25: "Z", 26: "AA", 27: "AB", 52: "BA"} {
		if got := capital(n); got != want {
			t.Errorf("%d is %s, want %s", n, got, want)
		}
	}
	var list []*steps.Step
	for _, n := range []int{1, 2, 3, 7, 9, 10} {
		list = append(list, &steps.Step{Number: n})
	}
	if got := stepNumbers(list); got != "1–3, 7, 9–10" {
		t.Errorf("steps %s", got)
	}
}

// A section has its true size: 2-3/8 in by 3/4 in are 60.325 mm by 19.05 mm.
func TestSectionsHaveTheirTrueSize(t *testing.T) {
	b := &booklet{words: words{layout.DefaultShop(layout.Inches)}, plan: &layout.Plan{}}
	out := newBlock(newTypesetter())
	b.template(out, template{width: 19 * layout.Inch / 8, thickness: 3 * layout.Inch / 4}, 0, 100)
	var wood Box
	for _, s := range out.Shapes {
		wood = Box{s.Points[0].X, s.Points[0].Y, s.Points[2].X, s.Points[2].Y}
	}
	if w, h := wood.w(), wood.h(); abs(w-60.325) > 1e-6 || abs(h-19.05) > 1e-6 {
		t.Errorf("the section is %f by %f mm", w, h)
	}
}

func abs(x float64) float64 { return max(x, -x) }

func TestPDFHasItsPagesAtTheirSize(t *testing.T) {
	plan := example(t, "ash")
	for _, c := range []struct {
		paper Paper
		box   string // in points
	}{{Letter, "792.00 612.00"}, {A4, "841.89 595.28"}} {
		pages, err := Booklet(plan, Options{Paper: c.paper})
		if err != nil {
			t.Fatal(err)
		}
		var file, again bytes.Buffer
		made := time.Date(2026, 3, 1, 8, 0, 0, 0, time.UTC)
		for _, w := range []*bytes.Buffer{&file, &again} {
			if err := WritePDF(w, pages, made); err != nil {
				t.Fatal(err)
			}
		}
		if !bytes.HasPrefix(file.Bytes(), []byte("%PDF-1.")) || !bytes.Equal(file.Bytes(), again.Bytes()) {
			t.Error("no PDF, or another one the second time")
		}
		boxes := regexp.MustCompile(`/Type /Page\n[^>]*?/MediaBox \[0 0 ([0-9. ]+)\]|/MediaBox \[0 0 ([0-9. ]+)\]`).FindAllStringSubmatch(file.String(), -1)
		count := regexp.MustCompile(`/Count ([0-9]+)`).FindStringSubmatch(file.String())
		if len(boxes) == 0 || !strings.Contains(boxes[0][0], c.box) || count == nil || count[1] != itoa(len(pages)) {
			t.Errorf("boxes %q, count %q, want %d pages of %s", boxes[:min(1, len(boxes))], count, len(pages), c.box)
		}
	}
}
