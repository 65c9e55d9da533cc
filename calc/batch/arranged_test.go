package batch

import (
	_ "embed"
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"saltbite/testdata"
)

// arranged is the plans of drawn classes, and the steps that each search took. The same
// class gives the same plan everywhere: natively, in WebAssembly, and in the next version.
// A bound that holds less than it could leaves the plan as it is and shows in the steps
// alone. It proves no plan good: the other tests do. The classes are
// invented. A change is written with SALTBITE_WRITE=1 go test ./calc/batch -run Arranged.
//
//go:embed testdata/arranged.txt
var arranged string

func TestArranged(t *testing.T) {
	var told strings.Builder
	r := rand.New(rand.NewPCG(91, 92))
	for _, kind := range slices.Sorted(maps.Keys(shares)) {
		for _, pieces := range []int{5, 14, 20, 40, 65} {
			s := Supplies{Count: 1 + r.IntN(3), Amps: 1, Changeover: float64(r.IntN(3)) * 10 * minute}
			tell(&told, kind, drawn(r, shares[kind], pieces), s)
		}
	}
	for range 60 {
		rows, s := class(r, 1+r.IntN(12), 1+r.IntN(4)*r.IntN(2))
		tell(&told, "class", rows, s)
	}
	if changed, err := testdata.Changed("testdata/arranged.txt", arranged, told.String()); changed != "" || err != nil {
		t.Fatal(changed, err)
	}
}

// tell writes the plan of a class, a line for each load, and what the searches took.
func tell(told *strings.Builder, kind string, rows []Row, s Supplies) {
	plan, _ := Arrange(rows, s)
	fmt.Fprintf(told, "%s, %d rows on %d of %.4g A, %g s between: %d loads, at least %d, end after %.7g s\n",
		kind, len(rows), s.Count, s.Amps, s.Changeover, len(plan.Loads), plan.LeastLoads, plan.End)
	for _, load := range plan.Loads {
		fmt.Fprintf(told, "  %d.%d from %.7g s, %.4g A: %s\n", load.Supply, load.Round, load.Start, load.Current, strings.Join(names(load), " "))
	}
	pieces, _ := split(rows, s)
	baths, _ := fewestLoads(pieces, s.Amps)
	var steps []string
	for _, b := range baths {
		steps = append(steps, b.steps()...)
	}
	if len(pieces) <= mostSearched {
		o := newOrdering(baths, s, plan.End*1.1) // so that it has an end to find
		o.search(nil)
		steps = append(steps, fmt.Sprintf("%d to end sooner", orderSteps-o.steps))
	}
	fmt.Fprintf(told, "  steps: %s\n", strings.Join(steps, ", "))
}

// steps is what the searches for the loads of a bath took.
func (b bathful) steps() (told []string) {
	pieces := slices.Concat(b.loads...)
	slices.SortFunc(pieces, strongestFirst)
	f := filling{left: pieces, full: 2 * slack * b.limit, steps: fillSteps, chosen: []int{0}}
	f.try(1, b.limit-pieces[0].current)
	told = append(told, fmt.Sprintf("%d to fill one", fillSteps-f.steps))
	for loads := leastLoads(pieces, b.limit); loads <= len(b.loads) && len(pieces) <= mostCompleted; loads++ {
		c := newCompleting(pieces, b.limit)
		c.pack(c.all(), loads)
		told = append(told, fmt.Sprintf("%d to hang in %d", completeSteps-c.steps, loads))
	}
	return told
}
