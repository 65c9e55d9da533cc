package metal

import "testing"

// Silver in an alloy that is mostly copper takes no charge in copper sulfate.
// The sums are by hand, in moles of charge a kilogram, with 63.546, 107.87 and
// 118.71 g/mol: 1000 x 3600 / 96485.33 = 37311.4 over the sum, in g/(A.h).
func TestSlime(t *testing.T) {
	made := func(parts ...Part) *Metal { return &Metal{Composition: parts} }
	for _, x := range []struct {
		name      string
		metal     *Metal
		slimes    bool
		want, low string // g/(A.h)
	}{
		{"copper 75, silver 25", made(Part{"Cu", 0.75}, Part{"Ag", 0.25}), true, "1.5807", ""},                               // 2 x 750 / 63.546 = 23.6049
		{"copper 95, silver 1, tin 4", made(Part{"Cu", 0.95}, Part{"Ag", 0.01}, Part{"Sn", 0.04}), true, "1.2204", "1.1941"}, // 2 x 950 / 63.546 + 2 x 40 / 118.71 = 30.5735, with tin's 4 31.2474
		{"copper alone", made(Part{"Cu", 1}), false, "1.1855", ""},                                                           // 2000 / 63.546 = 31.4733
		{"half silver, neither the larger share", made(Part{"Cu", 0.5}, Part{"Ag", 0.5}), false, "1.8315", ""},               // 1000 / 63.546 + 500 / 107.87 = 20.3718
		{"a little less than half", made(Part{"Cu", 0.5001}, Part{"Ag", 0.4999}), true, "2.3705", ""},                        // 2 x 500.1 / 63.546 = 15.7398
		{"sterling", made(Part{"Ag", 0.925}, Part{"Cu", 0.075}), false, "3.4119", ""},                                        // 925 / 107.87 + 150 / 63.546 = 10.9356
	} {
		const per = gramsPerAmpereHour
		if got := x.metal.Slimes(); got != x.slimes {
			t.Errorf("%s slimes: %v", x.name, got)
		}
		agree(t, x.name, x.metal.EquivalentSulfate()*per, x.want, 0.00006)
		low := x.metal.EquivalentSulfateLow()
		if low.Known() != (x.low != "") {
			t.Errorf("%s: a low end %v", x.name, low)
		}
		if low.Known() {
			agree(t, x.name+", low", low.SI*per, x.low, 0.00006)
		}
	}
	if m := made(Part{"Cu", 0.75}, Part{"Ag", 0.25}); m.EquivalentSulfate() > 0 && len(m.Composition) != 2 {
		t.Error("the metal itself lost its silver")
	}
}
