package column

import "sawbill/layout"

// FromCutting makes a cut of a cutting as it stands, offcuts and all, of which nobody knows
// whether it is valid.
func (w *Board) FromCutting(root *layout.Node, price []Value) Cut {
	w.setShows(root)
	w.dropWaste(root)
	cut := Cut{Root: root, Worth: w.worthOf(root), Counts: w.CountParts(root)}
	for i, n := range cut.Counts {
		cut.Value += Value(n) * price[i]
	}
	return cut
}

// SketchOf is the sketch of a cutting: its blanks, strips, cells and parts without the offcuts
// and without rough rips.
func SketchOf(cutting *layout.Node) *layout.Node {
	sketch := *cutting
	sketch.Children = nil
	for _, blank := range cutting.Children {
		if blank.Offcut != "" {
			continue
		}
		b := *blank
		b.Trued, b.Children = true, nil
		for _, n := range blank.Children {
			switch {
			case n.Trued:
				for _, strip := range n.Children {
					b.Children = appendStrip(b.Children, strip)
				}
			default:
				b.Children = appendStrip(b.Children, n)
			}
		}
		sketch.Children = append(sketch.Children, &b)
	}
	return &sketch
}

func appendStrip(list []*layout.Node, strip *layout.Node) []*layout.Node {
	s := *strip
	s.Children = nil
	for _, n := range strip.Children {
		cell := *n
		cell.Children = nil
		switch {
		case n.Part != "":
			cell.Part, cell.Cut, cell.Children = "", layout.Rip, []*layout.Node{n}
		default:
			for _, part := range n.Children {
				if part.Part != "" {
					cell.Children = append(cell.Children, part)
				}
			}
		}
		if len(cell.Children) > 0 {
			s.Children = append(s.Children, &cell)
		}
	}
	if len(s.Children) == 0 {
		return list
	}
	return append(list, &s)
}
