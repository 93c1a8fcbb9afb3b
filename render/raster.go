package render

import (
	"image"
	"image/color"

	"github.com/fogleman/gg"
	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/math/fixed"
)

// dpi is the resolution of a sheet.
const dpi = 300

const pixelsPerMM = dpi / 25.4

// greys is how many tones a sheet is kept in: few enough to pack well, enough
// for smooth edges. More than 16 take a whole byte each, which encodes fastest.
const greys = 32

// raster paints a scene.
func raster(s *Scene) *image.Paletted {
	w, h := int(s.Width*pixelsPerMM+0.5), int(s.Height*pixelsPerMM+0.5)
	c := gg.NewContext(w, h)
	c.SetRGB255(255, 255, 255)
	c.Clear()
	for _, shape := range s.Shapes {
		paintShape(c, shape)
	}
	painted := c.Image().(*image.RGBA)
	painter := textPainter{painted, newTypesetter(), map[style]font.Face{}}
	for _, l := range s.Labels {
		painter.paint(l)
	}
	return toGreys(painted)
}

// toGreys keeps the nearest of the evenly spaced tones for every pixel of a
// picture that is grey all over.
func toGreys(m *image.RGBA) *image.Paletted {
	var tones color.Palette
	for i := range greys {
		tones = append(tones, color.Gray{Y: uint8(i * 255 / (greys - 1))})
	}
	var nearest [256]uint8
	for grey := range nearest {
		nearest[grey] = uint8((grey*(greys-1) + 127) / 255)
	}
	out := image.NewPaletted(m.Bounds(), tones)
	pix := m.Pix
	for i := range out.Pix {
		out.Pix[i] = nearest[pix[4*i]]
	}
	return out
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
	picture *image.RGBA
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
	pen := font.Drawer{
		Dst: p.picture, Src: image.NewUniform(color.Gray{Y: l.Ink.Grey()}), Face: p.faces[s],
		Dot: fixed.Point26_6{
			X: fixed.Int26_6(l.Baseline.X * pixelsPerMM * 64),
			Y: fixed.Int26_6(l.Baseline.Y * pixelsPerMM * 64),
		},
	}
	pen.DrawString(l.Text)
}
