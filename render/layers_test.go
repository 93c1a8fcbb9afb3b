package render

import (
	"testing"

	"sawbill/layout/steps"
)

// Of a resaw one piece of which was spoiled the drawing was once an empty fence: what
// the saw leaves counts, not what becomes of it.
func TestSlabsAreDrawnWhateverBecomesOfThem(t *testing.T) {
	slabs := slabsOf([]steps.Step{
		{Number: 5, Operation: steps.Resaw, Off: "A1-1a1~1", Rest: "A1-1a~2"},
		{Number: 6, Operation: steps.Plane, Jointed: true, Off: "A1-1a~3"},
		{Number: 7, Operation: steps.Resaw, Rest: "A1-1a3~1"}, // the second is waste
		{Number: 8, Operation: steps.Plane, Off: "A1-1a1", Part: "slat"},
		{Number: 9, Operation: steps.Plane, Off: "A1-1a3"},
	})
	if len(slabs) != 3 || slabs[0].name != "A1-1a1" || slabs[1].name != "" || slabs[2].name != "A1-1a3" {
		t.Fatalf("slabs %v", slabs)
	}
	if slabs[0].step.Number != 8 || slabs[1].step != nil || slabs[2].step.Number != 9 {
		t.Errorf("slabs %v", slabs)
	}
}
