package layout

import "slices"

// Spares are the ids of the pieces that a job has beyond what its bill needs: of every
// part as many as are made, or cut already, over its quantity. They are those that
// were planned to be spare, as long as there are enough; then the last ones of the
// plan, which are cut last.
func (p *Plan) Spares() map[string]bool {
	made, bill := p.piecesMade(), p.Wanted()
	spares := map[string]bool{}
	for i := range bill {
		of := made[bill[i].Name]
		if bill[i].Set != "" || of == nil {
			continue
		}
		slices.Reverse(of.needed)
		list := append(of.spare, of.needed...)
		for _, id := range list[:max(0, len(list)-max(0, bill[i].Quantity))] {
			spares[id] = true
		}
	}
	return spares
}

// madePieces are the ids of the pieces of a part, as they were planned.
type madePieces struct{ spare, needed []string }

func (m *madePieces) add(id string, spare bool) {
	if spare {
		m.spare = append(m.spare, id)
	} else {
		m.needed = append(m.needed, id)
	}
}

// piecesMade are all pieces of a job by part: first those cut from boards that the plan
// no longer holds, then those of the plan, in its order.
func (p *Plan) piecesMade() map[string]*madePieces {
	made := map[string]*madePieces{}
	of := func(part string) *madePieces {
		if made[part] == nil {
			made[part] = new(madePieces)
		}
		return made[part]
	}
	for _, c := range p.CutElsewhere() {
		of(c.Part).add(c.Wood.Mark, c.Spare)
	}
	for _, b := range p.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part == "" {
				continue
			}
			for _, id := range leaf.PieceIDs() {
				of(leaf.Part).add(id, leaf.Spare)
			}
		}
	}
	return made
}
