package steps

import (
	"fmt"
	"strconv"
	"strings"

	"sawbill/layout"
)

// names gives every piece of a job its id. A part or an offcut has the name
// that the plan gave it; M4-2 is the second blank of M4, M4-2/1 the first strip
// of it, and so on down.
type names struct {
	chalk  map[*layout.Node]string
	layers map[*layout.Node][]string // of a leaf that is resawn
	taken  map[string]bool
	cuts   map[string]int // ids given so far by chalk name
}

func newNames(p *layout.Plan) *names {
	n := &names{map[*layout.Node]string{}, map[*layout.Node][]string{}, map[string]bool{}, map[string]int{}}
	begun, whole := trees(p)
	for _, b := range p.Problem.Stock {
		n.taken[b.Mark] = !cutOutOf(p.Record, b.Mark, begun)
	}
	n.nameTrees(begun)
	for _, b := range p.Problem.Stock {
		n.taken[b.Mark] = true
	}
	n.nameTrees(whole)
	return n
}

// trees are those by which the boards of a plan are cut. What is written on the wood of
// boards that are being cut stays as it was when that began.
func trees(p *layout.Plan) (begun, whole []layout.BoardPlan) {
	for _, b := range p.Boards {
		if start := p.Record.Start(b.Board); start != nil {
			b.Root = start.Root
			begun = append(begun, b)
		} else {
			whole = append(whole, b)
		}
	}
	return begun, whole
}

// cutOutOf reports whether a board of the stock was cut out of one of some boards.
func cutOutOf(r *layout.Record, mark string, of []layout.BoardPlan) bool {
	for _, b := range of {
		for _, o := range r.Origins {
			if o.Board == mark && o.Of == b.Board {
				return true
			}
		}
	}
	return false
}

func (n *names) nameTrees(boards []layout.BoardPlan) {
	for _, b := range boards {
		for _, leaf := range b.Root.Leaves() {
			n.nameLeaf(leaf)
		}
	}
	for _, b := range boards {
		n.chalk[b.Root] = b.Board
		n.nameBlanks(b)
	}
}

func (n *names) nameLeaf(leaf *layout.Node) {
	switch {
	case leaf.Offcut != "":
		n.chalk[leaf] = n.claim(leaf.Offcut)
	case leaf.ID != "":
		n.chalk[leaf] = n.claim(leaf.ID)
		n.nameLayers(leaf)
	}
}

// nameLayers names the pieces that are resawn from a leaf together with the other pieces
// of its tree: one that is spoiled may be a board of the stock by then, of this name.
func (n *names) nameLayers(leaf *layout.Node) {
	for i := 1; i <= leaf.Pieces() && leaf.Pieces() > 1; i++ {
		n.layers[leaf] = append(n.layers[leaf], n.claim(n.chalk[leaf]+strconv.Itoa(i)))
	}
}

// nameBlanks counts the blanks that give parts first, as the ids of their
// pieces do, then the others.
func (n *names) nameBlanks(b layout.BoardPlan) {
	count := 0
	for _, wantParts := range []bool{true, false} {
		for _, blank := range b.Root.Children {
			if hasPart(blank) == wantParts && !isWaste(blank) {
				if len(blank.Children) > 0 || blank.Trued {
					count++
				}
				name := fmt.Sprintf("%s-%d", b.Board, count)
				if of := nameByPieces(b.Board, blank); of != "" {
					name = of
				}
				n.nameBelow(blank, name)
			}
		}
	}
}

// nameByPieces is the name of a blank that the ids of its pieces are made of, or ""
// where they are not made so. It stays when other blanks of the board are given up.
func nameByPieces(board string, blank *layout.Node) string {
	for _, leaf := range blank.Leaves() {
		name := strings.TrimRight(leaf.ID, "abcdefghijklmnopqrstuvwxyz")
		number, ours := strings.CutPrefix(name, board+"-")
		if leaf.Part == "" || !ours || name == leaf.ID {
			continue
		}
		if _, err := strconv.Atoi(number); err == nil {
			return name
		}
	}
	return ""
}

func (n *names) nameBelow(node *layout.Node, name string) {
	if _, named := n.chalk[node]; !named {
		n.chalk[node] = n.claim(name)
		n.nameLayers(node)
	}
	for i, c := range node.Children {
		if len(node.Children) == 1 && len(c.Children) > 0 { // what is trimmed keeps its name
			n.chalk[c] = n.chalk[node]
		}
		n.nameBelow(c, fmt.Sprintf("%s/%d", n.chalk[node], i+1))
	}
}

// claim takes a name, or one near it when another piece has it already.
func (n *names) claim(name string) string {
	for n.taken[name] {
		name += "+"
	}
	n.taken[name] = true
	return name
}

// next is a fresh id for what becomes of the piece with a chalk name: the name
// itself the first time, then name~1, name~2, …
func (n *names) next(chalk string) string {
	k := n.cuts[chalk]
	n.cuts[chalk] = k + 1
	if k == 0 {
		return chalk
	}
	return fmt.Sprintf("%s~%d", chalk, k)
}

// whole is the id of a whole board: its mark, even where the board that it was cut out
// of has steps in which it has that name.
func (n *names) whole(mark string) string {
	n.cuts[mark] = max(1, n.cuts[mark])
	return mark
}

// unfinished is a fresh id for a piece that is not yet what its name says, so
// that a finished piece has the plain name.
func (n *names) unfinished(node *layout.Node) string {
	chalk := n.chalk[node]
	if len(node.Children) == 0 && n.cuts[chalk] == 0 {
		n.cuts[chalk] = 1
	}
	return n.next(chalk)
}

// layer is the id of one of the pieces that are resawn from a leaf, counted from
// 1.
func (n *names) layer(leaf *layout.Node, number int) string { return n.layers[leaf][number-1] }

// rough is the id of a piece with a chalk name of its own that is not yet finished.
func (n *names) rough(chalk string) string { return chalk + "~1" }

// aside is the id of a part of a node's piece that waits while the other is cut
// up.
func (n *names) aside(node *layout.Node) string { return n.claim(n.chalk[node] + "/far") }

// finished is the id of a piece that is now what node says.
func (n *names) finished(node *layout.Node) string {
	if len(node.Children) == 0 {
		return n.chalk[node]
	}
	return n.next(n.chalk[node])
}

func hasPart(n *layout.Node) bool {
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" {
			return true
		}
	}
	return false
}

// isWaste reports whether nothing below n is wanted.
func isWaste(n *layout.Node) bool {
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" || leaf.Offcut != "" {
			return false
		}
	}
	return true
}
