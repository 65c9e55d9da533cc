package bath

import (
	"testing"

	"saltbite/calc/quantity"
)

// By hand, in mA/cm2; half of each limit, and 30 and 10 by common practice.
func TestSuggest(t *testing.T) {
	limit := func(density float64) quantity.Optional { return quantity.Known(density * milliamperes) }
	const cm2 = 1e-4
	for _, x := range []struct {
		name string
		s    Suggest
		want float64 // mA/cm2; 0: none
	}{
		{"nothing known", Suggest{}, 30},
		{"a film far off", Suggest{Film: limit(117)}, 30},
		{"a film near", Suggest{Film: limit(44)}, 22},
		{"a film so near that it is not followed", Suggest{Film: limit(10)}, 10},
		{"a saturated bath", Suggest{Film: limit(0)}, 10},
		{"the cathode's limit alone", Suggest{Cathode: limit(15)}, 7.5},
		{"its area not known", Suggest{Cathode: limit(15), TotalArea: quantity.Known(10 * cm2)}, 7.5},
		{"the exposed metal not known", Suggest{Cathode: limit(15), CathodeArea: quantity.Known(10 * cm2)}, 7.5},
		{"a cathode twice as large", Suggest{Cathode: limit(15), CathodeArea: quantity.Known(20 * cm2), TotalArea: quantity.Known(10 * cm2)}, 15},
		{"a cathode half as large", Suggest{Cathode: limit(15), CathodeArea: quantity.Known(5 * cm2), TotalArea: quantity.Known(10 * cm2)}, 3.75},
		{"a cathode large enough", Suggest{Cathode: limit(15), CathodeArea: quantity.Known(50 * cm2), TotalArea: quantity.Known(10 * cm2)}, 30},
		{"0.2 A on 10 cm2", Suggest{Amps: quantity.Known(0.2), TotalArea: quantity.Known(10 * cm2)}, 20},
		{"0.02 A on 10 cm2", Suggest{Amps: quantity.Known(0.02), TotalArea: quantity.Known(10 * cm2)}, 2},
		{"amperes alone", Suggest{Amps: quantity.Known(0.02)}, 30},
		{"the least of all", Suggest{Film: limit(44), Cathode: limit(50), Amps: quantity.Known(0.25), TotalArea: quantity.Known(10 * cm2)}, 22},
		{"a film below what the cathode allows", Suggest{Film: limit(4), Cathode: limit(15)}, 7.5},
		{"a spent bath", Suggest{Cathode: limit(0), CathodeArea: quantity.Known(5 * cm2), TotalArea: quantity.Known(10 * cm2)}, 0},
	} {
		got, ok := known(x.s.Density())
		if ok != (x.want > 0) || ok && !within(got, x.want*milliamperes, 1e-12) {
			t.Errorf("%s: %g mA/cm2, %v, want %g", x.name, got/milliamperes, ok, x.want)
		}
	}
}
