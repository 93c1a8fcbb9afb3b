package render

import (
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/glueup"
)

// The four pieces lie around the face without a gap and without overlap, and the
// sheet names them.
func TestFrameLiesAroundTheFace(t *testing.T) {
	w := designs(t)["checker"]
	w.Design.Frame = &glueup.Frame{Width: 3 * layout.Inch / 4, Wood: "e"}
	f, pieces := w.Face.Finished, newGlueSheet(w, Options{}).frame()
	outer := f.Grow(w.Design.Frame.Width, w.Design.Frame.Width)
	var left layout.Area
	left.Add(outer.Length(), outer.Width())
	left.Sub(f.Length(), f.Width())
	for i, p := range pieces {
		left.Sub(p.Length(), p.Width())
		if p.Overlaps(f) || p.Intersect(outer) != p {
			t.Errorf("%v lies in the face or beyond the frame", p)
		}
		for _, q := range pieces[:i] {
			if p.Overlaps(q) {
				t.Errorf("%v overlaps %v", p, q)
			}
		}
	}
	if left.Int().Sign() != 0 {
		t.Errorf("%v nm² of the frame are left bare", left.Int())
	}
	if all := texts(Face(w, Options{}).Scene); !strings.Contains(all, "frame of long grain, elm, 3/4 wide") {
		t.Errorf("the sheet does not name the frame: %s", all)
	}
}
