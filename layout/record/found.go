package record

import (
	"fmt"

	"sawbill/layout"
)

// Frame is what a defect that was found on a named piece is measured in: its
// length and width, with the board that it belongs to. The error says that the name
// is not known.
func (d *Draft) Frame(name string) (frame layout.Rect, err error) {
	at, err := d.find(name)
	if err != nil {
		return frame, err
	}
	return layout.Rect{X2: at.origin.Length(), Y2: at.origin.Width()}, nil
}

// Found notes defects that came to light on a board, a blank, a strip or a piece,
// measured from the butt end and the reference edge of that as it now is. The error
// says that the name is not known, that a defect lies off the wood, or that it lies
// in a piece that is cut already.
func (d *Draft) Found(name string, defects []layout.Defect) error {
	at, err := d.find(name)
	if err != nil {
		return err
	}
	for _, found := range defects {
		on, some := onWood(at.board, layout.Rect{
			X1: found.Rect.X1 + at.origin.X1, X2: found.Rect.X2 + at.origin.X1,
			Y1: found.Rect.Y1 + at.origin.Y1, Y2: found.Rect.Y2 + at.origin.Y1,
		})
		if !some {
			return fmt.Errorf("%s: it lies wholly off %q", found.Kind, name)
		}
		found.Rect = on
		at.board.Defects = append(at.board.Defects, found)
		d.tell("found %s in %s", found.Kind, name)
	}
	mark := at.board.Mark
	if d.trees[mark] == nil {
		return nil
	}
	for _, v := range d.faults(mark) {
		for _, leaf := range d.trees[mark].Leaves() {
			if leaf.Part != "" && leaf.ID == v.Where && d.isCut(leaf) {
				return fmt.Errorf("%s is cut already, and the defect lies in it: if it is of no use, note first that it is spoiled", v.Where)
			}
		}
	}
	d.mend(mark)
	return nil
}
