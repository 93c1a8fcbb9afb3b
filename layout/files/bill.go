package files

import (
	"io"
	"strconv"
	"strings"

	"sawbill/layout"
)

// Bill is what a bill file holds.
type Bill struct {
	// Parts are as they were written, for layout.NewProblem to check: From and
	// NotFrom hold marks of boards or of rows of boards.
	Parts   []layout.Part
	Skipped Skipped

	name  string
	lines []int // of the parts
	sheet *sheet
}

// billRow is one row of a bill file.
type billRow struct {
	Part           string `csv:"part" needed:"yes"`
	Species        string `csv:"species" needed:"yes"`
	Thickness      string `csv:"thickness" needed:"yes"`
	Width          string `csv:"width" needed:"yes"`
	Length         string `csv:"length"`
	Quantity       string `csv:"quantity" needed:"yes"`
	Spare          string `csv:"spare"`
	Grade          string `csv:"grade"`
	Bevel          string `csv:"bevel"`
	OnEdge         string `csv:"on_edge"`
	Resaw          string `csv:"resaw"`
	Match          string `csv:"match"`
	Priority       string `csv:"priority"`
	From           string `csv:"from"`
	NotFrom        string `csv:"not_from"`
	Set            string `csv:"set"`
	Slices         string `csv:"slices"`
	SliceThickness string `csv:"slice_thickness"`
	Piece          string `csv:"piece"`
	Note           string `csv:"note"`
}

// maxPriority is the last priority that can be given.
const maxPriority = 1000

// ReadBill reads a bill file; name is the file's name in complaints. Bare
// numbers count in the units of the shop. What could be read is returned even
// where there are complaints.
func ReadBill(r io.Reader, name string, shop *layout.Shop) (*Bill, layout.Complaints) {
	rows, sheet := readRows[billRow](r, name, layout.BillTable)
	bill := &Bill{Skipped: sheet.skipped, name: name, sheet: sheet}
	for i, row := range rows {
		c := cells{sheet, sheet.lines[i], shop.Units}
		bill.Parts = append(bill.Parts, c.part(row))
		bill.lines = append(bill.lines, c.line)
	}
	return bill, sheet.faults
}

func (c cells) part(row billRow) layout.Part {
	p := layout.Part{
		Name: row.Part, Species: alternatives(row.Species),
		Thickness: c.length("thickness", row.Thickness), Width: c.length("width", row.Width),
		Quantity: c.quantity(row.Quantity), Spare: c.spare(row.Spare), Grade: strings.ToLower(row.Grade),
		OnEdge: c.yes("on_edge", row.OnEdge), Resaw: c.yes("resaw", row.Resaw),
		Match: textOrNone(row.Match), From: strings.Fields(textOrNone(row.From)), NotFrom: strings.Fields(textOrNone(row.NotFrom)),
		Set: textOrNone(row.Set), SliceThickness: c.lengthOrNone("slice_thickness", row.SliceThickness),
		Piece: textOrNone(row.Piece), Note: row.Note,
	}
	if p.Grade == "" {
		p.Grade = layout.Clear
	}
	if !unused(row.Priority) {
		p.Priority = c.whole("priority", row.Priority, maxPriority)
	}
	if !unused(row.Slices) {
		p.Slices = c.whole("slices", row.Slices, layout.MaxQuantity)
	}
	if !unused(row.Length) || p.Set == "" && p.Slices == 0 && p.SliceThickness == 0 {
		p.Length = c.length("length", row.Length)
	}
	p.Bevel = c.angle(row.Bevel)
	return p
}

// quantity says what to do instead of asking for no pieces.
func (c cells) quantity(text string) int {
	if text == "0" {
		c.fault("quantity", text, `want at least 1; to leave the row out put "# " in front of it`)
		return 0
	}
	return c.whole("quantity", text, layout.MaxQuantity)
}

func (c cells) spare(text string) int {
	if unused(text) {
		return 0
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 || n > layout.MaxQuantity {
		c.fault("spare", text, "want a whole number from 0 to "+strconv.Itoa(layout.MaxQuantity))
		return 0
	}
	return n
}

func (c cells) angle(text string) layout.Angle {
	if unused(text) {
		return 0
	}
	a, err := layout.ParseAngle(c.plain(text))
	if err != nil {
		c.fault("bevel", text, "want degrees from 0 to 45, with up to six decimals")
	}
	return a
}

// alternatives takes ash|elm apart.
func alternatives(text string) []string {
	var list []string
	for s := range strings.SplitSeq(text, "|") {
		if s = strings.TrimSpace(s); s != "" {
			list = append(list, s)
		}
	}
	return list
}
