package choose

import "slices"

// findTwins finds for every group the last one before it that has the same items.
func (in *instance) findTwins() {
	in.twin = make([]int, in.groups())
	for g := range in.twin {
		in.twin[g] = -1
		for k := g - 1; k >= 0 && in.twin[g] < 0; k-- {
			if in.same(g, k) {
				in.twin[g] = k
			}
		}
	}
}

func (in *instance) same(g, k int) bool {
	lo, hi := in.group(g)
	from, to := in.group(k)
	return slices.EqualFunc(in.items[lo:hi], in.items[from:to], func(a, b item) bool {
		return a.cost == b.cost && slices.Equal(a.counts, b.counts)
	})
}

// putInOrder strikes out what would put the choices of groups that are alike out
// of order: of every choice there is one in order that makes and costs the same.
func (in *instance) putInOrder(allowed []bool) {
	for g, k := range in.twin {
		if k >= 0 {
			in.notBefore(allowed, g, k)
		}
	}
	for g := in.groups() - 1; g >= 0; g-- {
		if k := in.twin[g]; k >= 0 {
			in.notAfter(allowed, g, k)
		}
	}
}

// notBefore strikes out the items of group g that come before all that group k is
// allowed.
func (in *instance) notBefore(allowed []bool, g, k int) {
	lo, hi := in.group(g)
	from, _ := in.group(k)
	for j := 0; j < hi-lo && !allowed[from+j]; j++ {
		allowed[lo+j] = false
	}
}

// notAfter strikes out the items of group k that come after all that group g is
// allowed.
func (in *instance) notAfter(allowed []bool, g, k int) {
	lo, hi := in.group(g)
	from, _ := in.group(k)
	for j := hi - lo - 1; j >= 0 && !allowed[lo+j]; j-- {
		allowed[from+j] = false
	}
}
