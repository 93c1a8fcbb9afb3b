package files

import (
	"encoding/csv"
	"io"
	"slices"
	"strconv"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// stepColumns are the columns of a step file, model section 11.
func stepColumns() []string {
	return []string{
		"step", "board", "piece", "operation", "from", "setting", "angle",
		"off", "off_length", "off_width", "off_thickness", "rest", "part", "offcut", "slices", "count", "caution",
	}
}

// WriteSteps writes the steps of a job as a table, in their order. Lengths are
// written as the shop writes them, exactly: where no fraction is exact the nearest
// one stands before the exact length in brackets. Names that a spreadsheet would take
// for dates or formulas are written as text. Where some are done a last column
// says which. Errors are those of w.
func WriteSteps(w io.Writer, shop *layout.Shop, list []*steps.Step) error {
	out := csv.NewWriter(w)
	begun := slices.ContainsFunc(list, func(s *steps.Step) bool { return s.Done })
	head := stepColumns()
	if begun {
		head = append(head, "done")
	}
	if err := out.Write(head); err != nil {
		return err
	}
	for _, s := range list {
		row := stepRow(shop, s)
		if begun {
			row = append(row, nonZero(s.Done, "yes"))
		}
		if err := out.Write(row); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func stepRow(shop *layout.Shop, s *steps.Step) []string {
	size := make([]string, 3)
	if s.Off != "" {
		for i, l := range []layout.Length{s.OffSize.Length, s.OffSize.Width, s.OffSize.Thickness} {
			size[i] = l.Exact(shop.Units)
		}
	}
	return []string{
		strconv.Itoa(s.Number), asText(s.Board), asText(s.Piece), string(s.Operation), string(s.From), s.Setting.Exact(shop.Units),
		nonZero(s.Angle != 0, s.Angle.String()),
		asText(s.Off), size[0], size[1], size[2], asText(s.Rest), asText(s.Part), asText(s.OffcutColumn()),
		nonZero(s.Slices != 0, strconv.Itoa(s.Slices)), s.Count.String(), strings.Join(s.Notes(), " "),
	}
}

// nonZero is a text where there is something to say.
func nonZero(say bool, text string) string {
	if say {
		return text
	}
	return ""
}
