package render

import "sawbill/layout"

// Sizes on paper, in millimetres.
const (
	MinText = 3.5 // no capital or digit is lower than this

	textCap  = 3.5 // height of capitals and digits in running text
	boldCap  = 4.2 // settings
	titleCap = 5.0
	markCap  = 12.0

	margin    = 9.0
	lineStep  = 6.0 // from baseline to baseline of running text
	rowStep   = 5.7 // from row to row of the labels of a tape
	labelPad  = 0.7 // white around a label
	footerTop = 13.5
)

// Weights of lines, in millimetres.
const (
	hairline   = 0.18
	thinLine   = 0.28
	middleLine = 0.45
	heavyLine  = 0.9
	kerfLeast  = 0.55 // a kerf is drawn to scale, but never thinner
)

// Ink is a tone of grey.
type Ink uint8

// The tones: black on white carries everything, the others only help.
const (
	NoInk Ink = iota
	Black
	White
	OffcutTone // wood to keep
	WasteTone  // wood that goes to the bin; always crossed out too
	FormTone   // lines to write on
)

// Grey is the tone from 0, black, to 255, white.
func (i Ink) Grey() uint8 { return [...]uint8{255, 0, 255, 226, 190, 120}[i] }

// hatch is how a kind of defect is shaded: families of parallel lines, at
// angles in degrees, so far apart, solid or dashed. The word always stands by.
type hatch struct {
	angles  []float64
	pitch   float64 // mm
	dash    []float64
	outline float64 // weight
}

// hatchOf gives each kind a hatch of its own, and all kinds that a shop adds
// one together.
func hatchOf(k layout.Kind) hatch {
	dots, dashes := []float64{0.4, 0.9}, []float64{1.6, 0.9}
	switch k {
	case layout.Knot:
		return hatch{[]float64{45, 135}, 1.5, nil, middleLine}
	case layout.Pin:
		return hatch{[]float64{45, 135}, 0.9, nil, middleLine}
	case layout.Loose:
		return hatch{[]float64{45, 135}, 1.1, dashes, heavyLine}
	case layout.Stain:
		return hatch{[]float64{0}, 1.3, dots, thinLine}
	case layout.Sap:
		return hatch{[]float64{0}, 2.4, dashes, thinLine}
	case layout.Gum:
		return hatch{[]float64{20}, 1.8, dashes, thinLine}
	case layout.Burl:
		return hatch{[]float64{30, 150}, 2.2, dots, thinLine}
	case layout.Hole:
		return hatch{[]float64{90}, 0.7, nil, middleLine}
	case layout.Check:
		return hatch{[]float64{0}, 1.1, nil, middleLine}
	case layout.Split:
		return hatch{[]float64{10}, 1.4, nil, middleLine}
	case layout.Shake:
		return hatch{[]float64{170}, 1.0, dashes, middleLine}
	case layout.Wane:
		return hatch{[]float64{60}, 1.6, nil, middleLine}
	case layout.Bark:
		return hatch{[]float64{120}, 1.2, nil, middleLine}
	case layout.Pith:
		return hatch{[]float64{90}, 1.4, dashes, middleLine}
	case layout.Rot:
		return hatch{[]float64{90, 0}, 1.3, nil, middleLine}
	case layout.Metal:
		return hatch{[]float64{0, 45, 90, 135}, 1.4, nil, heavyLine}
	}
	return hatch{[]float64{135}, 1.9, dashes, middleLine}
}
