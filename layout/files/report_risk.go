package files

import (
	"io"

	"sawbill/layout"
)

// risk1 is the JSON of a simulation. Shares are counts of draws, and where the true
// chance lies with a confidence of 95 %; lengths are nanometres.
type risk1 struct {
	Seed      int64        `json:"seed"`
	Draws     int          `json:"draws"`
	Enough    share1       `json:"enough"`
	AsPlanned share1       `json:"enough_in_the_order_of_the_plan"`
	Assumed   []assumed1   `json:"hidden"`
	Parts     []partRisk1  `json:"parts"`
	Spares    []moreBoard1 `json:"one_more_board"`
	Bought    []moreBoard1 `json:"bought_in_turn"`
	Openings  []openings1  `json:"order"`
}

type share1 struct {
	Draws int     `json:"draws"`
	Share float64 `json:"share"`
	Low   float64 `json:"low"`
	High  float64 `json:"high"`
}

type assumed1 struct {
	Species   string  `json:"species"`
	Per10BF   rate    `json:"per_10bf"`
	Length    nm      `json:"length"`
	Width     nm      `json:"width"`
	RateSaid  bool    `json:"rate_said"`
	SizeSaid  bool    `json:"size_said"`
	Boards    int     `json:"boards"`
	BoardFeet float64 `json:"board_feet"`
}

type partRisk1 struct {
	Part    string  `json:"part"`
	Missing share1  `json:"missing"`
	Mean    float64 `json:"mean_missing"`
	Spared  share1  `json:"enough_with_one_more"`
}

type moreBoard1 struct {
	Like   string `json:"like,omitempty"`
	Enough share1 `json:"enough"`
}

type openings1 struct {
	Board  string  `json:"board"`
	Shows  share1  `json:"shows_shortage"`
	Lost   float64 `json:"mean_lost"`
	Pieces int     `json:"pieces"`
}

func toShare1(s layout.Share) share1 {
	low, high := s.Interval()
	return share1{s.Count, s.Value(), low, high}
}

// WriteRisk writes what a simulation found as one JSON object. Errors are those of w.
func WriteRisk(w io.Writer, r *layout.Risk) error {
	return writeJSON(w, risk1{
		Seed: r.Seed, Draws: r.Finished.Of, Enough: toShare1(r.Finished),
		AsPlanned: toShare1(r.AsPlanned),
		Assumed: each(r.Assumed, func(a layout.AssumedHidden) assumed1 {
			return assumed1{
				a.Species, rate(a.Per10BF), nm(a.Length), nm(a.Width), a.RateSaid, a.SizeSaid, a.Boards, a.BoardFeet,
			}
		}),
		Parts: each(r.Parts, func(p layout.PartAtRisk) partRisk1 {
			return partRisk1{p.Part, toShare1(p.Missing), p.Mean, toShare1(p.Spared)}
		}),
		Spares: each(r.Spares, func(s layout.SpareBoard) moreBoard1 { return moreBoard1{s.Like, toShare1(s.Finished)} }),
		Bought: each(r.Bought, func(b layout.BoughtBoard) moreBoard1 { return moreBoard1{b.Like, toShare1(b.Finished)} }),
		Openings: each(r.Order, func(o layout.Opening) openings1 {
			return openings1{o.Board, toShare1(o.Shows), o.Lost, o.Cuts}
		}),
	})
}
