package steps

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// sawyer cuts as told, knowing nothing of the plan: only the columns of the
// steps, the kerfs of the shop and the sizes of the boards.
type sawyer struct {
	shop   *layout.Shop
	pieces map[string]Size
	parts  map[string][]Size
	kept   map[string]Size
	seen   map[string]bool
	// tapered boards are cut as boxes; what comes off may be smaller than that.
	tapered map[string]bool
}

func newSawyer(p *layout.Problem) *sawyer {
	s := &sawyer{
		p.Shop, map[string]Size{}, map[string][]Size{}, map[string]Size{},
		map[string]bool{}, map[string]bool{},
	}
	for i := range p.Stock {
		b := &p.Stock[i]
		s.put(b.Mark, Size{b.Length, b.FullWidth(), b.Thickness})
		s.tapered[b.Mark] = b.Width != b.TipWidth
	}
	return s
}

func (s *sawyer) put(id string, size Size) error {
	if s.seen[id] {
		return fmt.Errorf("id %s given twice", id)
	}
	s.seen[id] = true
	s.pieces[id] = size
	return nil
}

func (s *sawyer) do(st *Step) error {
	p, ok := s.pieces[st.Piece]
	if !ok {
		return fmt.Errorf("step %d: no piece %s", st.Number, st.Piece)
	}
	delete(s.pieces, st.Piece)
	off, rest, err := s.saw(st, p)
	if err != nil {
		return fmt.Errorf("step %d (%s): %w", st.Number, st.Operation, err)
	}
	if st.Off != "" {
		if err := s.lay(st, off); err != nil {
			return err
		}
	}
	if st.Rest != "" {
		if rest.Length <= 0 || rest.Width <= 0 {
			return fmt.Errorf("step %d: rest %s is nothing", st.Number, st.Rest)
		}
		if st.KeepsRest {
			s.kept[st.Offcut] = rest
		}
		return s.put(st.Rest, rest)
	}
	return nil
}

func (s *sawyer) lay(st *Step, off Size) error {
	if off != st.OffSize && !s.tapered[st.Board] {
		return fmt.Errorf("step %d: off is %v, not %v", st.Number, off, st.OffSize)
	}
	if off.Width < st.OffSize.Width || off.Length != st.OffSize.Length {
		return fmt.Errorf("step %d: off %v cannot be %v", st.Number, off, st.OffSize)
	}
	if st.Part != "" {
		s.parts[st.Part] = append(s.parts[st.Part], st.OffSize)
	}
	if st.Offcut != "" && !st.KeepsRest {
		s.kept[st.Offcut] = st.OffSize
	}
	return s.put(st.Off, st.OffSize)
}

// saw gives what is off and what is left beyond the kerf.
func (s *sawyer) saw(st *Step, p Size) (off, rest Size, err error) {
	off, rest = p, p
	switch st.Operation {
	case True, Plane:
		if st.OffSize.Length > p.Length || st.OffSize.Width > p.Width || st.Setting > p.Thickness {
			return off, rest, fmt.Errorf("%v cannot become %v", p, st.OffSize)
		}
		off = st.OffSize
		off.Thickness = st.Setting
		return off, rest, nil
	case Crosscut:
		off.Length, rest.Length, err = split(p.Length, st.Setting, s.shop.CrosscutKerf)
	case Rip:
		off.Width, rest.Width, err = split(p.Width, st.Setting, s.shop.RipKerf)
	case RoughRip:
		off.Width, rest.Width, err = split(p.Width, st.Setting, s.shop.RoughRipKerf)
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

// cutAll has the sawyer cut a whole plan and compares what is on the floor with
// what the plan promises.
func cutAll(plan *layout.Plan) error {
	s := newSawyer(&plan.Problem)
	number := 0
	for _, sheet := range All(plan) {
		for i := range sheet.Steps {
			number++
			if sheet.Steps[i].Number != number {
				return fmt.Errorf("step %d is numbered %d", number, sheet.Steps[i].Number)
			}
			if err := s.do(&sheet.Steps[i]); err != nil {
				return err
			}
		}
	}
	return s.compare(plan)
}

func (s *sawyer) compare(plan *layout.Plan) error {
	kept := 0
	for _, b := range plan.Boards {
		board := plan.Problem.Board(b.Board)
		for _, leaf := range b.Root.Leaves() {
			switch {
			case leaf.Part != "":
				if err := s.takePart(plan, leaf); err != nil {
					return err
				}
			case leaf.Offcut != "":
				kept++
				got := s.kept[leaf.Offcut]
				clean := board.CleanOffcut(leaf.Rect)
				if got.Length != leaf.Length() || got.Width < clean.Width() || !s.tapered[b.Board] && got.Width != leaf.Width() {
					return fmt.Errorf("offcut %s is %v, not %v", leaf.Offcut, got, leaf.Rect)
				}
			}
		}
	}
	if len(s.kept) != kept {
		return fmt.Errorf("%d offcuts kept, not %d", len(s.kept), kept)
	}
	for name, left := range s.parts {
		if len(left) > 0 {
			return fmt.Errorf("%d too many of %s", len(left), name)
		}
	}
	return nil
}

func (s *sawyer) takePart(plan *layout.Plan, leaf *layout.Node) error {
	part := plan.Problem.Part(leaf.Part)
	want := Size{leaf.Length(), leaf.Width(), part.CutThickness(s.shop)}
	i := slices.Index(s.parts[leaf.Part], want)
	if i < 0 {
		return fmt.Errorf("no %s of %v among %v", leaf.Part, want, s.parts[leaf.Part])
	}
	s.parts[leaf.Part] = slices.Delete(s.parts[leaf.Part], i, i+1)
	return nil
}
