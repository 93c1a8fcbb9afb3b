package snug

import (
	"slices"

	"sawbill/layout"
)

// allows reports whether a tree may take the place of another: the same leaves in the
// same order, none on a mark that it did not touch, no offcut smaller, no blank longer
// for wood with a mark on it, and valid.
func (b *board) allows(was, is *layout.Node) bool {
	return slices.EqualFunc(b.leaves(was), b.leaves(is), b.keeps) &&
		slices.EqualFunc(was.Children, is.Children, b.keepsBlank) && b.valid(is)
}

func (b *board) keepsBlank(was, is *layout.Node) bool {
	return is.Length() <= was.Length() || b.meetsNoMore(leaf{was, was.Length()}, leaf{is, is.Length()})
}

// leaf is a leaf that is wanted, with the length of the rough crosscut blank that it
// lies in.
type leaf struct {
	*layout.Node
	blank layout.Length
}

func (b *board) leaves(root *layout.Node) []leaf {
	var list []leaf
	root.LeavesByBlank(func(blank, n *layout.Node) {
		if n.Part != "" || n.Offcut != "" {
			list = append(list, leaf{n, blank.Length()})
		}
	})
	return list
}

func (b *board) keeps(was, is leaf) bool {
	if was.Part != is.Part || was.Offcut != is.Offcut || !b.meetsNoMore(was, is) {
		return false
	}
	if was.Part != "" {
		return was.Length() == is.Length() && was.Width() == is.Width()
	}
	a, z := b.wood.CleanOffcutIn(was.blank, was.Rect), b.wood.CleanOffcutIn(is.blank, is.Rect)
	return z.Length() >= a.Length() && z.Width() >= a.Width() &&
		layout.SoundArea(z, b.wood.Defects).Int().Cmp(layout.SoundArea(a, b.wood.Defects).Int()) >= 0
}

// meetsNoMore reports whether a leaf touches no defect, grown by its clearance, that it
// did not touch before. So what it may show stays what it was.
func (b *board) meetsNoMore(was, is leaf) bool {
	for i := range b.wood.Defects {
		if d := &b.wood.Defects[i]; b.meets(d, is) && !b.meets(d, was) {
			return false
		}
	}
	return true
}

// meets reports whether a defect lies under a leaf, on either face. In a crooked blank
// the wood, and what is marked on it, lies further from the reference edge.
func (b *board) meets(d *layout.Defect, l leaf) bool {
	clear := b.shop.Clearance[d.Kind]
	reach, under := d.Rect.Grow(clear.Along, clear.Across), l.Rect
	reach.Y2 += b.wood.Shift(l.blank)
	under.Y2 += l.Lean
	return reach.Overlaps(under)
}

// worth is what the offcuts of a tree are worth.
func (b *board) worth(root *layout.Node) layout.Money {
	var sum layout.Money
	for _, l := range b.leaves(root) {
		if l.Offcut != "" {
			sum += b.shop.OffcutWorth(b.wood, b.wood.CleanOffcutIn(l.blank, l.Rect))
		}
	}
	return sum
}
