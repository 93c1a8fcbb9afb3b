package files

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"unicode/utf8"

	"sawbill/layout"
)

// maxPlanBytes is far more than the plan of the largest job needs.
const maxPlanBytes = 512 << 20

// ReadPlan reads a plan file; name is the file's name in errors. It refuses
// what is no plan file of a format that it knows: malformed JSON, missing keys,
// numbers out of range, unknown words. Keys that it does not know are left out.
// Whether the plan is a valid one is for the check package to say.
func ReadPlan(r io.Reader, name string) (*layout.Plan, error) {
	data, err := io.ReadAll(io.LimitReader(r, maxPlanBytes))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	file, err := decodePlan1(data)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	plan, err := fromPlan1(file)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return plan, nil
}

func decodePlan1(data []byte) (plan1, error) {
	var file plan1
	if !utf8.Valid(data) {
		return file, errors.New("is not UTF-8")
	}
	var head struct{ Format *string }
	if err := json.Unmarshal(data, &head); err != nil {
		return file, fmt.Errorf("is no plan file: %w", err)
	}
	if head.Format == nil {
		return file, fmt.Errorf(`format: the key is missing, want %q`, planFormat)
	}
	if *head.Format != planFormat {
		return file, fmt.Errorf("format: found %q, want %q", *head.Format, planFormat)
	}
	if err := checkSyntax(data); err != nil {
		return file, err
	}
	var tree any
	if err := json.Unmarshal(data, &tree); err != nil {
		return file, err
	}
	if err := checkShape(tree, reflect.TypeFor[plan1](), ""); err != nil {
		return file, err
	}
	return file, json.Unmarshal(data, &file)
}

func fromPlan1(f plan1) (*layout.Plan, error) {
	c := &converter{}
	plan := &layout.Plan{
		Job: f.Job, Revision: int(f.Revision), Made: c.time("made", f.Made),
		Problem: layout.Problem{
			Shop:  c.shop(f.Shop),
			Stock: each(f.Stock, c.board),
			Bill:  each(f.Bill, c.part),
			Yard:  f.Yard,
		},
		Boards: each(f.Boards, c.boardCut),
		Missing: each(f.Missing, func(m missing1) layout.Missing {
			return layout.Missing{Part: m.Part, Quantity: int(m.Quantity), Why: m.Why}
		}),
		Totals: fromTotals1(f.Totals),
		Print:  layout.Print{Paper: f.Paper, Order: f.Order},
		Record: c.record(f.Record),
	}
	c.names(&plan.Problem)
	return plan, c.err
}

// converter turns the structs of the file into those of the layout, and keeps
// the first thing that it finds wrong.
type converter struct{ err error }

func (c *converter) fail(format string, args ...any) {
	if c.err == nil {
		c.err = fmt.Errorf(format, args...)
	}
}

// words of the file and what they stand for, in the order of their constants.
var (
	unitWords      = []string{"in", "mm"}
	priceUnitWords = []string{"bf", "m3"}
	edgesWords     = []string{"rough", "one", "both"}
	facesWords     = []string{"rough", "planed"}
	sourceWords    = []string{"rack", "yard", "hold"}
	faceWords      = []string{"", "A", "B"}
	cutWords       = []string{"", "crosscut", "rip"}
	soundWords     = []string{"unsound", "sound"}
)

// word is the place of a word among those known; an empty word is the first.
func (c *converter) word(key, text string, known []string) uint8 {
	for i, k := range known {
		if text == k || text == "" {
			return uint8(i)
		}
	}
	if known[0] == "" {
		known = known[1:]
	}
	c.fail("%s: found %q, %s", key, text, layout.WantOneOf(text, known))
	return 0
}

// size is a length that is more than 0.
func (c *converter) size(key string, l nm) layout.Length {
	if l <= 0 {
		c.fail("%s: found %d, want a length of more than 0", key, l)
	}
	return layout.Length(l)
}

// length is a length that is not negative.
func (c *converter) length(key string, l nm) layout.Length {
	if l < 0 {
		c.fail("%s: found %d, want a length of 0 or more", key, l)
	}
	return layout.Length(l)
}

// names sees to it that a mark means one board and a name one part, and turns
// marks of rows in from and not_from into marks of their boards.
func (c *converter) names(p *layout.Problem) {
	marks, parts := map[string]bool{}, map[string]bool{}
	for _, b := range p.Stock {
		if marks[b.Mark] {
			c.fail("stock: two boards are marked %q", b.Mark)
		}
		marks[b.Mark] = true
	}
	for i := range p.Bill {
		part := &p.Bill[i]
		if parts[part.Name] {
			c.fail("bill: two parts are called %q", part.Name)
		}
		parts[part.Name] = true
		part.From = boardsOf(part.From, p.Stock)
		part.NotFrom = boardsOf(part.NotFrom, p.Stock)
	}
}
