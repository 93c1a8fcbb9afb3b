package choose

import (
	"cmp"
	"math"
	"math/bits"
	"slices"
)

// instance is a task made ready: only kinds that are wanted, only columns that may
// be of use, sorted by group, each group with a column that makes nothing.
type instance struct {
	wanted  []int
	penalty []int64
	items   []item
	first   []int // item by group, and the number of items
	stand   []int // by column: the item that does as well
	scale   int64 // prices are in units divided by this
	unit    int64 // every cost is a whole multiple of this
	twin    []int // by group: the last one before it with the same items, or -1
}

// item is a column, or the one that makes nothing.
type item struct {
	group  int
	cost   int64
	counts []int // at most what is wanted
	origin int   // column, or -1
}

func newInstance(groups int, demand []int, penalty []int64, columns []Column) *instance {
	in := &instance{stand: make([]int, len(columns))}
	var kinds []int
	for i, d := range demand {
		if d > 0 && penalty[i] > 0 {
			kinds = append(kinds, i)
			in.wanted, in.penalty = append(in.wanted, d), append(in.penalty, penalty[i])
		}
	}
	byGroup := make([][]item, groups)
	for g := range byGroup {
		byGroup[g] = []item{{g, 0, make([]int, len(kinds)), -1}}
	}
	for j, c := range columns {
		counts := make([]int, len(kinds))
		for k, i := range kinds {
			counts[k] = min(c.Counts[i], demand[i])
		}
		byGroup[c.Group] = append(byGroup[c.Group], item{c.Group, c.Cost, counts, j})
	}
	for _, items := range byGroup {
		in.first = append(in.first, len(in.items))
		in.sift(items)
	}
	in.first = append(in.first, len(in.items))
	in.measure(columns)
	in.findTwins()
	return in
}

// sift takes over the items of a group that no other one does as well as.
func (in *instance) sift(items []item) {
	slices.SortFunc(items, func(a, b item) int {
		return cmp.Or(cmp.Compare(a.cost, b.cost), cmp.Compare(pieces(b.counts), pieces(a.counts)),
			slices.Compare(a.counts, b.counts), cmp.Compare(a.origin, b.origin))
	})
	from := len(in.items)
	for _, it := range items {
		at := slices.IndexFunc(in.items[from:], func(k item) bool { return covers(k.counts, it.counts) })
		if at < 0 {
			at = len(in.items) - from
			in.items = append(in.items, it)
		}
		if it.origin >= 0 {
			in.stand[it.origin] = from + at
		}
	}
}

func pieces(counts []int) int {
	sum := 0
	for _, n := range counts {
		sum += n
	}
	return sum
}

// covers tells whether a makes all that b makes.
func covers(a, b []int) bool {
	for i, n := range b {
		if a[i] < n {
			return false
		}
	}
	return true
}

// measure finds the scale of prices, as fine as sums within 2^61 allow, and the
// greatest common divisor of all costs.
func (in *instance) measure(columns []Column) {
	largest := make([]float64, in.groups())
	for _, c := range columns {
		largest[c.Group] = max(largest[c.Group], math.Abs(float64(c.Cost)))
	}
	var total float64
	for _, size := range largest {
		total += size
	}
	for i, p := range in.penalty {
		total += float64(p) * float64(in.wanted[i])
		in.unit = divisor(in.unit, p)
	}
	if total >= 1<<60 {
		panic("choose: costs reach 2^60")
	}
	in.scale = 1 << min(20, 60-bits.Len64(uint64(math.Ceil(total))))
	for _, it := range in.items {
		in.unit = divisor(in.unit, max(it.cost, -it.cost))
	}
	in.unit = max(in.unit, 1)
}

func divisor(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// outside turns items into columns.
func (in *instance) outside(chosen []int) []int {
	choice := make([]int, len(chosen))
	for g, k := range chosen {
		choice[g] = in.items[k].origin
	}
	return choice
}

// group is the range of a group's items.
func (in *instance) group(g int) (lo, hi int) { return in.first[g], in.first[g+1] }

// groups is the number of groups.
func (in *instance) groups() int { return len(in.first) - 1 }
