package circuit

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/bath"
	"saltbite/testdata"
)

// Sixteen tanks with a rectangle in the middle of either end wall, solved in
// three dimensions. All within the 15 % that the comment of Resistance names.
func TestTanksSolved(t *testing.T) {
	worst, rows := 0.0, testdata.Sourced(t, "box_resistance.csv")
	for _, r := range rows {
		length := func(column string) float64 { return r.Number(t, column) * cm }
		c := Cell{
			Conductivity: 100, // S/m, so that R in ohm is R kappa in 1/cm
			Gap:          length("gap_cm"),
			Face:         Face{Width: length("work_width_cm"), Height: length("work_height_cm")},
			Pieces:       1,
			Cathode:      length("cathode_width_cm") * length("cathode_height_cm"),
			Section:      Tank{Width: length("tank_width_cm"), Fill: length("tank_depth_cm")}.Section(bath.Hanging),
		}
		want, tolerance := r.Number(t, "r_kappa_per_cm"), 0.15
		if c.Face.area() == c.Section && c.Cathode == c.Section {
			tolerance = 1e-12 // plates that fill the tank: exact
			rows = nil
		}
		off := c.Resistance().SI/want - 1
		worst = math.Max(worst, math.Abs(off))
		if math.Abs(off) > tolerance {
			t.Errorf("%v: off by %.1f %% (%s)", r, 100*off, r["source"])
		}
		if c.SmallCathode() {
			t.Errorf("%v: a cathode that covers the work counts as small", r)
		}
	}
	if rows != nil {
		t.Error("no plates that fill the tank")
	}
	if worst < 0.13 { // 15 x 20 cm with 6 x 4 cm plates: 13.5 %, by a second calculation
		t.Errorf("the worst is off by %.3f only", worst)
	}
}

func TestCell(t *testing.T) {
	flat := Cell{Conductivity: 4, Gap: 6 * cm, Face: Face{Width: 3 * cm, Height: 2 * cm}, Open: 2 * cm2, Pieces: 1, Cathode: 30 * cm2}
	with := func(change func(c *Cell)) Cell {
		c := flat
		change(&c)
		return c
	}
	for _, x := range []struct {
		name string
		cell Cell
		want float64 // ohm, by hand: 0.06 / 8 (1 / sqrt(A1 Am) + 1 / sqrt(Am A2)), areas in m2
	}{
		{"A1 6, Am 9 x 8, A2 30 cm2", flat, 0.0075 * (1/math.Sqrt(6e-4*72e-4) + 1/math.Sqrt(72e-4*30e-4))},
		{"A2 at most 15 x 14 cm2", with(func(c *Cell) { c.Cathode = 1 }), 0.0075 * (1/math.Sqrt(6e-4*72e-4) + 1/math.Sqrt(72e-4*210e-4))},
		{"three pieces, 9 cm wide", with(func(c *Cell) { c.Pieces = 3 }), 0.0075 * (1/math.Sqrt(18e-4*120e-4) + 1/math.Sqrt(120e-4*30e-4))},
		{"a disc of 3 cm as a square of 2.6587", with(func(c *Cell) { c.Face = Face{Diameter: 3 * cm} }), 0.0075 * (1/math.Sqrt(7.06858e-4*74.9728e-4) + 1/math.Sqrt(74.9728e-4*30e-4))},
		{"two such discs", with(func(c *Cell) { c.Face, c.Pieces = Face{Diameter: 3 * cm}, 2 }), 0.0075 * (1/math.Sqrt(14.13717e-4*97.9931e-4) + 1/math.Sqrt(97.9931e-4*30e-4))}, // 11.3174 x 8.6587
		{"no face: the open 2 cm2 as a square", with(func(c *Cell) { c.Face = Face{} }), 0.0075 * (1/math.Sqrt(2e-4*54.9706e-4) + 1/math.Sqrt(54.9706e-4*30e-4))},                // 7.41421^2
		{"half a face is none", with(func(c *Cell) { c.Face.Height = 0 }), 0.0075 * (1/math.Sqrt(2e-4*54.9706e-4) + 1/math.Sqrt(54.9706e-4*30e-4))},
		{"a section of 50 cm2", with(func(c *Cell) { c.Section = 50 * cm2 }), 0.0075 * (1/math.Sqrt(6e-4*50e-4) + 1/math.Sqrt(50e-4*30e-4))},
		{"a section of 20 cm2", with(func(c *Cell) { c.Section = 20 * cm2 }), 0.0075 * (1/math.Sqrt(6e-4*20e-4) + 1/math.Sqrt(20e-4*20e-4))},
		{"a section of 4 cm2", with(func(c *Cell) { c.Section = 4 * cm2 }), 0.0075 * 2 / 4e-4},
		{"no cathode", with(func(c *Cell) { c.Cathode = 0 }), 0},
		{"no gap", with(func(c *Cell) { c.Gap = 0 }), 0},
		{"no conductivity", with(func(c *Cell) { c.Conductivity = 0 }), 0},
		{"no pieces", with(func(c *Cell) { c.Pieces = 0 }), 0},
		{"nothing open and no face", with(func(c *Cell) { c.Face, c.Open = Face{}, 0 }), 0},
	} {
		if got := x.cell.Resistance().SI; !near(got, x.want, 2e-6) {
			t.Errorf("%s: %.7g ohm, want %.7g", x.name, got, x.want)
		}
		if got, want := x.cell.SquareFace(), x.cell.Face.area() == 0; got != want {
			t.Errorf("%s: square face %v", x.name, got)
		}
	}
}

// The high end, by hand, with kappa 4 S/m.
func TestHighResistance(t *testing.T) {
	disc := func(radius float64) float64 { return 1 / (4 * 4 * radius) } // J. Newman, J. Electrochem. Soc. 113 (1966) 501, seen as quoted
	for _, x := range []struct {
		name               string
		gap, open, cathode float64 // m, m2
		side               float64 // m, of the face
		want               float64
	}{
		{"discs far apart, 1 and 2 cm of radius", 6 * cm, math.Pi * 1 * cm2, math.Pi * 4 * cm2, 9 * cm, disc(1*cm) + disc(2*cm)},
		{"a column before a large cathode", 1 * cm, 90 * cm2, 900 * cm2, 10 * cm, 1.6 * 0.01 / (4 * 90 * cm2)},
		{"a column behind a large piece", 1 * cm, 900 * cm2, 90 * cm2, 30 * cm, 1.6 * 0.01 / (4 * 90 * cm2)},
		{"never under the usual one", 1 * cm, 100 * cm2, 100 * cm2, 1 * cm, 0.00125 * (1/math.Sqrt(1e-4*4e-4) + 1/math.Sqrt(4e-4*9e-4))}, // a face of 1 x 1 cm, 2 x 2, 3 x 3
		{"no cathode", 6 * cm, 100 * cm2, 0, 1 * cm, 0},
		{"nothing open", 6 * cm, 0, 100 * cm2, 1 * cm, 0},
		{"no gap", 0, 100 * cm2, 100 * cm2, 1 * cm, 0},
	} {
		c := Cell{Conductivity: 4, Gap: x.gap, Face: Face{Width: x.side, Height: x.side}, Open: x.open, Pieces: 1, Cathode: x.cathode}
		if got := c.HighResistance().SI; !near(got, x.want, 1e-9) {
			t.Errorf("%s: %.6g ohm, want %.6g", x.name, got, x.want)
		}
	}
	c := Cell{Conductivity: 4, Gap: 6 * cm, Face: Face{Width: 2 * cm, Height: 2 * cm}, Open: math.Pi * 1 * cm2, Pieces: 4, Cathode: math.Pi * 4 * cm2}
	if got, want := c.HighResistance().SI, 2*disc(2*cm); !near(got, want, 1e-9) { // the open metal of four pieces is one disc of 2 cm
		t.Errorf("four pieces: %.6g ohm, want %.6g", got, want)
	}
}

// A cathode of 3 x 3 cm that stands 1 cm before a face of 20 x 20 cm: by hand
// the cones give 1/2 (1/sqrt(400 x 441) + 1/sqrt(441 x 9)) = 0.0091 per cm of
// kappa, and drawn from the cathode 1/2 (1/sqrt(9 x 16) + 1/sqrt(16 x 25)) =
// 0.0667, seven times as much.
func TestSmallCathode(t *testing.T) {
	c := Cell{Conductivity: 100, Gap: 1 * cm, Face: Face{Width: 20 * cm, Height: 20 * cm}, Open: 100 * cm2, Pieces: 1, Cathode: 9 * cm2}
	if got := c.Resistance().SI; !near(got, 0.009127, 1e-4) {
		t.Errorf("%.6g ohm, want 0.00913", got)
	}
	small := func(change func(c *Cell)) bool {
		changed := c
		change(&changed)
		return changed.SmallCathode()
	}
	for _, x := range []struct {
		name string
		got  bool
		want bool
	}{
		{"3 x 3 cm, 1 cm off", c.SmallCathode(), true},
		{"far off, both are points: 1.09 times as much", small(func(c *Cell) { c.Gap = 100 * cm; c.Cathode = 100 * cm2 }), false}, // by hand: 1/(10 110) + 1/(110 20) over 1/(20 120) + 1/(120 10), which is 1.09
		{"as large as the face", small(func(c *Cell) { c.Cathode = 400 * cm2 }), false},
		{"half of it, 1 cm off: 1.5 times as much", small(func(c *Cell) { c.Cathode = 200 * cm2 }), true},                                                                       // by hand: 1/(14.14 15.14) + 1/(15.14 16.14) over 1/(20 21) + 1/(21 14.14): 8.76e-3 over 5.75e-3
		{"a little less, 1 cm off: 1.02 times as much", small(func(c *Cell) { c.Cathode = 380 * cm2 }), false},                                                                  // by hand: 1/(19.49 20.49) + 1/(20.49 20) over 1/(20 21) + 1/(21 19.49), which is 1.02
		{"17.5 x 17.5 cm, 1 cm off: 1.149 times as much", small(func(c *Cell) { c.Cathode = 17.5 * 17.5 * cm2 }), false},                                                        // by hand: 1/(17.5 18.5) + 1/(18.5 19.5) over 1/(20 21) + 1/(21 17.5)
		{"17.45 x 17.45 cm, 1 cm off: 1.153 times as much", small(func(c *Cell) { c.Cathode = 17.45 * 17.45 * cm2 }), true},                                                     // by hand: 1/(17.45 18.45) + 1/(18.45 19.45) over 1/(20 21) + 1/(21 17.45)
		{"16.8 x 16.8 cm, 4 cm off: 1.154 times as much", small(func(c *Cell) { c.Gap, c.Cathode = 4*cm, 16.8*16.8*cm2 }), true},                                                // by hand: 1/(16.8 20.8) + 1/(20.8 20) over 1/(20 24) + 1/(24 16.8)
		{"a face of 40 x 10 cm, 4 cm off: 1.09 times as much", small(func(c *Cell) { c.Gap, c.Cathode, c.Face = 4*cm, 350*cm2, Face{Width: 40 * cm, Height: 10 * cm} }), false}, // by hand: 1/(18.71 22.71) + 1/(22.71 20) over 1/sqrt(400 616) + 1/sqrt(616 350)
		{"four pieces make a larger face", small(func(c *Cell) { c.Face.Width, c.Pieces = 5*cm, 4 }), true},                                                                     // the same face
		{"in a tank no wider than the cathode", small(func(c *Cell) { c.Section = 9 * cm2 }), false},                                                                            // the cathode fills it
		{"no cathode", small(func(c *Cell) { c.Cathode = 0 }), false},                                                                                                           // nothing known of it
	} {
		if x.got != x.want {
			t.Errorf("%s: %v", x.name, x.got)
		}
	}
}

func TestSection(t *testing.T) {
	square, round := Tank{Length: 30 * cm, Width: 20 * cm, Fill: 12 * cm}, Tank{Diameter: 20 * cm, Fill: 12 * cm}
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"hanging", square.Section(bath.Hanging), 240 * cm2},                 // by hand: 20 x 12
		{"face down", square.Section(bath.FaceDown), 600 * cm2},              // by hand: 30 x 20
		{"face up", square.Section(bath.FaceUp), 600 * cm2},                  // the same floor
		{"hanging, round", round.Section(bath.Hanging), 240 * cm2},           // by hand: 20 x 12
		{"face down, round", round.Section(bath.FaceDown), 314.159265 * cm2}, // by hand: pi x 10^2
		{"not filled", Tank{Width: 20 * cm}.Section(bath.Hanging), 0},        // not known
		{"filled to no width", Tank{Fill: 20 * cm}.Section(bath.Hanging), 0}, // not known
		{"no length", Tank{Width: 20 * cm}.Section(bath.FaceDown), 0},        // not known
	} {
		if !near(x.got, x.want, 1e-8) {
			t.Errorf("%s: %.6g m2, want %.6g", x.name, x.got, x.want)
		}
	}
}

func TestCellBehaves(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	for range 20000 {
		c := Cell{decades(r, 3, 4), decades(r, 5*cm, 4), Face{decades(r, 5*cm, 4), decades(r, 5*cm, 4), 0}, 0, float64(1 + r.IntN(9)), decades(r, 0.01, 6), decades(r, 0.01, 6)}
		c.Open = c.Face.area() * r.Float64()
		usual, high, more := c.Resistance().SI, c.HighResistance().SI, 1+r.Float64()
		if !(usual > 0) || high < usual {
			t.Fatalf("%g to %g ohm: %+v", usual, high, c)
		}
		changed := func(change func(c *Cell)) float64 {
			x := c
			change(&x)
			return x.Resistance().SI
		}
		if got := changed(func(c *Cell) { c.Conductivity *= more }); !near(got*more, usual, 1e-12) {
			t.Fatalf("%g times the conductivity makes %g of %g: %+v", more, got, usual, c)
		}
		for name, got := range map[string]float64{
			"a wider cathode": changed(func(c *Cell) { c.Cathode *= more }),
			"a wider tank":    changed(func(c *Cell) { c.Section *= more }),
			"no walls":        changed(func(c *Cell) { c.Section = 0 }),
			"more pieces":     changed(func(c *Cell) { c.Pieces++ }),
		} {
			if got > usual*(1+1e-12) {
				t.Fatalf("%s resists more, %g than %g: %+v", name, got, usual, c)
			}
		}
		if got := changed(func(c *Cell) { c.Pieces++ }) * (c.Pieces + 1); got < usual*c.Pieces*(1-1e-12) {
			t.Fatalf("a piece more leaves each more bath, %g than %g: %+v", got, usual*c.Pieces, c)
		}
		size := decades(r, 1, 4)
		scaled := Cell{c.Conductivity, c.Gap * size, Face{c.Face.Width * size, c.Face.Height * size, 0}, c.Open * size * size, c.Pieces, c.Cathode * size * size, c.Section * size * size}
		if got := scaled.Resistance().SI; !near(got*size, usual, 1e-9) {
			t.Fatalf("%g times as large it resists %g, once %g: %+v", size, got, usual, c)
		}
		if got := scaled.HighResistance().SI; !near(got*size, high, 1e-9) {
			t.Fatalf("%g times as large it resists %g at most, once %g: %+v", size, got, high, c)
		}
	}
}
