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
	fmt.Printf("%.3f mm deep, efficiency %.0f %%\n", w.DepthNow().SI*1000, w.EfficiencyNow(3000).SI*100)
	// Output:
	// 0.100 mm deep, efficiency 91 %
}

// Three runs of 93, 95 and 97 %. By hand: s is 2 %, Student's t for two degrees
// of freedom 4.3027; 4.3027 x 2 % / sqrt 3 is 5.0 %, x 2 % x sqrt(4/3) is 9.9 %.
func ExampleBench() {
	fit := trial.Bench([]trial.Run{
		{Efficiency: 0.93, Expected: 1e-3, Resolution: 1e-5},
		{Efficiency: 0.95, Expected: 1e-3, Resolution: 1e-5},
		{Efficiency: 0.97, Expected: 1e-3, Resolution: 1e-5},
	})
	fmt.Printf("%.0f %%, between %.1f and %.1f %%\n", fit.Efficiency.SI*100, fit.Efficiency.Low.SI*100, fit.Efficiency.High.SI*100)
	fmt.Printf("next run between %.1f and %.1f %%\n", fit.Next.Low.SI*100, fit.Next.High.SI*100)
	// Output:
	// 95 %, between 90.0 and 100.0 %
	// next run between 85.1 and 104.9 %
}
