package lp

import (
	"math"
	"testing"
)

func TestRefuses(t *testing.T) {
	p := New([]Sense{AtLeast}, []float64{1})
	tests := map[string]func(){
		"more senses than right-hand sides": func() { New([]Sense{AtMost}, nil) },
		"no number":                         func() { p.SetRHS(0, math.NaN()) },
		"an endless cost":                   func() { p.Add(math.Inf(1), nil) },
		"no such row":                       func() { p.Add(1, []Entry{{1, 1}}) },
		"no such column":                    func() { p.X(0) },
	}
	for name, call := range tests {
		t.Run(name, func(t *testing.T) {
			defer func() {
				if recover() == nil {
					t.Error("accepted")
				}
			}()
			call()
		})
	}
}
