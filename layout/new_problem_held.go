package layout

import (
	"fmt"
	"slices"
)

// checkHeld complains of a part that no board could hold, whatever else is cut
// from it. Only sizes count: defects are the solver's business. A part that
// only boards on hold or at the yard could hold is worth a warning.
func checkHeld(a about, p *Problem, part *Part) {
	var taken, left []*Board
	for i := range p.Stock {
		b := &p.Stock[i]
		if !part.fromBoard(b) {
			continue
		}
		if p.Takes(b) {
			taken = append(taken, b)
		} else {
			left = append(left, b)
		}
	}
	fits := func(b *Board) bool { return p.Shop.couldHold(part, b) }
	name := fmt.Sprintf("part %q: ", part.Name)
	switch {
	case slices.ContainsFunc(taken, fits):
	case slices.ContainsFunc(left, fits):
		b := left[slices.IndexFunc(left, fits)]
		a.warn("", "", fmt.Sprintf("%sonly a board that takes no part, %s (%s), could hold it", name, b.Mark, b.Source))
	case len(taken)+len(left) == 0:
		a.fault("", "", name+noBoardMarked)
	default:
		a.fault("", "", name+whyNotHeld(p.Shop, part, append(taken, left...)))
	}
}

// CouldHold reports whether a board, whether or not it takes part, could give
// part by species, marks and size. Defects, and what else is cut from the
// board, are left out.
func (p *Problem) CouldHold(part *Part, b *Board) bool {
	return part.fromBoard(b) && p.Shop.couldHold(part, b)
}

func (s *Shop) couldHold(part *Part, b *Board) bool {
	return slices.ContainsFunc(fitsOf(s, part, b), fit.holds)
}

// fromBoard is what Problem.Allows says, whether or not the board takes part.
func (p *Part) fromBoard(b *Board) bool {
	everything := Problem{Yard: true}
	rack := *b
	rack.Source = Rack
	return everything.Allows(p, &rack)
}

// fit is how much room a board leaves for one piece of a part that lies in one way,
// by itself, and how much that piece takes.
type fit struct {
	board                    *Board
	thickness, length, width Length // of the piece, the length with its blank
	available, clear, across Length // what the board gives
	blank                    Length // in which it finishes to available
}

// fitsOf are the fits of all ways to lie.
func fitsOf(s *Shop, part *Part, b *Board) []fit {
	var fits []fit
	for _, l := range s.liesOf(part) {
		fits = append(fits, newFit(s, l, b))
	}
	return fits
}

// newFit puts the piece at the wider end of the board, as near to it as the trims
// allow, in the shortest blank that may hold it and no wider a one than it takes:
// there warp costs least.
func newFit(s *Shop, l lie, b *Board) fit {
	r := &room{shop: s, board: b, within: Span{s.EndTrim, b.Length - s.EndTrim}}
	end := r.endLoss()
	f := fit{board: b, thickness: l.thick, length: l.length + 2*end, clear: r.within.Len(), width: l.wide() + 2*l.side}
	f.available, f.blank = r.trues(l)
	if f.machined() {
		f.length = max(f.length, s.MinBlank)
		if s.MaxBlank > 0 {
			f.clear = min(f.clear, s.MaxBlank)
		}
	}
	if near := s.EndTrim + end; near+l.length <= b.Length {
		lost := s.LossesOf(b, b.Frame())
		f.across = max(b.FarMin(Span{near, near + l.length}), b.FarMin(Span{b.Length - near - l.length, b.Length - near})) -
			b.Shift(f.length) - lost.Near - lost.Far
	}
	if most := s.MachineWidth(); most > 0 {
		f.across = min(f.across, most)
	}
	return f
}

// machined reports whether the piece's blank goes over the jointer or through
// the planer.
func (f fit) machined() bool {
	return f.board.Faces == FacesRough || f.board.Edges != EdgesBoth || !f.board.Straight() || f.thickness < f.board.Thickness
}

func (f fit) holds() bool {
	return f.thickness <= f.available && f.length <= f.clear && f.width <= f.across
}

// whyNotHeld names the board that comes nearest and the figure that fails: the
// thickness if that fails everywhere, else the length, else the width.
func whyNotHeld(s *Shop, part *Part, boards []*Board) string {
	var fits []fit
	for _, b := range boards {
		fits = append(fits, fitsOf(s, part, b)...)
	}
	say := func(l Length) string { return l.Format(s.Units, s.Fraction) }
	species := part.woods()
	thick, best := passing(fits, func(f fit) Length { return f.available - f.thickness })
	if len(thick) == 0 {
		where := ""
		if !best.board.Flat() {
			where = fmt.Sprintf(" in a blank %s long", say(best.blank))
		}
		return fmt.Sprintf("needs %s thick; the thickest %s, %s, finishes to %s%s",
			say(best.thickness), species, best.board.Mark, say(max(0, best.available)), where)
	}
	long, best := passing(thick, func(f fit) Length { return f.clear - f.length })
	if len(long) == 0 {
		return fmt.Sprintf("needs a blank %s long; the longest %s that is thick enough, %s, gives %s",
			say(best.length), species, best.board.Mark, say(best.clear))
	}
	_, best = passing(long, func(f fit) Length { return f.across - f.width })
	return fmt.Sprintf("needs %s wide; the widest %s that is thick and long enough, %s, gives %s",
		say(best.width), species, best.board.Mark, say(max(0, best.across)))
}

// passing keeps the fits with some room to spare, or none; best is the one with
// the most.
func passing(fits []fit, room func(fit) Length) (kept []fit, best fit) {
	best = slices.MaxFunc(fits, func(f, g fit) int { return int(max(-1, min(1, room(f)-room(g)))) })
	for _, f := range fits {
		if room(f) >= 0 {
			kept = append(kept, f)
		}
	}
	return kept, best
}
