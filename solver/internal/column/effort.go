package column

// effort counts labels and comparisons of labels against the most that a search
// may make. Searches that belong together share one.
type effort struct {
	work, most int
	stop       func() bool // asked now and then; nil: never
	ask        int         // the work at which it is asked next
}

// askEvery is the work between two questions whether to stop.
const askEvery = 1 << 15

// spent reports whether the work allowed is done, or the search was stopped.
func (e *effort) spent() bool {
	if e.stop != nil && e.work >= e.ask {
		e.ask = e.work + askEvery
		if e.stop() {
			e.most = -1
		}
	}
	return e.work > e.most
}
