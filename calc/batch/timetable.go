package batch

import (
	"cmp"
	"math"
	"slices"
)

// timetable puts loads onto supplies and says when what is lifted.
func timetable(loads [][]piece, rows []Row, supplies Supplies) Plan {
	plan := Plan{rows: slices.Clone(rows), supplies: supplies, Rounds: roundsOf(len(loads), supplies.Count)}
	times := durations(loads)
	supplyOf, end, _ := schedule(times, supplies, scheduleSteps)
	plan.End = end
	for supply := range min(supplies.Count, len(loads)) {
		var start float64
		round := 0
		for _, i := range longestOf(supply, supplyOf, times) {
			if round > 0 {
				start += supplies.Changeover
			}
			round++
			load := hung(loads[i], rows, start)
			load.Supply, load.Round = supply+1, round
			plan.Loads = append(plan.Loads, load)
			plan.Current = math.Max(plan.Current, load.Current)
			start += load.Duration
		}
	}
	slices.SortStableFunc(plan.Loads, func(a, b Load) int {
		return cmp.Or(cmp.Compare(a.Start, b.Start), cmp.Compare(a.Supply, b.Supply))
	})
	return plan
}

// longestOf is a supply's loads, the longest first.
func longestOf(supply int, supplyOf []int, times []float64) []int {
	var its []int
	for i, s := range supplyOf {
		if s == supply {
			its = append(its, i)
		}
	}
	slices.SortStableFunc(its, func(i, j int) int { return cmp.Compare(times[j], times[i]) })
	return its
}

// hung is a load that starts at a time, with its lifts. Each current is summed
// again from the pieces that hang, so that no rounding adds up.
func hung(pieces []piece, rows []Row, start float64) Load {
	pieces = slices.Clone(pieces)
	slices.SortFunc(pieces, func(p, q piece) int { return cmp.Or(cmp.Compare(p.time, q.time), cmp.Compare(p.row, q.row)) })
	first, last := pieces[0], pieces[len(pieces)-1]
	row := rows[first.row]
	load := Load{Bath: row.Bath, Density: row.Density, Start: start, Duration: last.time}
	if first.alone {
		load.Density = first.current / (row.Work.Area + row.Work.Extra)
	}
	after := sumsAfter(pieces)
	load.Current = after[0]
	for i, p := range pieces {
		if i == 0 || p.row != pieces[i-1].row {
			load.Lifts = append(load.Lifts, Lift{Row: p.row, At: start + p.time})
		}
		lift := &load.Lifts[len(load.Lifts)-1]
		lift.Count++
		lift.Current = float64(lift.Count) * p.current
		lift.Left = after[i+1]
	}
	return load
}
