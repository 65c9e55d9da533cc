package quantity

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
)

// Source of all: the rules of printing in the comment of Print.
var printed = []struct {
	si   float64
	kind Kind
	unit string
	want string
}{
	{0.0002, Length, "mm", "0.200 mm"},
	{0.06, Length, "mm", "60.0 mm"},
	{0.0000096, Length, "mm", "0.00960 mm"},
	{12.345, Mass, "g", "12300 g"},
	{1.2355, Mass, "g", "1240 g"},
	{0.0099964, Mass, "g", "10.0 g"},
	{0, Mass, "g", "0 g"},
	{math.Copysign(0, -1), Mass, "g", "0 g"},
	{-0.0031, Length, "mm", "-3.10 mm"},
	{1e-6, Mass, "kg", "0.00000100 kg"},
	{9.87e-7, Mass, "kg", "9.87e-7 kg"},
	{9994999, Mass, "kg", "9990000 kg"},
	{9996000, Mass, "kg", "1.00e7 kg"},
	{1.2345e9, Mass, "kg", "1.23e9 kg"},
	{1e300, Mass, "kg", "1.00e300 kg"},
	{1e300, Mass, "mg", "1.00e300 mg"},
	{math.Inf(1), Mass, "kg", "1.00e300 kg"},
	{math.Inf(-1), Mass, "kg", "-1.00e300 kg"},
	{1e-310, Mass, "kg", "0 kg"},
	{0.00125, Area, "cm2", "12.5 cm²"},
	{0.00125, Area, "in2", "1.94 in²"},
	{300, CurrentDensity, "mA/cm2", "30.0 mA/cm²"},
	{107.639104167097, CurrentDensity, "A/ft2", "10.0 A/ft²"},
	{0.38, Share, "%", "38.0 %"},
	{0.8, Saturation, "% sat", "80.0 % sat"},
	{250, PerWater, "g/L water", "250 g/L water"},
	{250, Density, "g/L", "250 g/L"},
	{1100, Density, "g/mL", "1.10 g/mL"},
	{1000, Molarity, "mol/L", "1.00 mol/L"},
	{4.23, Conductivity, "mS/cm", "42.3 mS/cm"},
	{1.1841e-3 / 3600, Equivalent, "g/(A.h)", "1.18 g/(A·h)"},
	{1.18554e-3 / 3600, Equivalent, "g/(A.h)", "1.19 g/(A·h)"},
	{5e-5 / 3600, Rate, "mm/h", "0.0500 mm/h"},
	{2.54e-5 / 3600, Rate, "in/h", "0.00100 in/h"},
	{3600, Charge, "A.h", "1.00 A·h"},
	{293.15, Temperature, "C", "20.0 °C"},
	{293.15, Temperature, "F", "68.0 °F"},
	{293.15, Temperature, "K", "293 K"},
	{273.15, Temperature, "C", "0 °C"},
	{459.67 * 5 / 9, Temperature, "F", "0 °F"},
	{268.15, Temperature, "C", "-5.00 °C"},
	{5, Resistance, "ohm", "5.00 Ω"},
	{3.0 / 3600, HeatingRate, "K/h", "3.00 K/h"},
	{0.5, Number, "", "0.500"},

	{17100, Time, "min", "4 h 45 min"},
	{1500, Time, "min", "25 min"},
	{10800, Time, "min", "3 h"},
	{3600, Time, "min", "1 h"},
	{3629, Time, "min", "1 h"},
	{3570, Time, "min", "1 h"}, // 59.5 min, rounded to 60
	{3569, Time, "min", "59 min"},
	{31.9, Time, "min", "31.9 s"},
	{59.94, Time, "min", "59.9 s"},
	{59.96, Time, "min", "1.00 min"},
	{60, Time, "min", "1.00 min"},
	{594, Time, "min", "9.90 min"},
	{599.6, Time, "min", "9.99 min"},
	{599.76, Time, "min", "10 min"}, // 9.996 min
	{600, Time, "min", "10 min"},
	{629, Time, "h", "10 min"},
	{0, Time, "min", "0 min"},
	{1e-9, Time, "min", "1.00e-9 s"},
	{86400, Time, "min", "24 h"},
	{60e6 - 60, Time, "min", "16666 h 39 min"},
	{60e7, Time, "min", "167000 h"},
	{3600e9, Time, "min", "1.00e9 h"},
	{-17100, Time, "min", "-4 h 45 min"},
	{-30, Time, "min", "-30.0 s"},

	{0.25, Current, "A", "0.250 A"},
	{0.1, Current, "A", "0.100 A"},
	{0.09996, Current, "A", "0.100 A"},
	{0.09994, Current, "A", "99.9 mA"},
	{0.054, Current, "A", "54.0 mA"},
	{-0.054, Current, "A", "-54.0 mA"},
	{0, Current, "A", "0 A"},
	{0.25, Current, "mA", "250 mA"},
	{math.NaN(), Current, "A", "– A"},

	{0.001892705892, Volume, "qt", "2.00 qt"},
	{0.000946352946, Volume, "qt", "1.00 qt"},
	{0.000946352946 * 0.9997, Volume, "qt", "1.00 qt"},    // 31.99 fl oz
	{0.000946352946 * 0.9982, Volume, "qt", "31.9 fl oz"}, // 31.94
	{0.0002365882365, Volume, "qt", "8.00 fl oz"},         // a cup
	{-0.0002365882365, Volume, "qt", "-8.00 fl oz"},
	{0, Volume, "qt", "0 fl oz"},
	{0.0037, Volume, "qt", "3.91 qt"},
	{0.003785411784, Volume, "qt", "1.00 gal"},
	{0.003785411784 * 0.9995, Volume, "qt", "1.00 gal"}, // 3.998 qt
	{0.02, Volume, "qt", "5.28 gal"},
	{0.02, Volume, "L", "20.0 L"},
}

func TestPrint(t *testing.T) {
	for _, c := range printed {
		if got := Print(c.si, c.kind, c.unit); got != c.want {
			t.Errorf("%v in %q: %q, want %q", c.si, c.unit, got, c.want)
		}
	}
}

// Source: two figures in place of three, by the same rules.
// Against strconv: rounded to the figures and printed without an exponent.
func TestPrintedWithoutExponent(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for range 20_000 {
		f := figures(1 + random.IntN(6))
		x := (random.Float64() - 0.5) * math.Pow(10, float64(random.IntN(14)-6))
		scientific := strconv.FormatFloat(x, 'e', int(f)-1, 64)
		rounded, err := strconv.ParseFloat(scientific, 64)
		if err != nil {
			t.Fatal(err)
		}
		exponent := int(math.Floor(math.Log10(math.Abs(rounded)) + 1e-12))
		if exponent < -6 || exponent >= 7 {
			continue
		}
		if got, want := f.number(x), strconv.FormatFloat(rounded, 'f', max(0, int(f)-1-exponent), 64); got != want {
			t.Errorf("%v to %d figures is %s, not %s", x, f, got, want)
		}
	}
}

func TestPrintEstimate(t *testing.T) {
	for _, c := range []struct {
		si   float64
		kind Kind
		unit string
		want string
	}{
		{2.345, Resistance, "ohm", "2.3 Ω"},
		{234.5, Resistance, "ohm", "230 Ω"},
		{0.02351, Resistance, "ohm", "0.024 Ω"},
		{9.96, Resistance, "ohm", "10 Ω"},
		{1.23e-7, Resistance, "ohm", "1.2e-7 Ω"},
		{1.25e7, Resistance, "ohm", "1.2e7 Ω"}, // half to even, as floats are rounded
		{0, Resistance, "ohm", "0 Ω"},
		{0.0503, Current, "A", "50 mA"},
		{0.0996, Current, "A", "0.10 A"},
		{0.0994, Current, "A", "99 mA"},
		{0.791, Current, "A", "0.79 A"},
		{487, CurrentDensity, "mA/cm2", "49 mA/cm²"},
		{273.15, Temperature, "C", "0 °C"},
		{0.00378, Volume, "qt", "1.0 gal"},
		{0.00093, Volume, "qt", "31 fl oz"},
		{0.000937, Volume, "qt", "1.0 qt"}, // 31.7 fl oz
		{17100, Time, "min", "4 h 45 min"},
		{92.4, Time, "min", "1.5 min"},
		{0.5, Number, "", "0.50"},
	} {
		if got := PrintEstimate(c.si, c.kind, c.unit); got != c.want {
			t.Errorf("%v in %q: %q, want %q", c.si, c.unit, got, c.want)
		}
	}
}

func TestPrintClock(t *testing.T) {
	const day = 24 * 3600
	for _, c := range []struct {
		seconds float64
		want    string
	}{
		{0, "0:00"}, {16*3600 + 5*60, "16:05"}, {16*3600 + 5*60 + 29, "16:05"}, {16*3600 + 5*60 + 31, "16:06"}, {day - 61, "23:59"},
		{day - 29, "0:00 next day"}, {day, "0:00 next day"}, {day + 1800, "0:30 next day"}, {2*day - 31, "23:59 next day"},
		{2 * day, "0:00, 2 days on"}, {2*day + 1800, "0:30, 2 days on"}, {1000*day - 60, "23:59, 999 days on"},
		{1000 * day, "about 1000 days on"}, {1e30, "about 1.16e25 days on"}, {math.MaxFloat64, "about 1.00e300 days on"},
		{-3600, "–"}, {math.NaN(), "–"}, {math.Inf(1), "about 1.00e300 days on"},
	} {
		if got := PrintClock(c.seconds); got != c.want {
			t.Errorf("%v s: %q, want %q", c.seconds, got, c.want)
		}
	}
}

func TestPrintCount(t *testing.T) {
	for _, c := range []struct {
		x    float64
		want string
	}{{4, "4"}, {12345, "12345"}, {-1, "-1"}, {2.6, "3"}, {-0.2, "0"}, {1e15, "1.00e15"}, {math.NaN(), "–"}, {math.Inf(1), "1.00e300"}} {
		if got := PrintCount(c.x); got != c.want {
			t.Errorf("%v: %q, want %q", c.x, got, c.want)
		}
	}
}

// again reads a printed quantity, prints it, and compares, in three figures and
// in two.
func again(t *testing.T, si float64, kind Kind, unit string) {
	t.Helper()
	for _, f := range []figures{three, two} {
		f.again(t, si, kind, unit)
	}
}

func (f figures) again(t *testing.T, si float64, kind Kind, unit string) {
	t.Helper()
	first := f.print(si, kind, unit)
	q, err := Read(first, "", kind)
	if err != nil {
		if e := err.(*Error); e.Code == OutOfSize { // only at the ends of floats
			return
		}
		t.Fatalf("%v in %q prints %q: %v", si, unit, first, err)
	}
	zero := 0.0
	if kind == Temperature {
		zero = 1e-9 // K; less is 0 degrees
	}
	if second := f.print(q.Value, kind, unit); second != first {
		t.Fatalf("%v in %q prints %q, then %q", si, unit, first, second)
	}
	if off, half := math.Abs(q.Value-si), f.halfDigit(first, kind, unit); off > half*(1+1e-9)+1e-13*math.Abs(si) && off > zero {
		t.Fatalf("%v in %q prints %q: off by %v, half its last digit is %v", si, unit, first, off, half)
	}
}

// halfDigit is half the last digit of a printed text, in SI.
func (f figures) halfDigit(text string, kind Kind, unit string) float64 {
	number, sign, _ := strings.Cut(text, " ")
	x, _ := strconv.ParseFloat(number, 64)
	switch {
	case kind == Time && (strings.Contains(sign, "h ") || !strings.ContainsAny(number, ".e") && sign != "s" && math.Abs(x) < hoursOnly/60):
		return 30 // whole minutes
	case kind == Time, unit == "qt", unit == "A":
		unit = sign
	}
	last := math.Pow(10, math.Floor(math.Log10(math.Abs(x)*(1+1e-12)))-float64(f-1))
	return last / 2 * (Of(1, unit) - Of(0, unit))
}

// Every unit of the table and of the vocabulary, over the sizes that are read.
func TestPrintedReadsBack(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for _, symbol := range everySymbol() {
		kind, ok := KindOf(symbol)
		if !ok {
			t.Errorf("no unit %q", symbol)
			continue
		}
		if kind >= amount { // only parts of units
			continue
		}
		for e := -20; e <= 20; e++ {
			for range 4 {
				x := math.Pow(10, float64(e)) * (1 + 9*random.Float64())
				again(t, Of(x, symbol), kind, symbol)
				again(t, Of(-x, symbol), kind, symbol)
			}
			for _, x := range []float64{0, 1, 4, 9.995, 9.9949, 9.996, 9.95, 9.949, 9.951, 31.95, 31.96, 31.5, 31.49, 59.5, 59.95, 59.96, 599.5, 3599, 1e7, 9.995e6} {
				again(t, Of(x*math.Pow(10, float64(e)), symbol), kind, symbol)
			}
		}
		for _, e := range []float64{-290, -200, -100, 100, 200, 290} {
			again(t, Of(1.234*math.Pow(10, e), symbol), kind, symbol)
		}
	}
}

// Times lie close to where the notation changes.
func TestTimesReadBack(t *testing.T) {
	for _, middle := range []float64{60, 600, 3600, 7200, 86400, 60 * hoursOnly} {
		for i := -400; i <= 400; i++ {
			again(t, middle*(1+float64(i)*1e-5), Time, "min")
			again(t, middle+float64(i)/7, Time, "min")
		}
	}
}

func ExamplePrint() {
	fmt.Println(Print(0.0002, Length, "mm"))
	fmt.Println(Print(0.00125, Area, "cm2"))
	fmt.Println(Print(17100, Time, "min"))
	fmt.Println(Print(293.15, Temperature, "F"))
	// Output:
	// 0.200 mm
	// 12.5 cm²
	// 4 h 45 min
	// 68.0 °F
}

func ExampleRead() {
	q, _ := Read("1 1/2 in", "mm", Length)
	fmt.Println(q.Value, q.Unit)
	q, _ = Read("2 h 30", "min", Time)
	fmt.Println(q.Value, q.Unit)
	_, err := Read("1,234", "mm", Length)
	fmt.Println(err)
	_, err = Read("12 g", "mm", Length)
	fmt.Println(err)
	// Output:
	// 0.0381 in
	// 9000 h
	// it may be 1234 or 1.234
	// g measures mass
}

func BenchmarkRead(b *testing.B) {
	for b.Loop() {
		Read("30 mA/cm2", "mA/cm2", CurrentDensity)
	}
}

func BenchmarkPrint(b *testing.B) {
	for b.Loop() {
		Print(300, CurrentDensity, "mA/cm2")
	}
}
