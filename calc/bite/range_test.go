package bite

import "testing"

// Bell metal, Cu 78 Sn 22. By hand, in moles of charge a kilogram: 1560 / 63.546
// + 440 / 118.71 = 28.256 with tin as Sn(II), 1560 / 63.546 + 880 / 118.71 =
// 31.962 as Sn(IV): 0.8840 as much metal for the same charge, less than 90 %. Of
// CuSn8, 30.303 and 31.651 by the same sum, it is 0.9574, more than 90 %.
func TestLikely(t *testing.T) {
	w := Work{Area: 10 * cm2, Pieces: 1}
	law := func(moles float64) Law { return Law{Equivalent: 1 / exact / moles, Density: 8600, Efficiency: 1} }
	bell, bronze, low := law(28.256), law(30.303), func(moles float64) float64 { return 1 / exact / moles }
	for _, x := range []struct {
		name             string
		law              Law
		low, least, most float64
		slow, fast       float64 // times as long as the law itself
	}{
		{"bell metal", bell, low(31.962), 0.90, 1.05, 1 / 0.8840, 1 / 1.05},
		{"bronze", bronze, low(31.651), 0.90, 1.05, 1 / 0.90, 1 / 1.05},
		{"no tin", bronze, 0, 0.90, 1.05, 1 / 0.90, 1 / 1.05},
		{"this bench's runs", bronze, 0, 0.95, 0.99, 1 / 0.95, 1 / 0.99},
		{"this bench's runs, over 100 %", bronze, 0, 1.01, 1.04, 1 / 1.01, 1 / 1.04},
		{"common salt, copper: one charge or two", law(15.737), low(31.473), 1, 1, 2, 1}, // 1000 / 63.546, 2000 / 63.546
		{"an efficiency that was typed", Law{bell.Equivalent, bell.Density, 0.97}, low(31.962), 0.97, 0.97, 1 / 0.8840, 1},
	} {
		slow, fast := x.law.Likely(x.low, x.least, x.most)
		time := x.law.Time(w, 0.1*mm, 0.3).SI
		if got := slow.Time(w, 0.1*mm, 0.3).SI / time; !near(got, x.slow, 2e-4) {
			t.Errorf("%s: the slow end is %.4f times, want %.4f", x.name, got, x.slow)
		}
		if got := fast.Time(w, 0.1*mm, 0.3).SI / time; !near(got, x.fast, 2e-4) {
			t.Errorf("%s: the fast end is %.4f times, want %.4f", x.name, got, x.fast)
		}
	}
	if LeastEfficiency != 0.90 || MostEfficiency != 1.05 { // common practice, no source
		t.Error("the efficiency of common practice changed")
	}
}
