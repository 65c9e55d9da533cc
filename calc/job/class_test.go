package job

import (
	"fmt"
	"math"
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

func teach(fields string, rows ...string) Class {
	var list []field.Named
	for _, row := range rows {
		list = append(list, field.Named{Set: field.Read(row)})
	}
	return Teach(list, field.Read(fields))
}

// Two pieces of copper, 10 cm2 and 0.1 mm each: 0.3 A at 30 mA/cm2 (common
// practice, no source), and so many coulombs each.
func TestTeach(t *testing.T) {
	const pair = plate + "depth=0.1&pieces=2&"
	alone := coulombs / 0.3 // s
	for _, x := range []struct {
		fields, row string
		end         float64
		rounds      int
	}{
		{"amps=0.6", pair, alone, 1},
		{"amps=0.6", pair + "density=99&current=9&time=1&amps=0.1&after=9&find=depth", alone, 1}, // a row's own are set aside
		{"amps=0.5", pair, 2*alone + 600, 2},                                                     // ten minutes between (common practice, no source)
		{"amps=0.5&changeover=20", pair, 2*alone + 1200, 2},
		{"amps=0.5&supplies=2", pair, alone, 1},
		{"amps=0.6&densityLimit=15", pair, 2 * alone, 1},
	} {
		c := teach(x.fields, x.row)
		if !c.Known || !near(c.Plan.End, x.end) || c.Plan.Rounds != x.rounds {
			t.Errorf("%s on %s ends after %g s in %d rounds, with %v; want %g s", x.row, x.fields, c.Plan.End, c.Plan.Rounds, c.Errors, x.end)
		}
	}
	c := teach("amps=0.6&start=10:00&session=303.6706&priceSalt=10&priceMetal=20&priceHour=12", pair) // twice a piece's time
	if c.TooLong || !near(c.Deepest.SI, 0.2e-3) || !near(c.ReadyAt.SI, 36000+alone) {
		t.Errorf("in two times the time it is %g deep, ready at %g s", c.Deepest.SI, c.ReadyAt.SI)
	}
	if !near(c.Removed.SI, 1.8e-3) || c.SaltToAdd.SI != 0 || !near(c.CathodeNeeded.SI, 20e-4) || !near(c.Cost.SI, 20*1.8e-3+12*alone/3600) {
		t.Errorf("%g kg removed, %g of salt, %g m2 of cathode, cost %g", c.Removed.SI, c.SaltToAdd.SI, c.CathodeNeeded.SI, c.Cost.SI)
	}
	if short := teach("amps=0.6&session=151", pair); !short.TooLong { // it takes 151.8 min
		t.Errorf("it takes %g s", short.Plan.End)
	}
	if fits := teach("amps=0.6&session=152", pair); fits.TooLong || fits.ReadyAt.Known() || fits.Cost.Known() {
		t.Errorf("it takes %g s; ready at %v, cost %v", fits.Plan.End, fits.ReadyAt, fits.Cost)
	}
}

// Brass takes 0.29158 g of copper a gram out of its bath, and 0.85 g are etched: in
// salt x 249.677 / 63.546. One bath has one density, the least that is suggested.
func TestTeachOneBath(t *testing.T) {
	const brass = "metal=Cu+70+Zn+30&metalDensity=8.5&area=10&depth=0.1&"
	lost := 0.85e-3 * (copper*(0.7/copper+0.3/zinc) - 0.7)
	c := teach("amps=9&priceSalt=10", brass+"assay=80", plate+"depth=0.1&cathode=5&height=30&strength=200")
	if want := lost * pentahydrate / copper / 0.8; !near(c.SaltToAdd.SI, want) || !near(c.Cost.SI, 10*want) {
		t.Errorf("%g kg of salt at %g, want %g", c.SaltToAdd.SI, c.Cost.SI, want)
	}
	least := work(plate + "depth=0.1&cathode=5&height=30&strength=200")
	if len(c.Plan.Loads) != 1 || !near(c.Plan.Loads[0].Density, least.Suggest.Density.SI) || least.Suggest.Density.SI >= 290 {
		t.Errorf("the loads are %+v, the least density %v", c.Plan.Loads, least.Suggest.Density)
	}
	if want := 2 * 2 * 10e-4 * least.Suggest.Density.SI / least.Limits.Cathode.SI; !near(c.CathodeNeeded.SI, want) {
		t.Errorf("a cathode of %g m2 is needed, want %g", c.CathodeNeeded.SI, want)
	}
	apart := teach("amps=9", plate+"depth=0.1", "metal=sterling&area=10&depth=0.1")
	if len(apart.Plan.Loads) != 2 {
		t.Errorf("copper and silver hang in %d baths", len(apart.Plan.Loads))
	}
}

func TestTeachRefuses(t *testing.T) {
	const good = plate + "depth=0.1"
	for _, x := range []struct{ fields, row, at, code string }{
		{"", good, "amps", field.Missing},
		{"amps=some", good, "amps", "number"},
		{"amps=1", plate, "depth", field.Missing},
		{"amps=1", cu + "depth=0.1", "area", field.Missing},
		{"amps=1", "area=10&depth=0.1", "metal", field.Missing},
		{"amps=1", good + "&pieces=some", "pieces", "number"},
		{"amps=1", "metal=sterling&salt=copper+sulfate&area=10&depth=0.1", "salt", field.Contradiction},
		{"amps=1", "metal=unobtainium&area=10&depth=0.1", "metal", field.Unknown},
		{"amps=1", good + "&pieces=1001", "pieces", string(quantity.OutOfSize)},
	} {
		c := teach(x.fields, x.row)
		if c.Known || len(c.Errors) == 0 || c.Errors[0].Field != x.at || c.Errors[0].Code != x.code {
			t.Errorf("%s on %s: %v, want %s %s", x.row, x.fields, c.Errors, x.at, x.code)
		}
	}
	if c := teach("amps=1&colour=red", good); !c.Known || len(c.Errors) != 1 || c.Errors[0].Row != -1 {
		t.Errorf("a key that is no field stops it: %v", c.Errors)
	}
	if c := teach("amps=1"); c.Known {
		t.Error("nothing is planned")
	}
	if c := teach("amps=1", good, "name=x"); len(c.Names) != 2 || c.Names[1] != "piece 2" {
		t.Errorf("the names are %v", c.Names)
	}
}

// By hand, from one pair to a class: the bath between plates that fill a section of
// 20 cm2 resists gap / (conductivity x 20 cm2), and like electrodes take 0.2 V (common
// practice, no source). Two cells in series carry one current, so that four pieces of
// 0.3 A take the time of two, and twice the volts.
func TestTeachSeries(t *testing.T) {
	const beside = "amps=0.6&densityLimit=30&session=152&vesselWidth=40&fill=50&gap=80&cathode=20&strength=200&volume=2"
	alone := coulombs / 0.3
	c := teach(beside, plate+"depth=0.1&pieces=3", plate+"depth=0.1")
	kappa := work(plate + "strength=200&depth=0.1").Mix.Conductivity.SI
	one := 0.6*0.080/(kappa*20e-4) + 0.2
	if c.Circuit.Assumed || !near(c.Circuit.Volts.SI, one) {
		t.Errorf("a load needs %v, want %g V", c.Circuit, one)
	}
	if s := c.Instead.Series; s.Cells != 2 || s.Padded || !near(s.End, alone) || !near(s.One, one) || !near(s.Volts, 2*one) {
		t.Errorf("in series: %+v, want %g s at %g V", s, alone, 2*one)
	}
	for volts, cells := range map[float64]int{2.001: 2, 1.999: 0} { // just enough, and just too little
		c := teach(beside+fmt.Sprintf("&volts=%g", volts*one), plate+"depth=0.1&pieces=4")
		if c.Instead.Series.Cells != cells {
			t.Errorf("%g V drive %+v, want %d cells", volts*one, c.Instead.Series, cells)
		}
	}
	if s := teach(beside, plate+"depth=0.1&pieces=3").Instead.Series; s.Cells != 2 || !s.Padded {
		t.Errorf("three pieces hang in %+v", s)
	}
	// 2 m of copper of 1 mm, 58 MS/m, is 43.9 milliohms.
	cabled := teach(beside+"&wire=1&wireLength=2", plate+"depth=0.1&pieces=4")
	if drop := 0.6 * 0.043904; !near(cabled.Circuit.Drop.SI, drop) && math.Abs(cabled.Circuit.Drop.SI/drop-1) > 1e-4 || !near(cabled.Instead.Series.Volts, 2*one+cabled.Circuit.Drop.SI) {
		t.Errorf("with a cable it needs %+v and %+v", cabled.Circuit, cabled.Instead.Series)
	}
	if bare := teach("amps=0.6&session=152", plate+"depth=0.1&pieces=4"); !bare.Circuit.Assumed || bare.Instead.Series.Cells != 2 || bare.BathDrop.Known() || bare.SaltMass.Known() {
		t.Errorf("with nothing said of the bath: %+v %+v", bare.Circuit, bare.Instead)
	}
}

// Two litres at 200 g/L are 400 g of crystals, which hold 400 g x 63.546 / 249.677 of
// copper; brass takes as much of it as TestTeachOneBath says. Three faces of 60 mm
// are 180 mm side by side, and 5 A/mm2 (common practice, no source) of 0.9 A are
// 0.18 mm2, 0.4787 mm across.
func TestTeachBath(t *testing.T) {
	const brass = "metal=Cu+70+Zn+30&metalDensity=8.5&width=60&height=40&area=10&depth=0.1&pieces=3"
	lost := 3 * 0.85e-3 * (copper*(0.7/copper+0.3/zinc) - 0.7)
	c := teach("amps=0.9&densityLimit=30&strength=200&volume=2", brass)
	if want := lost / (0.4 * copper / pentahydrate); !near(c.BathDrop.SI, want) || !near(c.SaltMass.SI, 0.4) {
		t.Errorf("the bath is weaker by %v, want %g, of %v kg of salt", c.BathDrop, want, c.SaltMass)
	}
	if !near(c.TankWidth.SI, 0.180) || math.Abs(c.CableNeeded.SI/0.4787e-3-1) > 1e-4 {
		t.Errorf("side by side %v m, a cable of %v m", c.TankWidth, c.CableNeeded)
	}
	own := teach("amps=0.9&densityLimit=30&strength=200&volume=2", brass+"&volume=1")
	if !near(own.BathDrop.SI, 2*c.BathDrop.SI) {
		t.Errorf("a row's own volume is set aside: %v", own.BathDrop)
	}
}

// A load of equal pieces is the bath of one job with as many, whether they stand in one row
// of the class or in rows of their own.
func TestTeachLoadIsAJob(t *testing.T) {
	const beside = "gap=60&cathode=80&strength=200&volume=2"
	for _, face := range []string{"width=40&height=25&open=60", "area=6"} {
		row := cu + face + "&density=30&depth=0.1"
		alone := work(row + "&pieces=3&" + beside).Circuit.CellVolts.SI
		for name, rows := range map[string][]string{"one row": {row + "&pieces=3"}, "two rows": {row + "&pieces=2", row}, "three rows": {row, row, row}} {
			c := teach("amps=5&densityLimit=30&"+beside, rows...)
			if len(c.Plan.Loads) != 1 || alone == 0 || !near(c.Circuit.Volts.SI, alone) {
				t.Errorf("%s, %s: %d loads need %g V, the job %g V", face, name, len(c.Plan.Loads), c.Circuit.Volts.SI, alone)
			}
		}
	}
}
