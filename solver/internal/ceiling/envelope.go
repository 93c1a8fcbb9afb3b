package ceiling

// envelope is the upper envelope of straight lines that are added in the order of their
// slopes, from the flattest on, and asked for in the order of x (convex hull trick: van
// Leeuwen & Wood 1980 maintain hulls in general).
type envelope struct {
	slope, worth []float64
	best         int // the line that was the highest when it was last asked
}

func (e *envelope) reset() { e.slope, e.worth, e.best = e.slope[:0], e.worth[:0], 0 }

func (e *envelope) empty() bool { return len(e.slope) == 0 }

// add adds a line, no flatter than those before.
func (e *envelope) add(slope, worth float64) {
	n := len(e.slope)
	if n > 0 && slope == e.slope[n-1] {
		if worth <= e.worth[n-1] {
			return
		}
		n--
	}
	// The last line is never the highest where the new one overtakes that before it sooner.
	for n >= 2 && (e.worth[n-2]-worth)*(e.slope[n-1]-e.slope[n-2]) <= (e.worth[n-2]-e.worth[n-1])*(slope-e.slope[n-2]) {
		n--
	}
	e.slope, e.worth = append(e.slope[:n], slope), append(e.worth[:n], worth)
	e.best = min(e.best, n)
}

// at is the highest of the lines at x, no less than an x before.
func (e *envelope) at(x float64) float64 {
	high := e.slope[e.best]*x + e.worth[e.best]
	for e.best+1 < len(e.slope) {
		next := e.slope[e.best+1]*x + e.worth[e.best+1]
		if next < high {
			break
		}
		e.best, high = e.best+1, next
	}
	return high
}
