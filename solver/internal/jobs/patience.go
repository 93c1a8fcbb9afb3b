package jobs

import "context"

// Patience is a context that ends when it was looked at so many times: it stops a solve
// early, by a count, from one goroutine.
type Patience struct {
	context.Context
	Looks int
}

// Err ends the context once its looks are used up.
func (c *Patience) Err() error {
	if c.Looks--; c.Looks < 0 {
		return context.Canceled
	}
	return nil
}
