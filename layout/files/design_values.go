package files

import (
	"strconv"
	"strings"

	"sawbill/layout"
	"sawbill/layout/glueup"
)

// length reads a number in the units of the design, or a text such as "1/8".
func (d *designReader) length(into *layout.Length) reading {
	return func(key string, value any) {
		if l, ok := d.oneLength(key, value); ok {
			*into = l
		}
	}
}

func (d *designReader) oneLength(key string, value any) (layout.Length, bool) {
	l, err := layout.ParseLength(textOf(value), d.design.Units)
	if err != nil {
		d.fault(key, textOf(value), err.(*layout.LengthError).Want)
	}
	return l, err == nil
}

// lengths reads one length or a list of them.
func (d *designReader) lengths(into *[]layout.Length) reading {
	return func(key string, value any) {
		list, ok := value.([]any)
		if !ok {
			list = []any{value}
		}
		for _, v := range list {
			if l, ok := d.oneLength(key, v); ok {
				*into = append(*into, l)
			}
		}
	}
}

// rows reads a list of rows of letters. Spaces in a row are left out, so that it
// can be written to be read.
func (d *designReader) rows(into *[]string) reading {
	return func(key string, value any) {
		list, ok := value.([]any)
		if !ok {
			d.fault(key, textOf(value), `want a list of rows, such as ["abab", "baba"]`)
			return
		}
		for _, v := range list {
			*into = append(*into, strings.ReplaceAll(textOf(v), " ", ""))
		}
	}
}

func (d *designReader) text(into *string) reading {
	return func(key string, value any) {
		if _, ok := value.(string); !ok {
			d.fault(key, textOf(value), `want text in quotes, such as "ab"`)
			return
		}
		*into = textOf(value)
	}
}

func (d *designReader) yes(into *bool) reading {
	return func(key string, value any) {
		yes, ok := value.(bool)
		if !ok {
			d.fault(key, textOf(value), "want true or false")
		}
		*into = yes
	}
}

func (d *designReader) angle(into *layout.Angle) reading {
	return func(key string, value any) {
		a, err := layout.ParseAngle(textOf(value))
		if err != nil {
			d.fault(key, textOf(value), "want degrees from 0 to 45, with up to six decimals")
		}
		*into = a
	}
}

// word reads one of the known words and gives its place among them.
func (d *designReader) word(key string, value any, known []string) int {
	text := textOf(value)
	i, ok := placeOf(text, known)
	if !ok {
		d.fault(key, text, layout.WantOneOf(text, known))
	}
	return i
}

func (d *designReader) woods(key string, value any) {
	table, ok := value.(map[string]any)
	if !ok {
		d.fault(key, textOf(value), `want a table [woods] with a letter for each species, such as a = "ash"`)
		return
	}
	d.design.Woods = map[string]string{}
	for letter, species := range table {
		d.design.Woods[letter] = textOf(species)
	}
}

func (d *designReader) moisture(key string, value any) {
	n, ok := fixed([]byte(textOf(value)), 1)
	if !ok || n < 0 || n > 1000 {
		d.fault(key, textOf(value), "want percentage points, with at most one decimal, such as 4")
		return
	}
	d.design.Moisture = glueup.Moisture(n)
}

func (d *designReader) whole(into *int) reading {
	return func(key string, value any) {
		n, err := strconv.Atoi(textOf(value))
		if err != nil {
			d.fault(key, textOf(value), "want a whole number")
			return
		}
		*into = n
	}
}
