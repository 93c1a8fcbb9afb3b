package solver

// pace shares the work between the search and the proof: the proof goes on when it
// has worked no more than the search since it began to take turns. Work is counted,
// never timed, so that the same rounds give the same answer.
type pace struct {
	turns        int // how often it was asked
	search, bare int // pricings of the search; of all when the proof last ended
	proof        int // the same of the proof, and what its looks amount to
}

// stepsPricing is how many steps of a look take about as long as one quick pricing.
const stepsPricing = 300_000

// turn reports whether the proof may go on.
func (c *pace) turn(s *search) bool {
	c.turns++ // so that it is not kept waiting where the search prices nothing
	return c.proof <= c.search+s.pricings()-c.bare+c.turns
}

// begin is what is done before a step of the proof.
func (c *pace) begin(s *search) (before int) {
	c.search += s.pricings() - c.bare
	return s.pricings() + s.looks()/stepsPricing
}

// end counts a step of the proof.
func (c *pace) end(s *search, before int) {
	c.bare = s.pricings()
	c.proof += c.bare + s.looks()/stepsPricing - before
}

// pricings is how often boards were priced in all, and looks the steps with which
// they were looked at.
func (s *search) pricings() int {
	sum := 0
	for _, w := range s.workers {
		sum += w.bench.Runs
	}
	return sum
}

func (s *search) looks() int {
	sum := 0
	for _, w := range s.workers {
		sum += w.looks
	}
	return sum
}
