package metal_test

import (
	"encoding/xml"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/metal"
	"saltbite/testdata"
)

// The table holds the abridged weights of 2021 from memory.
func TestMolarMasses(t *testing.T) {
	checked := 0
	for _, r := range testdata.Table(t, "atomic_weights.csv") {
		e := element(r["symbol"])
		if e == nil || r["kind"] != "abridged standard atomic weight" {
			continue
		}
		checked++
		if want := number64(t, r["value"]) / 1000; math.Abs(e.MolarMass-want) > 1e-12 {
			t.Errorf("%s: %g kg/mol, in the table %g", e.Symbol, e.MolarMass, want)
		}
	}
	if checked < 11 {
		t.Errorf("only %d elements stand in the table", checked)
	}
}

// bodr, the Blue Obelisk data repository as Debian packages it, is a second
// opinion: the weights of 2011, to more digits.
func TestMolarMassesAgainstBodr(t *testing.T) {
	text, err := os.ReadFile("/usr/share/bodr/elements.xml")
	if err != nil {
		if os.Getenv("SALTBITE_SETUP") == "1" {
			t.Fatal("the package bodr is not installed: ", err)
		}
		t.Skip("the package bodr is not installed: ", err)
	}
	var doc struct {
		Atoms []struct {
			Scalars []struct {
				Ref   string `xml:"dictRef,attr"`
				Value string `xml:"value,attr"`
				Text  string `xml:",chardata"`
			} `xml:"scalar"`
			Labels []struct {
				Ref   string `xml:"dictRef,attr"`
				Value string `xml:"value,attr"`
			} `xml:"label"`
		} `xml:"atom"`
	}
	if err := xml.Unmarshal(text, &doc); err != nil {
		t.Fatal(err)
	}
	masses := map[string]float64{}
	for _, a := range doc.Atoms {
		var symbol string
		for _, l := range a.Labels {
			if l.Ref == "bo:symbol" {
				symbol = l.Value
			}
		}
		for _, s := range a.Scalars {
			if s.Ref == "bo:mass" {
				masses[symbol] = number64(t, s.Text)
			}
		}
	}
	for _, e := range metal.Elements {
		// Both are right to the digits of the abridged weights, five at most;
		// germanium's was 72.63 in 2011, as it is.
		if got := e.MolarMass * 1000; math.Abs(got-masses[e.Symbol]) > 3e-5*got {
			t.Errorf("%s: %g g/mol, bodr says %g", e.Symbol, got, masses[e.Symbol])
		}
	}
}

func TestDensitiesOfElements(t *testing.T) {
	printed := map[string][]float64{}
	for _, r := range testdata.Table(t, "densities.csv") {
		symbol, _, _ := strings.Cut(r["metal"], " ")
		if x, err := strconv.ParseFloat(r["density_g_cm3"], 64); err == nil {
			printed[symbol] = append(printed[symbol], 1000*x)
		}
	}
	for _, e := range metal.Elements {
		if len(printed[e.Symbol]) == 0 {
			continue // from memory
		}
		agrees := false
		for _, x := range printed[e.Symbol] {
			agrees = agrees || math.Abs(x-e.Density) < 1e-9*x
		}
		if !agrees {
			t.Errorf("%s: %g kg/m3 stands nowhere in %v", e.Symbol, e.Density, printed[e.Symbol])
		}
	}
}

func TestFaraday(t *testing.T) {
	if want := 96485.33212331001; metal.Faraday != want { // product of the exact N_A and e, as the nearest float64
		t.Errorf("%.17g C/mol, want %.17g", float64(metal.Faraday), want)
	}
}

func element(symbol string) *metal.Element {
	for i := range metal.Elements {
		if metal.Elements[i].Symbol == symbol {
			return &metal.Elements[i]
		}
	}
	return nil
}
