package steps_test

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/steps"
)

// Whoever has only the text of the step file, the kerfs and the boards ends with
// exactly the parts of the plan, in both orders.
func TestSawyerCutsFromTheStepFile(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := steps.RandomPlan(t)
		plan.Problem.Shop.Units = rapid.SampledFrom([]layout.Unit{layout.Inches, layout.Millimetres}).Draw(t, "units")
		for _, order := range []steps.Order{steps.ByBoard, steps.BySetup} {
			if err := cutFromText(plan, order); err != nil {
				t.Fatalf("by %s: %v", order, err)
			}
		}
	})
}

func cutFromText(plan *layout.Plan, order steps.Order) error {
	var text bytes.Buffer
	if err := files.WriteSteps(&text, plan.Problem.Shop, steps.List(plan, order)); err != nil {
		return err
	}
	rows, err := readRows(&text, plan.Problem.Shop.Units)
	if err != nil {
		return err
	}
	return steps.CutRows(plan, rows)
}

func readRows(text *bytes.Buffer, unit layout.Unit) ([]steps.Step, error) {
	table, err := csv.NewReader(text).ReadAll()
	if err != nil {
		return nil, err
	}
	var rows []steps.Step
	for _, record := range table[1:] {
		cells := map[string]string{}
		for i, name := range table[0] {
			cells[name] = record[i]
		}
		row, err := readRow(cells, unit)
		if err != nil {
			return nil, fmt.Errorf("%q: %w", record, err)
		}
		rows = append(rows, row)
	}
	return rows, nil
}

func readRow(cells map[string]string, unit layout.Unit) (s steps.Step, err error) {
	r := rowReader{cells: cells, unit: unit}
	s = steps.Step{
		Number: r.whole("step"), Board: cells["board"], Piece: cells["piece"],
		Operation: steps.Operation(cells["operation"]), From: steps.From(cells["from"]),
		Setting: r.length("setting"), Off: cells["off"], Rest: cells["rest"], Part: cells["part"],
		OffSize: steps.Size{Length: r.length("off_length"), Width: r.length("off_width"), Thickness: r.length("off_thickness")},
		Slices:  r.whole("slices"),
	}
	if angle := cells["angle"]; angle != "" {
		s.Angle, r.err = layout.ParseAngle(angle)
	}
	s.Offcut, s.KeepsRest = strings.CutPrefix(cells["offcut"], "rest:")
	return s, r.err
}

// rowReader reads cells and keeps the last thing wrong with them.
type rowReader struct {
	cells map[string]string
	unit  layout.Unit
	err   error
}

func (r *rowReader) whole(column string) int {
	if r.cells[column] == "" {
		return 0
	}
	n, err := strconv.Atoi(r.cells[column])
	if err != nil {
		r.err = err
	}
	return n
}

// length reads a length, and the exact one where it stands in brackets.
func (r *rowReader) length(column string) layout.Length {
	text := r.cells[column]
	if text == "" {
		return 0
	}
	if _, exact, found := strings.Cut(text, "("); found {
		text = strings.TrimSuffix(exact, ")")
	}
	l, err := layout.ParseLength(text, r.unit)
	if err != nil {
		r.err = err
	}
	return l
}
