package batch

import "math/bits"

// mostCompleted is the largest number of pieces in one bath for which fewer
// loads are looked for by branch and bound: a bit for each.
const mostCompleted = 64

// completeSteps is how many loads the search completes.
const completeSteps = 60_000

// completing is a search that completes one load after another: each holds the
// strongest piece that is left, and one of the choices of other pieces that no
// other choice is better than. What is left, with the loads it may take, is
// looked at once (R. E. Korf, AAAI 2002, 731, after S. Martello and P. Toth; from
// memory).
type completing struct {
	pieces []piece // in falling order of current
	limit  float64
	steps  int
	failed map[leftover]bool
	loads  [][]piece
}

// leftover is pieces, a bit for each, and the loads that they may take.
type leftover struct {
	pieces uint64
	loads  int
}

func newCompleting(pieces []piece, limit float64) *completing {
	return &completing{pieces: pieces, limit: limit, steps: completeSteps, failed: map[leftover]bool{}}
}

// all is a bit for each piece.
func (c *completing) all() uint64 { return ^uint64(0) >> (64 - len(c.pieces)) }

// pack hangs what is left into so many loads, if that can be and the steps last.
func (c *completing) pack(left uint64, loads int) bool {
	if left == 0 {
		return true
	}
	state := leftover{left, loads}
	if c.failed[state] || leastLoads(c.listed(left), c.limit) > loads {
		return false
	}
	first := uint64(1) << bits.TrailingZeros64(left)
	found := c.complete(first, left&^first, left&^first, c.limit-c.currentOf(first), loads)
	if !found {
		c.failed[state] = true
	}
	return found
}

// complete goes through the choices of pieces to add to a load that has so much
// room: each of those still to choose from is added, or is not.
func (c *completing) complete(load, choose, left uint64, room float64, loads int) bool {
	tried := c.limit // no current is as large, with another beside it
	for rest := choose; rest != 0 && c.steps > 0; {
		next := uint64(1) << bits.TrailingZeros64(rest)
		rest &^= next
		current := c.currentOf(next)
		if current > room || current == tried {
			continue
		}
		tried = current
		if c.complete(load|next, rest, left&^next, room-current, loads) {
			return true
		}
	}
	if c.steps <= 0 || c.worse(load, left, room) {
		return false
	}
	c.steps--
	if !c.pack(left, loads-1) {
		return false
	}
	c.loads = append(c.loads, c.listed(load))
	return true
}

// worse says whether another load is at least as good: one with one more piece,
// or with a stronger piece, or an equal one before it, instead of one or two
// of its pieces (the first excepted, which is the strongest of all).
func (c *completing) worse(load, left uint64, room float64) bool {
	own := load &^ (1 << bits.TrailingZeros64(load))
	for out := left; out != 0; out &= out - 1 {
		i := bits.TrailingZeros64(out)
		current := c.pieces[i].current
		if current <= room {
			return true
		}
		for a := own; a != 0; a &= a - 1 {
			j := bits.TrailingZeros64(a)
			one := c.pieces[j].current
			if i < j && current <= one+room {
				return true
			}
			for b := a & (a - 1); b != 0; b &= b - 1 {
				two := one + c.pieces[bits.TrailingZeros64(b)].current
				if two <= current && current <= two+room {
					return true
				}
			}
		}
	}
	return false
}

// currentOf is the current of one piece, given by its bit.
func (c *completing) currentOf(piece uint64) float64 {
	return c.pieces[bits.TrailingZeros64(piece)].current
}

// listed is the pieces whose bits are set.
func (c *completing) listed(set uint64) []piece {
	list := make([]piece, 0, bits.OnesCount64(set))
	for ; set != 0; set &= set - 1 {
		list = append(list, c.pieces[bits.TrailingZeros64(set)])
	}
	return list
}
