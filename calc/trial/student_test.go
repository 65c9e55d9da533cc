package trial

import (
	"math"
	"strings"
	"testing"

	"saltbite/testdata"
)

// Each row of the table has its own source. A printed value is right to half
// its last digit, a computed one to the twelve digits that both sides hold.
func TestStudentT(t *testing.T) {
	computed := 0
	for _, r := range testdata.Sourced(t, "student_t.csv") {
		degrees, want := int(r.Number(t, "degrees_of_freedom")), r.Number(t, "t")
		_, digits, _ := strings.Cut(r["t"], ".")
		within := 0.5000001 * math.Pow10(-len(digits))
		if r["confidence"] == "computed" {
			within = 1e-12 * want
			computed++
		}
		if got := studentT(0.95, degrees); math.Abs(got-want) > within {
			t.Errorf("%d degrees of freedom: %.15g, want %v within %g (%s)", degrees, got, want, within, r["source"])
		}
	}
	if computed < 200 {
		t.Errorf("only %d computed values: 1 to 200 are wanted", computed)
	}
}

// Closed forms of the quantile, for other shares than 95 %.
func TestStudentTClosed(t *testing.T) {
	for _, share := range []float64{0.01, 0.5, 0.6827, 0.9, 0.99, 0.9973} {
		alpha := (1 - share) * (1 + share) // 4 p (1 - p), p = (1 + share)/2
		for degrees, want := range map[int]float64{
			1: math.Tan(math.Pi / 2 * share),                                             // Cauchy's distribution: by hand
			2: share * math.Sqrt(2/alpha),                                                // by hand: sin theta = share
			4: 2 * math.Sqrt(math.Cos(math.Acos(math.Sqrt(alpha))/3)/math.Sqrt(alpha)-1), // W. T. Shaw, J. Comput. Finance 9 (2006), from memory
		} {
			if got := studentT(share, degrees); !near(got, want, 1e-11) {
				t.Errorf("share %g, %d degrees of freedom: %.14g, want %.14g", share, degrees, got, want)
			}
		}
	}
}
