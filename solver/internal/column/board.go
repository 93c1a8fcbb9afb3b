package column

import (
	"slices"

	"sawbill/layout"
)

// Board is one board made ready for pricing: all that does not depend on
// prices. It is never changed after New and may be priced from several
// goroutines, each with a Bench of its own.
type Board struct {
	problem *layout.Problem
	shop    *layout.Shop
	wood    *layout.Board
	cfg     Config

	x, y  axis
	top   layout.Length // the highest that a strip of a full-width blank may reach
	near  layout.Length // lost to joint the reference edge
	far   layout.Length // lost to joint the far edge
	end   layout.Length // lost to square each end of a blank
	grown []layout.Rect // the defects, with their clearance, as marked across
	metal []layout.Rect // of these the metal

	shifts []layout.Length // of a crooked board, by length of a blank in positions: how far the wood begins from y = 0
	lieBy  []int           // by the same: the lie; nil where there is one
	lies   []lie
	// rippedLies is how many lies there are before those of pieces that were ripped
	// rough, 0 where these lie as others do.
	rippedLies int

	rows    map[string]int // of the bill, by part name
	pieces  []*piece       // by id
	leans   []lean         // the first is of square strips
	next    []int          // what may come after a strip
	afters  [][]int        // by lean, by index into next: how many positions later
	classes []class
	thicks  []thick
	strips  []strip // heights that a strip may have, for every thickness
	wholes  []whole

	profiles []profile
	byHeight []int   // strips, lowest first
	clearOf  []int32 // by strip: its profile where no defect meets it; -1 where there is none

	starts  []int // where blanks may start, ascending
	ends    []int // where blanks may end, ascending
	startOK []bool
	endOK   []bool
	measure *measure
	bar     *bar // nil where the board is no bar
}

// piece is a way of a part as this board sees it.
type piece struct {
	way
	id      int // among all pieces of the board
	advance int // positions from the start of a piece to that of the next beside it
	blockA  set // defects that it may not carry when face A shows
	blockB  set
	hitAt   [][]set // by lie, by y position: the defects that it meets across there
}

// class is the parts of one thickness, one length and one lean; a cell holds parts of
// one class.
type class struct {
	thick, length layout.Length
	lean          int
	advance       int
	again         bool // long enough to be ripped again
	pieces        []piece
	zones         []zone
	zoneAt        []int32         // by start position; -1 where the piece would leave the board
	reach         []layout.Length // by start position: how far across the wood of a cell reaches
	widths        []layout.Length // distinct widths, ascending
}

// zone is a stretch along the board over which a cell meets the same defects.
type zone struct {
	hit set
	at  int // a start position in the zone
}

// thick is a thickness that parts of this board need, with one lean, and their
// classes.
type thick struct {
	thickness layout.Length
	lean      int
	classes   []int
	anew      set // positions at which some class meets other defects than a position earlier
}

// strip is a height that a strip of one thickness may have.
type strip struct {
	thick   int
	lean    int
	height  layout.Length
	advance int
}

// New makes a board ready. Parts that it cannot give, by species, marks, source
// or thickness, are left out. Where trying every position takes no longer than
// trying few, every position is tried, whatever cfg says; but not of leaning strips,
// which gain by a finer grid.
func New(p *layout.Problem, b *layout.Board, cfg Config) *Board {
	if cfg.MostStarts > 0 {
		if w := NewExact(p, b, mostExact); w != nil && len(w.leans) == 1 {
			return w
		}
	}
	w, ways := newOnGrid(p, b, cfg)
	w.makeReady(ways)
	return w
}

// newOnGrid chooses the grid of a board and lists the ways of the parts that it
// may give.
func newOnGrid(p *layout.Problem, b *layout.Board, cfg Config) (w *Board, ways []way) {
	w = &Board{problem: p, shop: p.Shop, wood: b, cfg: cfg, rows: make(map[string]int, len(p.Bill)), leans: []lean{{kerf: p.Shop.RipKerf}}}
	for i := range p.Bill {
		w.rows[p.Bill[i].Name] = i
	}
	w.setLosses()
	for _, d := range b.Defects {
		c := p.Shop.Clearance[d.Kind]
		g := d.Rect.Grow(c.Along, c.Across)
		w.grown = append(w.grown, g)
		if d.Kind == layout.Metal {
			w.metal = append(w.metal, g)
		}
	}
	ways = w.ways()
	w.setGrid(ways)
	return w, ways
}

// makeReady works out all that does not depend on prices.
func (w *Board) makeReady(ways []way) {
	w.measure = newMeasure(w.shop, w.wood)
	w.setNexts()
	w.setLies()
	w.setClasses(ways)
	w.setZones()
	w.setStrips()
	w.setWholes()
	w.setProfiles()
	w.setCuts()
	w.bar = w.newBar(ways)
}

// slants reports whether the board tapers.
func (w *Board) slants() bool { return w.wood.Width != w.wood.TipWidth }

// restricts reports whether trying every position is a restriction: offcuts under
// a slanting edge are sought as one rectangle each, how much wood warp takes is no
// multiple of the grid, nor is what leaning strips take of each other; and a cell
// holds parts of one lean.
func (w *Board) restricts() bool {
	b := w.wood
	return len(w.leans) > 1 || w.measure.rate > 0 && (w.slants() || b.Crook > 0 || !b.Flat())
}

func (w *Board) setLosses() {
	lost := w.shop.LossesOf(w.wood, w.wood.Frame())
	w.near, w.far, w.end = lost.Near, lost.Far, lost.End
	w.top = w.wood.FullWidth() - w.far
}

// setGrid chooses the units: the greatest common divisors of everything that a
// position can be measured from, coarsened as the configuration says.
func (w *Board) setGrid(ways []way) {
	s, b := w.shop, w.wood
	along := []layout.Length{s.CrosscutKerf, s.EndTrim, s.EndSquare, s.Snipe, s.MinBlank, s.MaxBlank, s.MinRipLength, s.MinOffcutLength, b.Length}
	across := []layout.Length{s.RipKerf, s.RoughRipKerf, s.EdgeJoint, s.MinOffcutWidth, s.MachineWidth(), b.Width, b.TipWidth}
	for _, g := range w.grown {
		along = append(along, max(g.X1, -g.X1), g.X2)
		across = append(across, max(g.Y1, -g.Y1), g.Y2)
	}
	for _, d := range b.Defects {
		along = append(along, d.Rect.X1, d.Rect.X2)
		across = append(across, d.Rect.Y1, d.Rect.Y2)
	}
	for _, v := range ways {
		along = append(along, v.length)
		across = append(across, v.width)
	}
	w.x = newAxis(b.Length, coarsen(b.Length, gcd(along...), w.mostX(ways)))
	unit := coarsen(b.FullWidth(), gcd(across...), w.mostY(ways))
	if len(w.leans) > 1 && !w.exact() && (w.cfg.FineLeans || w.guessStrips(ways) <= fewStrips) {
		unit = refine(b.FullWidth(), unit, finerForLeans*w.cfg.MostY)
	}
	w.y = newAxis(b.FullWidth(), unit)
}

func (w *Board) setClasses(ways []way) {
	for _, v := range ways {
		c := w.classOf(v.thickness, v.length, v.lean)
		c.pieces = append(c.pieces, w.newPiece(v))
		c.widths = append(c.widths, v.width)
	}
	w.setPieces()
	for i := range w.classes {
		c := &w.classes[i]
		c.widths = sorted(c.widths)
		w.setThick(c.thick, c.lean, i)
	}
}

func (w *Board) classOf(thickness, length layout.Length, lean int) *class {
	i := slices.IndexFunc(w.classes, func(c class) bool { return c.thick == thickness && c.length == length && c.lean == lean })
	if i < 0 {
		i = len(w.classes)
		w.classes = append(w.classes, class{
			thick: thickness, length: length, lean: lean,
			advance: w.x.up(length + w.shop.CrosscutKerf),
			again:   w.shop.RipAgain && length >= w.shop.MinRipLength,
		})
	}
	return &w.classes[i]
}

func (w *Board) setThick(thickness layout.Length, lean, class int) {
	i := slices.IndexFunc(w.thicks, func(t thick) bool { return t.thickness == thickness && t.lean == lean })
	if i < 0 {
		i = len(w.thicks)
		w.thicks = append(w.thicks, thick{thickness: thickness, lean: lean})
	}
	w.thicks[i].classes = append(w.thicks[i].classes, class)
}

// newPiece finds which defects a part may not carry, with either face showing.
func (w *Board) newPiece(v way) piece {
	grade := w.shop.Grades[w.problem.Bill[v.row].Grade]
	p := piece{
		way: v, advance: w.y.up(v.width + w.leans[v.lean].kerf),
		blockA: newSet(len(w.grown)), blockB: newSet(len(w.grown)), hitAt: w.hitsAt(v.width + w.leans[v.lean].by),
	}
	for i, d := range w.wood.Defects {
		show, back := slices.Contains(grade.Show, d.Kind), slices.Contains(grade.Back, d.Kind)
		if d.On(layout.FaceA) && !show || d.On(layout.FaceB) && !back {
			p.blockA.add(i)
		}
		if d.On(layout.FaceB) && !show || d.On(layout.FaceA) && !back {
			p.blockB.add(i)
		}
	}
	return p
}

// blocked reports whether a piece that meets the defects in both sets fails its
// grade with either face showing.
func (p *piece) blocked(along, across set) bool {
	return meets3(p.blockA, along, across) && meets3(p.blockB, along, across)
}
