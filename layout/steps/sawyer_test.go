package steps

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// timber is a piece of wood on the sawyer's bench: across the grain by how far it
// reaches on its two faces, measured from anywhere.
type timber struct {
	length, thickness layout.Length
	Section
}

// size is that of a timber with a face on the table.
func (p timber) size(down layout.Face) Size { return Size{p.length, p.face(down).Len(), p.thickness} }

func (p timber) face(down layout.Face) layout.Span {
	if down == layout.FaceB {
		return p.B
	}
	return p.A
}

// sawyer cuts as told, knowing nothing of the plan: only the columns of the
// steps, the kerfs of the shop and the sizes of the boards.
type sawyer struct {
	shop   *layout.Shop
	pieces map[string]timber
	parts  map[string][]timber
	kept   map[string]timber
	seen   map[string]bool
	// tapered boards are cut as boxes; what comes off may be smaller than that.
	tapered map[string]bool
}

func newSawyer(p *layout.Problem) *sawyer {
	s := &sawyer{
		p.Shop, map[string]timber{}, map[string][]timber{}, map[string]timber{},
		map[string]bool{}, map[string]bool{},
	}
	for i := range p.Stock {
		b := &p.Stock[i]
		across := layout.Span{Hi: b.FullWidth()}
		s.put(b.Mark, timber{b.Length, b.Thickness, Section{across, across}})
		s.tapered[b.Mark] = b.Width != b.TipWidth
	}
	return s
}

func (s *sawyer) put(id string, piece timber) error {
	if s.seen[id] {
		return fmt.Errorf("id %s given twice", id)
	}
	s.seen[id] = true
	s.pieces[id] = piece
	return nil
}

func (s *sawyer) do(st *Step) error {
	p, ok := s.pieces[st.Piece]
	if !ok {
		return fmt.Errorf("step %d: no piece %s", st.Number, st.Piece)
	}
	delete(s.pieces, st.Piece)
	off, rest, err := s.work(st, p)
	if err != nil {
		return fmt.Errorf("step %d (%s): %w", st.Number, st.Operation, err)
	}
	if st.Off != "" {
		if err := s.lay(st, off); err != nil {
			return err
		}
	}
	if st.Rest != "" {
		if rest.length <= 0 || rest.A.Len() <= 0 || rest.B.Len() <= 0 || rest.thickness <= 0 {
			return fmt.Errorf("step %d: rest %s is %v", st.Number, st.Rest, rest)
		}
		if st.KeepsRest {
			s.kept[st.Offcut] = rest
		}
		return s.put(st.Rest, rest)
	}
	return nil
}

// lay puts down what is off, as the step says it now is.
func (s *sawyer) lay(st *Step, off timber) error {
	size := off.size(st.Down)
	if (size.Length != st.OffSize.Length || size.Thickness != st.OffSize.Thickness) ||
		!same(size.Width, st.OffSize.Width) && (!s.tapered[st.Board] || size.Width < st.OffSize.Width) {
		return fmt.Errorf("step %d: off is %v, not %v", st.Number, size, st.OffSize)
	}
	if off.A.Len() <= 0 || off.B.Len() <= 0 {
		return fmt.Errorf("step %d: off has no face: %v", st.Number, off)
	}
	surplus := size.Width - st.OffSize.Width
	off.A.Hi, off.B.Hi = off.A.Hi-surplus, off.B.Hi-surplus
	if st.Part != "" {
		s.parts[st.Part] = append(s.parts[st.Part], off)
	}
	if st.Offcut != "" && !st.KeepsRest {
		s.kept[st.Offcut] = off
	}
	return s.put(st.Off, off)
}

// work gives what is off and what is left beyond the kerf.
func (s *sawyer) work(st *Step, p timber) (off, rest timber, err error) {
	off, rest = p, p
	switch st.Operation {
	case True:
		across := layout.Span{Hi: st.OffSize.Width}
		off = timber{st.OffSize.Length, st.Setting, Section{across, across}}
		if off.length > p.length || across.Hi > p.A.Len() || off.thickness > p.thickness {
			err = fmt.Errorf("%v cannot become %v", p, st.OffSize)
		}
	case Plane:
		if off.thickness = st.Setting; off.thickness > p.thickness || !p.Square() {
			err = fmt.Errorf("%v is planed to %v", p, st.Setting)
		}
	case Crosscut:
		off.length, rest.length, err = split(p.length, st.Setting, s.shop.CrosscutKerf)
	case Resaw:
		off.thickness, rest.thickness, err = split(p.thickness, st.Setting, s.shop.ResawKerf)
	case Rip, BevelRip:
		return s.rip(st, p, s.shop.BevelKerf(st.Angle))
	case RoughRip:
		return s.rip(st, p, s.shop.RoughRipKerf)
	default:
		err = fmt.Errorf("unknown operation %q", st.Operation)
	}
	return off, rest, err
}

func split(whole, setting, kerf layout.Length) (off, rest layout.Length, err error) {
	if setting <= 0 || setting > whole {
		return 0, 0, fmt.Errorf("setting %v on a piece of %v", setting, whole)
	}
	return setting, max(0, whole-setting-kerf), nil
}

// rip lays the piece down and rips it. The blade tilts away from the fence: over
// the table it is further from it.
func (s *sawyer) rip(st *Step, p timber, kerf layout.Length) (off, rest timber, err error) {
	if err := s.against(st, p); err != nil {
		return off, rest, err
	}
	table, tilt := p.face(st.Down), st.Angle.Lean(p.thickness)
	at, above := table.Lo+st.Setting, table.Lo+st.Setting+tilt
	if st.From == Far {
		at, above = table.Hi-st.Setting, table.Hi-st.Setting-tilt
	}
	if table.Len() < st.Setting-layout.Micrometre || st.Setting <= 0 {
		return off, rest, fmt.Errorf("setting %v on a piece of %v", st.Setting, p)
	}
	a, b := at, above
	if st.Down == layout.FaceB {
		a, b = above, at
	}
	off, rest = p, p
	if st.From == Far {
		off.A.Lo, off.B.Lo, rest.A.Hi, rest.B.Hi = a, b, a-kerf, b-kerf
	} else {
		off.A.Hi, off.B.Hi, rest.A.Lo, rest.B.Lo = a, b, a+kerf, b+kerf
	}
	if st.NoCut && !same(a, p.A.Hi) && !s.tapered[st.Board] {
		return off, rest, fmt.Errorf("no cut, but %v is not %v", p, st.Setting)
	}
	if st.NoCut {
		off = p
	}
	return off, rest, nil
}

// against holds an edge against the fence: it must not hang over the edge that
// the setting is read from, and where it matters the step says what lies down.
func (s *sawyer) against(st *Step, p timber) error {
	table, over := p.face(st.Down), p.face(other(st.Down))
	near := st.From == Reference
	leans := near && p.A.Lo != p.B.Lo || !near && p.A.Hi != p.B.Hi
	switch {
	case st.NoCut:
		return nil
	case (leans || st.Angle > 0) && st.Down == layout.Through:
		return fmt.Errorf("which face of %v is down?", p)
	case near && over.Lo < table.Lo, !near && over.Hi > table.Hi:
		return fmt.Errorf("%v hangs over at the fence with face %v down", p, st.Down)
	}
	return nil
}

func other(f layout.Face) layout.Face {
	if f == layout.FaceB {
		return layout.FaceA
	}
	return layout.FaceB
}

// cutAll has the sawyer cut a whole plan and compares what is on the floor with
// what the plan promises.
func cutAll(plan *layout.Plan) error {
	s := newSawyer(&plan.Problem)
	for i, st := range List(plan, ByBoard) {
		if st.Number != i+1 {
			return fmt.Errorf("step %d is numbered %d", i+1, st.Number)
		}
		if err := s.do(st); err != nil {
			return err
		}
	}
	return s.compare(plan)
}

func (s *sawyer) compare(plan *layout.Plan) error {
	kept := 0
	var err error
	for _, b := range plan.Boards {
		board := plan.Problem.Board(b.Board)
		b.Root.LeavesByBlank(func(blank, leaf *layout.Node) {
			switch {
			case err != nil:
			case leaf.Part != "":
				err = s.takeParts(plan, leaf)
			case leaf.Offcut != "":
				kept++
				err = s.keeps(leaf, board.CleanOffcutIn(blank.Length(), leaf.Rect), b.Board)
			}
		})
	}
	if err == nil && len(s.kept) != kept {
		err = fmt.Errorf("%d offcuts kept, not %d", len(s.kept), kept)
	}
	for name, left := range s.parts {
		if err == nil && len(left) > 0 {
			err = fmt.Errorf("%d too many of %s", len(left), name)
		}
	}
	return err
}

// keeps reports whether an offcut is what the plan says; beside a bevel it may be
// wider on face A than on face B.
func (s *sawyer) keeps(leaf *layout.Node, clean layout.Rect, board string) error {
	got := s.kept[leaf.Offcut]
	wide := got.A.Len()
	if got.length != leaf.Length() || wide < clean.Width()-layout.Micrometre ||
		!s.tapered[board] && !same(wide, leaf.Width()) {
		return fmt.Errorf("offcut %s is %v, not %v", leaf.Offcut, got, leaf.Rect)
	}
	return nil
}

// takeParts takes the pieces of a leaf from what was cut.
func (s *sawyer) takeParts(plan *layout.Plan, leaf *layout.Node) error {
	part := plan.Problem.Part(leaf.Part)
	lean := part.Bevel.Lean(s.shop.LayerOf(leaf, part))
	thick := s.shop.LayerOf(leaf, part) - s.shop.ThicknessAllowance // after the final planing
	for range leaf.Pieces() {
		i := slices.IndexFunc(s.parts[leaf.Part], func(p timber) bool {
			return p.length == leaf.Length() && p.thickness == thick && same(p.A.Len(), leaf.Width()) &&
				same(p.B.Lo-p.A.Lo, lean) && same(p.B.Hi-p.A.Hi, lean)
		})
		if i < 0 {
			return fmt.Errorf("no %s of %v, %v thick, leaning by %v among %v", leaf.Part, leaf.Rect, thick, lean, s.parts[leaf.Part])
		}
		s.parts[leaf.Part] = slices.Delete(s.parts[leaf.Part], i, i+1)
	}
	return nil
}
