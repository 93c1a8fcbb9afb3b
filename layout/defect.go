package layout

// Face says which face of a board is meant.
type Face uint8

// The faces of a board. Through is what a defect has that is on both of them,
// and what a part has that shows no particular face.
const (
	Through Face = iota
	FaceA
	FaceB
)

// String gives "", "A" or "B".
func (f Face) String() string { return [...]string{"", "A", "B"}[f] }

// Kind is the name of a kind of defect: one of the trade's own (StandardKinds)
// or one that the shop adds.
type Kind string

// The kinds of defect that every shop knows.
const (
	Knot  Kind = "knot" // sound and tight
	Pin   Kind = "pin"
	Stain Kind = "stain"
	Sap   Kind = "sap"
	Gum   Kind = "gum"
	Burl  Kind = "burl"

	Loose Kind = "loose" // a loose or unsound knot
	Hole  Kind = "hole"
	Check Kind = "check"
	Split Kind = "split"
	Shake Kind = "shake"
	Wane  Kind = "wane"
	Bark  Kind = "bark"
	Pith  Kind = "pith"
	Rot   Kind = "rot"
	Metal Kind = "metal"
)

// SoundKinds are the standard kinds that a sound part may carry, in order of
// their names.
func SoundKinds() []Kind { return []Kind{Burl, Gum, Knot, Pin, Sap, Stain} }

// UnsoundKinds are the standard kinds that no standard grade accepts, in order
// of their names.
func UnsoundKinds() []Kind {
	return []Kind{Bark, Check, Hole, Loose, Metal, Pith, Rot, Shake, Split, Wane}
}

// Defect is a place on a board that somebody wants to avoid, as marked and not
// yet grown by any clearance. Face is Through when it shows on both faces.
type Defect struct {
	Kind Kind
	Face Face
	Rect Rect
}

// On reports whether the defect shows on face f (FaceA or FaceB).
func (d Defect) On(f Face) bool { return d.Face == Through || d.Face == f }

// Clearance is how far a kind of defect really reaches beyond its mark, on
// each side.
type Clearance struct{ Along, Across Length }

// Grade names the kinds that a part may carry on its show face and on its
// back.
type Grade struct{ Show, Back []Kind }

// The grades that every shop knows.
const (
	Clear   = "clear"
	OneFace = "one-face"
	Sound   = "sound"
)

// StandardGrades are clear, one-face and sound.
func StandardGrades() map[string]Grade {
	return map[string]Grade{
		Clear:   {},
		OneFace: {Back: SoundKinds()},
		Sound:   {Show: SoundKinds(), Back: SoundKinds()},
	}
}
