package glueup

import (
	"fmt"

	"sawbill/layout"
)

// Herringbone is a face of blocks, each so many times as long as it is wide, that
// lie and stand in turn. No joint runs straight across it, so it is laid from single
// blocks, sliced off strips.
type Herringbone struct {
	BlockWidth, BlockLength layout.Length
	// Lying and Standing are the letters of the blocks that lie along the face and
	// across it, in turn from row to row and from column to column.
	Lying, Standing string
	// Diagonal turns the pattern by 45 degrees, so that its points run along the face.
	Diagonal bool
}

// maxRatio is how long a block may be for its width.
const maxRatio = 12

// Name is the word of the design file.
func (h *Herringbone) Name() string { return "herringbone" }

func (h *Herringbone) check(c *checker) {
	c.letters("herringbone.lying", h.Lying)
	c.letters("herringbone.standing", h.Standing)
	if !c.size("herringbone.block_width", h.BlockWidth) || !c.size("herringbone.block_length", h.BlockLength) {
		return
	}
	if r := h.BlockLength / h.BlockWidth; h.BlockLength%h.BlockWidth != 0 || r < 2 || r > maxRatio {
		c.fault("herringbone.block_length", h.BlockLength.Format(c.design.Units, 64),
			fmt.Sprintf("want 2 to %d times block_width, so that the blocks close", maxRatio))
	}
	if c.face() {
		c.pieces("herringbone.block_width", h.BlockWidth)
	}
}

// lay covers the face with the fewest blocks.
func (h *Herringbone) lay(w *Work) {
	w.Face.Finished = layout.Rect{X2: w.Design.Length, Y2: w.Design.Width}
	w.Face.Sawn = w.Design.sawn()
	t := courses{unit: float64(h.BlockWidth), ratio: int(h.BlockLength / h.BlockWidth), of: h}
	c := cover{tiling: t, over: areaOf(w.Face.Sawn)}
	c.origin, c.tiles = fewest(t, c.over)
	w.Face.Blocks = c.blocks()
	count := map[string]int{}
	for _, b := range w.Face.Blocks {
		count[b.Wood]++
	}
	for _, letter := range w.Design.Letters() {
		if count[letter] == 0 {
			continue
		}
		w.Panels = append(w.Panels, Panel{
			Name: panelName(len(w.Panels)), Form: Alone, Height: h.BlockWidth, Slices: count[letter],
			Strips: []Strip{{Wood: letter, Thickness: h.BlockWidth, Width: h.BlockLength}},
		})
	}
	w.Notes = append(w.Notes, fmt.Sprintf("%d blocks cover the face; no other place of the pattern takes fewer.", len(c.tiles)))
}
