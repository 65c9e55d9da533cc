package circuit

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/bath"
	"saltbite/calc/quantity"
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
		c := Cell{draw(), draw(), Face{draw(), draw(), draw()}, draw(), draw(), draw(), draw()}
		w, s := Wire{draw(), draw(), draw()}, Supply{draw(), draw()}
		x, y, z := draw(), draw(), draw()
		resistor, _ := s.SeriesResistor(x, y, z, draw())
		volts := VoltsNeeded(x, y, z, LikeElectrodes)
		for i, got := range []float64{
			c.Face.area(), CathodeDensity(x, y).SI, Warming(x, y, z).SI,
			w.Resistance().SI, w.Drop(x).SI, w.Limit().SI, CellVolts(x, y, z).SI, s.Watts(x).SI, s.Ballast(x, y, z).SI, BallastWatts(x, y).SI,
			piecesThatFit(x, y, z),
			c.Resistance().SI, c.HighResistance().SI, Tank{x, y, z, draw()}.Section(bath.Hanging), Tank{x, y, z, draw()}.Section(bath.FaceUp),
			s.Unlimited(x, y, z).SI, s.Most(quantity.Known(x)).SI, s.Most(quantity.Optional{}).SI, nextE12(x), volts.SI, volts.Low.SI, volts.High.SI,
			resistor.Ohms, resistor.Current, resistor.Low, resistor.High, resistor.Watts,
			PiecesWithin(x, y, z, func(n float64) float64 { return n * x }),
		} {
			if !(got >= 0 && got <= math.MaxFloat64) {
				t.Fatalf("answer %d is %g: %+v %+v %+v %g %g %g", i, got, c, w, s, x, y, z)
			}
		}
	}
}
