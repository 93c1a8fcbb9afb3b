package solver

import (
	"cmp"
	"fmt"
	"slices"
)

// composition says by set how many slices each of its copies has, the largest
// first.
type composition [][]int

// glueUp is what a composition may make of one set: copies of lo to hi slices, wanted
// in all; lo is 0 where no copy can be made.
type glueUp struct{ lo, hi, wanted int }

func (c composition) key() string { return fmt.Sprint(c) }

// settled are copies of a set in their order, without slices beyond what is wanted as
// far as copies may be shorter or left out.
func (u glueUp) settled(copies []int) []int {
	copies = slices.Clone(copies)
	slices.SortFunc(copies, func(a, b int) int { return cmp.Compare(b, a) })
	for k := len(copies) - 1; k >= 0; k-- {
		if total(copies)-copies[k] >= u.wanted {
			copies = slices.Delete(copies, k, k+1)
		}
	}
	for k := range copies {
		if over := total(copies) - u.wanted; over > 0 {
			copies[k] -= min(over, copies[k]-u.lo)
		}
	}
	slices.SortFunc(copies, func(a, b int) int { return cmp.Compare(b, a) })
	return copies
}

// neighbours lists compositions that differ in few copies: slices are moved from one
// copy to another, two copies become one, one becomes two, and where slices are
// missing a copy grows or is added.
func (c composition) neighbours(sets []glueUp) []composition {
	var list []composition
	for at, u := range sets {
		for _, copies := range u.exchanges(c[at]) {
			next := slices.Clone(c)
			next[at] = u.settled(copies)
			list = append(list, next)
		}
	}
	return list
}

// exchanges lists ways to change the copies of one set.
func (u glueUp) exchanges(copies []int) [][]int {
	var list [][]int
	if u.lo == 0 { // no board gives any
		return nil
	}
	for i, a := range copies { // of copies that are alike, the first will do
		if i > 0 && copies[i-1] == a {
			continue
		}
		rest := slices.Delete(slices.Clone(copies), i, i+1)
		for part := u.lo; part <= a-u.lo; part++ {
			list = append(list, append(slices.Clone(rest), part, a-part))
		}
		for j := i + 1; j < len(copies); j++ {
			if j > i+1 && copies[j-1] == copies[j] {
				continue
			}
			list = append(list, u.shared(copies, i, j)...)
		}
	}
	return append(list, u.more(copies)...)
}

// shared lists other ways to share the slices of two copies.
func (u glueUp) shared(copies []int, i, j int) [][]int {
	both := copies[i] + copies[j]
	rest := slices.Delete(slices.Clone(copies), j, j+1)
	rest = slices.Delete(rest, i, i+1)
	var list [][]int
	if both <= u.hi {
		list = append(list, append(slices.Clone(rest), both))
	}
	for part := u.lo; 2*part <= both; part++ {
		if both-part <= u.hi {
			list = append(list, append(slices.Clone(rest), part, both-part))
		}
	}
	return list
}

// more lists ways to make slices that are missing.
func (u glueUp) more(copies []int) [][]int {
	var list [][]int
	left := u.wanted - total(copies)
	for add := 1; add <= left; add++ {
		for i, a := range copies {
			if a+add <= u.hi {
				next := slices.Clone(copies)
				next[i] += add
				list = append(list, next)
			}
		}
	}
	for k := u.lo; k <= u.hi && left > 0; k++ {
		list = append(list, append(slices.Clone(copies), k))
		if k >= left {
			break
		}
	}
	return list
}

// cheapest is the least that copies with enough slices cost in all, and such copies,
// where cost[k] is that of a copy of lo + k slices:
//
//	least(0) = 0, least(j) = min over k of least(j - k) + cost(k)
func cheapest[N ~int64 | ~float64](lo, wanted int, cost []N) (least N, copies []int) {
	best, last := make([]N, max(0, wanted)+1), make([]int, max(0, wanted)+1)
	for j := 1; j <= wanted; j++ {
		for k, c := range cost {
			sum := best[max(0, j-lo-k)] + c
			if last[j] == 0 || sum < best[j] {
				best[j], last[j] = sum, lo+k
			}
		}
	}
	for j := wanted; j > 0 && last[j] > 0; j -= last[j] {
		copies = append(copies, last[j])
	}
	return best[max(0, wanted)], copies
}
