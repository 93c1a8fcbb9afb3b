package bound

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// alike is the same for boards that can be cut in the same ways for the same
// money: they differ in mark, place, note and grade alone, and the bill allows
// the same parts from them.
func alike(p *layout.Problem, b *layout.Board) string {
	like := *b
	like.Mark, like.Base, like.Place, like.Note, like.Grade = "", "", "", "", ""
	key := fmt.Sprintf("%q %+v", like.Species, like)
	for i := range p.Bill {
		part := &p.Bill[i]
		if slices.Contains(part.From, b.Mark) || slices.Contains(part.NotFrom, b.Mark) || len(part.From) > 0 {
			key += fmt.Sprintf(" %d:%t", i, p.Allows(part, b))
		}
	}
	return key
}

// lot is boards that are alike.
type lot struct {
	ceiling *ceiling
	cost    value
	boards  int64
}

// lots gathers the boards that may take part.
func lots(p *layout.Problem, prices map[string]layout.Money) ([]*lot, error) {
	known := map[string]*lot{}
	var list []*lot
	for i := range p.Stock {
		b := &p.Stock[i]
		if !p.Takes(b) {
			continue
		}
		key := alike(p, b)
		if known[key] == nil {
			c, err := newCeiling(p, b, prices)
			if err != nil {
				return nil, err
			}
			known[key] = &lot{ceiling: c, cost: value(b.Cost) * cash}
			list = append(list, known[key])
		}
		known[key].boards++
	}
	return list, nil
}

// over is what the boards of a lot are worth beyond their cost.
func (l *lot) over() value { return max(0, l.ceiling.most-l.cost) }

// settled reports whether the boards are worth no more than they cost, so that
// nothing is gained by looking closer.
func (l *lot) settled() bool { return l.ceiling.most <= l.cost }
