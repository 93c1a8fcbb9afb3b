package files

import (
	"regexp"
	"strings"

	"sawbill/layout"
)

// defects reads a list of defects, separated by ; or |:
//
//	defect = kind ( " " | "@" ) along [ "x" across ] [ "/" face ]
//	       | kind ( " " | "@" ) centre "x" centre "d" diameter [ "/" face ]
//	along, across = [ length ] ( ".." | "to" | "–" ) [ length ]
//	face   = "A" | "B"
//
// After @ a comma may stand for x. An end left out is the board's, and so is
// the whole width; without a face a defect goes through. Half of an odd
// diameter goes outward. What reaches over the board is left so.
func (c cells) defects(text string, frame layout.Rect) []layout.Defect {
	var list []layout.Defect
	for item := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == ';' || r == '|' }) {
		item = strings.Join(strings.Fields(item), " ")
		if item == "" {
			continue
		}
		d, want := parseDefect(c.plain(item), frame, c.units)
		if want != "" && c.decimalComma() && strings.Contains(item, "@") && strings.Contains(item, ",") {
			want = `want x in the place of the comma after @, such as "knot 31..33 x 1,5..3": here a comma is the decimal mark`
		}
		if want != "" {
			c.fault("defects", item, want)
			continue
		}
		list = append(list, d)
	}
	return list
}

const (
	wantDefect = `want a kind and a place, such as "knot 31..33 x 1-1/2..3 /B" or "pin 50 x 2 d1/4"`
	wantRange  = `want a range such as 31..33, or a centre with a diameter such as 50 x 2 d1/4`
	wantRound  = `want a round defect with its centre along and across, such as 50 x 2 d1/4`
	wantFace   = `want /A or /B, or nothing for a defect that goes through`
	wantOrder  = `want a range that ends after it begins`
)

var (
	kindAndPlace = regexp.MustCompile(`^(\pL[\pL\pN_-]*)(?: ?(@) ?| )(.+)$`)
	facePart     = regexp.MustCompile(`^(.*?) ?/ ?(\pL+)$`)
	crossPart    = regexp.MustCompile(`^(.*?) ?[x×X] ?(.*)$`)
	roundPart    = regexp.MustCompile(`^(.*?) ?[dDøØ⌀] ?(.*)$`)
)

// parseDefect reads one defect of a board; want says what is wrong with it.
func parseDefect(item string, frame layout.Rect, units layout.Unit) (d layout.Defect, want string) {
	m := kindAndPlace.FindStringSubmatch(item)
	if m == nil {
		return d, wantDefect
	}
	d.Kind = layout.Kind(strings.ToLower(m[1]))
	place := m[3]
	if f := facePart.FindStringSubmatch(place); f != nil {
		switch strings.ToUpper(f[2]) {
		case "A":
			d.Face = layout.FaceA
		case "B":
			d.Face = layout.FaceB
		default:
			return d, wantFace
		}
		place = f[1]
	}
	if m[2] == "@" {
		place = strings.Replace(place, ",", " x ", 1)
	}
	p := placer{units: units}
	d.Rect = p.rect(place, frame)
	return d, p.want
}

// placer reads places on a board and keeps the first thing wrong with them.
type placer struct {
	units layout.Unit
	want  string
}

func (p *placer) fail(want string) {
	if p.want == "" {
		p.want = want
	}
}

func (p *placer) length(text string) layout.Length {
	l, err := layout.ParseLength(text, p.units)
	if err != nil {
		p.fail(`which has no length in "` + text + `": ` + err.(*layout.LengthError).Want)
	}
	return l
}

func (p *placer) rect(place string, frame layout.Rect) layout.Rect {
	along, across := place, ""
	if m := crossPart.FindStringSubmatch(place); m != nil {
		along, across = m[1], m[2]
		if across == "" {
			p.fail(wantDefect)
		}
	}
	if m := roundPart.FindStringSubmatch(across); m != nil {
		return p.round(along, m[1], m[2])
	}
	if roundPart.MatchString(along) {
		p.fail(wantRound)
	}
	x := p.span(along, frame.Along())
	y := frame.Across()
	if across != "" {
		y = p.span(across, y)
	}
	return layout.Rect{X1: x.Lo, X2: x.Hi, Y1: y.Lo, Y2: y.Hi}
}

func (p *placer) round(along, across, diameter string) layout.Rect {
	x, y, d := p.length(along), p.length(across), p.length(diameter)
	if p.want == "" && d == 0 {
		p.fail("want a diameter of more than 0")
	}
	half := (d + 1) / 2
	return layout.Rect{X1: x - half, X2: x + half, Y1: y - half, Y2: y + half}
}

// span reads a range. An en dash parts it only where nothing else does, because
// it may also stand in a mixed number.
func (p *placer) span(text string, whole layout.Span) layout.Span {
	text = strings.ReplaceAll(text, "…", "..")
	for _, mark := range []string{"..", "to", "TO", "To", "–", "—"} {
		lo, hi, ok := strings.Cut(text, mark)
		if !ok {
			continue
		}
		s := whole
		if lo = strings.TrimSpace(lo); lo != "" {
			s.Lo = p.length(lo)
		}
		if hi = strings.TrimSpace(hi); hi != "" {
			s.Hi = p.length(hi)
		}
		if s.Lo >= s.Hi && lo != "" && hi != "" {
			p.fail(wantOrder)
		} else if s.Lo >= s.Hi && whole.Len() > 0 {
			p.fail("which lies wholly off the board")
		}
		return s
	}
	p.fail(wantRange)
	return whole
}
