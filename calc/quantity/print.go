package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Print writes a value in SI in a unit: three significant figures, a blank, the
// unit's sign ("12.5 cm²", "38.0 %"). It is off by at most half its last digit,
// and Read reads it back to what prints the same. Two things it says in the
// trade's way:
//   - a time, whatever its unit: whole minutes from 10 min on ("25 min", "4 h 45 min"), below that minutes
//     with three figures, below 1 min seconds;
//   - a volume in qt: from four quarts on in gal.
//
// Beyond 1e-300 and 1e300 of a unit it prints 0 and 1e300.
func Print(si float64, kind Kind, unit string) string {
	switch {
	case kind == Number:
		return PrintNumber(si)
	case kind == Time:
		return printTime(si)
	case unit == "qt":
		return printQuarts(si)
	}
	u := must(unit)
	return PrintNumber(steady(u.from(si), u)) + " " + u.sign
}

// steady drops what a change of a temperature's zero leaves of a nought.
func steady(x float64, u *unit) float64 {
	if u.zero != 0 && math.Abs(rounded(x)) < 1e-9 {
		return 0
	}
	return x
}

// PrintNumber writes three significant figures, without thousands marks, and as
// "1.23e9" outside 1e-6 to 1e7. What is not a number is a dash.
func PrintNumber(x float64) string {
	switch {
	case math.IsNaN(x):
		return "–"
	case math.Abs(x) < tiniest:
		return "0"
	}
	x = math.Max(-largest, math.Min(largest, x))
	scientific := strconv.FormatFloat(x, 'e', 2, 64)
	mantissa, exponent, _ := strings.Cut(scientific, "e")
	e, _ := strconv.Atoi(exponent)
	if e < -6 || e >= 7 {
		return mantissa + "e" + strconv.Itoa(e)
	}
	return strconv.FormatFloat(rounded(x), 'f', max(0, 2-e), 64)
}

// PrintCount writes a whole number with all its digits.
func PrintCount(x float64) string {
	if !(math.Abs(x) < 1e15) {
		return PrintNumber(x)
	}
	return strconv.FormatFloat(math.Round(x)+0, 'f', 0, 64)
}

// rounded is a number to three significant figures.
func rounded(x float64) float64 {
	r, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'e', 2, 64), 64)
	return r
}

// hoursOnly is the time from which hours alone are printed, in minutes.
const hoursOnly = 1e7

// printTime writes a time. Which unit it takes is decided after rounding, so
// that 9.996 min is 10 min and 59.96 s is 1.00 min.
func printTime(s float64) string {
	minutes := s / 60
	whole := math.Round(minutes)
	switch {
	case math.IsNaN(s):
		return PrintNumber(s)
	case math.Abs(s) < tiniest:
		return "0 min"
	case s < 0:
		return "-" + printTime(-s)
	case rounded(s) < 60:
		return PrintNumber(s) + " s"
	case rounded(minutes) < 10:
		return PrintNumber(max(minutes, 1)) + " min"
	case whole >= hoursOnly:
		return PrintNumber(s/3600) + " h"
	case whole < 60:
		return PrintCount(whole) + " min"
	}
	hours := math.Floor(whole / 60)
	if whole == 60*hours {
		return PrintCount(hours) + " h"
	}
	return PrintCount(hours) + " h " + PrintCount(whole-60*hours) + " min"
}

// printQuarts writes a US volume.
func printQuarts(si float64) string {
	if quarts := In(si, "qt"); math.Abs(rounded(quarts)) < 4 {
		return PrintNumber(quarts) + " qt"
	}
	gallons := In(si, "gal")
	return PrintNumber(math.Copysign(max(math.Abs(gallons), 1), gallons)) + " gal"
}
