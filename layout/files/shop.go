package files

import (
	"io"
	"maps"
	"slices"
	"strings"

	"sawbill/layout"
)

// Shop is what a shop file holds, over the defaults of its units.
type Shop struct {
	*layout.Shop

	name  string
	lines map[string]int // by key, such as price.ash
}

// ReadShop reads a shop file; name is the file's name in complaints. What could
// be read is returned even where there are complaints; but a nil Shop means
// that not even the units are certain, and nothing else should be read with it.
func ReadShop(r io.Reader, name string) (*Shop, layout.Complaints) {
	keys, lines, faults := readKeys(r, layout.ShopTable, name)
	if len(faults) > 0 {
		return nil, faults
	}
	s := &shopReader{name: name, lines: lines}
	units := layout.Unit(s.word("units", keys["units"], []string{"in", "mm"}))
	certain := len(s.faults) == 0
	s.shop = layout.DefaultShop(units)
	s.kinds(keys["kinds"]) // before the grades, which name them
	for _, key := range slices.Sorted(maps.Keys(keys)) {
		s.key(key, keys[key])
	}
	if !certain {
		return nil, s.faults
	}
	return &Shop{s.shop, name, s.lines}, s.faults
}

// shopReader fills a shop from the keys of a file.
type shopReader struct {
	name   string
	lines  map[string]int
	shop   *layout.Shop
	faults layout.Complaints
}

func (s *shopReader) fault(key, found, want string) {
	s.faults = append(s.faults, layout.Complaint{
		Table: layout.ShopTable, Row: layout.WholeTable, Column: key, Found: found, Want: want,
		File: s.name, Line: lineOf(s.lines, key),
	})
}

// lineOf is the line of a key, or of the table that it is in, or 0.
func lineOf(lines map[string]int, key string) int {
	for key != "" {
		if line, ok := lines[key]; ok {
			return line
		}
		key = key[:max(0, strings.LastIndex(key, "."))]
	}
	return 0
}

// key reads one key of the file, other than units and kinds.
func (s *shopReader) key(key string, value any) {
	lengths := s.shopLengths()
	if into, ok := lengths[key]; ok {
		s.length(key, value, into)
		return
	}
	switch key {
	case "units", "kinds": // read first
	case "fraction":
		s.fraction(value)
	case "offcut_credit":
		s.credit(value)
	case "rip_again":
		if again, ok := value.(bool); ok {
			s.shop.RipAgain = again
		} else {
			s.fault(key, textOf(value), "want true or false")
		}
	case "price_unit":
		s.shop.PriceUnit = layout.PriceUnit(s.word(key, value, []string{"bf", "m3"}))
	case "price":
		s.prices(value)
	case "clearance":
		s.clearance(value)
	case "grades":
		s.grades(value)
	case "hidden":
		s.hidden(value)
	case "quote":
		s.charges(value)
	default:
		known := append(slices.Sorted(maps.Keys(lengths)), "units", "kinds", "fraction", "offcut_credit",
			"rip_again", "price_unit", "price", "clearance", "grades", "hidden", "quote")
		s.fault(key, "", "the key is not known: "+layout.WantOneOf(key, known))
	}
}

func (s *shopReader) shopLengths() map[string]*layout.Length {
	p := s.shop
	return map[string]*layout.Length{
		"rip_kerf": &p.RipKerf, "crosscut_kerf": &p.CrosscutKerf,
		"rough_rip_kerf": &p.RoughRipKerf, "resaw_kerf": &p.ResawKerf,
		"end_trim": &p.EndTrim, "edge_joint": &p.EdgeJoint, "end_square": &p.EndSquare,
		"face_skim": &p.FaceSkim, "snipe": &p.Snipe, "panel_square": &p.PanelSquare,
		"length_allowance": &p.LengthAllowance, "width_allowance": &p.WidthAllowance,
		"thickness_allowance": &p.ThicknessAllowance,
		"min_blank":           &p.MinBlank, "max_blank": &p.MaxBlank,
		"jointer_width": &p.JointerWidth, "planer_width": &p.PlanerWidth,
		"min_rip_length": &p.MinRipLength, "min_rip": &p.MinRip, "min_crosscut": &p.MinCrosscut,
		"min_offcut_length": &p.MinOffcutLength, "min_offcut_width": &p.MinOffcutWidth,
	}
}
