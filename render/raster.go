package render

import (
	"image"
	"image/draw"

	"github.com/fogleman/gg"
	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// dpi is the resolution of a sheet.
const dpi = 300

const pixelsPerMM = dpi / 25.4

// raster paints a scene.
func raster(s *Scene) *image.Gray {
	w, h := int(s.Width*pixelsPerMM+0.5), int(s.Height*pixelsPerMM+0.5)
	c := gg.NewContext(w, h)
	c.SetRGB255(255, 255, 255)
	c.Clear()
	for _, shape := range s.Shapes {
		paintShape(c, shape)
	}
	painter := textPainter{c, newTypesetter(), map[style]font.Face{}}
	for _, l := range s.Labels {
		painter.paint(l)
	}
	grey := image.NewGray(image.Rect(0, 0, w, h))
	draw.Draw(grey, grey.Bounds(), c.Image(), image.Point{}, draw.Src)
	return grey
}

func paintShape(c *gg.Context, s Shape) {
	for _, p := range s.Points {
		c.LineTo(p.X*pixelsPerMM, p.Y*pixelsPerMM)
	}
	if !s.Open {
		c.ClosePath()
	}
	if s.Fill != NoInk {
		ink(c, s.Fill)
		c.FillPreserve()
	}
	if s.Stroke != NoInk {
		dashes := make([]float64, len(s.Dash))
		for i, d := range s.Dash {
			dashes[i] = d * pixelsPerMM
		}
		c.SetDash(dashes...)
		c.SetLineWidth(s.Weight * pixelsPerMM)
		ink(c, s.Stroke)
		c.StrokePreserve()
	}
	c.ClearPath()
}

func ink(c *gg.Context, i Ink) {
	g := int(i.Grey())
	c.SetRGB255(g, g, g)
}

// textPainter keeps one face for each style of a page.
type textPainter struct {
	context *gg.Context
	types   *typesetter
	faces   map[style]font.Face
}

func (p textPainter) paint(l Label) {
	s := style{l.Cap, l.Bold}
	if p.faces[s] == nil {
		ttf := goregular.TTF
		if l.Bold {
			ttf = gobold.TTF
		}
		p.faces[s] = newFace(ttf, p.types.em(s)*pixelsPerMM)
	}
	p.context.SetFontFace(p.faces[s])
	ink(p.context, l.Ink)
	p.context.DrawString(l.Text, l.Baseline.X*pixelsPerMM, l.Baseline.Y*pixelsPerMM)
}
