package files

import (
	"strings"

	"sawbill/layout"
)

// hidden reads a table of hidden defects for each species. How many there are must be
// said; a size that is left out is guessed when it is needed.
func (s *shopReader) hidden(value any) {
	table, species := s.entries("hidden", value)
	for _, name := range species {
		at, before := "hidden."+name, len(s.faults)
		said, keys := s.entries(at, table[name])
		if len(s.faults) > before {
			continue // it is no table
		}
		var h layout.Hidden
		for _, key := range keys {
			switch key {
			case "per_10bf":
				h.Per10BF = s.rate(at+".per_10bf", said[key])
			case "length":
				s.side(at+".length", said[key], &h.Length)
			case "width":
				s.side(at+".width", said[key], &h.Width)
			default:
				s.fault(at+"."+key, "", "the key is not known: "+layout.WantOneOf(key, []string{"per_10bf", "length", "width"}))
			}
		}
		if _, there := said["per_10bf"]; !there {
			s.fault(at, "", "want per_10bf, the mean number of hidden defects in ten board feet")
		}
		s.shop.Hidden[strings.TrimSpace(name)] = h
	}
}

func (s *shopReader) rate(key string, value any) layout.Rate {
	return layout.Rate(s.millionths(key, value, int64(layout.MaxRate), "a number", "0.5"))
}

// side is a length that is more than 0: it would otherwise stand for one that is not
// said.
func (s *shopReader) side(key string, value any, into *layout.Length) {
	before := len(s.faults)
	s.length(key, value, into)
	if *into == 0 && len(s.faults) == before {
		s.fault(key, textOf(value), "want a length of more than 0")
	}
}
