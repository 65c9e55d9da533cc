//go:build !js

package quantity

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// Every gauge of the tables in testdata/gauges.csv, whose rows carry their source.
func TestGauges(t *testing.T) {
	file, err := os.Open("../../testdata/gauges.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	checked := 0
	for _, row := range rows[1:] {
		system, number, inches, mm, kind, source := row[0], row[1], row[2], row[3], row[6], row[7]
		unit := map[bool]string{true: " swg", false: " awg"}[strings.HasPrefix(system, "SWG")]
		if number == "" || strings.Contains(number, "table") || strings.HasPrefix(kind, "misprint") {
			continue // remarks, and a row kept as an example of a misprint
		}
		q, err := Read(number+unit, "mm", Length)
		if err != nil {
			t.Errorf("%s%s: %v", number, unit, err)
			continue
		}
		if inches != "" {
			agrees(t, number+unit, In(q.Value, "in"), inches, source)
			checked++
		}
		if mm != "" && inches == "" {
			agrees(t, number+unit, In(q.Value, "mm"), mm, source)
			checked++
		}
	}
	if checked < 170 {
		t.Errorf("only %d rows were checked", checked)
	}
}

// agrees holds a size against a printed one, to two of its last digit: the tables
// round in different ways (one has 0.32485 in for the formula's 0.324861).
func agrees(t *testing.T, gauge string, ours float64, printed, source string) {
	t.Helper()
	theirs, err := strconv.ParseFloat(printed, 64)
	if err != nil {
		t.Errorf("%s: %q is no number", gauge, printed)
		return
	}
	_, decimals, _ := strings.Cut(printed, ".")
	digit := math.Pow(10, -float64(len(decimals)))
	if math.Abs(ours-theirs) > 2*digit {
		t.Errorf("%s: %.6f, %s in %s", gauge, ours, printed, source)
	}
}
