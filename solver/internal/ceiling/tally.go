package ceiling

import "math/bits"

// tally is how many pieces of every part, in as many bits of a word each as the part may
// have, and one more that stays 0.
type tally uint64

// counter adds up tallies within limits.
type counter struct {
	one    []tally // a piece of each row of the bill; 0 where none is wanted
	shift  []int
	most   tally // the limits, with the spare bits set
	spare  tally
	limits []int
}

// newCounter is nil for more kinds of part than a tally can count.
func newCounter(limits []int) *counter {
	n := &counter{one: make([]tally, len(limits)), shift: make([]int, len(limits)), limits: limits}
	at := 0
	for i, most := range limits {
		if most <= 0 {
			continue
		}
		wide := bits.Len(uint(most))
		if at+wide+1 > 64 {
			return nil
		}
		n.one[i], n.shift[i] = 1<<at, at
		n.most |= tally(most)<<at | 1<<(at+wide)
		n.spare |= 1 << (at + wide)
		at += wide + 1
	}
	return n
}

// sum adds two tallies; ok is false where that is more than the limits.
func (n *counter) sum(a, b tally) (sum tally, ok bool) {
	sum = a + b
	return sum, (n.most-sum)&n.spare == n.spare
}

// all is the tally of the limits themselves.
func (n *counter) all() tally { return n.most &^ n.spare }

// counts are the pieces of a tally by row of the bill.
func (n *counter) counts(t tally) []int {
	counts := make([]int, len(n.one))
	for i, one := range n.one {
		if one != 0 {
			counts[i] = int(t>>n.shift[i]) & (1<<bits.Len(uint(n.limits[i])) - 1)
		}
	}
	return counts
}

// leaf is a piece so many layers thick; ok is false where that is more than the limits.
func (n *counter) leaf(row, layers int) (t tally, ok bool) {
	if n.one[row] == 0 || layers > n.limits[row] {
		return 0, false
	}
	return n.one[row] * tally(layers), true
}

// worth is what the pieces of a tally are worth.
func (n *counter) worth(t tally, price []Value) Value {
	var sum Value
	for i, c := range n.counts(t) {
		sum += Value(c) * price[i]
	}
	return sum
}

// pieces is how many there are.
func (n *counter) pieces(t tally) int {
	sum := 0
	for _, c := range n.counts(t) {
		sum += c
	}
	return sum
}

// queue gives out tallies with few pieces first, each once, although larger ones are added
// all the time.
type queue struct {
	n     *counter
	known map[tally]int // the index of a tally
	byN   [][]int       // by number of pieces, the tallies
	at    int           // the number that is given out
}

func newQueue(n *counter) *queue { return &queue{n: n, known: map[tally]int{}} }

// index is the index of a tally, a new one where it was not known.
func (q *queue) index(t tally) (i int, isNew bool) {
	i, ok := q.known[t]
	if !ok {
		i = len(q.known)
		q.known[t] = i
		size := q.n.pieces(t)
		for len(q.byN) <= size {
			q.byN = append(q.byN, nil)
		}
		q.byN[size] = append(q.byN[size], i)
	}
	return i, !ok
}

// next is a tally that has no fewer pieces than those before; -1 where there is none.
func (q *queue) next() int {
	for q.at < len(q.byN) {
		if n := len(q.byN[q.at]); n > 0 {
			i := q.byN[q.at][0]
			q.byN[q.at] = q.byN[q.at][1:]
			return i
		}
		q.at++
	}
	return -1
}

// less takes a tally off another; ok is false where there is less of something.
func (n *counter) less(a, b tally) (rest tally, ok bool) {
	rest = (a | n.spare) - b
	return rest &^ n.spare, rest&n.spare == n.spare
}
