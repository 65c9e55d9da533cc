package quantity

import (
	"bytes"
	"math"
	"slices"
	"strconv"
)

// Print writes a value in SI in a unit: three significant figures, a blank, the
// unit's sign ("12.5 cm²", "38.0 %"). It is off by at most half its last digit,
// and Read reads it back to what prints the same. Three things it says in the
// trade's way:
//   - a time, whatever its unit: whole minutes from 10 min on ("25 min", "4 h 45 min"), below that minutes
//     with three figures, below 1 min seconds;
//   - a current in A: under 0.1 A in mA;
//   - a volume in qt: from four quarts on in gal, under one in fl oz.
//
// Beyond 1e-300 and 1e300 of a unit it prints 0 and 1e300.
func Print(si float64, kind Kind, unit string) string { return three.print(si, kind, unit) }

// PrintEstimate is Print with two significant figures, for what is known roughly.
// Whole minutes stay whole.
func PrintEstimate(si float64, kind Kind, unit string) string { return two.print(si, kind, unit) }

// PrintNumber writes three significant figures, without thousands marks, and as
// "1.23e9" outside 1e-6 to 1e7. What is not a number is a dash.
func PrintNumber(x float64) string { return three.number(x) }

// figures is how many significant figures are printed.
type figures int

const (
	two   figures = 2
	three figures = 3
)

func (f figures) print(si float64, kind Kind, unit string) string {
	switch {
	case kind == Number:
		return f.number(si)
	case kind == Time:
		return f.time(si)
	case unit == "qt":
		return f.quarts(si)
	case unit == "A":
		return f.amperes(si)
	}
	u := must(unit)
	return f.number(f.steady(u.from(si), u)) + " " + u.sign
}

// steady drops what a change of a temperature's zero leaves of a 0.
func (f figures) steady(x float64, u *unit) float64 {
	if u.zero != 0 && math.Abs(f.rounded(x)) < 1e-9 {
		return 0
	}
	return x
}

func (f figures) number(x float64) string {
	switch {
	case math.IsNaN(x):
		return "–"
	case math.Abs(x) < tiniest:
		return "0"
	}
	x = math.Max(-largest, math.Min(largest, x))
	var room [24]byte
	scientific := strconv.AppendFloat(room[:0], x, 'e', int(f)-1, 64)
	cut := bytes.LastIndexByte(scientific, 'e')
	e, _ := strconv.Atoi(string(scientific[cut+1:]))
	var text [32]byte
	if e < -6 || e >= 7 {
		return string(strconv.AppendInt(append(text[:0], scientific[:cut+1]...), int64(e), 10))
	}
	return string(appendPlain(text[:0], scientific[:cut], e))
}

// appendPlain appends mantissa times 10^e without an exponent: the same figures, their
// point moved. The mantissa has one figure before its point.
func appendPlain(to, mantissa []byte, e int) []byte {
	if mantissa[0] == '-' {
		to, mantissa = append(to, '-'), mantissa[1:]
	}
	figures := mantissa[:1]
	if len(mantissa) > 2 {
		figures = slices.Delete(mantissa, 1, 2)
	}
	switch {
	case e < 0:
		return append(append(append(to, "0."...), zeros[:-e-1]...), figures...)
	case e+1 < len(figures):
		return append(append(append(to, figures[:e+1]...), '.'), figures[e+1:]...)
	}
	return append(append(to, figures...), zeros[:e+1-len(figures)]...)
}

const zeros = "00000000"

// rounded is a number to so many significant figures.
func (f figures) rounded(x float64) float64 {
	r, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'e', int(f)-1, 64), 64)
	return r
}

// amperes writes a current. Which unit it takes is decided after rounding, so that
// 0.09996 A is 0.100 A.
func (f figures) amperes(si float64) string {
	milli := In(si, "mA")
	switch size := math.Abs(f.rounded(milli)); {
	case size < tiniest:
		return "0 A"
	case size < 100:
		return f.number(milli) + " mA"
	}
	return f.number(math.Copysign(max(math.Abs(si), 0.1), si)) + " A"
}

// PrintCount writes a whole number with all its digits.
func PrintCount(x float64) string {
	if !(math.Abs(x) < 1e15) {
		return PrintNumber(x)
	}
	return strconv.FormatFloat(math.Round(x)+0, 'f', 0, 64)
}

// hoursOnly is the time from which hours alone are printed, in minutes.
const hoursOnly = 1e7

// time writes a time. Which unit it takes is decided after rounding, so
// that 9.996 min is 10 min and 59.96 s is 1.00 min.
func (f figures) time(s float64) string {
	minutes := s / 60
	whole := math.Round(minutes)
	switch {
	case math.IsNaN(s):
		return f.number(s)
	case math.Abs(s) < tiniest:
		return "0 min"
	case s < 0:
		return "-" + f.time(-s)
	case f.rounded(s) < 60:
		return f.number(s) + " s"
	case f.rounded(minutes) < 10:
		return f.number(max(minutes, 1)) + " min"
	case whole >= hoursOnly:
		return f.number(s/3600) + " h"
	case whole < 60:
		return PrintCount(whole) + " min"
	}
	hours := math.Floor(whole / 60)
	if whole == 60*hours {
		return PrintCount(hours) + " h"
	}
	return PrintCount(hours) + " h " + PrintCount(whole-60*hours) + " min"
}

// quarts writes a US volume. Which unit it takes is decided after rounding, from
// the smallest up, so that 31.98 fl oz is 1.00 qt.
func (f figures) quarts(si float64) string {
	in := func(unit string, least float64) (x float64, text string) {
		x = In(si, unit)
		return math.Abs(f.rounded(x)), f.number(math.Copysign(max(math.Abs(x), least), x)) + " " + unit
	}
	ounces, text := in("fl oz", 0)
	if !(ounces < 32) {
		quarts, inQuarts := in("qt", 1)
		text = inQuarts
		if !(quarts < 4) {
			_, text = in("gal", 1)
		}
	}
	return text
}

// PrintClock writes a time of day, in seconds after a midnight, as on a clock:
// "16:05", "0:30 next day", "0:30, 2 days on". From a thousand days on it is the
// days alone ("about 1200 days on"), and for what is no time after that midnight a dash.
func PrintClock(seconds float64) string {
	const day = 24 * 60
	minutes := math.Round(seconds / 60)
	switch {
	case !(minutes >= 0):
		return "–"
	case minutes >= 1000*day:
		return "about " + PrintNumber(minutes/day) + " days on"
	}
	days, left := int(minutes)/day, int(minutes)%day
	text := strconv.Itoa(left/60) + ":" + strconv.Itoa(100 + left%60)[1:]
	switch days {
	case 0:
		return text
	case 1:
		return text + " next day"
	}
	return text + ", " + strconv.Itoa(days) + " days on"
}
