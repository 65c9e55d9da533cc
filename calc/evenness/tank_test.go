package evenness

import (
	"cmp"
	"math"
	"slices"
	"testing"
)

// Five pictures solved by another method: see tank. Every percentile of local
// density, by open area, agrees within 3 %, and so does the bath's resistance.
func TestAgainstFiniteVolumes(t *testing.T) {
	const side, gap, conductivity, polarisation = 0.012, 0.006, 4.0, 3e-4 // copper at 5.6 mA/cm2
	const cells = 96                                                      // of 0.125 mm
	for name, inside := range map[string]func(x, y float64) bool{
		"lone line beside a field": func(x, y float64) bool {
			return y > 0.25 && y < 0.75 && (x > 0.5 && x < 0.875 || x > 0.125 && x < 0.1875)
		},
		"frame": func(x, y float64) bool { d := math.Max(math.Abs(x-0.5), math.Abs(y-0.5)); return d > 0.25 && d < 0.375 },
		"disc":  disc(0.5),
		"bars": func(x, y float64) bool {
			return x > 0.25 && x < 0.75 && y > 0.125 && y < 0.875 && int(x*16)%2 == 0
		},
		"letter": func(x, y float64) bool {
			return x > 0.25 && x < 0.75 && y > 0.125 && y < 0.875 && (x < 0.4375 || y > 0.6875)
		},
	} {
		if brief() && name != "letter" {
			continue
		}
		t.Run(name, func(t *testing.T) {
			picture := draw(cells, cells, 1, inside)
			r := mustSolve(t, Problem{Picture: picture, Width: side, Height: side, Gap: gap, Conductivity: conductivity, Density: 56,
				Polarisation: polarisation, SectionWidth: side, SectionHeight: side, Cells: 2 * cells})
			tank := newTank(cells, cells, side/cells, gap, conductivity, polarisation, func(x, y int) bool { return picture.Open[y*cells+x] == 1 })
			density, resistance := tank.solve()
			if !near(r.Resistance, resistance, 0.03) {
				t.Errorf("%.5g ohm; by finite volumes %.5g", r.Resistance, resistance)
			}
			ours, theirs := openValues(r.Map), openDensities(density)
			for percent := 1; percent < 100; percent++ {
				got, want := quantile(ours, percent), quantile(theirs, percent)
				if !near(got, want, 0.03) {
					t.Errorf("percentile %d: %.4f, by finite volumes %.4f", percent, got, want)
				}
			}
			t.Logf("%d cells: 5th %.4f and %.4f, 95th %.4f and %.4f; %.5g and %.5g ohm; +-%.3f", r.Map.Columns,
				quantile(ours, 5), quantile(theirs, 5), quantile(ours, 95), quantile(theirs, 95), r.Resistance, resistance, r.Uncertainty)
		})
	}
}

// openValues are the depths where a picture that the grid fits is open, sorted.
func openValues(m Map) []float64 {
	var list []float64
	for _, v := range m.Values {
		if v > 0 {
			list = append(list, float64(v))
		}
	}
	slices.Sort(list)
	return list
}

// openDensities are the same of densities, over their mean.
func openDensities(density []float64) []float64 {
	open := slices.DeleteFunc(density, func(j float64) bool { return j == 0 })
	var sum float64
	for _, j := range open {
		sum += j
	}
	for i := range open {
		open[i] /= sum / float64(len(open))
	}
	slices.SortFunc(open, cmp.Compare)
	return open
}

func quantile(sorted []float64, percent int) float64 {
	at := float64(percent) / 100 * float64(len(sorted)-1)
	low := int(at)
	return sorted[low] + (at-float64(low))*(sorted[min(low+1, len(sorted)-1)]-sorted[low])
}

// A border of bare scrap goes all round: as wide at the left as at the right, above as
// below, and nothing of a covered picture within it is open.
func TestBorderGoesAllRound(t *testing.T) {
	p := copperBath(Picture{2, 1, make([]float32, 2)})
	p.Height, p.Border = 0.03, 0.005
	g := p.grid(128)
	open := p.cover(g)
	bare := 0
	for row := range g.rows {
		for column := range g.columns {
			here := open[row*g.columns+column]
			if here != 0 {
				bare++
			}
			if here != open[row*g.columns+g.columns-1-column] || here != open[(g.rows-1-row)*g.columns+column] {
				t.Fatalf("cell %d, %d is open by %g, and not those across", column, row, here)
			}
		}
	}
	if got, want := float64(bare)*g.dx*g.dy, 0.05*0.04-0.04*0.03; !near(got, want, 0.05) {
		t.Errorf("it has %g m2, not %g", got, want)
	}
}
