package evenness

import (
	"math"
	"runtime"
	"testing"

	"saltbite/testdata"
)

// draw makes a picture; inside is asked for fine x fine places in each of its
// rectangles, from 0 to 1 across and down.
func draw(columns, rows, fine int, inside func(x, y float64) bool) Picture {
	p := Picture{columns, rows, make([]float32, columns*rows)}
	for i := range p.Open {
		hits := 0
		for sub := range fine * fine {
			x := float64(i%columns) + (float64(sub%fine)+0.5)/float64(fine)
			y := float64(i/columns) + (float64(sub/fine)+0.5)/float64(fine)
			if inside(x/float64(columns), y/float64(rows)) {
				hits++
			}
		}
		p.Open[i] = float32(hits) / float32(fine*fine)
	}
	return p
}

// disc is one in the middle of a square, its radius a share of the half side.
func disc(radius float64) func(x, y float64) bool {
	return func(x, y float64) bool { return math.Hypot(x-0.5, y-0.5) < radius/2 }
}

func everywhere(x, y float64) bool { return true }

// noise is blocks of n pixels, open or not, as the bits of a fixed sequence fall.
func noise(side, n int) Picture {
	bits := uint32(1)
	open := make([]bool, side*side)
	for i := range open {
		bits = bits*1664525 + 1013904223
		open[i] = bits>>31 == 1
	}
	return draw(side, side, 1, func(x, y float64) bool {
		return open[int(y*float64(side))/n*side+int(x*float64(side))/n]
	})
}

// copperBath is one as they are used: 4 S/m, copper at 20 mA/cm2.
func copperBath(p Picture) Problem {
	return Problem{Picture: p, Width: 0.04, Height: 0.04, Gap: 0.02, Conductivity: 4, Density: 200, Polarisation: 0.84e-4}
}

func mustSolve(t testing.TB, p Problem) Result {
	t.Helper()
	r, err := Solve(p, nil)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// brief says whether to leave out what takes long, as it does in WebAssembly.
func brief() bool { return testing.Short() || runtime.GOOS == "js" }

// on solves on one grid, from an even start.
func on(t testing.TB, p Problem, cells int) Result {
	t.Helper()
	g := p.grid(cells)
	r, err := p.solveOn(g, Map{}, newProgress([]grid{g}, func(float64) bool { return true }))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func near(got, want, share float64) bool { return math.Abs(got-want) <= share*math.Abs(want) }

// A disc in an insulating wall, its current all in a square tube: 1/(4 kappa a)
// (J. Newman, J. Electrochem. Soc. 113 (1966) 501) times what the tube's walls
// leave of it, 1 - 1.41 e + 0.34 e^3 with e the root of the disc's share of the
// tube (M. M. Yovanovich, flux tube constriction, from memory), and the tube.
func TestDiscInATube(t *testing.T) {
	const side, gap, conductivity = 0.1, 0.2, 5.0
	cells := map[float64]int{0.1: 256, 0.15: 256, 0.2: 128}
	if !brief() {
		cells[0.05] = 512
	}
	for e, cells := range cells { // the radius is 14 cells or more
		radius := e * 2 / math.Sqrt(math.Pi) // of the half side
		r := mustSolve(t, Problem{Picture: draw(cells, cells, 8, disc(radius)), Width: side, Height: side, Gap: gap,
			Conductivity: conductivity, Density: 200, SectionWidth: side, SectionHeight: side, Cells: cells})
		tube := gap / conductivity / (side * side)
		want := (1 - 1.41*e + 0.34*e*e*e) / (4 * conductivity * radius * side / 2)
		if got := r.Resistance - tube; !near(got, want, 0.01) {
			t.Errorf("e = %g on %d cells: %.4g ohm, want %.4g", e, cells, got, want)
		} else {
			t.Logf("e = %g on %d cells: %+.2f %%", e, cells, 100*(got/want-1))
		}
	}
}

// Away from its rim the disc's density is i / mean = 1 / (2 sqrt(1 - (r/a)^2))
// (Newman 1966, as above), the tube being wide.
func TestDensityOnADisc(t *testing.T) {
	const cells, radius = 512, 0.2
	m := on(t, Problem{Picture: draw(cells, cells, 8, disc(radius)), Width: 0.1, Height: 0.1, Gap: 0.2,
		Conductivity: 5, Density: 200, SectionWidth: 0.1, SectionHeight: 0.1}, cells).Map
	compared := 0
	for i, v := range m.Values {
		x := (float64(i%m.Columns)+0.5)/float64(m.Columns) - 0.5
		y := (float64(i/m.Columns)+0.5)/float64(m.Rows) - 0.5
		out := math.Hypot(x, y) / (radius / 2)
		if out > 0.75 {
			continue
		}
		compared++
		if want := 0.5 / math.Sqrt(1-out*out); !near(float64(v), want, 0.02) {
			t.Fatalf("at %.3f of the radius: %.4f, want %.4f", out, v, want)
		}
	}
	if compared < 4000 {
		t.Errorf("only %d cells compared", compared)
	}
}

// A strip as long as the box, without polarisation: per length its resistance is
// that of the box and ln(1 / sin(pi s / 2)) / (pi kappa), s its share of the width
// (conformal mapping, textbook). That tells where the solver has the edges: half
// the error of the width is each one's, in cells.
func TestWhereAnEdgeLies(t *testing.T) {
	const cells, gap = 256, 10.0
	for _, part := range []float64{0, 0.05, 0.25, 0.5, 0.75, 0.95} { // of a cell, at each edge
		p := Picture{cells, 4, make([]float32, 4*cells)}
		for i := range p.Open {
			switch column := i % cells; {
			case column >= 80 && column < 176:
				p.Open[i] = 1
			case column == 79 || column == 176:
				p.Open[i] = float32(part)
			}
		}
		problem := Problem{Picture: p, Width: 1, Height: 4.0 / cells, Gap: gap, Conductivity: 1, Density: 1,
			SectionWidth: 1, SectionHeight: 4.0 / cells, Cells: cells}
		perLength := mustSolve(t, problem).Resistance * problem.Height
		width := 2 / math.Pi * math.Asin(math.Exp(-math.Pi*(perLength-gap)))
		if off := (width*cells - 96 - 2*part) / 2; math.Abs(off) > 0.2 {
			t.Errorf("%g of a cell open: the edge is %.3f of a cell off", part, off)
		}
	}
}

// The density on a strip of half width a in the middle of a box of width L, with
// s = pi / L, is
//
//	i / mean = s a (2 / pi) cos(s x) / sqrt(sin^2 s a - sin^2 s x)
//
// (conformal mapping, textbook; (2/pi) / sqrt(1 - (x/a)^2) in a wide box).
func TestDensityOnAStrip(t *testing.T) {
	const cells, half = 512, math.Pi / 8 // s a
	m := on(t, Problem{Picture: draw(cells, 4, 1, func(x, _ float64) bool { return math.Abs(x-0.5) < 0.125 }),
		Width: 1, Height: 4.0 / cells, Gap: 10, Conductivity: 1, Density: 1, SectionWidth: 1, SectionHeight: 4.0 / cells}, cells).Map
	for i := range m.Columns {
		x := math.Pi * ((float64(i)+0.5)/float64(m.Columns) - 0.5)
		if math.Abs(x) > 0.85*half {
			continue
		}
		want := half * 2 / math.Pi * math.Cos(x) / math.Sqrt(math.Sin(half)*math.Sin(half)-math.Sin(x)*math.Sin(x))
		if got := float64(m.Values[i]); !near(got, want, 0.02) {
			t.Fatalf("at %.3f of the half width: %.4f, want %.4f", x/half, got, want)
		}
	}
}

// Plates that fill the tank, and the tanks of the table whose cathode is the
// whole wall; and those whose cathode is as large as the work, which is two tanks
// of half the length back to back.
func TestTanks(t *testing.T) {
	compared := 0
	for _, row := range testdata.Sourced(t, "box_resistance.csv") {
		cm := func(column string) float64 { return row.Number(t, column) / 100 }
		width, height := cm("work_width_cm"), cm("work_height_cm")
		problem := Problem{Picture: draw(1, 1, 1, everywhere), Width: width, Height: height, Gap: cm("gap_cm"), Conductivity: 5,
			Density: 200, SectionWidth: cm("tank_width_cm"), SectionHeight: cm("tank_depth_cm"), Cells: 256}
		want := row.Number(t, "r_kappa_per_cm") * 100 / problem.Conductivity
		switch cathode := [2]float64{cm("cathode_width_cm"), cm("cathode_height_cm")}; cathode {
		case [2]float64{problem.SectionWidth, problem.SectionHeight}:
		case [2]float64{width, height}:
			problem.Gap /= 2
			want /= 2
		default:
			continue
		}
		compared++
		if got := mustSolve(t, problem).Resistance; !near(got, want, 0.03) {
			t.Errorf("%v: %.5g ohm, want %.5g (%s)", row, got, want, row["source"])
		}
	}
	if compared < 6 {
		t.Errorf("only %d tanks compared", compared)
	}
}

// All open, with the bath's sides at the picture's edges: there is nothing that
// could make it uneven.
func TestPlateThatFillsTheBath(t *testing.T) {
	p := copperBath(draw(30, 20, 1, everywhere))
	p.Height, p.SectionWidth, p.SectionHeight = 0.03, 0.04, 0.03
	r := mustSolve(t, p)
	for _, v := range append(r.Map.Values, float32(r.Least), float32(r.Most)) {
		if math.Abs(float64(v)-1) > 1e-9 {
			t.Fatalf("%.12f of the mean", v)
		}
	}
	if want := p.Gap / (p.Conductivity * p.Width * p.Height); !near(r.Resistance, want, 1e-9) { // g / (kappa A)
		t.Errorf("%g ohm, want %g", r.Resistance, want)
	}
	if r.Spread() > 1e-9 || len(r.HotSpots) != 0 {
		t.Errorf("spread %g, hot spots %v", r.Spread(), r.HotSpots)
	}
}

// The Wagner number's two ends (IUPAC, Pure Appl. Chem. 53 (1981) 1827): large,
// and the metal alone decides, so that it is even; small, and the bath alone
// does, as if the metal had no polarisation.
func TestWagnerLimits(t *testing.T) {
	p := copperBath(draw(64, 64, 1, func(x, y float64) bool { return x < 0.1 || (x > 0.5 && y > 0.3) }))
	p.Cells = 128
	p.Polarisation = 10 // ohm m2
	if r := mustSolve(t, p); r.Wagner < 1000 || r.Spread() > 1e-3 {
		t.Errorf("Wagner number %g, spread %g", r.Wagner, r.Spread())
	}
	p.Polarisation = 1e-9
	small := mustSolve(t, p)
	p.Polarisation = 0
	primary := mustSolve(t, p)
	if small.Wagner > 1e-5 || primary.Wagner != 0 {
		t.Errorf("Wagner numbers %g and %g", small.Wagner, primary.Wagner)
	}
	if !near(small.Least, primary.Least, 2e-3) || !near(small.Most, primary.Most, 2e-3) || !near(small.Resistance, primary.Resistance, 1e-4) {
		t.Errorf("least %g, most %g, %g ohm; without polarisation %g, %g, %g ohm",
			small.Least, small.Most, small.Resistance, primary.Least, primary.Most, primary.Resistance)
	}
	if primary.Spread() < 0.5 {
		t.Errorf("spread %g without polarisation", primary.Spread())
	}
}

// In between, polarisation makes it more even the more there is of it.
func TestPolarisationEvens(t *testing.T) {
	p := copperBath(draw(64, 64, 1, func(x, y float64) bool { return x < 0.1 || (x > 0.5 && y > 0.3) }))
	p.Cells = 128
	before := math.Inf(1)
	for _, polarised := range []float64{0, 1e-5, 1e-4, 1e-3, 1e-2} {
		p.Polarisation = polarised
		if spread := mustSolve(t, p).Spread(); spread >= before {
			t.Errorf("spread %g with %g ohm m2, %g with less", spread, polarised, before)
		} else {
			before = spread
		}
	}
}

// A mirrored picture is etched as the mirror image, a turned one as the turned
// one, within what the solver leaves over.
func TestSymmetry(t *testing.T) {
	picture := noise(48, 4)
	p := copperBath(picture)
	p.Depth, p.Cells = 0.001, 96
	plain := mustSolve(t, p)
	n := plain.Map.Columns
	if n != plain.Map.Rows || n < 48 {
		t.Fatalf("a map of %d x %d", n, plain.Map.Rows)
	}
	for name, from := range map[string]func(x, y, n int) (int, int){
		"mirror":       func(x, y, n int) (int, int) { return n - 1 - x, y },
		"upside down":  func(x, y, n int) (int, int) { return x, n - 1 - y },
		"quarter turn": func(x, y, n int) (int, int) { return y, n - 1 - x },
	} {
		moved := Picture{48, 48, make([]float32, 48*48)}
		for i := range moved.Open {
			x, y := from(i%48, i/48, 48)
			moved.Open[i] = picture.Open[y*48+x]
		}
		p.Picture = moved
		other := mustSolve(t, p)
		for i, v := range other.Map.Values {
			x, y := from(i%n, i/n, n)
			if !near(float64(v), float64(plain.Map.Values[y*n+x]), tolerance) {
				t.Fatalf("%s: %g, plain %g", name, v, plain.Map.Values[y*n+x])
			}
		}
		if !near(other.Resistance, plain.Resistance, tolerance) {
			t.Errorf("%s: %g ohm, plain %g", name, other.Resistance, plain.Resistance)
		}
	}
}

// With the polarisation held, everything is proportional to the current.
func TestLinearInDensity(t *testing.T) {
	p := copperBath(noise(32, 4))
	p.Cells = 64
	one := mustSolve(t, p)
	p.Density *= 7
	seven := mustSolve(t, p)
	if !near(seven.Current, 7*one.Current, 1e-12) || !near(seven.Volts(), 7*one.Volts(), 1e-12) ||
		seven.Spread() != one.Spread() || seven.Resistance != one.Resistance {
		t.Errorf("%+v; at seven times the density %+v", one, seven)
	}
}

// What leaves the sheet arrives at the cathode, and it is the density that was
// wanted over all open metal.
func TestChargeIsConserved(t *testing.T) {
	p := copperBath(noise(40, 4))
	p.Cells, p.Width = 80, 0.05
	r := mustSolve(t, p)
	var open float64
	for _, share := range p.Picture.Open {
		open += float64(share)
	}
	area := open / float64(len(p.Picture.Open)) * p.Width * p.Height
	if want := p.Density * area; !near(r.Current, want, 1e-10) {
		t.Errorf("%.12g A, want %.12g", r.Current, want)
	}

	g := p.grid(p.Cells)
	cover := p.cover(g)
	var covered float64
	for _, share := range cover {
		covered += share * g.dx * g.dy
	}
	if !near(covered, area, 1e-12) {
		t.Errorf("%.14g m2 open on the grid, %.14g in the picture", covered, area)
	}
	s := newSystem(newLayer(g, p.Gap, p.Conductivity), cover, p.Polarisation, p.edgeResistance(g))
	if _, err := s.solve(g.sample(Map{}), func(float64) bool { return true }); err != nil {
		t.Fatal(err)
	}
	// At the cathode each mode has fallen to 1 / cosh(k g) of what left the sheet;
	// the sum over the cathode is the mode of k = 0, which has not.
	var sent float64
	for i, u := range s.u {
		sent += u * s.root[i]
	}
	arrived := make([]float64, len(s.u))
	atZero := p.Gap / p.Conductivity
	s.bath.filter(arrived, s.u, s.root, func(modes, bath []float64) {
		for i, t := range bath {
			if t != atZero {
				modes[i] = 0
			}
		}
	})
	for i := range arrived { // the mean density over the cathode, seen from any open cell
		if s.root[i] == 1 && !near(arrived[i]*g.cells(), sent, 1e-10) {
			t.Fatalf("%.14g arrives of %.14g", arrived[i]*g.cells(), sent)
		}
	}
	d := newDepths(g, s)
	d.average(0.002)
	d.normalise()
	if removed := dot(d.open, d.local) * g.dx * g.dy; !near(removed, area, 1e-10) {
		t.Errorf("%.14g removed, want %.14g", removed, area)
	}
}

// Art whose features are three cells or more takes at most 16 steps, whatever the
// grid, from an even start. It takes the more of them the larger the cells: with
// 1 mm and features of 3 cells 14 on 1024 x 1024; with none of the metal's
// polarisation 17.
func TestStepsDoNotGrow(t *testing.T) {
	for _, c := range []struct {
		side, feature int
		cell          float64 // m
	}{{128, 3, 2e-5}, {128, 3, 1e-3}, {128, 16, 1e-4}, {256, 3, 1e-4}, {256, 3, 1e-3}, {256, 16, 1e-3}, {512, 3, 1e-3}} {
		if brief() && c.side > 256 {
			continue
		}
		p := copperBath(noise(c.side, c.feature))
		p.Width = c.cell * float64(c.side)
		p.Height, p.Gap = p.Width, p.Width/8
		p.SectionWidth, p.SectionHeight = p.Width, p.Width
		r := on(t, p, c.side)
		if r.Map.Columns != c.side || r.Map.Rows != c.side {
			t.Fatalf("%+v: a grid of %d x %d", c, r.Map.Columns, r.Map.Rows)
		}
		if r.Iterations > 16 {
			t.Errorf("%+v: %d steps", c, r.Iterations)
		} else {
			t.Logf("%+v: %d steps", c, r.Iterations)
		}
	}
}

// The memory of a tablet: the largest grid needs less than 120 MB at any time.
func TestMemory(t *testing.T) {
	if brief() {
		t.Skip("takes a large grid")
	}
	p := copperBath(noise(1024, 3))
	p.Width, p.Height = 0.4, 0.4
	p.SectionWidth, p.SectionHeight = p.Width, p.Height
	var before, now runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	var most uint64
	r, err := Solve(p, func(float64) bool {
		runtime.ReadMemStats(&now)
		most = max(most, now.HeapAlloc)
		return true
	})
	if err != nil {
		t.Fatal(err)
	}
	if used := (most - before.HeapAlloc) >> 20; used > 120 {
		t.Errorf("%d MB", used)
	} else if r.Map.Columns != 1024 {
		t.Errorf("measured on %d cells", r.Map.Columns)
	} else {
		t.Logf("%d MB", used)
	}
}

func TestProgressAndCancel(t *testing.T) {
	p := copperBath(noise(64, 4))
	p.Cells = 128
	var told []float64
	if _, err := Solve(p, func(share float64) bool { told = append(told, share); return true }); err != nil {
		t.Fatal(err)
	}
	for i, share := range told {
		if share < 0 || share > 1 || (i > 0 && share < told[i-1]) {
			t.Fatalf("told %v", told)
		}
	}
	if told[len(told)-1] != 1 {
		t.Errorf("ended with %g", told[len(told)-1])
	}
	for stop := range len(told) {
		calls := 0
		_, err := Solve(p, func(float64) bool { calls++; return calls <= stop })
		if err != ErrStopped || calls != stop+1 {
			t.Fatalf("stopped at %d: %v after %d", stop, err, calls)
		}
	}
}

func TestWhatCannotBeSolved(t *testing.T) {
	fine := copperBath(draw(8, 8, 1, everywhere))
	for name, c := range map[string]struct {
		change func(*Problem)
		want   error
	}{
		"covered":         {func(p *Problem) { p.Picture = Picture{2, 2, make([]float32, 4)} }, ErrCovered},
		"no picture":      {func(p *Problem) { p.Picture = Picture{} }, ErrPicture},
		"short picture":   {func(p *Problem) { p.Picture.Open = p.Picture.Open[1:] }, ErrPicture},
		"over 1":          {func(p *Problem) { p.Picture = Picture{1, 1, []float32{1.5}} }, ErrPicture},
		"not a number":    {func(p *Problem) { p.Picture = Picture{1, 1, []float32{float32(math.NaN())}} }, ErrPicture},
		"no gap":          {func(p *Problem) { p.Gap = 0 }, ErrSize},
		"endless gap":     {func(p *Problem) { p.Gap = math.Inf(1) }, ErrSize},
		"width NaN":       {func(p *Problem) { p.Width = math.NaN() }, ErrSize},
		"negative depth":  {func(p *Problem) { p.Depth = -1 }, ErrSize},
		"too many cells":  {func(p *Problem) { p.Cells = 1 << 20 }, ErrSize},
		"narrow vessel":   {func(p *Problem) { p.SectionWidth = p.Width * 0.98 }, ErrSection},
		"small in a bath": {func(p *Problem) { p.Gap = 3 }, ErrSmall},
	} {
		p := fine
		c.change(&p)
		if r, err := Solve(p, nil); err != c.want {
			t.Errorf("%s: %v, %+v", name, err, r)
		}
	}
	barely := fine
	barely.SectionWidth = fine.Width * 0.995 // as much as reading a ruler is off
	if _, err := Solve(barely, nil); err != nil {
		t.Error(err)
	}
}
