package buy

import (
	"slices"

	"sawbill/layout"
)

// Usual is what the boards of a yard are usually like, rough and flat; where its figures
// come from UsualBoards says.
type Usual struct {
	Thicknesses []layout.Length
	// Most boards are between Narrow and Wide, all between Narrowest and Widest, in
	// whole steps.
	Narrowest, Narrow, Wide, Widest, WidthStep layout.Length
	// Lengths are from Shortest to Longest in whole steps, and up to Over more.
	Shortest, Longest, LengthStep layout.Length
	Odd                           int // of a thousand lengths, between two steps
	Over                          layout.Length
	// There is a defect on so much of the face, more or less: Clearest on a clear board,
	// Poorest, a smaller area, on a poor one.
	Poorest, Clearest int64 // square millimetres
	// Spare is how much thicker a board must at least be than what is made of it.
	Spare layout.Length
}

// UsualBoards are those of a yard that sells to a shop with such units.
//
// Inches: quarters. Lengths of 8 to 16 ft, mostly even feet, 13.7 in 100 odd, with a
// few inches more, in a survey of 14 mills (Kline 1993; Wiedenbeck et al. 2003). A
// quarter of an inch over the finished thickness is a rule for buying rough wood (a
// woodworkers' guild). Widths are what is known in the trade, without a source.
//
// Millimetres: thicknesses and widths by 10 mm as sawn in Britain (Architects'
// Journal); lengths are a guess.
//
// Grading rules allow one clear cutting for every 4 square feet of the face of the best
// boards, and one for every 3 of the next grade (a summary of US hardwood grades, AHEC).
// That there are as many defects as cuttings is a guess.
func UsualBoards(units layout.Unit) Usual {
	const in, ft, mm = layout.Inch, layout.Foot, layout.Millimetre
	const squareFoot = 92_903 // square millimetres
	u := Usual{Poorest: 3 * squareFoot, Clearest: 4 * squareFoot}
	if units == layout.Millimetres {
		u.Thicknesses = []layout.Length{16 * mm, 19 * mm, 25 * mm, 38 * mm, 50 * mm, 63 * mm, 75 * mm, 100 * mm}
		u.Narrowest, u.Narrow, u.Wide, u.Widest, u.WidthStep = 80*mm, 130*mm, 230*mm, 300*mm, 10*mm
		u.Shortest, u.Longest, u.LengthStep, u.Over = 2400*mm, 4800*mm, 300*mm, 60*mm
		u.Spare = 13 * mm / 2
		return u
	}
	u.Thicknesses = []layout.Length{in, 5 * in / 4, 3 * in / 2, 2 * in, 5 * in / 2, 3 * in, 4 * in}
	u.Narrowest, u.Narrow, u.Wide, u.Widest, u.WidthStep = 3*in, 5*in, 9*in, 12*in, in/4
	u.Shortest, u.Longest, u.LengthStep, u.Odd, u.Over = 8*ft, 16*ft, 2*ft, 137, 3*in
	u.Spare = in / 4
	return u
}

// thickness is the least usual one out of which a part can be made flat, or on edge
// where it may be and is too thick to be made flat; 0 where none is.
func (u *Usual) thickness(s *layout.Shop, part *layout.Part) layout.Length {
	need := part.CutThickness(s)
	spare := max(u.Spare, 2*s.FaceSkim)
	i := slices.IndexFunc(u.Thicknesses, func(t layout.Length) bool { return t >= need+spare })
	if i < 0 && part.OnEdge {
		i = slices.IndexFunc(u.Thicknesses, func(t layout.Length) bool { return t >= part.EdgeThickness(s, 1)+spare })
	}
	if i < 0 {
		return 0
	}
	return u.Thicknesses[i]
}

// largest is a clear board as large as any.
func (u *Usual) largest(species string, thickness layout.Length) layout.Board {
	return clearBoard(species, thickness, u.Widest, u.Longest+u.Over)
}

// clearBoard is a rough board without a defect.
func clearBoard(species string, thickness, width, length layout.Length) layout.Board {
	const mark = "a large board"
	return layout.Board{
		Mark: mark, Base: mark, Species: species, Thickness: thickness, Width: width, TipWidth: width, Length: length,
		Source: layout.Yard,
	}
}
