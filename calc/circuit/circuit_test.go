package circuit

import (
	"math"
	"math/rand/v2"
	"testing"
)

const (
	mm, cm, cm2, hour = 1e-3, 1e-2, 1e-4, 3600.0
	inch, foot        = 0.0254, 0.3048 // m, exact: international yard and pound agreement of 1959
)

// near says whether got is want to a relative tolerance.
func near(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance*math.Abs(want)
}

// decades draws a number spread evenly over that many decades about a middle.
func decades(r *rand.Rand, middle, span float64) float64 {
	return middle * math.Pow(10, (r.Float64()-0.5)*span)
}

// Whatever is put in, what comes out is a finite number that is not negative.
func TestWhereFloatsEnd(t *testing.T) {
	odd := []float64{0, -1, 1, 5e-324, 1e-300, 1e300, math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN()}
	r := rand.New(rand.NewPCG(1, 2))
	draw := func() float64 { return odd[r.IntN(len(odd))] }
	for range 50000 {
		b := Bath{draw(), draw(), Face{draw(), draw(), draw()}, draw(), draw(), draw()}
		w, s := Wire{draw(), draw(), draw()}, Supply{draw(), draw()}
		x, y, z := draw(), draw(), draw()
		for i, got := range []float64{
			b.Resistance(), b.HighResistance(), b.Face.Area(), SquareFace(x).Area(), CathodeDensity(x, y), Warming(x, y, z),
			w.Resistance(), w.Drop(x), w.Limit(), CellVolts(x, y, z), s.Current(x, y, z), s.Watts(x), s.Ballast(x, y, z), BallastWatts(x, y),
			PiecesThatFit(x, y, z),
		} {
			if !(got >= 0 && got <= math.MaxFloat64) {
				t.Fatalf("answer %d is %g: %+v %+v %+v %g %g %g", i, got, b, w, s, x, y, z)
			}
		}
	}
}
