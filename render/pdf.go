package render

import (
	"fmt"
	"io"
	"time"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// pointsPerMM turns millimetres into points, of which 72 make an inch.
const pointsPerMM = 72 / 25.4

// WritePDF writes pages as one PDF of lines and letters, which prints sharp on any
// printer, at its size. The file says that it was made at a time, so that the same
// pages give the same bytes. The error is the writer's.
func WritePDF(w io.Writer, pages []Page, made time.Time) error {
	doc := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm"})
	doc.SetCreationDate(made)
	doc.SetModificationDate(made)
	doc.SetCatalogSort(true)
	doc.SetAutoPageBreak(false, 0)
	doc.AddUTF8FontFromBytes(pdfFont, "", goregular.TTF)
	doc.AddUTF8FontFromBytes(pdfFont, "B", gobold.TTF)
	p := pdfPainter{doc, newTypesetter()}
	for _, page := range pages {
		p.page(page.Scene)
	}
	if err := doc.Output(w); err != nil {
		return fmt.Errorf("write pdf: %w", err)
	}
	return nil
}

// pdfFont is the name under which a PDF holds the embedded fonts.
const pdfFont = "go"

type pdfPainter struct {
	doc   *fpdf.Fpdf
	types *typesetter
}

func (p pdfPainter) page(s *Scene) {
	// As it stands: for "L" the library would swap the sides.
	p.doc.AddPageFormat("P", fpdf.SizeType{Wd: s.Width, Ht: s.Height})
	for _, shape := range s.Shapes {
		p.shape(shape)
	}
	for _, l := range s.Labels {
		p.label(l)
	}
}

func (p pdfPainter) shape(s Shape) {
	look := ""
	if s.Fill != NoInk && !s.Open {
		g := int(s.Fill.Grey())
		p.doc.SetFillColor(g, g, g)
		look = "F"
	}
	if s.Stroke != NoInk {
		g := int(s.Stroke.Grey())
		p.doc.SetDrawColor(g, g, g)
		p.doc.SetLineWidth(s.Weight)
		p.doc.SetDashPattern(append([]float64{}, s.Dash...), 0)
		look += "D"
	}
	switch {
	case look == "":
	case s.Open:
		for i := range s.Points[1:] {
			a, b := s.Points[i], s.Points[i+1]
			p.doc.Line(a.X, a.Y, b.X, b.Y)
		}
	default:
		p.doc.Polygon(points(s.Points), look)
	}
}

func points(list []Point) []fpdf.PointType {
	out := make([]fpdf.PointType, len(list))
	for i, p := range list {
		out[i] = fpdf.PointType{X: p.X, Y: p.Y}
	}
	return out
}

func (p pdfPainter) label(l Label) {
	look := ""
	if l.Bold {
		look = "B"
	}
	g := int(l.Ink.Grey())
	p.doc.SetTextColor(g, g, g)
	p.doc.SetFont(pdfFont, look, p.types.em(style{l.Cap, l.Bold})*pointsPerMM)
	p.doc.Text(l.Baseline.X, l.Baseline.Y, l.Text)
}
