package batch

import (
	"math"
	"slices"
	"sort"
)

// bathful is the pieces of one bath that may hang together, in the fewest loads
// that were found. Pieces that hang alone are a bathful each.
type bathful struct {
	limit float64 // A, what the pieces of a load may take together
	loads [][]piece
}

// fewestLoads packs each bath by itself, since baths share no load. least is a
// number of loads that no plan goes under.
func fewestLoads(pieces []piece, amps float64) (baths []bathful, least int) {
	shared := map[int][]piece{}
	var order []int
	for _, p := range pieces {
		if p.alone {
			baths = append(baths, bathful{amps, [][]piece{{p}}})
			least++
			continue
		}
		if shared[p.bath] == nil {
			order = append(order, p.bath)
		}
		shared[p.bath] = append(shared[p.bath], p)
	}
	for _, b := range order {
		loads, bound := fewest(shared[b], amps*(1+slack))
		baths = append(baths, bathful{amps * (1 + slack), loads})
		least += bound
	}
	return baths, least
}

// fewest packs pieces of one bath into as few loads as it finds. bound is a
// number that no packing goes under; it is the number of loads where the search
// came to its end.
func fewest(pieces []piece, limit float64) (loads [][]piece, bound int) {
	pieces = slices.Clone(pieces)
	slices.SortFunc(pieces, strongestFirst)
	bound = max(leastLoads(pieces, limit), leastByCount(pieces, limit))
	for _, pack := range []func([]piece, float64) [][]piece{firstFit, bestFit, filled} {
		if found := pack(pieces, limit); loads == nil || len(found) < len(loads) {
			loads = found
		}
		if len(loads) == bound {
			return loads, bound
		}
	}
	if len(pieces) > mostCompleted {
		loads = parted(pieces, limit, loads, bound)
	}
	for ; bound < len(loads) && len(pieces) <= mostCompleted; bound++ {
		c := newCompleting(pieces, limit)
		if c.pack(c.all(), bound) {
			return c.loads, bound
		}
		if c.steps <= 0 {
			break
		}
	}
	return loads, bound
}

// leastLoads is the bound L2 for pieces in falling order of current: for each
// limit a up to half a load, the pieces over half a load each need one of their
// own, the smaller ones of those give what room they leave to the pieces from a
// to half a load, and what does not fit there needs loads of its own.
//
//	L2 = max over a of |over half| + (sum of a to half - room beside those up to limit - a) / limit, rounded up
//
// S. Martello and P. Toth, Discrete Applied Mathematics 28 (1990) 59, from memory.
func leastLoads(pieces []piece, limit float64) int {
	over := 0 // pieces over half a load
	for over < len(pieces) && pieces[over].current > limit/2 {
		over++
	}
	least := over
	for i := over; i < len(pieces); i++ {
		if i+1 < len(pieces) && pieces[i+1].current == pieces[i].current {
			continue
		}
		a := pieces[i].current
		var need float64
		for _, p := range pieces[over : i+1] {
			need += p.current
		}
		for _, p := range pieces[:over] {
			if p.current <= limit-a {
				need -= limit - p.current
			}
		}
		const rounding = 1e-9 // of a load: sums of a thousand pieces
		least = max(least, over+int(math.Ceil(need/limit-rounding)))
	}
	return least
}

// leastByCount is a bound by how many pieces a load holds, for pieces in falling
// order of current; it is over L2 where loads of few pieces are never full. With
// the loads in the order of how many pieces they hold, the first t of b loads hold
// at most C(t) pieces, as many of the weakest as t loads have the current for. The
// last of these holds their mean at most, and none after it holds more, so that
//
//	pieces <= C(t) + (b - t) floor(C(t) / t)   for every t up to b
//
// It holds for the pieces over any current alone, too. Own argument, no source.
func leastByCount(pieces []piece, limit float64) (least int) {
	for n := len(pieces); n > 0; n-- {
		if n < len(pieces) && pieces[n].current == pieces[n-1].current {
			continue
		}
		least = max(least, byCount(pieces[:n], limit, least))
	}
	return least
}

// byCount is that bound for these pieces; least is known already.
func byCount(pieces []piece, limit float64, least int) int {
	least = max(least, 1)
	const rounding = 1e-9 // of a load: sums of a thousand pieces
	var current float64
	within := 0 // C(t)
	for t := 1; t <= least; t++ {
		for within < len(pieces) && current+pieces[len(pieces)-1-within].current <= limit*(float64(t)+rounding) {
			current += pieces[len(pieces)-1-within].current
			within++
		}
		if each := within / t; each > 0 {
			least = max(least, t+(len(pieces)-within+each-1)/each)
		}
	}
	return least
}

// partings is in how many places the pieces are parted, and partedSteps how many
// pieces are tried to fill one load of a part.
const partings, partedSteps = 24, 600

// parted looks for fewer loads than are known: the strongest pieces are packed by
// themselves, and the others by themselves. So the strongest, of which few make a
// load that is never full, do not take the weak ones of which more would make one
// that is. Own, no source.
func parted(pieces []piece, limit float64, known [][]piece, bound int) [][]piece {
	for part := 1; part < partings && len(known) > bound; part++ {
		at := part * len(pieces) / partings
		loads := slices.Concat(filledBy(partedSteps, pieces[:at], limit), filledBy(partedSteps, pieces[at:], limit))
		if len(loads) < len(known) {
			known = loads
		}
	}
	return known
}

// firstFit hangs each piece into the first load that has room.
func firstFit(pieces []piece, limit float64) [][]piece {
	return fit(pieces, limit, func(room, best float64) bool { return false })
}

// bestFit hangs each piece into the load that has the least room for it.
func bestFit(pieces []piece, limit float64) [][]piece {
	return fit(pieces, limit, func(room, best float64) bool { return room < best })
}

// fit hangs each piece into a load with room, or into a new load.
// better says whether a load's room is to be taken before the best so far.
func fit(pieces []piece, limit float64, better func(room, best float64) bool) [][]piece {
	var loads [][]piece
	var rooms []float64
	for _, p := range pieces {
		into := -1
		for i, room := range rooms {
			if room >= p.current && (into < 0 || better(room, rooms[into])) {
				into = i
			}
		}
		if into < 0 {
			into = len(loads)
			loads, rooms = append(loads, nil), append(rooms, limit)
		}
		loads[into] = append(loads[into], p)
		rooms[into] -= p.current
	}
	return loads
}

// fillSteps is how many pieces are tried to fill one load.
const fillSteps = 5000

// filled fills one load after another: the strongest piece that is left, and of
// the others those that leave the least room (J. N. D. Gupta and J. C. Ho,
// Production Planning and Control 10 (1999) 598; with a fixed first piece K.
// Fleszar and K. S. Hindi, Computers and Operations Research 29 (2002) 821;
// both from memory).
func filled(pieces []piece, limit float64) [][]piece { return filledBy(fillSteps, pieces, limit) }

// filledBy is filled with so many tries for a load.
func filledBy(steps int, pieces []piece, limit float64) [][]piece {
	var loads [][]piece
	left := slices.Clone(pieces)
	for len(left) > 0 {
		f := filling{left: left, full: 2 * slack * limit, steps: steps, chosen: []int{0}}
		f.try(1, limit-left[0].current)
		var load []piece
		for k, i := range f.best {
			load = append(load, left[i-k])
			left = slices.Delete(left, i-k, i-k+1)
		}
		loads = append(loads, load)
	}
	return loads
}

// filling is the search for the pieces that fill a load best.
type filling struct {
	left   []piece // in falling order of current
	full   float64 // a load with so little room is full
	room   float64 // that the best choice leaves
	best   []int
	chosen []int
	steps  int
}

// try adds pieces from index on to those chosen, which leave so much room.
func (f *filling) try(from int, room float64) {
	if f.best == nil || room < f.room {
		f.room, f.best = room, append(f.best[:0], f.chosen...)
	}
	fits := sort.Search(len(f.left)-from, func(i int) bool { return f.left[from+i].current <= room })
	for i := from + fits; i < len(f.left) && f.steps > 0 && f.room > f.full; i++ {
		p := f.left[i].current
		if i > from+fits && p == f.left[i-1].current {
			continue
		}
		f.steps--
		f.chosen = append(f.chosen, i)
		f.try(i+1, room-p)
		f.chosen = f.chosen[:len(f.chosen)-1]
	}
}

// sumsAfter is the current of the pieces from each index on.
func sumsAfter(pieces []piece) []float64 {
	sums := make([]float64, len(pieces)+1)
	for i := len(pieces) - 1; i >= 0; i-- {
		sums[i] = sums[i+1] + pieces[i].current
	}
	return sums
}
