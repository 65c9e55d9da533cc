// Package batch plans a class: many pieces, few supplies, one clock. It puts
// the pieces into loads, the loads onto supplies, and says when each piece is
// lifted and what the current is turned down to.
//
// A load is what hangs on one supply at once: in one bath, at one current
// density, with currents that together are within what the supply gives. Each
// piece is lifted as it reaches its own depth, and the current is turned down by
// its share, so that the density of the others stays. The load ends with its
// last piece. A piece that alone takes more than the supply gives hangs alone,
// at all that the supply gives, and takes longer.
//
// All is in SI: A, A/m2, m, m2, s. Faraday's law is that of package bite.
//
// # Method
//
// Plans are compared by loads, then by rounds, then by their end. Fewest loads
// is bin packing: first fit and best fit decreasing, and a fill of one load
// after another; where these don't meet the bound L2 of Martello and Toth, or that
// by count, many pieces are parted by their current and packed again, and branch
// and bound looks for fewer with few (S. Martello and P. Toth, Knapsack Problems,
// Wiley 1990, chapter 8, from memory). For up to 24 pieces, a second branch and
// bound looks among all plans with that many loads for the one that ends first;
// for more pieces, loads are repacked two by two while that makes them end
// sooner. Searches end after a fixed number of steps, never by a clock, so that
// the same class gives the same plan everywhere.
package batch

import (
	"cmp"
	"math"
	"slices"

	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

// MostPieces is the largest class that is planned.
const MostPieces = 1000

// slack is by how much of it the currents of a load may pass what a supply
// gives: rounding only.
const slack = 1e-9

// Row is equal pieces of a class.
type Row struct {
	Bath    string    // pieces hang together only in the same bath
	Density float64   // A/m2 over the bare metal, and only at the same density
	Depth   float64   // m
	Law     bite.Law  // of the metal, with its efficiency
	Work    bite.Work // one piece; hanger and other bare metal in Extra; Pieces is not looked at
	Count   int       // how many
}

// Supplies are what the class has: equal ones.
type Supplies struct {
	Count      int     // how many
	Amps       float64 // A, what each can give
	Changeover float64 // s, between one load and the next on a supply
}

// Plan is a class from beginning to end.
type Plan struct {
	Loads      []Load  // by start, then by supply
	Rounds     int     // loads one after another on the busiest supply
	End        float64 // s after the beginning
	Current    float64 // A, the most at once on one supply
	LeastLoads int     // no plan has fewer loads than this
	rows       []Row
	supplies   Supplies
}

// Load is what hangs on one supply at once.
type Load struct {
	Bath     string
	Density  float64 // A/m2; less where one piece takes more than the supply gives
	Supply   int     // from 1
	Round    int     // from 1, of that supply
	Start    float64 // s after the beginning
	Duration float64 // s
	Current  float64 // A, at its start
	Lifts    []Lift  // in their order
}

// Lift is equal pieces of a load that reach their depth at one time.
type Lift struct {
	Row     int     // index into the rows
	Count   int     // how many pieces
	At      float64 // s after the beginning
	Current float64 // A, of these pieces while they hang
	Left    float64 // A, what the supply is turned down to as they are lifted; 0: off
}

// Arrange plans a class. Not ok without anything to plan, if a row lacks
// what its time follows from, or there are more than MostPieces.
func Arrange(rows []Row, supplies Supplies) (plan Plan, ok bool) {
	pieces, ok := split(rows, supplies)
	if !ok {
		return Plan{}, false
	}
	baths, leastLoads := fewestLoads(pieces, supplies.Amps)
	plan = timetable(soonest(baths, supplies), rows, supplies)
	plan.LeastLoads = leastLoads
	return plan, true
}

// DeepestWithin is the same depth for all pieces, m, with which the same loads
// on the same supplies end within a session (s). 0: not even the changeovers
// leave time. The depth's time rises with it, so that bisection finds it.
func (p Plan) DeepestWithin(session float64) float64 {
	ends := func(depth float64) float64 {
		busy := make([]float64, p.supplies.Count)
		for _, load := range p.Loads {
			var longest float64
			for _, lift := range load.Lifts {
				longest = math.Max(longest, p.rows[lift.Row].time(depth, p.supplies.Amps))
			}
			busy[load.Supply-1] += longest + p.pause(load)
		}
		return slices.Max(busy)
	}
	if len(p.Loads) == 0 || quantity.Positive(session).SI == 0 || !(ends(0) < session) {
		return 0
	}
	const usual, absurd = 1e-3, 1e3 // m
	low, high := 0.0, usual
	for high < absurd && ends(high) < session {
		low, high = high, 2*high
	}
	for {
		middle := low + (high-low)/2
		if middle <= low || middle >= high {
			return quantity.Positive(low).SI
		}
		if ends(middle) <= session {
			low = middle
		} else {
			high = middle
		}
	}
}

// pause is the changeover before a load.
func (p Plan) pause(l Load) float64 {
	if l.Round == 1 {
		return 0
	}
	return p.supplies.Changeover
}

// current is what one piece takes, A, of a supply that gives so much.
func (r Row) current(amps float64) float64 {
	if r.alone(amps) {
		return amps
	}
	return r.whole()
}

// whole is the current of one piece at its density, A.
func (r Row) whole() float64 { return quantity.Positive(r.Density * (r.Work.Area + r.Work.Extra)).SI }

// alone says whether one piece takes more than a supply gives.
func (r Row) alone(amps float64) bool { return r.whole() > amps*(1+slack) }

// time is how long one piece takes to a depth, s.
func (r Row) time(depth, amps float64) float64 {
	one := r.Work
	one.Pieces = 1
	return r.Law.Time(one, depth, r.current(amps)).SI
}

// piece is one piece of a row.
type piece struct {
	row     int
	bath    int // the first row that it may hang together with
	current float64
	time    float64
	alone   bool
}

// alike pieces take each other's places in any plan.
func (p piece) alike(q piece) bool {
	return p.current == q.current && p.time == q.time && p.bath == q.bath && p.alone == q.alone
}

// split is every single piece.
func split(rows []Row, supplies Supplies) (pieces []piece, ok bool) {
	if supplies.Count < 1 || quantity.Positive(supplies.Amps).SI == 0 || !(supplies.Changeover >= 0 && supplies.Changeover <= math.MaxFloat64) {
		return nil, false
	}
	for i, r := range rows {
		if r.Count < 1 || r.Count > MostPieces-len(pieces) {
			return nil, false
		}
		together := func(other Row) bool { return r.Bath == other.Bath && r.Density == other.Density }
		p := piece{i, slices.IndexFunc(rows, together), r.current(supplies.Amps), r.time(r.Depth, supplies.Amps), r.alone(supplies.Amps)}
		if p.current == 0 || p.time == 0 {
			return nil, false
		}
		pieces = append(pieces, slices.Repeat([]piece{p}, r.Count)...)
	}
	return pieces, len(pieces) > 0
}

// longestFirst orders pieces by time, then current, and is the same for the same class.
func longestFirst(p, q piece) int {
	return cmp.Or(cmp.Compare(q.time, p.time), cmp.Compare(q.current, p.current), cmp.Compare(p.row, q.row))
}

// strongestFirst orders pieces by current, then time.
func strongestFirst(p, q piece) int {
	return cmp.Or(cmp.Compare(q.current, p.current), cmp.Compare(q.time, p.time), cmp.Compare(p.row, q.row))
}
