package advice

import "testing"

// Steps add up: what stays exposed through 0.05, 0.10 and 0.10 mm is 0.05, 0.15, then
// 0.25 mm deep, by hand. Sums of what was typed gain no zeros.
func TestDepthReachedAfterEachStep(t *testing.T) {
	rows := askText("metal=brass&density=30&bites=0.05 12; 0.10 9; 0.10 4").Steps
	want := []string{"0.05 mm", "0.15 mm", "0.25 mm"}
	if len(rows) != len(want) {
		t.Fatalf("%d steps, not %d", len(rows), len(want))
	}
	for i, row := range rows {
		if row.Reached.Text != want[i] {
			t.Errorf("after step %d it is %s deep, not %s", i+1, row.Reached.Text, want[i])
		}
	}
}
