package main

import (
	"errors"
	"testing"
)

func TestParseWithin(t *testing.T) {
	for text, want := range map[string]percent{
		"0": 0, "0%": 0, "1%": 1, "0.5%": 0.5, "1.5 %": 1.5, " 2% ": 2, ".5%": 0.5, "100%": 100, "0.0": 0,
	} {
		if got, err := parseWithin(text); err != nil || got != want {
			t.Errorf("%q: %v, %v, want %v", text, got, err, want)
		}
	}
	// Refused.
	for _, text := range []string{
		"", "%", "1", "0.01", "-1%", "+1%", "101%", "1%%", "1,5%", "1e1%", "NaN%", "Inf%", "one%", "1 2%", "0x1%", ".%",
	} {
		if got, err := parseWithin(text); err == nil {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}

// A bare number may be meant either way; the hint asks.
func TestParseWithinHint(t *testing.T) {
	_, err := parseWithin("1.5")
	var f *failure
	if !errors.As(err, &f) || len(f.hints) != 1 || f.hints[0] != "did you mean 1.5%?" {
		t.Errorf("%#v", err)
	}
}
