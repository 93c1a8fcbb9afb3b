package risk

import (
	"context"
	"sync"

	"sawbill/solver/internal/column"
)

// each does n things, several side by side, and stops when ctx ends. What is done is
// joined by its index: it does not matter who does it. Goroutines live here only.
func each(ctx context.Context, workers, n int, do func(bench *column.Bench, i int)) error {
	next := make(chan int)
	var wg sync.WaitGroup
	for range workers {
		wg.Go(func() {
			bench := new(column.Bench)
			for i := range next {
				do(bench, i)
			}
		})
	}
	for i := 0; i < n && ctx.Err() == nil; i++ {
		next <- i
	}
	close(next)
	wg.Wait()
	return ctx.Err()
}
