package testdata

import (
	"encoding/csv"
	"fmt"
	"strconv"
	"testing"
)

// Row is a row of a table by the names of its columns.
type Row map[string]string

// Number is what a column holds; 0 where it is blank. Anything else that is no
// number fails the test.
func (r Row) Number(t testing.TB, column string) float64 {
	t.Helper()
	text, ok := r[column]
	if text == "" && ok {
		return 0
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatalf("%s in %v: %v", column, r, err)
	}
	return x
}

// Table reads a table of comma separated values.
func Table(t testing.TB, name string) []Row {
	t.Helper()
	rows, err := ReadTable(name)
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// ReadTable is Table without a test.
func ReadTable(name string) ([]Row, error) {
	f, err := Files.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	var rows []Row
	for _, line := range lines[1:] {
		row := Row{}
		for i, cell := range line {
			row[lines[0][i]] = cell
		}
		rows = append(rows, row)
	}
	return rows, nil
}

// Sourced reads a table whose every row says where it was read and how sure
// that is: seen there, computed from what was seen, or from memory. A row that
// does not fails the test.
func Sourced(t testing.TB, name string) []Row {
	t.Helper()
	rows := Table(t, name)
	for _, r := range rows {
		if r["source"] == "" || !Sure(r["confidence"]) {
			t.Fatalf("%s: no source or confidence: %v", name, r)
		}
	}
	return rows
}

// Sure says whether a word is one of those for how sure a figure is.
func Sure(word string) bool { return word == "seen" || word == "computed" || word == "memory" }
