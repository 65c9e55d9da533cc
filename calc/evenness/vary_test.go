package evenness

import (
	"testing"
)

// Farther away is more even for a picture as wide as the bath is deep, and the
// bath takes more volts.
func TestDistances(t *testing.T) {
	p := copperBath(Frame().Picture)
	p.Cells, p.SectionWidth, p.SectionHeight = 128, 0.05, 0.05
	variants, err := Vary(p, p.Distances(), nil)
	if err != nil || len(variants) != 5 {
		t.Fatal(variants, err)
	}
	p.finest = p.box() / float64(p.Cells) // the bath's section is the box at each distance
	for i, v := range variants {
		p.Gap = v.Gap
		if alone := mustSolve(t, p); !near(v.Least, alone.Least, 2e-3) || !near(v.Most, alone.Most, 2e-3) || !near(v.Volts, alone.Volts(), 1e-3) {
			t.Errorf("%g m: %+v; from the beginning %g to %g, %g V", v.Gap, v, alone.Least, alone.Most, alone.Volts())
		}
		if i > 0 && v.Volts <= variants[i-1].Volts {
			t.Errorf("%+v, nearer %+v", v, variants[i-1])
		}
	}
}

// A border of scrap takes what would go to the picture's edges: it is more even,
// for more current.
func TestScrapEvens(t *testing.T) {
	p := copperBath(draw(32, 32, 1, everywhere))
	p.Cells = 128
	variants, err := Vary(p, p.Scrap(), nil)
	if err != nil || len(variants) != 4 {
		t.Fatal(variants, err)
	}
	for i, v := range variants[1:] {
		before := variants[i]
		if v.Spread() >= before.Spread() || v.Current <= before.Current || v.TimeToLeast() >= before.TimeToLeast() {
			t.Errorf("%+v, with less scrap %+v", v, before)
		}
	}
}

// No room: left out. Stopped: nothing.
func TestVaryWithinTheBath(t *testing.T) {
	p := copperBath(draw(8, 8, 1, everywhere))
	p.Cells, p.SectionWidth, p.SectionHeight = 32, 0.05, 0.05
	variants, err := Vary(p, []Change{{Border: 0.004}, {Border: 0.01}, {}}, nil)
	if err != nil || len(variants) != 2 || variants[1].Border != 0 {
		t.Errorf("%+v, %v", variants, err)
	}
	var told []float64
	_, err = Vary(p, []Change{{}, {}}, func(share float64) bool { told = append(told, share); return share < 0.7 })
	if last := told[len(told)-1]; err != ErrStopped || last < 0.7 || last > 1 {
		t.Errorf("%v after %v", err, told)
	}
}

// Why they are shown: the lone line is deeper than the field's middle; the frame
// shields the field, whose own edges would be deeper without it.
func TestClassics(t *testing.T) {
	line := copperBath(LoneLine().Picture)
	line.Cells = 256
	islands := mustSolve(t, line).Islands
	if len(islands) != 2 || islands[0].Deepest.X > 0.007 || islands[0].Mean <= islands[1].Mean {
		t.Errorf("%+v", islands)
	}
	if !near(islands[0].Area, 1e-3*30e-3, 0.1) || !near(islands[1].Area, 20e-3*30e-3, 0.02) { // as drawn, less what is in cells that are not half open
		t.Errorf("%g and %g m2", islands[0].Area, islands[1].Area)
	}

	framed := copperBath(Frame().Picture)
	framed.Cells = 256
	alone := framed
	alone.Picture.Open = append([]float32(nil), framed.Picture.Open...)
	for i := range alone.Picture.Open {
		if x, y := i%classicPixels, i/classicPixels; min(x, y, classicPixels-1-x, classicPixels-1-y) < 20 {
			alone.Picture.Open[i] = 0
		}
	}
	field := func(r Result) Island { return r.Islands[len(r.Islands)-1] } // the least deep
	with, without := field(mustSolve(t, framed)), field(mustSolve(t, alone))
	if with.Deepest.Depth/with.Mean >= without.Deepest.Depth/without.Mean {
		t.Errorf("framed %+v, alone %+v", with, without)
	}
}

// The deepest places of a square are its corners.
func TestHotSpots(t *testing.T) {
	p := copperBath(draw(40, 40, 1, func(x, y float64) bool { return x > 0.25 && x < 0.75 && y > 0.25 && y < 0.75 }))
	p.Cells = 128
	r := mustSolve(t, p)
	if len(r.HotSpots) < 4 {
		t.Fatalf("%+v", r.HotSpots)
	}
	for _, s := range r.HotSpots[:4] {
		if !(near(s.X, 0.01, 0.1) || near(s.X, 0.03, 0.1)) || !(near(s.Y, 0.01, 0.1) || near(s.Y, 0.03, 0.1)) || s.Depth <= r.Most {
			t.Errorf("%+v; 95th percentile %g", s, r.Most)
		}
	}
}
