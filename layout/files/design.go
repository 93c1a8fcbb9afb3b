package files

import (
	"io"
	"maps"
	"slices"
	"strings"

	"sawbill/layout"
	"sawbill/layout/glueup"
)

// LoadDesign reads a design and the shop that it is worked out for, and works it
// out. The error, of type layout.Complaints, has all that is wrong with the files.
func LoadDesign(design, shopSource Source) (*glueup.Work, error) {
	shop, found := loadShop(shopSource)
	if shop == nil || found.Err() != nil {
		return nil, found
	}
	d, found := readDesign(design.Reader, design.Name, shop.Shop)
	if d.design == nil {
		return nil, found
	}
	work, more := glueup.New(d.design, shop.Shop)
	if all := d.merged(more); all.Err() != nil {
		return nil, all
	}
	return work, nil
}

// designReader fills a design from the keys of a file.
type designReader struct {
	name   string
	lines  map[string]int
	design *glueup.Design
	faults layout.Complaints
}

// readDesign reads a design file. The design in the reader is nil where not even
// its pattern is certain.
func readDesign(r io.Reader, name string, shop *layout.Shop) (*designReader, layout.Complaints) {
	keys, lines, faults := readKeys(r, layout.DesignTable, name)
	d := &designReader{name: name, lines: lines, faults: faults}
	if len(faults) > 0 {
		return d, d.faults
	}
	design := &glueup.Design{Units: shop.Units}
	if units, ok := keys["units"]; ok {
		design.Units = layout.Unit(d.word("units", units, []string{"in", "mm"}))
	}
	table := d.pattern(keys, design)
	certain := len(d.faults) == 0
	d.design = design
	d.table("", keys, d.headKeys(table))
	if !certain {
		d.design = nil
	}
	return d, d.merged(nil)
}

func (d *designReader) fault(key, found, want string) {
	d.faults = append(d.faults, d.placed(layout.Complaint{
		Table: layout.DesignTable, Row: layout.WholeTable, Column: key, Found: found, Want: want,
	}))
}

// placed gives a complaint the file and the line of its key. Of a list it is the
// line on which that begins.
func (d *designReader) placed(c layout.Complaint) layout.Complaint {
	key, _, _ := strings.Cut(c.Column, "[")
	c.File, c.Line = d.name, lineOf(d.lines, key)
	return c
}

// merged puts the reader's complaints and those of the geometry together, in the
// order of their lines. Of a key that could not be read the geometry knows nothing.
func (d *designReader) merged(more layout.Complaints) layout.Complaints {
	all := slices.Clone(d.faults)
	unread := map[string]bool{}
	for _, c := range d.faults {
		unread[c.Column] = true
	}
	for _, c := range more {
		if key, _, _ := strings.Cut(c.Column, "["); !unread[key] && !unread[c.Column] {
			all = append(all, d.placed(c))
		}
	}
	slices.SortStableFunc(all, func(a, b layout.Complaint) int { return a.Line - b.Line })
	return all
}

// reading is how the value of one key is read.
type reading func(key string, value any)

// table reads the keys of a table, each in its way, and complains of the others.
func (d *designReader) table(prefix string, keys map[string]any, known map[string]reading) {
	for _, key := range slices.Sorted(maps.Keys(keys)) {
		full := prefix + key
		if read, ok := known[key]; ok {
			read(full, keys[key])
			continue
		}
		d.fault(full, "", "the key is not known: "+layout.WantOneOf(key, slices.Sorted(maps.Keys(known))))
	}
}

// inTable reads a value that is a table.
func (d *designReader) inTable(known map[string]reading) reading {
	return func(key string, value any) {
		keys, ok := value.(map[string]any)
		if !ok {
			d.fault(key, textOf(value), "want a table ["+key+"]")
			return
		}
		d.table(key+".", keys, known)
	}
}

// headKeys are the keys of a design but those of its pattern, and the table of the
// pattern.
func (d *designReader) headKeys(pattern map[string]reading) map[string]reading {
	v := d.design
	known := map[string]reading{
		"units": ignored, "pattern": ignored, // read first
		"name":      d.text(&v.Name),
		"thickness": d.length(&v.Thickness), "length": d.length(&v.Length), "width": d.length(&v.Width),
		"trim": d.length(&v.Trim), "flatten": d.length(&v.Flatten), "panel_flatten": d.length(&v.PanelFlatten),
		"spare_slices": d.whole(&v.SpareSlices), "spare_strips": d.whole(&v.SpareStrips),
		"food": d.yes(&v.Food), "moisture_change": d.moisture,
		"woods": d.woods,
		"frame": func(key string, value any) {
			v.Frame = &glueup.Frame{}
			d.inTable(map[string]reading{"width": d.length(&v.Frame.Width), "wood": d.text(&v.Frame.Wood)})(key, value)
		},
	}
	if v.Pattern != nil {
		known[v.Pattern.Name()] = d.inTable(pattern)
		return known
	}
	for _, name := range patternNames() {
		known[name] = ignored // which of them is meant is not certain
	}
	return known
}

func ignored(string, any) {}
