package layout

// Angle is an exact angle: a whole number of millionths of a degree.
type Angle int64

// Degree is one degree.
const Degree Angle = 1_000_000

// Part is one row of the bill: a kind of part and how many of it are wanted.
type Part struct {
	Name             string
	Species          []string // alternatives, at least one
	Thickness, Width Length   // finished section
	Length           Length   // finished, along the grain; 0 in a set
	Quantity         int
	Spare            int // more pieces, cut only where they cost nothing; 0 in a set
	Grade            string
	Bevel            Angle
	OnEdge, Resaw    bool
	Match            string
	Priority         int      // 1 is served first; 0 stands for blank and comes last
	From, NotFrom    []string // marks of single boards, resolved from the bill
	Set              string
	Slices           int
	SliceThickness   Length
	Piece            string // the finished piece that the parts belong to, or empty
	Note             string
}

// CutLength is the length that a piece of the part is cut to.
func (p *Part) CutLength(s *Shop) Length { return p.Length + s.LengthAllowance }

// CutWidth is the width that a piece of the part is cut to.
func (p *Part) CutWidth(s *Shop) Length { return p.Width + s.WidthAllowance }

// CutThickness is the thickness that a piece of the part is planed to.
func (p *Part) CutThickness(s *Shop) Length { return p.Thickness + s.ThicknessAllowance }

// Volume is the finished volume of one piece, cut flat, on edge or resawn. That
// of a bevelled piece, a parallelogram in section, is the same as of a square one
// as wide across its face. That of a strip of a glue-up is of all its slices.
func (p *Part) Volume() *Volume {
	if p.SliceThickness > 0 {
		return p.StripVolume(p.Slices)
	}
	return NewVolume(p.Length, p.Width, p.Thickness)
}

// StripVolume is the finished volume of a strip of a glue-up with so many slices.
func (p *Part) StripVolume(slices int) *Volume {
	return NewVolume(Length(slices)*p.SliceThickness, p.Width, p.Thickness)
}

// Rank orders priorities: 1 before 2 before blank.
func (p *Part) Rank() int {
	if p.Priority == 0 {
		return int(^uint(0) >> 1)
	}
	return p.Priority
}
