package choose

import (
	"fmt"
	"math/rand"
	"testing"
)

// shop draws a job as planning a few boards again gives it: each board, of its own
// length and cost, has columns that fill it, and what is over is worth something.
// What the most of the boards can make is wanted; to fall short costs more than
// wood.
func shop(seed int64, groups, columns, kinds int) *job {
	rng := rand.New(rand.NewSource(seed))
	q := &job{groups: groups, demand: make([]int, kinds), penalty: make([]int64, kinds)}
	size := make([]int, kinds)
	for i := range size {
		size[i] = 8 + rng.Intn(35)
		q.penalty[i] = int64(size[i]) * 1_500_000
	}
	for g := range groups {
		length := 90 + rng.Intn(60)
		price := 900_000 + rng.Int63n(200_000)
		for n := range columns {
			c := fill(rng, size, length)
			c.Group, c.Cost = g, (price*int64(length)-c.Cost*price*6/10)/100*100
			q.columns = append(q.columns, c)
			if n == 0 && 4*g < 3*groups {
				for i, made := range c.Counts {
					q.demand[i] += made
				}
			}
		}
	}
	return q
}

// fill fills a length with pieces of a few kinds; its cost is what is over.
func fill(rng *rand.Rand, size []int, length int) Column {
	c := Column{Counts: make([]int, len(size))}
	for range 12 {
		if i := rng.Intn(len(size)); size[i] <= length {
			c.Counts[i]++
			length -= size[i]
		}
	}
	if length >= 12 {
		c.Cost = int64(length)
	}
	return c
}

func BenchmarkBest(b *testing.B) {
	for _, size := range []struct{ groups, columns, kinds, nodes int }{
		{3, 60, 10, 1 << 30}, {5, 100, 12, 1 << 30}, {8, 60, 12, 5000}, {8, 200, 20, 5000}, {20, 100, 20, 500},
	} {
		b.Run(fmt.Sprintf("%dx%dx%d", size.groups, size.columns, size.kinds), func(b *testing.B) {
			proved := 0
			for n := range b.N {
				q := shop(int64(n), size.groups, size.columns, size.kinds)
				_, _, proven := q.best(nil, size.nodes)
				if proven {
					proved++
				}
			}
			b.ReportMetric(float64(proved)/float64(b.N), "proven/op")
		})
	}
}
