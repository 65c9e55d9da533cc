package batch_test

import (
	"fmt"

	"saltbite/calc/batch"
	"saltbite/calc/bite"
)

// Three tags on a supply of 1 A. By hand: at 300 A/m2 20 and 10 cm2 take 0.6 and
// 0.3 A, together 1.2 A; 0.1 mm of copper takes 9070 s, or 151 min, 0.2 mm twice
// that; 302 + 10 + 151 min. In three hours both loads have 5100 s.
func ExampleArrange() {
	copper := bite.Law{Equivalent: 63.546e-3 / (2 * 96485.332), Density: 8960, Efficiency: 1}
	tag := func(area, depth float64) batch.Row {
		return batch.Row{Bath: "copper sulfate", Density: 300, Depth: depth, Law: copper, Work: bite.Work{Area: area}, Count: 1}
	}
	plan, _ := batch.Arrange([]batch.Row{tag(20e-4, 0.1e-3), tag(10e-4, 0.1e-3), tag(10e-4, 0.2e-3)}, batch.Supplies{Count: 1, Amps: 1, Changeover: 600})
	for i, load := range plan.Loads {
		fmt.Printf("load %d: %.1f A\n", i+1, load.Current)
		for _, lift := range load.Lifts {
			fmt.Printf("  %.0f min: lift %d of row %d, turn down to %.1f A\n", lift.At/60, lift.Count, lift.Row+1, lift.Left)
		}
	}
	fmt.Printf("all in %.0f min; within three hours %.3f mm\n", plan.End/60, plan.DeepestWithin(3*3600)*1000)
	// Output:
	// load 1: 0.9 A
	//   151 min: lift 1 of row 1, turn down to 0.3 A
	//   302 min: lift 1 of row 3, turn down to 0.0 A
	// load 2: 0.3 A
	//   463 min: lift 1 of row 2, turn down to 0.0 A
	// all in 463 min; within three hours 0.056 mm
}
