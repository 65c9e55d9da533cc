package advice

import (
	"strings"
	"testing"

	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
)

// oneCopper is copper of 9 g/cm3, 10 cm2: 0.2 mm is 1.8 g, for which 0.3 A flows 5
// h 4 min (Faraday's law, 63.546 g to 2 x 96485.33 C).
const oneCopper = "metal=oxygen-free+copper&metalDensity=9&area=10&"

// What a picture shows stands in its words; they hold the figures of the job as
// the page prints them, and say what they rest on.
func TestPicturesHoldTheFigures(t *testing.T) {
	const sized = oneCopper + "depth=0.2&current=0.3&sheet=1+mm&line=0.6&space=0.4&"
	const weighed = oneCopper + "depth=0.2&current=0.4&time=60&before=24.6+g&after=24.15+g&" // 0.45 of 0.4742 g, and 1.35 g more: 3 h
	for _, x := range []struct{ fields, of, holds string }{
		{sized, "section", "0.200 mm deep, as asked for"},
		{sized, "section", "0.800 mm is left of the sheet of 1.00 mm, and at least 0.500 mm is to stay"},
		{sized, "section", "etched 0.100 mm from each side"},
		{sized, "section", "keeps 0.400 mm at its top, under 0.600 mm"},
		{sized, "section", "0.400 mm in the resist, widens to 0.600 mm"},
		{"sheet=1+mm", "section", "0.500 mm deep, the deepest that this sheet allows"},
		{oneCopper + "time=60&current=0.3", "section", "0.0395 mm deep, as found"}, // 1080 C
		{"bites=0.1+10;+0.2+8&sheet=1+mm", "section", "0.300 mm deep, all steps together"},
		{sized + "undercut=0", "section", "keeps 0.600 mm at its top"},
		{"metal=copper", "section", ""},
		{sized + "undercut=much", "section", ""},
		{"depth=0.0009", "section", "0.900 µm deep"},
		{"depth=0.001", "section", "0.00100 mm deep"},
		{"depth=0.0025&units=us", "section", "2.50 µm deep"},
		{"depth=0.00254&units=us", "section", "0.000100 in deep"},

		{sized, "curve", "0.200 mm is reached after 5 h 4 min; half-way is at 2 h 32 min"},
		{sized, "curve", "at 0.300 A. "},
		{sized, "curve", "common practice, 90.0 % to 105 %"},
		{sized, "curve", "sheet's limit is 0.500 mm"},
		{sized, "curve", "line is gone at 0.600 mm"},
		{sized + "pieces=2", "curve", "at 0.300 A for all 2 pieces"},
		{weighed, "curve", "drawn by the 94.9 % efficiency that the weighing found"},
		{weighed, "curve", "By its weight it is 0.0500 mm deep after 1 h"},
		{weighed, "curve", "0.200 mm is reached after 4 h"},
		{oneCopper + "depth=0.2&readings=0:00+0.3;+1:00+0.28", "curve", "at 0.280 A, the last reading"},
		{oneCopper + "depth=0.2&readings=0:00+0.3;+1:00+0.28", "curve", "By the ammeter it is 0.0382 mm deep after 1 h"}, // 1044 C
		{oneCopper + "depth=0.2", "curve", "at 0.300 A, as suggested"},
		{"metal=copper&depth=0.2", "curve", "at 30.0 mA/cm², as suggested"},
		{"metal=copper&depth=0.2&density=20", "curve", "at 20.0 mA/cm²"},
		{"metal=copper&depth=0.2&density=20&edge=100", "curve", ""},
		{"metal=copper&salt=common+salt&depth=0.1&area=10&density=20", "curve", "goes down to copper that leaves as copper(II)"},
		{oneCopper + "depth=0.2&current=0.3&salt=silver+nitrate", "curve", ""},
		{oneCopper + "depth=0.2&current=0.3&sheet=0.1+mm", "curve", ""}, // eaten through
		{"metal=copper&bites=0.1+10;+0.2+8&density=30", "curve", ""},

		{sized, "card", "exposed in all: 10.0 cm². each piece loses: 1.80 g."},
		{sized, "card", "current density: 30.0 mA/cm²"},
		{sized, "card", "distance: to be written in"},
		{sized + "gap=60&cathode=50+cm2", "card", "distance: 60.0 mm. cathode: 50 cm²"},
		{sized + "start=14:00&before=24.6+g", "card", "switched on: clock 14:00, weighs 24.6 g. half-way: clock 16:32, weighs 23.7 g. ready: clock 19:04, weighs 22.8 g"},
		{sized + "strength=200&volume=2", "card", "bath: copper sulfate. its strength: 200 g/L. its volume: 2.00 L"},
		{sized, "card", "Likely 4 h 49 min to 5 h 37 min, common practice"},
		// Of a run under way it is the range of what is left. By weight, with none: 0.2 of 1.8 g
		// took 40 min, so the rest takes 320; by the
		// ammeter: 1.8 g are 5466 C, of which 708 have gone; 0.29 A take 273 min for the rest.
		{oneCopper + "depth=0.2&current=0.3&before=24.6+g&after=24.4+g&elapsed=40", "card", "Leave it 5 h 20 min more. Caution"},
		{oneCopper + "depth=0.2&current=0.3&readings=0:00+0.3;+0:40+0.29", "card", "Leave it 4 h 33 min more. Likely 4 h 33 min to 5 h 17 min, by the trend"},
		{sized, "card", "Hanging wire: never stainless"},
		{sized + "hangerMetal=aluminium", "card", "Hanging wire of aluminium"},
		{sized + "hangerMetal=aluminium&salt=common+salt", "card", "Hanging wire: never stainless"},
		{sized + "amps=2", "card", "Fits: 0.3 A of 2 A"},
		{"metal=sterling&area=10&depth=0.1&density=10", "card", "Never let silver residues meet ammonia"},
		{"metal=copper&bites=0.1+10;+0.2+8&density=30", "card", "Step 2: 0.2 mm on 8 cm²"},
		{"area=10", "card", ""},
		{"metal=copper", "card", ""},

		{"metal=sterling&strength=40&volume=2&mixed=3+May&etched=20", "label", "Holds: 2.00 L at 40.0 g/L of salt. Mixed: 3 May. Etched in it: 20.0 g of sterling."},
		{"salt=copper+sulfate&strength=20+%25&volume=2", "label", "2.00 L at 20.0 % of crystals"},
		{"salt=copper+sulfate+anhydrous&strength=100", "label", "Holds: 100 g/L of anhydrous salt"},
		{"salt=copper+sulfate", "label", "Holds: to be written in"},
		{"salt=copper+sulfate", "label", "H318 causes serious eye damage"},
		{"salt=common+salt", "label", "Gathers copper from the work: H410"},
		{"metal=Cu+99.9+Ni+0.1&salt=copper+sulfate", "label", "Nickel in it: H317"},
		{"metal=Cu+70+Zn+29.9+Pb+0.1&salt=copper+sulfate", "label", "Lead in it: H360Df"},
		{"metal=copper&etched=20", "label", "Etched in it: 20.0 g of copper"},
		{"metal=copper&depth=0.2", "label", ""}, // nothing is said of a bath
	} {
		d := Draw(job.Work(field.Read(x.fields)))
		picture := map[string]*drawing.Drawing{"section": d.Section, "curve": d.Curve, "card": d.Card, "label": d.Label}[x.of]
		switch {
		case picture == nil && x.holds != "":
			t.Errorf("%s has no %s", x.fields, x.of)
		case picture != nil && x.holds == "":
			t.Errorf("%s has a %s: %s", x.fields, x.of, picture.Words)
		case picture != nil && strings.Contains(picture.Words, ". ."):
			t.Errorf("the %s of %s says nothing in a sentence: %s", x.of, x.fields, picture.Words)
		case picture != nil && !strings.Contains(picture.Words, x.holds):
			t.Errorf("the %s of %s says no %q: %s", x.of, x.fields, x.holds, picture.Words)
		}
	}
}

// What a log and a class say: efficiencies of 94.5 and 96.5 % by hand below, and
// two rounds of a piece each.
func TestManyInWords(t *testing.T) {
	log := func(after ...string) (rows []*field.Set) {
		for _, text := range after {
			rows = append(rows, field.Read(oneCopper+"current=0.5&time=60&before=24.6+g&after="+text))
		}
		return rows
	}
	trial := Trial(job.Try(log("24.04+g", "24.028+g"), field.Read(""))) // 0.560 and 0.572 of 0.59275 g
	if !strings.HasPrefix(trial.Sentence, "This bench dissolves 95.5 % of what the charge allows, by 2 runs;") || !strings.Contains(trial.Sentence, "until there are three.") {
		t.Errorf("%q", trial.Sentence)
	}
	if r := trial.Runs; len(r) != 2 || r[1].Row != 1 || !within(r[0].Efficiency, 94.475) || !within(r[0].Low, 94.475-1.687) || !within(r[0].High, 94.475+1.687) || r[0].Odd != "" {
		t.Errorf("%+v", r) // 0.01 of 0.59275 g is 1.687 %
	}
	if alone := Trial(job.Try(log("24.3+g"), field.Read(""))); !strings.Contains(alone.Sentence, "by 1 run;") || alone.Runs[0].Odd == "" {
		t.Errorf("%q of %+v", alone.Sentence, alone.Runs) // 50.6 %
	}
	if none := Trial(job.Try(nil, field.Read(""))); none.Sentence != "" || len(none.Answers) != 1 || none.Answers[0].Text != "0" {
		t.Errorf("of no runs %+v", none)
	}

	rows := []field.Named{{Name: "Leaf", Set: field.Read(oneCopper + "depth=0.1&pieces=2")}}
	long := Class(job.Teach(rows, field.Read("amps=0.5&session=4+h&start=10:00")))
	if len(long.Loads) != 2 || long.Loads[1].Round != 2 || long.Loads[1].Pieces[0].Name != "Leaf" || !within(long.Loads[1].Start.Value, 161.84) { // 2 h 31.84 min and 10
		t.Errorf("%+v", long.Loads)
	}
	if len(long.Cautions) != 2 || long.Cautions[0].Code != "session-short" || long.Cautions[1].Code != "copper-sulfate" {
		t.Errorf("%+v", long.Cautions)
	}
	if short := Class(job.Teach(rows, field.Read("amps=1&session=4+h"))); len(short.Cautions) != 1 || len(short.Loads) != 1 {
		t.Errorf("%+v", short)
	}
}

// within is within a thousandth.
func within(got, want float64) bool { return got > want*0.999 && got < want*1.001 }
