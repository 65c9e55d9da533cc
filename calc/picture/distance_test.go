package picture

import (
	"strings"
	"testing"

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
		if i > 0 && (row.Distance.Value <= r.Rows[i-1].Distance.Value || row.Spread.Value <= r.Rows[i-1].Spread.Value || row.Volts.Value <= r.Rows[i-1].Volts.Value) {
			t.Errorf("after %+v comes %+v", r.Rows[i-1], row)
		}
	}
	if want := "Of these distances 5.00 mm is the most even: from " + r.Rows[0].Least.Text + " to "; !strings.HasPrefix(r.Sentence, want) {
		t.Errorf("it says %q, not %q", r.Sentence, want)
	}
	if none := DistancesSaid(distances(half(), field.Read("gap=20"), 128, func(float64) {})); len(none.Rows) > 0 || none.Errors[0].Field != "width" {
		t.Errorf("without a size it says %+v", none)
	}
}
