package files

import (
	"maps"
	"slices"
	"strings"

	"sawbill/layout"
)

// entries gives the keys of a table in order, or complains.
func (s *shopReader) entries(key string, value any) (map[string]any, []string) {
	table, ok := value.(map[string]any)
	if !ok && value != nil {
		s.fault(key, textOf(value), "want a table ["+key+"]")
	}
	return table, slices.Sorted(maps.Keys(table))
}

func (s *shopReader) prices(value any) {
	table, species := s.entries("price", value)
	for _, name := range species {
		price, err := layout.ParseMoney(textOf(table[name]))
		if err != nil {
			s.fault("price."+name, textOf(table[name]), "want a price such as 7.50")
			continue
		}
		s.shop.Price[name] = price
	}
}

// kinds adds kinds of defect. The standard grades take in the sound ones.
func (s *shopReader) kinds(value any) {
	table, names := s.entries("kinds", value)
	if len(names) == 0 {
		return
	}
	for _, name := range names {
		sound := s.word("kinds."+name, table[name], []string{"unsound", "sound"}) == 1
		s.shop.Kinds[kindOf(name)] = sound
	}
	var sound []layout.Kind
	for _, kind := range slices.Sorted(maps.Keys(s.shop.Kinds)) {
		if s.shop.Kinds[kind] {
			sound = append(sound, kind)
		}
	}
	s.shop.Grades[layout.OneFace] = layout.Grade{Back: sound}
	s.shop.Grades[layout.Sound] = layout.Grade{Show: sound, Back: sound}
}

func kindOf(word string) layout.Kind {
	return layout.Kind(strings.ToLower(strings.TrimSpace(word)))
}

func (s *shopReader) clearance(value any) {
	table, kinds := s.entries("clearance", value)
	for _, name := range kinds {
		key := "clearance." + name
		pair, ok := table[name].([]any)
		if !ok || len(pair) != 2 {
			s.fault(key, textOf(table[name]), `want [along, across], such as [1, "1/2"]`)
			continue
		}
		var c layout.Clearance
		s.length(key, pair[0], &c.Along)
		s.length(key, pair[1], &c.Across)
		s.shop.Clearance[kindOf(name)] = c
	}
}

func (s *shopReader) grades(value any) {
	table, names := s.entries("grades", value)
	for _, name := range names {
		at := "grades." + name
		lists, keys := s.entries(at, table[name])
		var g layout.Grade
		for _, key := range keys {
			switch key {
			case "show":
				g.Show = s.kindList(at+".show", lists[key])
			case "back":
				g.Back = s.kindList(at+".back", lists[key])
			default:
				s.fault(at+"."+key, "", "the key is not known: "+layout.WantOneOf(key, []string{"show", "back"}))
			}
		}
		s.shop.Grades[strings.ToLower(strings.TrimSpace(name))] = g
	}
}

// kindList reads a list of kinds; layout.NewProblem checks that they are known.
func (s *shopReader) kindList(key string, value any) []layout.Kind {
	list, ok := value.([]any)
	if !ok {
		s.fault(key, textOf(value), `want a list of kinds, such as ["knot", "pin"]`)
	}
	var kinds []layout.Kind
	for _, v := range list {
		kinds = append(kinds, kindOf(textOf(v)))
	}
	return kinds
}
