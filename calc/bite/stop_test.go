package bite

import (
	"math/rand/v2"
	"testing"
)

// Two bites in copper at 30 mA/cm2. The depth of one coulomb on a square
// centimetre, 0.36753 um, is that of TestDepthOfOneCoulomb (computed there).
func TestBites(t *testing.T) {
	law := Law{Equivalent: ion(63.546, 2, exact), Density: 8960, Efficiency: 1}
	w := Work{Area: 99, Edge: 99, Undercut: 9, Extra: 1 * cm2, Pieces: 2}
	row := law.Bites(w, 300, []Bite{{0.05 * mm, 12 * cm2}, {0.10 * mm, 9 * cm2}})
	all := InAll(row)
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"first time", row[0].Time.SI, 4534.78},                       // by hand: 50 um / (0.030 x 0.36753 um/s)
		{"second time", row[1].Time.SI, 9069.56},                      // by hand: twice as deep
		{"first current", row[0].Current.SI, 0.78},                    // by hand: 0.030 A/cm2 x 2 x (12 + 1) cm2
		{"second current", row[1].Current.SI, 0.60},                   // by hand: 0.030 A/cm2 x 2 x (9 + 1) cm2
		{"first charge", row[0].Charge.SI, 0.78 * 4534.78},            // current x time
		{"first removed", row[0].Removed.SI, 1.1648 * gram},           // by hand: 26 cm2 x 0.005 cm x 8.96 g/cm3
		{"second removed", row[1].Removed.SI, 1.792 * gram},           // by hand: 20 cm2 x 0.010 cm x 8.96 g/cm3
		{"time in all", all.Time.SI, 13604.34},                        // the two above
		{"charge in all", all.Charge.SI, 0.78*4534.78 + 0.60*9069.56}, // the two above
		{"removed in all", all.Removed.SI, 2.9568 * gram},             // the two above
		{"deepest", all.Depth, 0.15 * mm},                             // by hand: what is never stopped out
		{"largest current", all.Current.SI, 0.78},                     // the first bite's
		{"area", all.Area, 12 * cm2},                                  // the first bite's, before anything is stopped out
	} {
		if !near(x.got, x.want, 2e-5) {
			t.Errorf("%s: %.7g, want %.7g", x.name, x.got, x.want)
		}
	}
}

// One bite is the law itself, and metal, charge and time agree in any row.
func TestBitesAreTheLaw(t *testing.T) {
	r := rand.New(rand.NewPCG(19, 20))
	for range 5000 {
		law, w, depth, _ := some(r)
		w.Edge = 0
		density := decades(r, 300, 12)
		one := law.Bites(w, density, []Bite{{depth, w.Area}})[0]
		if want := law.Time(w, depth, one.Current.SI).SI; !near(one.Time.SI, want, 1e-9) {
			t.Fatalf("one bite takes %g s, by the law %g: %+v %+v", one.Time.SI, want, law, w)
		}
		if !near(one.Charge.SI, one.Current.SI*one.Time.SI, 1e-9) || !near(one.Removed.SI, law.Removed(one.Charge.SI).SI, 1e-12) {
			t.Fatalf("charge and metal disagree: %+v", one)
		}
		twice := InAll(law.Bites(w, density, []Bite{{depth, w.Area}, {depth, w.Area}}))
		if !near(twice.Charge.SI, 2*one.Charge.SI, 1e-12) || !near(twice.Time.SI, 2*one.Time.SI, 1e-12) || !near(twice.Depth, 2*depth, 1e-12) {
			t.Fatalf("twice the bite is not twice: %+v %+v", one, twice)
		}
	}
	if all := InAll(nil); all != (Bitten{}) {
		t.Errorf("no bites add up to %+v", all)
	}
}

// By hand: copper of 8960 kg/m3; 12 + 1.5 cm2 to 0.05 mm and 9 + 1.5 cm2 to 0.10
// mm are 67.5 and 105 mm3, 1.5456 g; 0.5 cm2 of hanger goes 0.15 mm deep, 7.5 mm3.
func TestRemovedEach(t *testing.T) {
	law := Law{Equivalent: ion(63.546, 2, exact), Density: 8960, Efficiency: 0.95}
	w := Work{Area: 99 * cm2, Edge: 1, Undercut: 1, Extra: 1.5 * cm2, Pieces: 3}
	bites := []Bite{{0.05 * mm, 12 * cm2}, {0.10 * mm, 9 * cm2}}
	for _, x := range []struct {
		name         string
		bites        []Bite
		hanger, want float64
	}{
		{"no hanger", bites, 0, 1.5456 * gram},
		{"a hanger", bites, 0.5 * cm2, 1.4784 * gram}, // 1.5456 - 0.0672
		{"no bites", nil, 0.5 * cm2, 0},
	} {
		if got := law.RemovedEach(w, x.bites, x.hanger).SI; !near(got, x.want, 1e-9) {
			t.Errorf("%s: %.6g kg, want %.6g", x.name, got, x.want)
		}
	}
	// Of three pieces it is a third of all, where no hanger is in all.
	if got, all := law.RemovedEach(w, bites, 0).SI, InAll(law.Bites(w, 300, bites)).Removed.SI; !near(got*3, all, 1e-9) {
		t.Errorf("%g kg from each of three, %g from all", got, all)
	}
}
