package record

import (
	"sawbill/layout"
)

// After is the stock as it is when all that a plan cuts is cut: boards that were
// used are gone, and what is kept of them are boards with their own marks; origins
// say where these lay. The plan must have passed its check.
func After(plan *layout.Plan) (stock []layout.Board, origins []layout.Origin) {
	d := Open(plan)
	for _, b := range plan.Boards {
		d.finish(b.Board)
	}
	return d.stock, d.record.Origins
}

// Now is the stock as it is with what the record of a plan says to be cut, and no
// more: of boards that are being cut there is what lies on the bench.
func Now(plan *layout.Plan) (stock []layout.Board, origins []layout.Origin) {
	d := Open(plan)
	for _, b := range plan.Boards {
		if d.started(b.Board) {
			d.dissolve(b.Board)
		}
	}
	return d.stock, d.record.Origins
}
