package batch

import (
	"cmp"
	"math"
	"slices"
)

// roundsOf is how many loads the busiest supply has at least.
func roundsOf(loads, supplies int) int { return (loads + supplies - 1) / supplies }

// leastEnd is a time, s, that loads of these durations can't end before:
//
//   - the longest of them;
//   - all of them and the changeovers, shared evenly;
//   - of one more of the longest loads than there are supplies, two follow each
//     other on one of them.
func leastEnd(times []float64, supplies Supplies) float64 {
	least := sum(times)
	if over := len(times) - supplies.Count; over > 0 {
		least += float64(over) * supplies.Changeover
	}
	least /= float64(supplies.Count)
	if supplies.Count == 1 || len(times) == 0 {
		return least
	}
	least = math.Max(least, slices.Max(times))
	if len(times) > supplies.Count {
		longest := slices.Clone(times)
		slices.SortFunc(longest, func(a, b float64) int { return cmp.Compare(b, a) })
		least = math.Max(least, longest[supplies.Count-1]+longest[supplies.Count]+supplies.Changeover)
	}
	return least
}

// scheduleSteps is how many placings a search for supplies tries.
const scheduleSteps = 20_000

// schedule gives each load a supply, counted from 0, no supply more rounds than
// need be, so that the last ends early: the longest load first, each to the
// supply that is free first, then branch and bound from there, so many placings.
func schedule(times []float64, supplies Supplies, steps int) (supplyOf []int, end float64, left int) {
	s := scheduling{
		Supplies: supplies, times: times, rounds: roundsOf(len(times), supplies.Count), least: leastEnd(times, supplies), end: math.Inf(1), steps: steps,
		order: make([]int, len(times)), supplyOf: make([]int, len(times)), busy: make([]float64, min(supplies.Count, len(times))), loads: make([]int, min(supplies.Count, len(times))),
	}
	for i := range s.order {
		s.order[i] = i
	}
	slices.SortStableFunc(s.order, func(i, j int) int { return cmp.Compare(times[j], times[i]) })
	s.place(0, 0)
	return s.best, s.end, s.steps
}

// scheduling is a search, load by load, the longest first.
type scheduling struct {
	Supplies
	times    []float64
	order    []int
	rounds   int
	least    float64
	supplyOf []int
	busy     []float64 // s, until when each supply is
	loads    []int     // of each supply
	best     []int
	end      float64
	steps    int
}

// place gives the i-th load of the order, and all after it, a supply, the
// supplies being busy until end so far. The first way down is always gone to
// its end.
func (s *scheduling) place(i int, end float64) {
	if i == len(s.order) {
		if end < s.end {
			s.end, s.best = end, slices.Clone(s.supplyOf)
		}
		return
	}
	load := s.order[i]
	var tried []int
	for {
		at := s.freeFirst(tried)
		if at < 0 || s.best != nil && (s.steps <= 0 || s.end <= s.least) {
			return
		}
		tried = append(tried, at)
		until := s.busy[at]
		later := until + s.times[load]
		if s.loads[at] > 0 {
			later += s.Changeover
		}
		if later >= s.end {
			return // on those that are free later it ends later still
		}
		s.steps--
		s.supplyOf[load] = at
		s.busy[at] = later
		s.loads[at]++
		s.place(i+1, math.Max(end, later))
		s.loads[at]--
		s.busy[at] = until
	}
}

// freeFirst is the supply that is free first, of those with a round left and
// not tried or just like one tried; -1: none.
func (s *scheduling) freeFirst(tried []int) int {
	first := -1
	for at := range s.busy {
		like := func(t int) bool { return s.busy[t] == s.busy[at] && s.loads[t] == s.loads[at] }
		if s.loads[at] == s.rounds || slices.Contains(tried, at) || slices.ContainsFunc(tried, like) {
			continue
		}
		if first < 0 || s.free(at) < s.free(first) {
			first = at
		}
	}
	return first
}

// free is when a supply can take its next load.
func (s *scheduling) free(at int) float64 {
	if s.loads[at] == 0 {
		return s.busy[at]
	}
	return s.busy[at] + s.Changeover
}
