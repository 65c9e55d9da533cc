package advice

import (
	"strings"
	"testing"

	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// A cause that a figure just shows counts once its limit, so that one 1.5 times past its
// own goes before it; what is just at its limit shows nothing. Worked by hand beside each.
func TestCausesByHowFarTheyArePast(t *testing.T) {
	for _, c := range []struct{ seen, job, first string }{
		{"deep", "metal=copper&salt=common salt&area=10&depth=0.2&current=0.2&height=30&width=30&gap=10", "distance"}, // 15 over 10 mm
		{"deep", "metal=copper&width=100&height=80", "area"},                                                          // no gap is typed
		{"deep", "metal=copper&width=100&height=80&open=50", "area"},                                                  // no cathode either
		{"falling", "metal=copper&temperature=10&hanger=0.9&hangerLength=20&depth=0.3&area=10&current=0.2", "hanger"}, // 0.45 over 0.3 mm
		{"falling", "metal=copper&hanger=0.9", "film"},                                                                // how deep it is etched is not known
		{"faint", "metal=copper&area=10&depth=0.2&hanger=18 ga&readings=0:00 0.2; 4:30 0.2", "weak-current"},          // 0.9 x 1.504 over 0.9 A.h
		{"faint", "metal=copper&area=10&depth=0.2&readings=0:00 0.2; 6:45 0.2", "weak-current"},                       // 1.350 of 1.504 A.h: under 90 %
		{"faint", "metal=copper&area=10&depth=0.2&readings=0:00 0.2; 6:50 0.2", "hidden"},                             // 1.367: over
		{"faint", "metal=copper&area=10&depth=0.2&current=0.2&time=1 h&before=20&after=19.9", "hidden"},               // 42 % tells of a film where it turned black
		{"faint", "metal=copper&area=10&depth=0.2&readings=0:00 0; 1:00 0", "contact"},                                // of no charge no share is taken
		{"black", "metal=copper&area=10&current=0.75&time=1 h&before=20&after=19.63", "film"},                         // 0.37 of 0.889 g is half of 85 %; 75 over 50
		{"black", "metal=C51000&density=75&depth=0.1", "density"},                                                     // tin; 75 over 50
		{"black", "metal=Cu 99 Sn 1", "alloy"},                                                                        //
		{"black", "metal=Cu 99.9 Pb 0.1", "film"},                                                                     //
		{"black", "metal=Cu 99.8 Pb 0.2", "alloy"},                                                                    //
		{"black", "metal=Ag 20 Cu 80&salt=silver nitrate", "film"},                                                    // no slime in its own salt
		{"rough", "metal=Cu 99.9 Pb 0.1&stir=stirred", "density"},                                                     //
		{"rough", "metal=Cu 99.8 Pb 0.2&stir=stirred", "alloy"},                                                       //
		{"rough", "metal=C28000&density=75&depth=0.1&stir=stirred", "density"},                                        // two phases; 75 over 50
		{"rough", "metal=copper&temperature=10&density=75&depth=0.1", "density"},                                      // cold; 75 over 50
		{"rough", "metal=copper&temperature=15&stir=stirred", "density"},                                              // not cold
		{"uneven", "metal=copper&position=face-up&height=30&width=30&gap=10", "distance"},                             // still; 15 over 10 mm
		{"rough", "metal=copper&height=30&stir=stirred&strength=200&density=42&depth=0.1", "film"},                    // 1.5 times half of about 56 mA/cm2
		{"rough", "metal=copper&height=30&stir=stirred&strength=200&density=25&depth=0.1", "density"},                 // 0.9 times
		{"black", "metal=copper&stir=stirred&density=10&depth=0.1", "film"},                                           // stirred speaks against it in rough only
		{"nothing", "metal=copper&area=10&pieces=10&depth=0.1&current=0.2&time=30&before=20&after=20", "short-time"},  // 0.119 g of ten: 0.012 each, under 0.05
		{"lifted", "metal=copper&area=10&depth=0.2&line=1&density=20", "density"},                                     // 0.2 of 1 mm is under half
	} {
		fields := map[string]string{"seen": c.seen}
		for part := range strings.SplitSeq(c.job, "&") {
			name, text, _ := strings.Cut(part, "=")
			fields[name] = text
		}
		if got := codes(ask(fields).Causes); !strings.HasPrefix(got, c.first) {
			t.Errorf("%s, %s: %s, want %s first", c.seen, c.job, got, c.first)
		}
	}
}

// A line of 40 mm over stretches of 0.5 and 1.5 times a mean of 0.1 mm, the deepest at the
// end of the second, 30 mm from A, of a sheet of 0.4 mm of which a half is to stay.
func TestAlongTellsTheDeepest(t *testing.T) {
	laid := Laid{Length: 0.04, Computed: true, Open: []drawing.Stretch{{Left: 0.005, Right: 0.01, Depths: []float64{0.5, 0.5, 0.5}}, {Left: 0.02, Right: 0.03, Depths: []float64{1, 1.2, 1.5}}}}
	d := Along(job.Work(field.Read(oneCopper+"depth=0.1&current=0.3&sheet=0.4+mm")), laid)
	if d == nil {
		t.Fatal("it is not drawn")
	}
	for _, want := range []string{"from A to B, 40.0 mm.", "It crosses 2 exposed stretches.", "from 0.050 mm to 0.15 mm deep along it, deepest 30.0 mm from A",
		"the mean is 0.100 mm, as asked for", "0.25 mm is left of the sheet of 0.400 mm there."} {
		if !strings.Contains(d.Words, want) {
			t.Errorf("%q lacks %q", d.Words, want)
		}
	}
	told := map[string]bool{}
	for _, s := range d.Shapes {
		told[s.Text] = true
	}
	for _, want := range []string{"leave at least", "0.200 mm", "deepest", "0.15 mm", "shallowest", "0.050 mm", "0.25 mm"} {
		if !told[want] {
			t.Errorf("%q is not in the picture", want)
		}
	}
	if d := Along(job.Work(field.Read(oneCopper+"depth=0.1&current=0.3&units=us")), laid); d == nil || !strings.Contains(d.Words, "0.0059 in deep") { // 0.15 mm
		t.Errorf("%+v", d)
	}
	laid.Open = nil
	if d := Along(job.Work(field.Read(oneCopper+"depth=0.1&current=0.3")), laid); d == nil || !strings.Contains(d.Words, "on resist from end to end") || strings.Contains(d.Words, "etched from") {
		t.Errorf("%+v", d)
	}
	for _, none := range []string{"metal=copper", "metal=copper&depth=0.1&sides=many", "metal=copper&depth=0.1&undercut=much", "metal=copper&depth=1&sheet=0.5+mm"} {
		if d := Along(job.Work(field.Read(none)), laid); d != nil {
			t.Errorf("%s: %s", none, d.Words)
		}
	}
}

// A curve is drawn of one current only, none where a field of it can't be read or its
// figures disagree; a weighing stands where the readings end, else after the time.
func TestWhichCurveIsDrawn(t *testing.T) {
	for fields, want := range map[string]string{
		oneCopper + "depth=0.2&current=much":                                            "",
		oneCopper + "depth=0.2&density=much":                                            "",
		oneCopper + "depth=0.2&current=0.3&time=60":                                     "", // 0.04 mm
		oneCopper + "depth=0.2&current=0.3":                                             "0.200 mm is reached after 5 h 4 min",
		oneCopper + "depth=0.2&current=0.3&readings=0:00+0.3;+1:00+0.28":                "at 0.300 A.",
		oneCopper + "current=0.3&time=60":                                               "0.0395 mm is reached after 1 h",
		oneCopper + "depth=0.2&readings=9:00+0.3;10:30+0.3&before=24.6+g&after=24.15+g": "By its weight it is 0.0500 mm deep after 1 h 30 min.",
		oneCopper + "depth=0.2&current=0.4&time=45&before=24.6+g&after=24.3+g":          "By its weight it is 0.0333 mm deep after 45 min.",
	} {
		curve := Draw(job.Work(field.Read(fields))).Curve
		if (curve == nil) != (want == "") || curve != nil && !strings.Contains(curve.Words, want) {
			t.Errorf("%s: %+v", fields, curve)
		}
	}
}

// Of a run under way it is said what is left, if anything is.
func TestNothingLeftIsNotSaid(t *testing.T) {
	for left, want := range map[float64]bool{0: false, 0.5: true, 60: true} {
		w := job.Work(field.Read("metal=copper"))
		w.Course.DepthNow, w.Course.TimeLeft = quantity.Known(1e-4), quantity.Known(left)
		v := viewOf(&w)
		if said := v.courseSentence(); strings.Contains(said, "Leave it") != want {
			t.Errorf("%v s are left: %q", left, said)
		}
	}
}

// A metal of shares is told as it was typed, in per cent.
func TestCompositionAsTyped(t *testing.T) {
	if got := askText("metal=Cu+70+Zn+30").Metals[0].Composition; got != "70 Cu 30 Zn" {
		t.Errorf("%q", got)
	}
}

// The bath is the one that was typed, else the metal's own, and none is known of no metal.
func TestWhichBathItIs(t *testing.T) {
	for fields, want := range map[string]string{"": "", "metal=copper": "copper sulfate", "metal=copper&salt=common+salt": "common salt", "metal=sterling": "silver nitrate"} {
		if got := askText(fields).Salt; !strings.HasPrefix(got, want) || (got == "") != (want == "") {
			t.Errorf("%q: the bath is %q", fields, got)
		}
	}
}
