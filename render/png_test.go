package render

import (
	"bytes"
	"encoding/binary"
	"flag"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

var update = flag.Bool("update", false, "write the golden files anew")

func TestSceneOfASmallPlan(t *testing.T) {
	plan := taper()
	pages, err := Board(plan, &plan.Boards[0], Options{})
	if err != nil {
		t.Fatal(err)
	}
	got := pages[0].Scene.String()
	golden := filepath.Join("testdata", "taper.scene")
	if *update {
		if err := os.MkdirAll("testdata", 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Error(diff)
	}
}

func TestPNGHasItsSizeItsResolutionAndInk(t *testing.T) {
	plan := taper()
	pages, err := Board(plan, &plan.Boards[0], Options{Paper: A4})
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := pages[0].WritePNG(&b); err != nil {
		t.Fatal(err)
	}
	at := bytes.Index(b.Bytes(), []byte("pHYs"))
	if at < 0 {
		t.Fatal("no pHYs chunk")
	}
	// 300 dots an inch are 11811 a metre, to the nearest.
	if got := binary.BigEndian.Uint32(b.Bytes()[at+4:]); got != 11811 {
		t.Errorf("%d pixels a metre", got)
	}
	m, err := png.Decode(&b)
	if err != nil {
		t.Fatal(err)
	}
	if size := m.Bounds().Size(); size.X != 3508 || size.Y != 2480 { // 297 x 210 mm
		t.Errorf("size %v", size)
	}
	for _, c := range []struct {
		what     string
		x, y     float64
		low, top uint32
	}{
		{"paper", 3, 3, 0xffff, 0xffff},
		{"the rule over the foot", 150, 210 - margin - footerTop + 2, 0, 0x4000},
	} {
		r, _, _, _ := m.At(int(c.x*pixelsPerMM), int(c.y*pixelsPerMM)).RGBA()
		if r < c.low || r > c.top {
			t.Errorf("%s is %#x", c.what, r)
		}
	}
}

func TestBoardsThatThePlanDoesNotHold(t *testing.T) {
	plan := taper()
	if _, err := Board(plan, &layout.BoardPlan{Board: "Z9"}, Options{}); err == nil {
		t.Error("drew a board that is not there")
	}
}
