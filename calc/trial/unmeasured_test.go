package trial

import "testing"

// A width that was not drawn, or not measured, tells no undercut; nor does one below nothing.
func TestUndercutOfNoWidth(t *testing.T) {
	for _, none := range []float64{0, -0.1 * mm} {
		if UndercutOfLine(none, 0.3*mm, 0.2*mm).Known() || UndercutOfLine(0.5*mm, none, 0.2*mm).Known() {
			t.Errorf("a line of %v m tells an undercut", none)
		}
		if UndercutOfSpace(none, 0.3*mm, 0.2*mm).Known() || UndercutOfSpace(0.5*mm, none, 0.2*mm).Known() {
			t.Errorf("a space of %v m tells an undercut", none)
		}
	}
}

// Readings less than a second apart make a line too: 0.1 A less in each tenth of a second
// leaves 0.8 A, which would run out after 0.8 s with 0.32 C, and gives 0.14 C in 0.2 s.
func TestTrendOfASecond(t *testing.T) {
	read := Readings{{0, 1}, {0.1, 0.9}, {0.2, 0.8}}
	if flowed := read.Charge(); !near(flowed, 0.18, 1e-12) {
		t.Errorf("%v C have flowed", flowed)
	}
	if got, ok := known(read.ReadyByTrend(0.18 + 0.14)); !ok || !near(got, 0.2, 1e-9) {
		t.Errorf("ready in %v s, %v", got, ok)
	}
	if _, ok := known(read.ReadyByTrend(0.18 + 0.33)); ok {
		t.Error("it runs out before, yet it is ready")
	}
}

// One run tells an undercut without a range (a range rests on scatter), none tells none.
func TestUndercutOfOneRun(t *testing.T) {
	runs := []Run{{Efficiency: 0.9, Expected: 0.001}, {Efficiency: 0.9, Expected: 0.001}}
	if got := Bench(runs).Undercut; got.Known() {
		t.Errorf("no line was measured, and the undercut is %v", got)
	}
	runs[1].Undercuts = []float64{0.5, 0.75}
	if got := Bench(runs).Undercut; !got.Known() || !near(got.SI, 0.625, 1e-12) || got.Low.Known() && got.Low.SI < got.SI {
		t.Errorf("of 0.5 and 0.75 the undercut is %+v", got)
	}
}

// Without the column of the key a row is known by all of its cells.
func TestMergeWithoutKey(t *testing.T) {
	log := Table{[]string{"metal", "after"}, [][]string{{"copper", "20"}}}
	got := log.Merge(Table{[]string{"metal", "after"}, [][]string{{"copper", "20"}, {"brass", "30"}}}, "id")
	if got.Added != 1 || got.Changed != 0 || len(got.Rows) != 2 {
		t.Errorf("%+v", got)
	}
}
