package solver

// pace shares the work between the search and the proof: the proof goes on when it
// has worked no more than so many times as much as the search since it began to take
// turns. Work is counted, never timed, so that the same rounds give the same answer.
type pace struct {
	done   int // steps by everybody when the proof last ended
	search int // steps of the search
	proof  int // steps of the proof
}

// leastSteps is what a round of the search counts for at least, so that the proof is
// not kept waiting where the search goes through what it knows already.
const leastSteps = 1_000_000

// turn reports whether the proof may go on.
func (c *pace) turn(s *search, times int) bool {
	c.search += max(leastSteps, s.work()-c.done)
	c.done = s.work()
	return c.proof <= times*c.search
}

// end counts a step of the proof.
func (c *pace) end(s *search) {
	c.proof += s.work() - c.done
	c.done = s.work()
}

// work is how much the workers have done, in steps of a look of the proof.
func (s *search) work() int {
	sum := 0
	for _, w := range s.workers {
		sum += pricingSteps*w.bench.Work + w.looks
	}
	return sum
}

// pricingSteps is how many steps of a look take as long as one of a pricing.
const pricingSteps = 2

// steps is how much the workers have done, in steps of a few nanoseconds.
func (s *search) steps() int {
	sum := 0
	for _, w := range s.workers {
		sum += w.bench.Steps + w.looks
	}
	return sum
}

// slowness is how many times as many steps as usual the boards of a job take for a
// pricing, rounded down; at least 1.
func (s *search) slowness() int {
	steps, runs := 0, 1
	for _, w := range s.workers {
		steps, runs = steps+w.bench.Steps, runs+w.bench.Runs
	}
	return max(1, steps/runs/usualSteps)
}

// usualSteps is how many steps a pricing of a board that is not warped takes.
const usualSteps = 300_000
