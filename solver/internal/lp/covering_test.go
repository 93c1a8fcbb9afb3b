package lp

import (
	"fmt"
	"math/rand"
	"testing"
)

// covering is a programme of the shape that choosing cuts has: every group is
// used at most once in all, every demand is covered or paid for dearly. Its
// columns are drawn one by one.
type covering struct {
	rng           *rand.Rand
	groups, kinds int
	q             *plain
}

func newCovering(seed int64, groups, kinds int) *covering {
	c := &covering{rand.New(rand.NewSource(seed)), groups, kinds, &plain{}}
	for range groups {
		c.q.senses, c.q.rhs = append(c.q.senses, AtMost), append(c.q.rhs, 1)
	}
	for i := range kinds {
		mean := 8 * groups / kinds // a column makes about thirteen pieces
		c.q.senses, c.q.rhs = append(c.q.senses, AtLeast), append(c.q.rhs, float64(1+c.rng.Intn(2*mean)))
		c.put(1e12, Entry{groups + i, 1})
	}
	return c
}

func (c *covering) put(cost float64, entries ...Entry) {
	c.q.cost, c.q.cols = append(c.q.cost, cost), append(c.q.cols, entries)
}

// draw adds a column: some pieces of some kinds out of one group.
func (c *covering) draw() {
	entries := []Entry{{c.rng.Intn(c.groups), 1}}
	cost := 2e6 * c.rng.Float64()
	for range 3 + c.rng.Intn(8) {
		n := 1 + c.rng.Intn(3)
		entries = append(entries, Entry{c.groups + c.rng.Intn(c.kinds), float64(n)})
		cost += 1e6 * float64(n) * (1 + 0.3*c.rng.Float64())
	}
	c.put(cost, entries...)
}

// Programmes of real size, grown a few columns at a time, and with demands that
// fall: each answer is proven.
func TestCoveringIsProven(t *testing.T) {
	for seed := range int64(8) {
		c := newCovering(seed, 40, 20)
		p := c.q.program()
		for round := range 25 {
			for range 40 {
				c.draw()
				last := len(c.q.cost) - 1
				p.Add(c.q.cost[last], c.q.cols[last])
			}
			if round%5 == 4 {
				row := 40 + c.rng.Intn(20)
				c.q.rhs[row] = float64(int(c.q.rhs[row]) / 2)
				p.SetRHS(row, c.q.rhs[row])
			}
			if status := p.Solve(plenty); status != Optimal {
				t.Fatalf("seed %d: %v", seed, status)
			}
			proveOptimal(t, seed, c.q, p)
		}
	}
}

// BenchmarkGrow adds forty columns and solves again, over and over.
func BenchmarkGrow(b *testing.B) {
	for _, size := range []struct{ groups, kinds, columns int }{{40, 20, 4000}, {200, 40, 10000}} {
		b.Run(fmt.Sprint(size.groups, "+", size.kinds), func(b *testing.B) {
			c := newCovering(1, size.groups, size.kinds)
			for range size.columns {
				c.draw()
			}
			p := c.q.program()
			p.Solve(1 << 30)
			b.ResetTimer()
			for range b.N {
				for range 40 {
					c.draw()
					last := len(c.q.cost) - 1
					p.Add(c.q.cost[last], c.q.cols[last])
				}
				if status := p.Solve(1 << 30); status != Optimal {
					b.Fatal(status)
				}
			}
		})
	}
}

// BenchmarkCold solves from the first basis.
func BenchmarkCold(b *testing.B) {
	for _, size := range []struct{ groups, kinds, columns int }{{40, 20, 4000}, {200, 40, 10000}} {
		b.Run(fmt.Sprint(size.groups, "+", size.kinds), func(b *testing.B) {
			c := newCovering(1, size.groups, size.kinds)
			for range size.columns {
				c.draw()
			}
			b.ResetTimer()
			for range b.N {
				p := c.q.program()
				if status := p.Solve(1 << 30); status != Optimal {
					b.Fatal(status)
				}
			}
		})
	}
}
