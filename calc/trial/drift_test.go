package trial

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Norris's calibration of an ozone monitor, NIST Statistical Reference Datasets
// (data and certified values from memory; they agree to all digits): slope
// 1.00211681802045, its standard deviation 0.000429796848199937.
func TestPublishedRegression(t *testing.T) {
	points := Readings{
		{0.2, 0.1}, {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2}, {226.5, 228.1}, {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1},
		{777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3}, {0.6, 0.1}, {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
		{556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3}, {0.3, 0.6}, {556.8, 557.6}, {339.1, 339.3},
		{887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9}, {11.1, 10.2}, {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2},
	}
	slope := points.slope(0)
	if !near(slope.SI, 1.00211681802045, 1e-12) {
		t.Errorf("slope %.14f", slope.SI)
	}
	if got := (slope.High.SI - slope.SI) / studentT(0.95, len(points)-2); !near(got, 0.000429796848199937, 1e-9) {
		t.Errorf("its standard deviation is %.12g", got)
	}
}

// By hand: 100, 98, 99, 95 % have the slope -7/5 = -1.4 % a run; squares about the
// mean 98 % sum to 14, about the line to 14 - 5 x 1.4^2 = 4.2, so that s is
// 1.449138 %; t for two degrees of freedom 4.302653, so +- 2.788438 %.
func TestDrift(t *testing.T) {
	runs := plain(1.00, 0.98, 0.99, 0.95)
	drift := Drift(runs)
	if !near(drift.SI, -0.014, 1e-9) || !near(drift.High.SI, -0.014+0.02788438, 1e-6) || !near(drift.Low.SI, -0.014-0.02788438, 1e-6) {
		t.Errorf("%+v", drift)
	}
	runs[1].Skip = true
	if drift := Drift(runs); drift.Known() {
		t.Errorf("of three runs: %+v", drift)
	}
	// By hand: on a line the balance alone is left: 0.01/sqrt 6 x 4.302653 / sqrt 5.
	coarse := plain(1.00, 0.99, 0.98, 0.97)
	for i := range coarse {
		coarse[i].Resolution = 0.01
	}
	if drift := Drift(coarse); !near(drift.SI, -0.01, 1e-9) || !near(drift.High.SI-drift.SI, 0.00785553, 1e-5) {
		t.Errorf("%+v", drift)
	}
}

// The range holds the true drift in 95 % of logs.
func TestDriftCoverage(t *testing.T) {
	r := rand.New(rand.NewPCG(95, 96))
	const logs = 10000
	held := 0.0
	for range logs {
		truth := 0.02 * (r.Float64() - 0.5)
		var efficiencies []float64
		for i := range 4 + r.IntN(9) {
			efficiencies = append(efficiencies, 0.95+truth*float64(i)+0.03*r.NormFloat64())
		}
		if drift := Drift(plain(efficiencies...)); drift.Known() && drift.Low.SI <= truth && truth <= drift.High.SI {
			held++
		}
	}
	if share := held / logs; math.Abs(share-0.95) > 0.0087 { // four standard deviations of such a count
		t.Errorf("held in %.2f %%", share*100)
	}
}
