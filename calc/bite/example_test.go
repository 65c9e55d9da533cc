package bite_test

import (
	"fmt"

	"saltbite/calc/bite"
)

// Ten square centimetres of copper, a tenth of a millimetre deep, at 0.3 A. By
// hand: 0.896 g / (63.546 / (2 x 96485) g/C) is 2721 C, which is 151 min.
func ExampleLaw_Time() {
	copper := bite.Law{Equivalent: 63.546e-3 / (2 * 96485.332), Density: 8960, Efficiency: 1}
	work := bite.Work{Area: 10e-4, Pieces: 1}
	fmt.Printf("%.0f C, %.0f min\n", copper.Charge(work, 0.1e-3).SI, copper.Time(work, 0.1e-3, 0.3).SI/60)
	// Output:
	// 2721 C, 151 min
}

// Silver, an hour at 10.23 A: 41.19 g (OpenStax Chemistry 2e, Electrolysis,
// worked example, which takes M as 107.9; seen).
func ExampleLaw_Removed() {
	silver := bite.Law{Equivalent: 107.9e-3 / 96485.332, Density: 10490, Efficiency: 1}
	fmt.Printf("%.1f g\n", silver.Removed(10.23*3600).SI*1000)
	// Output:
	// 41.2 g
}
