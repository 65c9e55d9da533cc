package job

import (
	"slices"
	"testing"

	"saltbite/calc/field"
)

// A log of copper, 10 cm2, half an ampere for an hour, which takes 0.5927 g at 100
// % (Faraday's law).
func TestTry(t *testing.T) {
	const hour = plate + "current=0.5&time=60&before=24.6+g&"
	const yields = 1800 * cu2
	log := func(texts ...string) (rows []*field.Set) {
		for _, text := range texts {
			rows = append(rows, field.Read(text))
		}
		return rows
	}
	two := Try(log(hour+"after=24.06+g", hour+"after=24.04+g&depth=9&find=depth&start=9:00"), field.Read("metal=oxygen-free+copper"))
	if want := 0.55e-3 / yields; !near(two.Fit.Efficiency.SI, want) || two.Fit.Used != 2 || len(two.Errors) > 0 {
		t.Errorf("0.54 and 0.56 g are %+v with %v, want %g", two.Fit.Efficiency, two.Errors, want)
	}
	found := Try(log(hour+"after=24.06+g&line=0.5&lineFound=0.44&space=0.5&spaceFound=0.53"), field.Read(""))
	if want := (0.06 + 0.03) / 2 / 2 / 0.06; !near(found.Fit.Undercut.SI, want) { // over 0.06 mm by weight
		t.Errorf("the undercut is %+v, want %g", found.Fit.Undercut, want)
	}
	measured := Try(log(plate+"current=0.5&time=60&depthFound=0.06&before=24.6+g"), field.Read(""))
	if want := 0.54e-3 / yields; !near(measured.Fit.Efficiency.SI, want) {
		t.Errorf("a depth of 0.06 mm is %+v, want %g", measured.Fit.Efficiency, want)
	}
	for _, x := range []struct {
		row, all string
		used     int
		at       string // of its first mistake
	}{
		{hour + "after=24.06+g&use=no", "", 0, ""}, // judged, not used
		{hour + "after=24.06+g", "metal=brass", 0, ""},
		{hour + "after=24.06+g", "salt=common+salt", 0, ""},
		{hour + "after=24.06+g", "salt=copper+sulfate", 1, ""},
		{hour, "", 0, "after"},
		{plate + "before=24.6+g&after=24.06+g&time=60", "", 0, "current"},
		{plate + "before=24.6+g&after=24.06+g&time=60&current=0", "", 0, "current"},
		{cu + "before=24.6+g&after=24.06+g&time=60&current=0.5", "", 0, "area"},
		{"area=10&before=24.6+g&after=24.06+g&time=60&current=0.5", "", 0, "metal"},
		{hour + "after=24.06+g&pieces=some", "", 0, "pieces"},
	} {
		got := Try(log(x.row), field.Read(x.all))
		at := ""
		if len(got.Errors) > 0 {
			at = got.Errors[0].Field
		}
		if got.Fit.Used != x.used || at != x.at {
			t.Errorf("%s beside %q: %d used, %v", x.row, x.all, got.Fit.Used, got.Errors)
		}
	}
	both := Try(log(hour, hour+"after=24.06+g", "metal=brass", hour+"after=24.05+g"), field.Read("metal=oxygen-free+copper&depth=deep"))
	if !slices.Equal(both.Rows, []int{1, 3}) || both.Errors[0].Row != -1 || both.Errors[0].Field != "depth" || both.Errors[1].Row != 0 {
		t.Errorf("the rows are %v, with %v", both.Rows, both.Errors)
	}
}

// The balance's step is the row's own, else that of all, else 0.01 g (common
// practice, no source).
func TestTryResolution(t *testing.T) {
	for _, x := range []struct {
		row, all string
		want     float64
	}{{"resolution=0.2+g", "resolution=0.1+g", 2e-4}, {"", "resolution=0.1+g", 1e-4}, {"", "", 1e-5}} {
		if got := resolution(field.Read(x.row), field.Read(x.all)); !near(got, x.want) {
			t.Errorf("%q beside %q is %g kg", x.row, x.all, got)
		}
	}
}

// A salt that nobody knows counts no run, and is reported.
func TestTryInAnUnknownSalt(t *testing.T) {
	got := Try([]*field.Set{field.Read(plate + "current=0.5&time=60&before=24.6+g&after=24.06+g")}, field.Read("salt=lemonade"))
	if len(got.Rows) != 0 || len(got.Errors) != 1 || got.Errors[0].Field != "salt" || got.Errors[0].Row != -1 {
		t.Errorf("%+v", got)
	}
}
