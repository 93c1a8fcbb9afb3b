package files

import (
	"strings"

	"sawbill/layout/glueup"
)

func patternNames() []string { return []string{"grid", "cubes", "chevron", "herringbone"} }

// pattern makes the pattern that a design names, and says how its table is read; the
// design has none where the name is missing or not known.
func (d *designReader) pattern(keys map[string]any, design *glueup.Design) map[string]reading {
	if keys["pattern"] == nil {
		d.fault("pattern", "", "is missing: want one of "+strings.Join(patternNames(), ", "))
		return nil
	}
	before := len(d.faults)
	which := d.word("pattern", keys["pattern"], patternNames())
	if len(d.faults) > before {
		return nil
	}
	switch which {
	case 1:
		p := &glueup.Cubes{}
		design.Pattern = p
		return map[string]reading{
			"strip_thickness": d.length(&p.StripThickness),
			"top":             d.text(&p.Top), "left": d.text(&p.Left), "right": d.text(&p.Right),
		}
	case 2:
		p := &glueup.Chevron{}
		design.Pattern = p
		return map[string]reading{
			"angle": d.angle(&p.Angle), "slice_width": d.length(&p.SliceWidth), "row_height": d.length(&p.RowHeight),
			"stripes": d.text(&p.Stripes), "stripe_width": d.lengths(&p.StripeWidths),
		}
	case 3:
		p := &glueup.Herringbone{}
		design.Pattern = p
		return map[string]reading{
			"block_width": d.length(&p.BlockWidth), "block_length": d.length(&p.BlockLength),
			"lying": d.text(&p.Lying), "standing": d.text(&p.Standing), "diagonal": d.yes(&p.Diagonal),
		}
	}
	p := &glueup.Grid{}
	design.Pattern = p
	return map[string]reading{
		"rows": d.rows(&p.Rows), "cell_width": d.lengths(&p.CellWidths), "row_height": d.lengths(&p.RowHeights),
		"join": d.yes(&p.Join),
	}
}
