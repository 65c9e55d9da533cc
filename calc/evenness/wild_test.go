package evenness

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Whatever is asked for within the limits, the answer is made of numbers.
func TestNeverNotANumber(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	solved := 0
	for range 60 {
		size := func(low, high float64) float64 { return math.Pow(10, low+random.Float64()*(high-low)) }
		maybe := func(x float64) float64 { return x * float64(random.IntN(2)) }
		p := Problem{Picture: Picture{1 + random.IntN(40), 1 + random.IntN(40), nil}, Width: size(-4, 1), Height: size(-4, 1), Gap: size(-5, 1),
			Conductivity: size(-3, 3), Density: size(-3, 5), Polarisation: maybe(size(-9, 3)), Depth: maybe(size(-6, 1)),
			SectionWidth: maybe(size(-3, 1)), SectionHeight: maybe(size(-3, 1)), Border: maybe(size(-5, -1)), Cells: 1 + random.IntN(40)}
		p.Picture.Open = make([]float32, p.Picture.Columns*p.Picture.Rows)
		for i := range p.Picture.Open {
			p.Picture.Open[i] = float32(math.Min(1, math.Max(0, size(-8, 1)-0.1)))
		}
		r, err := Solve(p, nil)
		switch err {
		case nil:
			solved++
		case ErrCovered, ErrSection, ErrSmall:
			continue
		default:
			t.Fatalf("%v for %+v", err, p)
		}
		figures := []float64{r.Least, r.Most, r.Resistance, r.Current, r.Share, r.Wagner, r.Uncertainty, r.Cell, r.Volts()}
		for _, v := range r.Map.Values {
			figures = append(figures, float64(v))
		}
		for _, x := range figures {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%+v for %+v", r, p)
			}
		}
		if r.Resistance <= 0 || r.Current <= 0 || r.Least > r.Most || r.Share > 1+1e-9 {
			t.Fatalf("%+v for %+v", r, p)
		}
	}
	if solved < 10 {
		t.Errorf("only %d solved", solved)
	}
}
