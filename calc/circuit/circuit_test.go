package circuit

import (
	"embed"
	"encoding/csv"
	"math"
	"math/rand/v2"
	"strconv"
	"testing"
)

// The tables as they were read, each row with its source and how sure it is:
// seen there, computed from what was seen, or from memory.
//
//go:embed testdata
var testdata embed.FS

const (
	mm, cm, cm2, hour = 1e-3, 1e-2, 1e-4, 3600.0
	inch, foot        = 0.0254, 0.3048 // m, exact: international yard and pound agreement of 1959
)

// near says whether got is want to a relative tolerance.
func near(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance*math.Abs(want)
}

// decades draws a number spread evenly over that many decades about a middle.
func decades(r *rand.Rand, middle, span float64) float64 {
	return middle * math.Pow(10, (r.Float64()-0.5)*span)
}

// record is a row by the names of its columns.
type record map[string]string

// number is what a column holds; 0 where it is blank.
func (r record) number(t *testing.T, column string) float64 {
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

// records reads a table. A row without a source or with another word for how
// sure it is fails the test.
func records(t *testing.T, name string) []record {
	t.Helper()
	f, err := testdata.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var list []record
	for _, row := range rows[1:] {
		r := record{}
		for i, column := range rows[0] {
			r[column] = row[i]
		}
		if c := r["confidence"]; r["source"] == "" || c != "seen" && c != "computed" && c != "memory" {
			t.Fatalf("%s: no source or confidence: %v", name, row)
		}
		list = append(list, r)
	}
	return list
}

// Whatever is put in, what comes out is a finite number that is not negative.
func TestWhereFloatsEnd(t *testing.T) {
	odd := []float64{0, -1, 1, 5e-324, 1e-300, 1e300, math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN()}
	r := rand.New(rand.NewPCG(1, 2))
	draw := func() float64 { return odd[r.IntN(len(odd))] }
	for range 50000 {
		b := Bath{draw(), draw(), Face{draw(), draw(), draw()}, draw(), draw(), draw()}
		w, s := Wire{draw(), draw(), draw()}, Supply{draw(), draw()}
		x, y, z := draw(), draw(), draw()
		for i, got := range []float64{
			b.Resistance(), b.HighResistance(), b.Face.Area(), SquareFace(x).Area(), CathodeDensity(x, y), Warming(x, y, z),
			w.Resistance(), w.Drop(x), w.Limit(), CellVolts(x, y, z), s.Current(x, y, z), s.Watts(x), s.Ballast(x, y, z), BallastWatts(x, y),
			PiecesThatFit(x, y, z),
		} {
			if !(got >= 0 && got <= math.MaxFloat64) {
				t.Fatalf("answer %d is %g: %+v %+v %+v %g %g %g", i, got, b, w, s, x, y, z)
			}
		}
	}
}
