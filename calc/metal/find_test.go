package metal_test

import (
	"encoding/csv"
	"os"
	"slices"
	"strings"
	"testing"

	"saltbite/calc/metal"
)

// table reads a file of the project's test data as rows by column.
func table(t testing.TB, name string) []map[string]string {
	t.Helper()
	f, err := os.Open("../../testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]string
	for _, line := range lines[1:] {
		row := map[string]string{}
		for i, cell := range line {
			row[lines[0][i]] = cell
		}
		rows = append(rows, row)
	}
	return rows
}

// first is the id that a query finds first, "" if it finds nothing.
func first(query string) string {
	if hits := metal.Find(query); len(hits) > 0 {
		return hits[0].Metal.ID
	}
	return ""
}

func TestNames(t *testing.T) {
	for _, file := range []string{"names.csv"} {
		var asked, right int
		for _, r := range table(t, file) {
			got := first(r["query"])
			wanted := append(strings.Split(r["acceptable_ids"], ";"), r["expected_id"])
			if r["expected_id"] == "" {
				if got != "" {
					t.Errorf("%q finds %s", r["query"], got)
				}
				continue
			}
			asked++
			if got != "" && slices.Contains(wanted, got) {
				right++
				if got != r["expected_id"] {
					t.Logf("%q finds %s, not %s", r["query"], got, r["expected_id"])
				}
			} else {
				t.Logf("%q finds %q, not %s", r["query"], got, r["expected_id"])
			}
		}
		t.Logf("%s: %d of %d", file, right, asked)
	}
}
