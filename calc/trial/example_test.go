package trial_test

import (
	"fmt"

	"saltbite/calc/bite"
	"saltbite/calc/trial"
)

// Ten square centimetres of copper that lost 0.896 g. By hand: 0.896 g / 8.96
// g/cm3 / 10 cm2 is 0.1 mm, for which 2721 C would do (63.546 g to 2 x 96485 C).
func ExampleWeighing() {
	w := trial.Weighing{
		Before: 25.000e-3, After: 24.104e-3,
		Law:  bite.Law{Equivalent: 63.546e-3 / (2 * 96485.332), Density: 8960, Efficiency: 1},
		Work: bite.Work{Area: 10e-4, Pieces: 1},
	}
	fmt.Printf("%.3f mm deep, efficiency %.0f %%\n", w.DepthNow()*1000, w.EfficiencyNow(3000)*100)
	// Output:
	// 0.100 mm deep, efficiency 91 %
}
