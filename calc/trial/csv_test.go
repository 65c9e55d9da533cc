package trial

import (
	"encoding/csv"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"
)

func TestReadCSV(t *testing.T) {
	want := Table{[]string{"metal", "before", "note"}, [][]string{{"copper", "24.5 g", "first, on scrap"}, {"brass", "0.25", `said "fine"`}}}
	for name, text := range map[string]string{
		"RFC 4180":             "metal,before,note\r\ncopper,24.5 g,\"first, on scrap\"\r\nbrass,0.25,\"said \"\"fine\"\"\"\r\n",
		"no end of line":       "metal,before,note\ncopper,24.5 g,\"first, on scrap\"\nbrass,0.25,\"said \"\"fine\"\"\"",
		"CR alone":             "metal,before,note\rcopper,24.5 g,\"first, on scrap\"\rbrass,0.25,\"said \"\"fine\"\"\"\r",
		"semicolons":           "\ufeffmetal;before;note\r\ncopper;24,5 g;first, on scrap\r\nbrass;0,25;\"said \"\"fine\"\"\"\r\n",
		"sep":                  "sep=;\r\nmetal;before;note\r\ncopper;24,5 g;first, on scrap\r\nbrass;0,25;\"said \"\"fine\"\"\"\r\n",
		"tabs":                 "metal\tbefore\tnote\ncopper\t24.5 g\tfirst, on scrap\nbrass\t0.25\t\"said \"\"fine\"\"\"\n",
		"blank lines and rows": "\n metal ,before,note\n\ncopper,24.5 g,\"first, on scrap\"\n,,\nbrass,0.25,\"said \"\"fine\"\"\"\n\n",
	} {
		got, damage := ReadCSV(text)
		if !reflect.DeepEqual(got, want) || damage != nil {
			t.Errorf("%s: %q %v", name, got, damage)
		}
	}
}

// A comma is a decimal mark only where it is in a number, and only between semicolons.
func TestDecimalComma(t *testing.T) {
	for cell, want := range map[string]string{
		"0,25": "0.25", "-0,25": "-0.25", "1,234 g": "1.234 g", "0,25mm": "0.25mm", "1,5e-3": "1.5e-3",
		"0:00 0,30; 0:30 0,28": "0:00 0.30; 0:30 0.28",
		"a, b":                 "a, b", "Cu 85,5": "Cu 85,5", "3 pieces, nice": "3 pieces, nice", "1,2,3": "1,2,3", "1,": "1,", "": "",
	} {
		got, _ := ReadCSV("a;b;c\nx;\"" + cell + "\";y\n")
		if len(got.Rows) != 1 || got.Rows[0][1] != want {
			t.Errorf("%q is read as %q, want %q", cell, got.Rows, want)
		}
	}
	if got, _ := ReadCSV("a,b\nx,\"1,234\"\n"); got.Rows[0][1] != "1,234" {
		t.Errorf("between commas: %q", got.Rows)
	}
}

func TestDamagedLines(t *testing.T) {
	good := [][]string{{"1", "2"}, {"3", "4"}}
	for name, x := range map[string]struct {
		text string
		want []Damage
	}{
		"cut off":            {"a,b\n1,2\n3,4\n5", []Damage{{4, "5", Cells}}},
		"too long":           {"a,b\n1,2\n9,9,9\n3,4\n", []Damage{{3, "9,9,9", Cells}}},
		"quote never closed": {"a,b\n1,2\n\"9,9\n3,4\n", []Damage{{3, "\"9,9", Quote}}},
		"quote closed later": {"a,b\n1,2\n\"9,9\n3,4\n\"8\",8,8\n", []Damage{{3, "\"9,9", Quote}, {5, "\"8\",8,8", Cells}}},
		"text after a quote": {"a,b\n1,2\n\"9\"9,9\n3,4\n", []Damage{{3, "\"9\"9,9", Quote}}},
		"another encoding":   {"a,b\n1,2\nM\xfcnze,9\n3,4\n", []Damage{{3, "M\ufffdnze,9", Encoding}}},
		"a long line":        {"a,b\n1,2\n3,4\n" + strings.Repeat("é", 50), []Damage{{4, strings.Repeat("é", 40), Cells}}},
		"two of one name":    {"a,b,a\n1,2,9\n3,4,9\n", []Damage{{1, "a", Twice}}},
	} {
		got, damage := ReadCSV(x.text)
		if !reflect.DeepEqual(got.Rows, good) || !reflect.DeepEqual(got.Columns, []string{"a", "b"}) || !reflect.DeepEqual(damage, x.want) {
			t.Errorf("%s: %q, %+v, want %+v", name, got, damage, x.want)
		}
	}
	// A line after cells of several lines is counted from the top of the file.
	if _, damage := ReadCSV("a,b\n\"1\r\n1\n1\",2\n\n9\n"); len(damage) != 1 || damage[0].Line != 6 {
		t.Errorf("%+v, want line 6", damage)
	}
}

// Formulas as OWASP lists them (CSV Injection, from memory), and what only looks like one.
func TestFormulas(t *testing.T) {
	for cell, want := range map[string]string{
		"=1+1": "'=1+1", "+1+1": "'+1+1", "-1+1": "'-1+1", "@SUM(A1)": "'@SUM(A1)", "\t=1": "\"'\t=1\"", "＝1+1": "'＝1+1",
		`=HYPERLINK("x")`: `"'=HYPERLINK(""x"")"`, " =1": "' =1", "'=1": "''=1",
		"-0.25": "-0.25", "+3": "+3", "0.25": "0.25", "a=b": "a=b", "'tis": "'tis", "-": "'-",
	} {
		got := Table{[]string{"a"}, [][]string{{cell}}}.CSV()
		if got != "a\r\n"+want+"\r\n" {
			t.Errorf("%q is written as %q, want %q", cell, got, want)
		}
	}
}

// What is written is read back as it was, by ReadCSV, and by another reader as
// it was written.
func TestCSVRoundTrip(t *testing.T) {
	parts := []string{"a", "é", "1", "-", "=", "+", "@", "'", `"`, ",", ";", "\n", "\r", "\t", " ", ".", "0,5", "＝"}
	r := rand.New(rand.NewPCG(91, 92))
	for range 20000 {
		table := Table{}
		for i := range 2 + r.IntN(4) {
			table.Columns = append(table.Columns, string(rune('a'+i)))
		}
		for range r.IntN(5) {
			row := make([]string, len(table.Columns))
			for i := range row {
				for range r.IntN(5) {
					row[i] += parts[r.IntN(len(parts))]
				}
			}
			row[0] += "x" // rows that are all blank are not kept
			table.Rows = append(table.Rows, row)
		}
		text := table.CSV()
		got, damage := ReadCSV(text)
		if !reflect.DeepEqual(got, table) || damage != nil {
			t.Fatalf("%q is read back as %q, %v", table, got, damage)
		}
		lines, err := csv.NewReader(strings.NewReader(text)).ReadAll()
		if err != nil || len(lines) != len(table.Rows)+1 {
			t.Fatalf("another reader: %v: %q", err, text)
		}
	}
}

func TestMerge(t *testing.T) {
	log := Table{[]string{"id", "metal", "after"}, [][]string{{"1", "copper", "20"}, {"2", "brass", "30"}, {"", "silver", "40"}}}
	other := Table{[]string{"metal", "id", "after", "note"}, [][]string{{"copper", "1", "20", ""}, {"brass", "2", "31", "typed wrong"}, {"bronze", "3", "50", ""}, {"silver", "", "40", ""}, {"bronze", "3", "50", ""}}}
	got := log.Merge(other, "id")
	want := Merged{Table{[]string{"id", "metal", "after", "note"}, [][]string{{"1", "copper", "20", ""}, {"2", "brass", "31", "typed wrong"}, {"", "silver", "40", ""}, {"3", "bronze", "50", ""}}}, 1, 1}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("%+v", got)
	}
	if log.Rows[1][2] != "30" {
		t.Error("the log itself was changed")
	}
	again := got.Merge(other, "id")
	if again.Added != 0 || again.Changed != 0 || !slices.EqualFunc(again.Rows, got.Rows, slices.Equal) {
		t.Errorf("merged twice: %+v", again)
	}
}

func FuzzReadCSV(f *testing.F) {
	f.Add("a,b\r\n1,2\r\n")
	f.Add("sep=;\na;b\n1,5;\"x\n")
	f.Add("\"a\"b\n\n,\r\"")
	f.Add("QQQQQQQ1\xf2\n;,V;<=\n") // names of columns that hold another separator
	f.Fuzz(func(t *testing.T, text string) {
		table, _ := ReadCSV(text)
		for _, row := range table.Rows {
			if len(row) != len(table.Columns) {
				t.Fatalf("%d cells, %d columns", len(row), len(table.Columns))
			}
		}
		again, damage := ReadCSV(table.CSV())
		if len(table.Columns) > 0 && (len(again.Rows) != len(table.Rows) || damage != nil) {
			t.Fatalf("written and read again: %q, %v", again, damage)
		}
	})
}
