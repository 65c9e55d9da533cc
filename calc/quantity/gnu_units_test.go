//go:build !js

package quantity

import (
	"fmt"
	"math"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// Every factor, every gauge and the temperature scales against GNU units, an
// independent library of units (its 2.22 was used to write this).
func TestAgainstGNUUnits(t *testing.T) {
	type question struct {
		from, to string
		ours     float64
		slack    float64
	}
	var questions []question
	for symbol, g := range gnu {
		questions = append(questions, question{g[0], g[1], Of(1, symbol) - Of(0, symbol), 1e-12})
	}
	for _, c := range []float64{-40, 0, 20, 36.6, 100} {
		questions = append(questions,
			question{fmt.Sprintf("tempC(%v)", c), "tempK", Of(c, "C"), 1e-12},
			question{fmt.Sprintf("tempF(%v)", c), "tempK", Of(c, "F"), 1e-12})
	}
	for n := brownSharpeFirst; n <= brownSharpeLast; n++ {
		questions = append(questions, question{fmt.Sprintf("wiregauge(%d)", n), "m", BrownSharpe(n), 1e-12})
	}
	for i := range standardWire {
		metres, err := gaugeOf(i+standardWireFirst, standard)
		if err != nil {
			t.Fatal(err)
		}
		questions = append(questions, question{fmt.Sprintf("brwiregauge(%d)", i+standardWireFirst), "m", metres, 1e-12})
	}

	var input strings.Builder
	for _, q := range questions {
		fmt.Fprintf(&input, "%s\n%s\n", q.from, q.to)
	}
	lines := askUnits(t, input.String())
	if len(lines) != len(questions) {
		t.Fatalf("%d questions, %d answers: %q", len(questions), len(lines), lines)
	}
	for i, q := range questions {
		theirs, err := strconv.ParseFloat(strings.TrimSpace(lines[i]), 64)
		if err != nil {
			t.Errorf("%s in %s: units says %q", q.from, q.to, lines[i])
			continue
		}
		if math.Abs(q.ours-theirs) > q.slack*math.Abs(theirs) && math.Abs(q.ours-theirs) > 1e-15 {
			t.Errorf("%s in %s: %v, units says %v", q.from, q.to, q.ours, theirs)
		}
	}
}

// askUnits puts questions to the program, two lines each, and returns its answers.
func askUnits(t *testing.T, input string) []string {
	t.Helper()
	program, err := exec.LookPath("units")
	if err != nil {
		if os.Getenv("SALTBITE_SETUP") == "1" {
			t.Fatal("the program units is missing: install the package units")
		}
		t.Skip("the program units is missing: install the package units to check the factors")
	}
	command := exec.Command(program, "-q", "-t", "-d", "16")
	command.Stdin = strings.NewReader(input)
	output, err := command.Output()
	if err != nil {
		t.Fatal(err)
	}
	return strings.Split(strings.TrimSpace(string(output)), "\n")
}
