package picture

import (
	"math"
	"strings"
	"testing"

	"saltbite/calc/evenness"
	"saltbite/calc/field"
)

// Before a line and a field a nearer cathode is more even (each part then has its own
// column of bath), and takes fewer volts.
func TestDistances(t *testing.T) {
	r := DistancesSaid(distances(half(), field.Read(inBath+"depth=1"), 256, func(float64) {}))
	if len(r.Rows) != 5 || len(r.Errors) > 0 {
		t.Fatalf("%+v", r)
	}
	for i, row := range r.Rows {
		if i > 0 && (row.At.Value <= r.Rows[i-1].At.Value || row.Spread.Value <= r.Rows[i-1].Spread.Value || row.Volts.Value <= r.Rows[i-1].Volts.Value) {
			t.Errorf("after %+v comes %+v", r.Rows[i-1], row)
		}
	}
	if want := "Of these distances 5.00 mm is the most even: from " + r.Rows[0].Least.Text + " to "; !strings.HasPrefix(r.Sentence, want) {
		t.Errorf("it says %q, not %q", r.Sentence, want)
	}
	for fields, want := range map[string]string{"gap=20": "width missing", "width=0.1&gap=90": "gap range"} { // too small at any of the distances
		none := DistancesSaid(distances(half(), field.Read(fields), 128, func(float64) {}))
		if len(none.Rows) > 0 || len(none.Errors) == 0 || none.Errors[0].Field+" "+none.Errors[0].Code != want {
			t.Errorf("%s: it says %+v, not %s", fields, none, want)
		}
	}
}

// A plate all of which is exposed is deepest at its edges, and bare scrap round it moves
// the edges away: the wider the more even, and the more current it takes. That of the border
// is told as it would be added by hand: four sides and corners.
func TestScrap(t *testing.T) {
	d := distances(drawn(100, 100), field.Read(inBath+"depth=0.2"), 256, func(float64) {})
	r := DistancesSaid(d)
	if len(r.Scrap) != 4 || r.Scrap[0].At.Text != "none" || r.Scrap[0].At.Value != 0 || math.Abs(r.Scrap[3].At.Value-10) > 1e-9 { // half of 20 mm
		t.Fatalf("%+v", r.Scrap)
	}
	for i, row := range r.Scrap {
		if i > 0 && !(row.Spread.Value < r.Scrap[i-1].Spread.Value) {
			t.Errorf("after %+v comes %+v", r.Scrap[i-1], row)
		}
		if want := 100 * (100/row.Least.Value - 1); math.Abs(row.Longer.Value-want) > 1e-9 {
			t.Errorf("it takes %g %% longer, not %g", row.Longer.Value, want)
		}
	}
	want := "A border of exposed scrap 10.0 mm wide, at 20.0 mm, makes it from " + r.Scrap[3].Least.Text + " to " + r.Scrap[3].Most.Text + ", and takes "
	if _, said, found := strings.Cut(r.Sentence, want); !found || said < "2.3 times" || said > "3.5 times" { // (60/40)^2 = 2.25 by area, and the edges are the border's
		t.Errorf("it says %q, not %q", r.Sentence, want)
	}
	none := DistancesSaid(distances(drawn(100, 100), field.Read(inBath+"depth=0.2&vesselWidth=40&fill=40"), 128, func(float64) {}))
	if len(none.Scrap) != 0 || strings.Contains(none.Sentence, "border") { // the bath has no room for one
		t.Errorf("without room it says %q, %+v", none.Sentence, none.Scrap)
	}
}

// A border is advised where it takes 2 % or more of the mean off the spread.
func TestScrapIsWorthwhile(t *testing.T) {
	asIs := evenness.Variant{Least: 0.95, Most: 1.25, Current: 1}
	asIs.Gap = 0.02
	for most, want := range map[float64]bool{1.25: false, 1.24: false, 1.22: true, 1.1: true, 1.3: false} {
		with := evenness.Variant{Least: 0.95, Most: most, Current: 2}
		with.Border = 0.005
		if said := (picturePrinter{}).scrapSentence(asIs, with); strings.Contains(said, "no more even") == want {
			t.Errorf("from 1.25 to %g of the mean: %q", most, said)
		}
	}
}
