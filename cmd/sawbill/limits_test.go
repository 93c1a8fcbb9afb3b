package main

import (
	"context"
	"testing"
	"time"

	"sawbill/layout"
	"sawbill/solver"
)

func TestWhyItStopped(t *testing.T) {
	short := []layout.Missing{{Part: "rail", Quantity: 1}}
	plan := func(bound layout.Money, missing ...layout.Missing) *layout.Plan {
		return &layout.Plan{Totals: layout.Totals{Cost: 100, Bound: &bound}, Missing: missing}
	}
	for _, c := range []struct {
		name   string
		limits limits
		status solver.Status
		ended  error
		plan   *layout.Plan
		want   string
	}{
		{"near", limits{within: 5, rounds: 9}, solver.Near, nil, plan(96), "within 5%"},
		{"interrupted", limits{}, solver.Stopped, context.Canceled, plan(96), "interrupted"},
		{"rounds", limits{within: 1, rounds: 9}, solver.Stopped, nil, plan(96), "after 9 rounds, not yet within 1%"},
		{
			"time", limits{within: 1, rounds: 9, time: 10 * time.Second}, solver.Stopped, context.DeadlineExceeded, plan(96),
			"after 10s, not yet within 1%",
		},
		{
			"nothing proven", limits{within: 100, rounds: 1}, solver.Stopped, nil, &layout.Plan{},
			"after 1 round, not yet within 100%",
		},
		{"parts missing", limits{within: 5, rounds: 9}, solver.Stopped, nil, plan(96, short...), "after 9 rounds, with parts still missing"},
		// The limits as asked for, or the proof, say all there is.
		{"as asked", limits{time: time.Second}, solver.Stopped, context.DeadlineExceeded, plan(96), ""},
		{"the best", limits{within: 5}, solver.Near, nil, plan(100), ""},
		{"settled", limits{}, solver.Settled, nil, plan(96), ""},
	} {
		if got := c.limits.stopped(c.status, c.ended, c.plan); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
