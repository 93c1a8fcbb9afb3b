package column

// Config says which positions are tried.
type Config struct {
	// MostX and MostY are the most grid positions along and across; 0 means the
	// exact unit however many that takes.
	MostX, MostY int
	// MostStarts is the most places where a blank may start; 0 means every
	// position of the grid, and then every end as well.
	MostStarts int
	// MostHeights is the most heights of a strip for one thickness; 0 means
	// every height on the grid.
	MostHeights int
	// InnerOffcuts also keeps offcuts that lie between parts, or that come off
	// in the last rip, while the best column is sought; without it offcuts are
	// sought at the ends of strips, along the far edge and between blanks, and
	// whatever else is large enough is kept once the column is known.
	InnerOffcuts bool
	// Beside also stacks parts beside a defect that a strip meets; without it strips
	// that meet the same defects are taken to be alike, wherever in them these lie.
	Beside bool
	// FineLeans tries more positions across where strips lean differently: what a rip
	// at a bevel takes is no multiple of any unit, and is rounded up. Where there are
	// few kinds of strips they are tried without it.
	FineLeans bool
	// RoughRips also tries to rip a piece before it is trued. A board with metal
	// in it is always tried that way, for the metal may be cut away.
	RoughRips bool
}

// Exact allows everything.
func Exact() Config { return Config{InnerOffcuts: true, RoughRips: true} }

// Quick allows what most often makes a good column, in about a hundredth of a
// second.
func Quick() Config {
	return Config{MostX: 1600, MostY: 400, MostStarts: 6, MostHeights: 16}
}

// exact reports whether every position is tried.
func (w *Board) exact() bool { return w.cfg.MostStarts == 0 }
