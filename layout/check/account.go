package check

import (
	"math"

	"sawbill/layout"
)

// accountShare is what a figure of an account may be missed by, as a share of
// the volume of the board.
const accountShare = 1e-6

// account: every figure of a board's account is what became of its wood, and
// all of them add up to the board. An account that does not tell kerf, edges
// and defects apart but counts them all as scrap is coarse, not wrong.
func account(s *sawn, wrong report) {
	got, want := s.plan.Account, s.accounted()
	if got.Kerf == 0 && got.Edges == 0 && got.Defects == 0 {
		want.Scrap += want.Kerf + want.Edges + want.Defects
		want.Kerf, want.Edges, want.Defects = 0, 0, 0
	}
	whole := s.volume()
	sum := got.Parts + got.Planing + got.Kerf + got.Edges + got.Offcuts + got.Defects + got.Scrap
	for _, f := range []struct {
		name      string
		got, want float64
	}{
		{"parts", got.Parts, want.Parts}, {"planing", got.Planing, want.Planing},
		{"kerf", got.Kerf, want.Kerf}, {"edges", got.Edges, want.Edges},
		{"offcuts", got.Offcuts, want.Offcuts}, {"defects", got.Defects, want.Defects},
		{"scrap", got.Scrap, want.Scrap}, {"sum", sum, whole},
	} {
		if !(math.Abs(f.got-f.want) <= accountShare*whole) { // so that NaN is wrong
			wrong(nil, "%s is %.3f mm³ in the account; it is %.3f of %.3f", f.name, f.got, f.want, whole)
		}
	}
}

// accounted works out the account of a board from the regions of its wood.
func (s *sawn) accounted() layout.Account {
	area := s.regionAreas(s.regions())
	thick := mm(s.wood.Thickness)
	acc := layout.Account{
		Parts:   s.finished(),
		Offcuts: area[1] * thick, Kerf: area[2] * thick, Edges: area[3] * thick, Defects: area[4] * thick,
	}
	acc.Planing = area[0]*thick - acc.Parts
	acc.Scrap = s.volume() - area[0]*thick - acc.Offcuts - acc.Kerf - acc.Edges - acc.Defects
	return acc
}
