package check

import "sawbill/layout"

// job is the plan under examination and what has been found so far.
type job struct {
	plan   *layout.Plan
	shop   *layout.Shop
	boards []*sawn // the well-formed cuttings of known boards
	whole  bool    // boards leaves none of the plan's boards out
	found  []Violation
}

// sawn is one board and the way it is cut.
type sawn struct {
	job   *job
	wood  *layout.Board
	plan  *layout.BoardPlan
	spots []*spot // all nodes, parents first
}

// spot is a node together with the way that leads to it.
type spot struct {
	*layout.Node
	parent *spot
	kids   []*spot
	blank  *spot // the rough crosscut piece that it lies in: a child of the root, or the root
	trued  *spot // the first trued node on the way, itself included; nil before truing
	strip  *spot // the child of the trued node that it lies in, or nil
	cuts   int   // how many cuts lead to it from the root, or from the trued node
	shift  layout.Length
	slack  layout.Length // what a rounded shift may be missed by
	part   *layout.Part  // the row of the bill, on a part leaf of a known part
	holds  bool          // there is a part at it or below it
}

func newJob(p *layout.Plan) *job {
	j := &job{plan: p, shop: p.Problem.Shop, whole: true}
	for i := range p.Boards {
		bp := &p.Boards[i]
		wood := j.wood(bp.Board)
		if wood == nil {
			j.reporter("name")(bp.Board, "", "no board of the stock has this mark")
			j.whole = false
			continue
		}
		if !j.formOfTree(bp) {
			j.whole = false
			continue
		}
		s := &sawn{job: j, wood: wood, plan: bp}
		s.replay(&spot{Node: bp.Root})
		j.boards = append(j.boards, s)
	}
	return j
}

// replay follows the tree below at, whose way is known.
func (s *sawn) replay(at *spot) {
	s.spots = append(s.spots, at)
	s.setStage(at)
	at.shift = s.shiftOf(at.blank.Length())
	if s.wood.Crook > 0 {
		at.slack = micrometre
	}
	if at.Part != "" {
		at.part = s.job.part(at.Part)
		at.holds = true
	}
	for _, child := range at.Children {
		kid := &spot{Node: child, parent: at}
		s.replay(kid)
		at.kids = append(at.kids, kid)
		at.holds = at.holds || kid.holds
	}
}

// setStage derives from the parent how far the breaking down has come.
func (s *sawn) setStage(at *spot) {
	up := at.parent
	if up == nil {
		at.blank = at
	} else {
		at.blank, at.trued, at.strip, at.cuts = up.blank, up.trued, up.strip, up.cuts+1
		if up.parent == nil {
			at.blank = at
		}
		if up.trued == up {
			at.strip = at
		}
	}
	if at.Trued && at.trued == nil {
		at.trued, at.cuts = at, 0
	}
}

func (j *job) wood(mark string) *layout.Board {
	stock := j.plan.Problem.Stock
	for i := range stock {
		if stock[i].Mark == mark {
			return &stock[i]
		}
	}
	return nil
}

func (j *job) part(name string) *layout.Part {
	bill := j.plan.Problem.Bill
	for i := range bill {
		if bill[i].Name == name {
			return &bill[i]
		}
	}
	return nil
}

// pieces is how many pieces a part leaf gives.
func (at *spot) pieces() int { return max(at.Layers, 1) }

// kerf is the kerf of the cut that separates the node from its neighbours.
func (s *sawn) kerf(at *spot) layout.Length {
	switch shop := s.job.shop; {
	case at.parent.Cut == layout.Crosscut:
		return shop.CrosscutKerf
	case at.parent.trued == nil:
		return shop.RoughRipKerf
	default:
		return shop.RipKerf
	}
}
