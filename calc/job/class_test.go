package job

import (
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
