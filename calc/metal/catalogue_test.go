package metal_test

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/metal"
	"saltbite/testdata"
)

// The catalogue holds what its tables say, read here a second time.
func TestCatalogueIsTheTable(t *testing.T) {
	rows := testdata.Table(t, "alloys.csv")
	names := map[string][]string{}
	for _, r := range testdata.Table(t, "alloy_names.csv") {
		names[r["id"]] = slices.Concat(names[r["id"]], list(r["names"]), list(r["names_from_memory"]))
	}
	metals := slices.Collect(metal.All())
	if len(metals) != len(rows) {
		t.Fatalf("%d metals, %d rows", len(metals), len(rows))
	}
	for i, r := range rows {
		m := metals[i]
		source, _ := metal.SourceOf(m.ID)
		number, symbol, _ := strings.Cut(r["en"], " ")
		if number != "" && symbol == "" { // a symbol alone
			number, symbol = "", number
		}
		for field, pair := range map[string][2]string{
			"id": {m.ID, r["id"]}, "name": {m.Name, r["name"]}, "uns": {m.UNS, r["uns"]}, "en number": {m.EN, number},
			"en symbol": {m.Symbol, symbol}, "british": {m.British, r["bs_cz"]}, "family": {m.Family.String(), r["family"]},
			"remark": {m.Remark, r["remark"]}, "notes": {source.Notes, r["notes"]}, "source": {source.Text, r["source"]}, "confidence": {source.Confidence, r["confidence"]},
			"names": {sorted(append(slices.Concat(m.Names[:]...), m.Grades...)), sorted(names[m.ID])},
		} {
			if pair[0] != pair[1] {
				t.Errorf("%s: %s is %q, in the table %q", r["id"], field, pair[0], pair[1])
			}
		}
		if want := number64(t, r["density_g_cm3"]) * 1000; math.Abs(m.Density-want) > 1e-9*want {
			t.Errorf("%s: density %g, in the table %g", m.ID, m.Density, want)
		}
		compareComposition(t, m, r["composition"])
	}
}

func compareComposition(t *testing.T, m *metal.Metal, composition string) {
	var sum float64
	parts := list(composition)
	if len(parts) != len(m.Composition) {
		t.Errorf("%s: %d elements, in the table %d", m.ID, len(m.Composition), len(parts))
	}
	for _, p := range parts {
		symbol, percent, _ := strings.Cut(p, ":")
		if want := number64(t, percent) / 100; math.Abs(m.Share(symbol)-want) > 1e-12 {
			t.Errorf("%s: %s %g, in the table %g", m.ID, symbol, m.Share(symbol), want)
		}
		sum += m.Share(symbol)
	}
	if math.Abs(sum-1) > 1e-12 {
		t.Errorf("%s: shares sum to %g", m.ID, sum)
	}
}

// Every name and grade of the catalogue finds its own metal, first or as a rival
// of the same name.
func TestEveryNameFindsItsMetal(t *testing.T) {
	for m := range metal.All() {
		called := append(slices.Concat(m.Names[:]...), m.Name, m.UNS, m.EN, m.Symbol, m.British)
		for _, name := range append(called, m.Grades...) {
			if name == "" {
				continue
			}
			hits := metal.Find(name)
			if !slices.ContainsFunc(hits, func(h metal.Hit) bool { return h.Metal == m }) {
				t.Errorf("%q of %s finds %v", name, m.ID, ids(hits))
			}
		}
	}
}

func TestIDsAreDistinct(t *testing.T) {
	had := map[string]bool{}
	for m := range metal.All() {
		if had[m.ID] {
			t.Errorf("%s stands twice", m.ID)
		}
		had[m.ID] = true
	}
}

// catalogued is the metal with that id; nil if the catalogue has no such metal.
func catalogued(id string) *metal.Metal {
	for m := range metal.All() {
		if m.ID == id {
			return m
		}
	}
	return nil
}

// A person who chooses one of these must be told.
func TestRemarksOnNamesThatMislead(t *testing.T) {
	for id, word := range map[string]string{
		"cuzn10": "no tin", "cuzn12-5": "no tin and no gold", "architectural-bronze": "no tin", "aluminium-bronze-d": "no tin", "silicon-bronze-high": "no tin",
		"manganese-bronze": "a brass", "nordic-gold": "no gold", "silver-958": "pewter", "beryllium-copper": "must not be etched",
		"nickel-silver-12": "no silver", "cupronickel-25": "no silver", "clay-copper": "type its density", "clay-bronze": "type its density",
		"clay-silver-999": "9.8 g/cm3", "gunmetal-85-5-5-5": "red brass",
	} {
		if m := catalogued(id); m == nil || !strings.Contains(m.Remark, word) {
			t.Errorf("%s says %q, without %q", id, m.Remark, word)
		}
	}
	for m := range metal.All() {
		if m.Family == metal.Clay && !strings.Contains(m.Remark, strconv.FormatFloat(m.Density/1000, 'f', 1, 64)) {
			t.Errorf("%s says %q, not the density assumed", m.ID, m.Remark)
		}
	}
}

func list(cell string) []string {
	var l []string
	for s := range strings.SplitSeq(cell, ";") {
		if s = strings.TrimSpace(s); s != "" {
			l = append(l, s)
		}
	}
	return l
}

func sorted(l []string) string {
	slices.Sort(l)
	return strings.Join(l, ";")
}

func number64(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
