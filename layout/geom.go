package layout

// Span is the half-open interval Lo <= x < Hi.
type Span struct{ Lo, Hi Length }

// Len is the length of the span; negative if it is ill-formed.
func (s Span) Len() Length { return s.Hi - s.Lo }

// Overlaps reports whether the interiors of s and t meet. Touching is not
// overlapping.
func (s Span) Overlaps(t Span) bool { return s.Lo < t.Hi && t.Lo < s.Hi }

// Contains reports whether t lies within s.
func (s Span) Contains(t Span) bool { return s.Lo <= t.Lo && t.Hi <= s.Hi }

// Rect is a rectangle in the board's frame: X1 <= x < X2 along the grain from
// the butt, Y1 <= y < Y2 across from the reference edge.
type Rect struct{ X1, X2, Y1, Y2 Length }

// Along is the extent of r along the grain.
func (r Rect) Along() Span { return Span{r.X1, r.X2} }

// Across is the extent of r across the grain.
func (r Rect) Across() Span { return Span{r.Y1, r.Y2} }

// Length is the size of r along the grain.
func (r Rect) Length() Length { return r.X2 - r.X1 }

// Width is the size of r across the grain.
func (r Rect) Width() Length { return r.Y2 - r.Y1 }

// Empty reports whether r has no interior.
func (r Rect) Empty() bool { return r.X1 >= r.X2 || r.Y1 >= r.Y2 }

// Overlaps reports whether the interiors of r and s meet.
func (r Rect) Overlaps(s Rect) bool {
	return r.Along().Overlaps(s.Along()) && r.Across().Overlaps(s.Across())
}

// Contains reports whether s lies within r.
func (r Rect) Contains(s Rect) bool {
	return r.Along().Contains(s.Along()) && r.Across().Contains(s.Across())
}

// Intersect is the part that r and s share; it may be empty.
func (r Rect) Intersect(s Rect) Rect {
	return Rect{max(r.X1, s.X1), min(r.X2, s.X2), max(r.Y1, s.Y1), min(r.Y2, s.Y2)}
}

// Grow widens r by along at each end and by across at each edge.
func (r Rect) Grow(along, across Length) Rect {
	return Rect{r.X1 - along, r.X2 + along, r.Y1 - across, r.Y2 + across}
}
