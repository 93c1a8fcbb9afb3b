package render

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/math/fixed"
)

// style is how a text is set.
type style struct {
	cap  float64 // height of capitals, mm
	bold bool
}

func plain() style  { return style{textCap, false} }
func strong() style { return style{textCap, true} }

// typesetter measures text. Its faces are not safe for parallel use, so every
// drawing has its own.
type typesetter struct{ regular, bold measure }

// measure is a face at a thousand units to the em.
type measure struct {
	face font.Face
	cap  float64 // height of capitals in ems
}

func newTypesetter() *typesetter {
	return &typesetter{newMeasure(goregular.TTF), newMeasure(gobold.TTF)}
}

func newMeasure(ttf []byte) measure {
	face := newFace(ttf, 1000)
	return measure{face, toFloat(face.Metrics().CapHeight) / 1000}
}

// newFace is one of the embedded fonts at a size in pixels to the em.
func newFace(ttf []byte, pixels float64) font.Face {
	f, err := opentype.Parse(ttf)
	if err != nil {
		panic("render: embedded font: " + err.Error())
	}
	face, err := opentype.NewFace(f, &opentype.FaceOptions{Size: pixels, DPI: 72, Hinting: font.HintingNone})
	if err != nil {
		panic("render: embedded font: " + err.Error())
	}
	return face
}

func toFloat(v fixed.Int26_6) float64 { return float64(v) / 64 }

func (t *typesetter) of(s style) measure {
	if s.bold {
		return t.bold
	}
	return t.regular
}

// em is the size of the font that gives capitals of a style, in millimetres.
func (t *typesetter) em(s style) float64 { return s.cap / t.of(s).cap }

// width is how long a text prints, in millimetres.
func (t *typesetter) width(text string, s style) float64 {
	return toFloat(font.MeasureString(t.of(s).face, text)) / 1000 * t.em(s)
}

// box is the paper that a text covers.
func (t *typesetter) box(text string, at Point, s style) Box {
	return Box{at.X, at.Y - 1.05*s.cap, at.X + t.width(text, s), at.Y + 0.3*s.cap}
}

// label is a text at the left end of its baseline.
func (t *typesetter) label(text string, at Point, s style) Label {
	text = strings.ReplaceAll(text, string(hold), " ")
	return Label{Text: text, Baseline: at, Cap: s.cap, Bold: s.bold, Ink: Black, Box: t.box(text, at, s)}
}

// wrap breaks a text into lines that are at most width long, between words
// where it can.
func (t *typesetter) wrap(text string, width float64, s style) []string {
	var lines []string
	line := ""
	for _, word := range strings.FieldsFunc(text, breaks) {
		longer := strings.TrimSpace(line + " " + word)
		if t.width(longer, s) <= width {
			line = longer
			continue
		}
		if line != "" {
			lines = append(lines, line)
		}
		for t.width(word, s) > width {
			n := t.fits(word, width, s)
			lines = append(lines, word[:n])
			word = strings.TrimPrefix(word[n:], string(hold))
		}
		line = word
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// breakName puts spaces into the name of a piece that is longer than width in strong
// type, each behind a mark within the name, so that both halves show they go together.
func (t *typesetter) breakName(name string, width float64) string {
	if t.width(name, strong()) <= width {
		return name
	}
	for i := len(name) - 1; i > 0; i-- {
		if strings.IndexByte("-/", name[i-1]) >= 0 && t.width(name[:i], strong()) <= width {
			return name[:i] + " " + t.breakName(name[i:], width)
		}
	}
	return name
}

// hold is a space at which a line does not break, as in a size or a count.
const hold = '\u00a0'

func breaks(r rune) bool { return unicode.IsSpace(r) && r != hold }

// held is a text that stays on one line.
func held(text string) string { return strings.ReplaceAll(text, " ", string(hold)) }

// fits is how many bytes of a word, at least one letter, go into a width.
func (t *typesetter) fits(word string, width float64, s style) int {
	for i := len(word) - 1; i > 0; i-- { // rather where words were held together
		if strings.HasPrefix(word[i:], string(hold)) && t.width(word[:i], s) <= width {
			return i
		}
	}
	_, n := utf8.DecodeRuneInString(word)
	for i := range word {
		if i > n && !insideNumber(word, i) && t.width(word[:i], s) <= width {
			n = i
		}
	}
	if insideNumber(word, n) { // a number runs on rather than break
		for n < len(word) && insideNumber(word, n) {
			n++
		}
	}
	return n
}

// insideNumber reports whether a break of a word at byte i would take a number
// or a fraction apart.
func insideNumber(word string, i int) bool {
	const number = "0123456789/-.~"
	return 0 < i && i < len(word) && strings.IndexByte(number, word[i-1]) >= 0 && strings.IndexByte(number, word[i]) >= 0
}

// cut shortens a text to a width, with an ellipsis where something is left out.
func (t *typesetter) cut(text string, width float64, s style) string {
	if t.width(text, s) <= width {
		return text
	}
	r := []rune(text)
	for len(r) > 1 && t.width(string(r)+"…", s) > width {
		r = r[:len(r)-1]
	}
	return string(r) + "…"
}
