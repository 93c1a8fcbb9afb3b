package files

import (
	"io"

	"sawbill/layout"
)

// group1 is the JSON of the boards of one species and thickness: lengths in
// nanometres, volume in cubic millimetres.
type group1 struct {
	Species   string   `json:"species"`
	Thickness nm       `json:"thickness"`
	Faces     string   `json:"faces"`
	Finishes  nm       `json:"finishes_to"`
	Boards    []string `json:"boards"`
	Volume    float64  `json:"volume"`
	BoardFeet float64  `json:"board_feet"`
	Worth     money    `json:"worth"`
	Clear     float64  `json:"clear"`
}

type rack1 struct {
	Groups  []group1     `json:"groups"`
	Suspect []suspicion1 `json:"second_look"`
}

type suspicion1 struct {
	Board string `json:"board"`
	Why   string `json:"why"`
}

// WriteRack writes what a rack holds, and what is worth a second look, as one JSON
// object. Errors are those of w.
func WriteRack(w io.Writer, groups []layout.TallyGroup, second []layout.Suspicion) error {
	return writeJSON(w, rack1{
		Groups: each(groups, func(g layout.TallyGroup) group1 {
			return group1{
				Species: g.Species, Thickness: nm(g.Thickness), Faces: g.Faces.String(), Finishes: nm(g.Finishes),
				Boards: each(g.Boards, func(b *layout.Board) string { return b.Mark }),
				Volume: g.Volume.MM3(), BoardFeet: g.Volume.BoardFeet(), Worth: money(g.Worth), Clear: g.Clear / g.Area,
			}
		}),
		Suspect: each(second, func(s layout.Suspicion) suspicion1 { return suspicion1{s.Board, s.Why} }),
	})
}
