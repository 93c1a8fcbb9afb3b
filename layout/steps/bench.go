package steps

import "sawbill/layout"

// Lying is a piece of wood on the bench: what a board has become after some of its
// steps.
type Lying struct {
	Name string // its chalk name
	// Part is the bill's name of a finished piece; Offcut is the mark of a
	// leftover to keep.
	Part, Offcut string
	Wood         layout.Rect // in the board's frame; the box around it where the far edge tapers
	Thickness    layout.Length
	// Blank is the trued blank that it was cut from, nil of rough wood.
	Blank *Blank
}

// Needed reports which steps of a sheet must be done before all wood with these
// chalk names lies on the bench: finished pieces, offcuts, strips as they come off,
// blanks when they are trued. No others are.
func (s *Sheet) Needed(names map[string]bool) []bool {
	maker := map[string]int{}
	needed := make([]bool, len(s.Steps))
	for i := range s.Steps {
		st := &s.Steps[i]
		for _, id := range []string{st.Off, st.Rest} {
			if id != "" {
				maker[id] = i
			}
		}
	}
	for _, i := range s.readied(names) {
		s.need(i, needed, maker)
	}
	return needed
}

// Reached reports which steps of a sheet are done, and which others must be before
// the wood with these chalk names lies on the bench.
func (s *Sheet) Reached(names ...string) []bool {
	want := map[string]bool{}
	for _, name := range names {
		want[name] = true
	}
	reached := s.Needed(want)
	for i := range s.Steps {
		reached[i] = reached[i] || s.Steps[i].Done
	}
	return reached
}

// readied is the step after which each of the named pieces is ready.
func (s *Sheet) readied(names map[string]bool) map[string]int {
	at := map[string]int{}
	finished := map[string]bool{}
	for i := range s.Steps {
		st := &s.Steps[i]
		for _, p := range []Lying{st.off(nil), st.rest(nil)} {
			_, seen := at[p.Name]
			if names[p.Name] && !finished[p.Name] && (!seen || st.Operation == True || p.Part != "" || p.Offcut != "") {
				at[p.Name] = i
				finished[p.Name] = p.Part != "" || p.Offcut != ""
			}
		}
	}
	return at
}

func (s *Sheet) need(i int, needed []bool, maker map[string]int) {
	for !needed[i] {
		needed[i] = true
		before, made := maker[s.Steps[i].Piece]
		if !made {
			return
		}
		i = before
	}
}

// Bench is what lies there after the steps that are done. Waste is left out.
func (s *Sheet) Bench(done []bool) []Lying {
	whole := Lying{Name: s.Board.Mark, Wood: s.Board.Frame(), Thickness: s.Board.Thickness}
	lying := map[string]Lying{s.Board.Mark: whole}
	order := []string{s.Board.Mark}
	for i := range s.Steps {
		if !done[i] {
			continue
		}
		st := &s.Steps[i]
		delete(lying, st.Piece)
		blank := s.blankOf(st)
		if st.Off != "" {
			lying[st.Off] = st.off(blank)
			order = append(order, st.Off)
		}
		if st.Rest != "" {
			lying[st.Rest] = st.rest(blank)
			order = append(order, st.Rest)
		}
	}
	var list []Lying
	for _, id := range order {
		if p, still := lying[id]; still {
			list = append(list, p)
			delete(lying, id)
		}
	}
	return list
}

// blankOf is the trued blank that a step works on, or nil.
func (s *Sheet) blankOf(st *Step) *Blank {
	for i := range s.Blanks {
		if st.Blank != "" && s.Blanks[i].Name == st.Blank {
			return &s.Blanks[i]
		}
	}
	return nil
}

// off is the piece between stop or fence and blade as it lies there afterwards.
func (s *Step) off(blank *Blank) Lying {
	p := Lying{Name: Chalk(s.Off), Part: s.Part, Wood: s.OffWood, Thickness: s.OffSize.Thickness, Blank: blank}
	if !s.KeepsRest {
		p.Offcut = s.Offcut
	}
	return p
}

// rest is what lies beyond the kerf.
func (s *Step) rest(blank *Blank) Lying {
	p := Lying{Name: Chalk(s.Rest), Wood: s.RestWood, Thickness: s.RestSize.Thickness, Blank: blank}
	if s.KeepsRest {
		p.Offcut = s.Offcut
	}
	return p
}
