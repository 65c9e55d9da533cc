package batch

import (
	"math"
	"slices"
)

// mostSearched is the largest class of whose plans all are compared.
const mostSearched = 24

// soonest changes what hangs together, in as many loads, so that the plan ends
// sooner.
func soonest(baths []bathful, supplies Supplies) [][]piece {
	var loads [][]piece
	for _, b := range baths {
		loads = append(loads, b.repacked()...)
	}
	pieces := slices.Concat(loads...)
	if len(pieces) > mostSearched {
		return loads
	}
	_, end, _ := schedule(durations(loads), supplies, leafSteps)
	return newOrdering(baths, supplies, end).search(loads)
}

// durations is how long each load takes.
func durations(loads [][]piece) []float64 {
	times := make([]float64, len(loads))
	for i, load := range loads {
		for _, p := range load {
			times[i] = math.Max(times[i], p.time)
		}
	}
	return times
}

// sum of how long loads take.
func sum(times []float64) float64 {
	var s float64
	for _, t := range times {
		s += t
	}
	return s
}

// repackings is how often all pairs of loads are looked at, and pairsLookedAt
// how many pairs in all.
const repackings, pairsLookedAt = 4, 60_000

// repacked is the bath's pieces in no more loads that together take no longer.
func (b bathful) repacked() [][]piece {
	pieces := slices.Concat(b.loads...)
	slices.SortFunc(pieces, longestFirst)
	loads := firstFit(pieces, b.limit)
	if len(loads) > len(b.loads) || len(loads) == len(b.loads) && sum(durations(loads)) > sum(durations(b.loads)) {
		loads = slices.Clone(b.loads)
	}
	for i, load := range loads {
		loads[i] = slices.Clone(load)
		slices.SortFunc(loads[i], longestFirst)
	}
	looks := pairsLookedAt
	for range repackings {
		changed := false
		for i := range loads {
			for j := range loads[:min(i, looks)] {
				looks--
				if long, short, sooner := b.pair(loads[i], loads[j]); sooner {
					loads[i], loads[j], changed = long, short, true
				}
			}
		}
		loads = slices.DeleteFunc(loads, func(load []piece) bool { return len(load) == 0 })
		if !changed {
			break
		}
	}
	return loads
}

// pair hangs the pieces of two loads, each longest first, so that one of them
// takes less time than before: the other gets the longest pieces, as many as go
// into it, and then the strongest of those that are left until the rest fits
// too. Where all go into one, the other is left without any.
func (b bathful) pair(x, y []piece) (long, short []piece, sooner bool) {
	if len(x) == 0 || len(y) == 0 {
		return nil, nil, false
	}
	before := math.Min(x[0].time, y[0].time)
	if x[len(x)-1].time >= before && y[len(y)-1].time >= before {
		return nil, nil, false
	}
	pool := slices.Concat(x, y)
	slices.SortFunc(pool, longestFirst)
	after := sumsAfter(pool)
	for k := len(pool) - 1; k > 0 && pool[k].time < before; k-- {
		if after[0]-after[k] > b.limit {
			continue
		}
		long, short = b.topUp(pool[:k], pool[k:])
		if sumsAfter(short)[0] <= b.limit {
			return long, short, true
		}
	}
	return nil, nil, false
}

// topUp is a load with the strongest of the other pieces that still go into it,
// and what does not.
func (b bathful) topUp(load, others []piece) (full, rest []piece) {
	room := b.limit - sumsAfter(load)[0]
	full = slices.Clone(load)
	strongest := slices.Clone(others)
	slices.SortFunc(strongest, strongestFirst)
	for _, p := range strongest {
		if p.current <= room {
			full, room = append(full, p), room-p.current
		} else {
			rest = append(rest, p)
		}
	}
	slices.SortFunc(full, longestFirst)
	slices.SortFunc(rest, longestFirst)
	return full, rest
}

// orderSteps is how many placings the search for the soonest end tries, of
// pieces and of loads, and leafSteps how many of loads for one way to hang the
// pieces.
const orderSteps, leafSteps = 120_000, 500

// ordering is a search among all ways to hang few pieces into as many loads as
// were found: piece by piece, the longest first, so that a load's time is that
// of the piece that opened it.
type ordering struct {
	supplies Supplies
	baths    []bathOrder
	pieces   []piece
	bathOf   []int // of each piece
	placeOf  []int // of each piece, among those of its bath
	open     []openLoad
	into     []int // the open load of each piece
	end      float64
	best     []int // into, of the best plan; nil: none better than what was known
	steps    int
	least    []float64 // what hopeless works on
}

// bathOrder is the pieces of a bath, longest first.
type bathOrder struct {
	limit   float64
	times   []float64
	sums    []float64 // current of the first 0, 1, 2 ... pieces
	weakest []float64 // least current from each piece on
	latest  []float64 // least time of the piece that opens the first, second ... load
	opened  int
}

// openLoad is a load that has pieces already.
type openLoad struct {
	bath       int
	room, time float64
}

func newOrdering(baths []bathful, supplies Supplies, end float64) *ordering {
	o := &ordering{supplies: supplies, end: end, steps: orderSteps}
	type owned struct {
		piece
		bath int
	}
	var all []owned
	for i, b := range baths {
		pieces := slices.Concat(b.loads...)
		slices.SortFunc(pieces, longestFirst)
		o.baths = append(o.baths, orderOf(pieces, b))
		for _, p := range pieces {
			all = append(all, owned{p, i})
		}
	}
	slices.SortStableFunc(all, func(p, q owned) int { return longestFirst(p.piece, q.piece) })
	placed := make([]int, len(baths))
	for _, p := range all {
		o.pieces = append(o.pieces, p.piece)
		o.bathOf = append(o.bathOf, p.bath)
		o.placeOf = append(o.placeOf, placed[p.bath])
		placed[p.bath]++
	}
	o.into = make([]int, len(all))
	return o
}

// orderOf is a bath's pieces, longest first, with what the bounds need: the
// k-th load opens with the last of the first pieces that need k loads, at the
// latest.
func orderOf(pieces []piece, b bathful) bathOrder {
	order := bathOrder{limit: b.limit, sums: []float64{0}, weakest: make([]float64, len(pieces)+1), latest: make([]float64, len(b.loads))}
	needed := 0
	for i, p := range pieces {
		order.times = append(order.times, p.time)
		order.sums = append(order.sums, order.sums[i]+p.current)
		if needed == len(b.loads) {
			continue
		}
		_, bound := fewest(pieces[:i+1], b.limit)
		for ; needed < min(bound, len(b.loads)); needed++ {
			order.latest[needed] = p.time
		}
	}
	order.weakest[len(pieces)] = math.Inf(1)
	for i := len(pieces) - 1; i >= 0; i-- {
		order.weakest[i] = math.Min(pieces[i].current, order.weakest[i+1])
	}
	return order
}

// search is the best plan found, or the one that was known.
func (o *ordering) search(known [][]piece) [][]piece {
	o.place(0)
	if o.best == nil {
		return known
	}
	loads := make([][]piece, slices.Max(o.best)+1)
	for i, load := range o.best {
		loads[load] = append(loads[load], o.pieces[i])
	}
	return loads
}

// place hangs piece i, and all after it, in every way that may end sooner.
func (o *ordering) place(i int) {
	if o.hopeless(i) {
		return
	}
	if i == len(o.pieces) {
		_, end, left := schedule(o.least[:len(o.open)], o.supplies, leafSteps)
		o.steps -= leafSteps - left
		if end < o.end {
			o.end, o.best = end, slices.Clone(o.into)
		}
		return
	}
	p, at := o.pieces[i], o.bathOf[i]
	from := 0
	if i > 0 && p.alike(o.pieces[i-1]) {
		from = o.into[i-1]
	}
	var tried []float64
	for load := from; load < len(o.open) && o.steps > 0; load++ {
		room := o.open[load].room
		if o.open[load].bath != at || room < p.current || slices.Contains(tried, room) {
			continue
		}
		tried = append(tried, room)
		o.steps--
		o.into[i] = load
		o.open[load].room -= p.current
		o.place(i + 1)
		o.open[load].room = room
	}
	b := &o.baths[at]
	if b.opened == len(b.latest) || o.steps <= 0 {
		return
	}
	o.steps--
	o.into[i] = len(o.open)
	o.open = append(o.open, openLoad{at, b.limit - p.current, p.time})
	b.opened++
	o.place(i + 1)
	b.opened--
	o.open = o.open[:len(o.open)-1]
}

// hopeless says whether the pieces from i on can't be hung, or not so that the
// plan ends sooner than the best that is known.
func (o *ordering) hopeless(i int) bool {
	o.least = o.least[:0]
	for _, load := range o.open {
		o.least = append(o.least, load.time)
	}
	for at := range o.baths {
		if !o.openLater(at, o.nextOf(at, i)) {
			return true
		}
	}
	return leastEnd(o.least, o.supplies) >= o.end*(1-1e-12)
}

// nextOf is the first piece of a bath, among those of its own, from piece i of all on.
func (o *ordering) nextOf(at, i int) int {
	for ; i < len(o.pieces); i++ {
		if o.bathOf[i] == at {
			return o.placeOf[i]
		}
	}
	return len(o.baths[at].times)
}

// openLater adds to o.least what the loads take at least that a bath still has
// to open for its pieces from the next on: one more each time that the current
// of the pieces is more than the room there is. False where they don't fit.
func (o *ordering) openLater(at, next int) bool {
	b := &o.baths[at]
	var room float64
	for _, load := range o.open {
		if load.bath == at && load.room >= b.weakest[next] {
			room += load.room
		}
	}
	piece := next
	for k := b.opened; k < len(b.latest); k++ {
		for piece < len(b.times) && b.sums[piece+1]-b.sums[next] <= room*(1+slack) {
			piece++
		}
		time := b.latest[k]
		if piece < len(b.times) {
			time = math.Max(time, b.times[piece])
		}
		o.least = append(o.least, time)
		room += b.limit
	}
	return b.sums[len(b.times)]-b.sums[next] <= room*(1+slack)
}
