package render

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"hash/crc32"
	"image/png"
	"io"
)

// Page is one sheet of paper.
type Page struct{ Scene *Scene }

// WritePNG paints the page at 300 dots an inch and writes it as a PNG that says
// so, so that it prints at its size. The error is the writer's.
func (p Page) WritePNG(w io.Writer) error {
	var b bytes.Buffer
	encoder := png.Encoder{CompressionLevel: png.BestSpeed}
	if err := encoder.Encode(&b, raster(p.Scene)); err != nil {
		return fmt.Errorf("encode page: %w", err)
	}
	// A PNG begins with its signature of 8 bytes and the IHDR chunk of 25; pHYs
	// may follow there (PNG specification, third edition, 11.3.4.3).
	const head = 8 + 25
	for _, part := range [][]byte{b.Bytes()[:head], physical(), b.Bytes()[head:]} {
		if _, err := w.Write(part); err != nil {
			return fmt.Errorf("write page: %w", err)
		}
	}
	return nil
}

// physical is the pHYs chunk: pixels a metre along x and y, and the unit.
func physical() []byte {
	chunk := binary.BigEndian.AppendUint32(nil, 9)
	chunk = append(chunk, "pHYs"...)
	chunk = binary.BigEndian.AppendUint32(chunk, dpi*5000/127)
	chunk = binary.BigEndian.AppendUint32(chunk, dpi*5000/127)
	chunk = append(chunk, 1) // metres
	return binary.BigEndian.AppendUint32(chunk, crc32.ChecksumIEEE(chunk[4:]))
}
