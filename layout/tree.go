package layout

import "strconv"

// Cut says how the children of a node are separated.
type Cut uint8

// The two cuts of a cut tree.
const (
	NoCut Cut = iota
	Crosscut
	Rip
)

// String gives the word of the plan file.
func (c Cut) String() string { return [...]string{"", "crosscut", "rip"}[c] }

// Node is one rectangle of the tree of cuts that breaks a board down. It has
// children, or it is a leaf: a part, an offcut or scrap. Area that no child
// covers is scrap, kerf or trim.
type Node struct {
	Rect
	Cut       Cut
	Trued     bool
	Thickness Length // what a trued node is planed to
	Children  []*Node
	Lean      Length

	Part   string // the bill's name, on a part leaf
	ID     string // a stable name for one piece
	Show   Face
	OnEdge bool
	Layers int // pieces resawn from this leaf; 0 means 1
	Slices int
	Spare  bool // it was planned to be spare; whether it still is, Plan.Spares tells

	Offcut string // its mark, on an offcut leaf
}

// Walk calls visit for n and all below it, parents first, in order.
func (n *Node) Walk(visit func(*Node)) {
	visit(n)
	for _, c := range n.Children {
		c.Walk(visit)
	}
}

// Shift moves n and all below it, in the direction in which a cut divides.
func (n *Node) Shift(c Cut, by Length) {
	n.Walk(func(m *Node) {
		if c == Rip {
			m.Y1, m.Y2 = m.Y1+by, m.Y2+by
		} else {
			m.X1, m.X2 = m.X1+by, m.X2+by
		}
	})
}

// Leaves lists the leaves below n in order.
func (n *Node) Leaves() []*Node {
	var leaves []*Node
	n.Walk(func(m *Node) {
		if len(m.Children) == 0 {
			leaves = append(leaves, m)
		}
	})
	return leaves
}

// LeavesByBlank calls visit for the leaves below the root of a tree, in order, with
// the rough crosscut blank that each lies in: a child of the root. A root without
// children is its own.
func (n *Node) LeavesByBlank(visit func(blank, leaf *Node)) {
	if len(n.Children) == 0 {
		visit(n, n)
	}
	for _, blank := range n.Children {
		for _, leaf := range blank.Leaves() {
			visit(blank, leaf)
		}
	}
}

// Pieces is how many pieces a part leaf gives.
func (n *Node) Pieces() int { return max(1, n.Layers) }

// PieceIDs are the ids of the pieces that a part leaf gives: its own, or with a
// number those of its layers.
func (n *Node) PieceIDs() []string {
	if n.Pieces() == 1 {
		return []string{n.ID}
	}
	var ids []string
	for i := range n.Pieces() {
		ids = append(ids, n.ID+strconv.Itoa(i+1))
	}
	return ids
}

// Clone is a deep copy of n.
func (n *Node) Clone() *Node {
	c := *n
	c.Children = nil
	for _, child := range n.Children {
		c.Children = append(c.Children, child.Clone())
	}
	return &c
}
