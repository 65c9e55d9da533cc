package batch

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// No plan of loads ends before leastEnd, and where one bound is met it says just that.
func TestLeastEnd(t *testing.T) {
	for _, x := range []struct {
		name  string
		times []float64
		on    Supplies
		want  float64
	}{
		{"none", nil, Supplies{Count: 2, Changeover: 5}, 0},
		{"one supply: all, and the changes between", []float64{10, 20, 30}, Supplies{Count: 1, Changeover: 5}, 70},
		{"the longest", []float64{10, 1}, Supplies{Count: 2, Changeover: 5}, 10},
		{"shared evenly, with two changes", []float64{8, 8, 8, 8}, Supplies{Count: 2, Changeover: 5}, 21},
		{"two of the three longest follow each other", []float64{1, 10, 10, 10}, Supplies{Count: 2, Changeover: 5}, 25},
		{"as many as supplies", []float64{4, 4, 4}, Supplies{Count: 3, Changeover: 5}, 4},
	} {
		if got := leastEnd(x.times, x.on); math.Abs(got-x.want) > 1e-12 {
			t.Errorf("%s: %v, want %v", x.name, got, x.want)
		}
	}
	r := rand.New(rand.NewPCG(61, 62))
	for range 300 {
		times := make([]float64, 1+r.IntN(6))
		for i := range times {
			times[i] = 1 + 9*r.Float64()
		}
		on := Supplies{Count: 1 + r.IntN(3), Changeover: 3 * r.Float64()}
		_, end, _ := schedule(times, on, scheduleSteps)
		if least := leastEnd(times, on); least > end*(1+1e-12) || on.Count == 1 && end > least*(1+1e-12) {
			t.Fatalf("%v on %+v end after %v, the bound is %v", times, on, end, least)
		}
	}
}

// Rounds are whole: 4 loads on 2 supplies take 2, a fifth a third.
func TestRounds(t *testing.T) {
	for _, x := range [][3]int{{1, 1, 1}, {4, 2, 2}, {5, 2, 3}, {6, 2, 3}, {3, 5, 1}, {7, 1, 7}} {
		if got := roundsOf(x[0], x[1]); got != x[2] {
			t.Errorf("%d loads on %d supplies take %d rounds, want %d", x[0], x[1], got, x[2])
		}
	}
}

// First fit takes the first load with room, best fit the one that it fills most; a piece
// for which just enough is left goes in, and nothing is lost or over the limit.
func TestFits(t *testing.T) {
	of := func(currents ...float64) (pieces []piece) {
		for _, c := range currents {
			pieces = append(pieces, piece{current: c})
		}
		return pieces
	}
	sizes := func(loads [][]piece) (list []float64) {
		for _, load := range loads {
			sum := 0.0
			for _, p := range load {
				sum += p.current
			}
			list = append(list, sum)
		}
		return list
	}
	same := func(a, b []float64) bool {
		if len(a) != len(b) {
			return false
		}
		for i := range a {
			if a[i] != b[i] {
				return false
			}
		}
		return true
	}
	// 6 and 7 do not go together; 3 goes with either: first fit leaves 6 + 3, best fit fills 7 + 3.
	if got := sizes(firstFit(of(6, 7, 3), 10)); !same(got, []float64{9, 7}) {
		t.Errorf("first fit makes %v", got)
	}
	if got := sizes(bestFit(of(6, 7, 3), 10)); !same(got, []float64{6, 10}) {
		t.Errorf("best fit makes %v", got)
	}
	for name, fit := range map[string]func([]piece, float64) [][]piece{"first": firstFit, "best": bestFit} {
		if got := sizes(fit(of(8, 2, 5, 5), 10)); !same(got, []float64{10, 10}) {
			t.Errorf("%s fit of what just goes in makes %v", name, got)
		}
		if got := fit(nil, 10); len(got) != 0 {
			t.Errorf("%s fit of nothing makes %v", name, got)
		}
	}
}

// By hand: the longest first, each to the supply that is free first, is where a search
// begins; what it may try beyond that finds what is better. 5 5 4 4 3 3 3 on three supplies
// end after 11 that way (5 + 3 + 3), and after 9 as 5 + 4, 5 + 4, 3 + 3 + 3, which is the sum
// over three (R. L. Graham, SIAM J. Appl. Math. 17 (1969) 416, from memory).
func TestScheduleByHand(t *testing.T) {
	for _, x := range []struct {
		times []float64
		on    Supplies
		steps int
		want  float64
	}{
		{[]float64{1, 1, 2}, Supplies{Count: 2}, 0, 2},
		{[]float64{1, 1, 2}, Supplies{Count: 2, Changeover: 0.5}, 0, 2.5},
		{[]float64{5, 1, 1}, Supplies{Count: 2, Changeover: 10}, 0, 12}, // the second is free after 11, the first after 15
		{[]float64{3, 3, 4, 5, 3, 4, 5}, Supplies{Count: 3}, 0, 11},
		{[]float64{3, 3, 4, 5, 3, 4, 5}, Supplies{Count: 3}, scheduleSteps, 9},
		{[]float64{3, 3, 4, 5, 3, 4, 5}, Supplies{Count: 3, Changeover: 1}, scheduleSteps, 11}, // 3 + 1 + 3 + 1 + 3
		{[]float64{2, 2, 2, 3, 3}, Supplies{Count: 2}, 0, 7},
		{[]float64{2, 2, 2, 3, 3}, Supplies{Count: 2}, scheduleSteps, 6},
		{[]float64{6, 1, 1, 1}, Supplies{Count: 2}, scheduleSteps, 7}, // at most two loads on a supply, so 6 + 1 and 1 + 1
	} {
		supplyOf, end, left := schedule(x.times, x.on, x.steps)
		busy := make([]float64, x.on.Count)
		for i, at := range supplyOf {
			if busy[at] > 0 {
				busy[at] += x.on.Changeover
			}
			busy[at] += x.times[i]
		}
		if end != x.want || slices.Max(busy) != end || left > x.steps {
			t.Errorf("%v on %+v end after %g, want %g; the supplies are busy until %v, %d steps of %d are left", x.times, x.on, end, x.want, busy, left, x.steps)
		}
	}
}

// A load is topped up with the strongest that go in, and nothing is lost; both what hangs
// and what is left come longest first, since the first of a load says how long it takes.
func TestTopUp(t *testing.T) {
	b := bathful{limit: 10}
	full, rest := b.topUp([]piece{{current: 4, time: 9}}, []piece{{current: 2, time: 7}, {current: 1, time: 5}, {current: 5, time: 1}, {current: 3, time: 2}, {current: 0.5, time: 6}})
	// 5 goes in and leaves 1; 3 and 2 do not; 1 fills it.
	var got []float64
	for _, p := range slices.Concat(full, rest) {
		got = append(got, p.time)
	}
	if len(full) != 3 || !slices.Equal(got, []float64{9, 5, 1, 7, 6, 2}) {
		t.Errorf("%d pieces hang, of those that take %v", len(full), got)
	}
}
