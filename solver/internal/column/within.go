package column

import (
	"slices"

	"sawbill/layout"
)

// Cut is a column that keeps within what is still wanted.
type Cut struct {
	Root   *layout.Node
	Counts []int        // pieces made, by row of the bill
	Worth  layout.Money // of the offcuts kept
	Value  Value        // of the pieces, at the prices asked with
}

// Within looks for a good column that makes no more than limits of each part:
// the best column for unlimited copies, its strips filled again one by one with
// what is still wanted; and, up to rounds times, the same at lower prices for the
// parts of which there were too many. It is not exact. A bar is filled with what is
// wanted at once.
func (b *Bench) Within(w *Board, price []Value, limits []int, rounds int) Cut {
	if w.bar != nil {
		b.Runs++
		return w.barCut(price, limits)
	}
	asked := make([]Value, len(price))
	for i, v := range price {
		if limits[i] > 0 {
			asked[i] = v
		}
	}
	b.caps = limits
	defer func() { b.caps = nil }()
	var best Cut
	for range rounds {
		b.prepare(w, asked)
		n := len(b.best) - 1
		if b.best[n] <= 0 {
			break
		}
		wanted := b.wanted(n)
		cut := b.cutWithin(n, price, limits)
		if cut.Gain() > best.Gain() {
			best = cut
		}
		if !lower(asked, wanted, limits) {
			break
		}
	}
	return best
}

// Priced is the best column for any number of copies, and a cut made of it.
type Priced struct {
	Value  Value // of the column: its pieces, and the worth of its offcuts as the programme has it
	Counts []int // its pieces
	Cut    Cut   // within limits
}

// Priced finds the best column for any number of copies, and the cut that is left
// of it within limits.
func (b *Bench) Priced(w *Board, price []Value, limits []int) Priced {
	if w.bar != nil {
		b.Runs++
		best := w.barCut(price, w.bar.unlimited(len(price)))
		found := Priced{Value: best.Gain(), Counts: best.Counts, Cut: best}
		if over(best.Counts, limits) {
			found.Cut = w.barCut(price, limits)
		}
		return found
	}
	b.prepare(w, price)
	n := len(b.best) - 1
	if b.best[n] <= 0 {
		none := make([]int, len(price))
		return Priced{Counts: none, Cut: Cut{Counts: none}}
	}
	return Priced{Value: b.best[n], Counts: b.wanted(n), Cut: b.cutWithin(n, price, limits)}
}

// over reports whether counts are more than limits anywhere.
func over(counts, limits []int) bool {
	for i, n := range counts {
		if n > limits[i] {
			return true
		}
	}
	return false
}

// Gain is the value of the pieces and the worth of the offcuts.
func (c *Cut) Gain() Value { return c.Value + FromMoney(c.Worth) }

// lower reduces the prices of the parts of which a column makes too many, and
// reports whether there were any.
func lower(price []Value, counts, limits []int) bool {
	over := false
	for i, n := range counts {
		if n > limits[i] {
			over = true
			price[i] = max(price[i]*Value(limits[i])/Value(n), price[i]/2)
		}
	}
	return over
}

// wanted counts what the trace that ends in state n makes without limits.
func (b *Bench) wanted(n int) []int {
	b.fill = nil
	return b.w.CountParts(b.build(n))
}

// cutWithin builds the trace that ends in state n within limits.
func (b *Bench) cutWithin(n int, price []Value, limits []int) Cut {
	b.fill = &filling{price: price, left: slices.Clone(limits)}
	root := b.build(n)
	b.fill = nil
	b.w.dropWaste(root)
	return b.w.finish(root, price)
}

// CutOf makes a cut of a column that keeps within limits.
func (w *Board) CutOf(c Column, price []Value) Cut {
	if c.Root == nil {
		return Cut{Counts: make([]int, len(price))}
	}
	w.dropWaste(c.Root)
	return w.finish(c.Root, price)
}

// Trim is a cut without the pieces that go beyond limits.
func (w *Board) Trim(c *Cut, price []Value, limits []int) Cut {
	root := c.Root.Clone()
	w.cutSurplus(root, slices.Clone(limits))
	w.dropWaste(root)
	return w.finish(root, price)
}

// dropWaste takes out everything that holds neither a part nor an offcut, and
// the blanks that may not be trued now that they hold less.
func (w *Board) dropWaste(n *layout.Node) {
	for _, c := range n.Children {
		w.dropWaste(c)
		w.setThickness(c)
	}
	n.Children = slices.DeleteFunc(n.Children, func(c *layout.Node) bool {
		return c.Part == "" && c.Offcut == "" && len(c.Children) == 0 || c.Trued && !w.mayTrue(c)
	})
}

// setThickness says what a trued node is planed to: what the thickest of its
// parts needs.
func (w *Board) setThickness(n *layout.Node) {
	if !n.Trued {
		return
	}
	n.Thickness = 0
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" {
			n.Thickness = max(n.Thickness, w.needOf(leaf))
		}
	}
}

// mayTrue reports whether a trued node holds a part and has a length that the
// machines take, or needs no machine.
func (w *Board) mayTrue(n *layout.Node) bool {
	if w.machinesTake(n.Length()) {
		return holdsPart(n)
	}
	return n.Thickness == w.wood.Thickness
}

// finish keeps the offcuts of a tree the better of two ways and adds it up.
func (w *Board) finish(root *layout.Node, price []Value) Cut {
	w.snug(root)
	short := w.shrink(root)
	w.harvest(root)
	w.harvest(short)
	worth := w.worthOf(root)
	if s := w.worthOf(short); s > worth {
		root, worth = short, s
	}
	cut := Cut{Root: root, Worth: worth, Counts: w.CountParts(root)}
	for i, n := range cut.Counts {
		cut.Value += Value(n) * price[i]
	}
	return cut
}

func (w *Board) worthOf(root *layout.Node) layout.Money {
	var sum layout.Money
	root.LeavesByBlank(func(blank, leaf *layout.Node) {
		if leaf.Offcut != "" {
			sum += w.shop.OffcutWorth(w.wood, w.wood.CleanOffcutIn(blank.Length(), leaf.Rect))
		}
	})
	return sum
}

// CountParts is how many pieces a cut tree makes, by row of the bill.
func (w *Board) CountParts(root *layout.Node) []int {
	counts := make([]int, len(w.problem.Bill))
	root.Walk(func(n *layout.Node) {
		if n.Part != "" {
			counts[w.rows[n.Part]] += n.Pieces()
		}
	})
	return counts
}
