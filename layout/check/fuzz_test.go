package check

import (
	"bytes"
	"encoding/json"
	"maps"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// planBytes writes a plan with the names of its Go fields, so that a fuzzer
// reaches values which no reader of plan files would let through.
func planBytes(tb testing.TB, p *layout.Plan) []byte {
	tb.Helper()
	data, err := json.Marshal(p)
	if err != nil {
		tb.Fatal(err)
	}
	return data
}

// replayBytes checks what the bytes hold, if they hold a plan at all.
func replayBytes(data []byte) {
	var p layout.Plan
	if json.Unmarshal(data, &p) != nil {
		return
	}
	for _, v := range Plan(&p) {
		_ = v.String()
	}
}

func FuzzPlan(f *testing.F) {
	for _, p := range []*layout.Plan{goodPlan(), bevelPlan(), warpedPlan(), setPlan()} {
		f.Add(planBytes(f, p))
	}
	f.Fuzz(func(_ *testing.T, data []byte) { replayBytes(data) })
}

// A plan that went through bytes is still the plan that it was: the fuzzer
// starts from something sound.
func TestPlanBytesRoundTrip(t *testing.T) {
	var p layout.Plan
	if err := json.Unmarshal(planBytes(t, goodPlan()), &p); err != nil {
		t.Fatal(err)
	}
	for _, v := range Plan(&p) {
		t.Error(v)
	}
}

// Whatever values of a good plan are replaced by extremes, by nothing or by
// other pieces of the plan, the checker does not panic.
func TestMutatedPlansDoNotPanic(t *testing.T) {
	seeds := [][]byte{
		planBytes(t, goodPlan()), planBytes(t, bevelPlan()), planBytes(t, warpedPlan()), planBytes(t, setPlan()),
	}
	rapid.Check(t, func(t *rapid.T) {
		var tree any
		dec := json.NewDecoder(bytes.NewReader(rapid.SampledFrom(seeds).Draw(t, "seed")))
		dec.UseNumber()
		if err := dec.Decode(&tree); err != nil {
			t.Fatal(err)
		}
		for range rapid.IntRange(1, 6).Draw(t, "mutations") {
			mutate(t, tree, tree)
		}
		data, err := json.Marshal(tree)
		if err != nil {
			t.Fatal(err)
		}
		replayBytes(data)
	})
}

// mutate walks down at random and replaces what it ends at.
func mutate(t *rapid.T, tree, at any) {
	descend := func(child any) bool {
		switch child.(type) {
		case map[string]any, []any:
			return rapid.IntRange(0, 9).Draw(t, "deeper") > 0
		}
		return false
	}
	switch at := at.(type) {
	case map[string]any:
		if key := rapid.SampledFrom(append(slices.Sorted(maps.Keys(at)), "none")).Draw(t, "key"); descend(at[key]) {
			mutate(t, tree, at[key])
		} else {
			at[key] = extreme(t, at[key])
		}
	case []any:
		if len(at) == 0 {
			return
		}
		if i := rapid.IntRange(0, len(at)-1).Draw(t, "index"); descend(at[i]) {
			mutate(t, tree, at[i])
		} else {
			at[i] = extreme(t, at[rapid.IntRange(0, len(at)-1).Draw(t, "copy")])
		}
	}
}

// extreme is a value that a plan ought not to hold, or the one it has.
func extreme(t *rapid.T, old any) any {
	return rapid.SampledFrom([]any{
		old, nil, 0, 1, -1, 2, 3, 300_000_000, 1 << 31, 30_000_000_000, 60_000_000_000, -30_000_000_000,
		json.Number("9223372036854775807"), json.Number("-9223372036854775808"), "", "shelf", "metal", true, false,
	}).Draw(t, "value")
}
