package quantity

import (
	"math"
	"strconv"
	"strings"
)

// BrownSharpe is the thickness in metres of a Brown & Sharpe (American) gauge:
//
//	d = 0.005 in x 92^((36 - n) / 39)
//
// with 0 for 0, -1 for 00, -2 for 000, -3 for 0000 (ASTM B258). It serves for wire
// of all non-ferrous metals and for their sheet; steel and zinc sheet have other
// gauges. The standard's table goes from 0000 to 56 (from memory); the formula
// itself has no end. Sheet as sold follows the table's rounding, within 0.0005 in
// of it, and the mill's tolerance, which is wider.
func BrownSharpe(n int) float64 {
	return 0.005 * 0.0254 * math.Pow(92, float64(36-n)/39)
}

const (
	brownSharpeFirst, brownSharpeLast = -3, 56
	standardWireFirst                 = -6 // 7/0
)

// standardWire is the British standard wire gauge in ten-thousandths of an inch,
// from 7/0 to 50 (BS 3737:1964, withdrawn; to 36 as published tables have it, on
// to 50 by the straight lines of the table in Debian's units 2.22).
var standardWire = [...]float64{
	5000, 4640, 4320, 4000, 3720, 3480, 3240, // 7/0 to 0
	3000, 2760, 2520, 2320, 2120, 1920, 1760, 1600, 1440, 1280, // 1 to 10
	1160, 1040, 920, 800, 720, 640, 560, 480, 400, 360, // 11 to 20
	320, 280, 240, 220, 200, 180, 164, 148, 136, 124, // 21 to 30
	116, 108, 100, 92, 84, 76, 68, 60, 52, 48, // 31 to 40
	44, 40, 36, 32, 28, 24, 20, 16, 12, 10, // 41 to 50
}

// system is a way of numbering thicknesses.
type system uint8

const (
	noGauge system = iota
	anyGauge
	brownSharpe
	standard
)

// gaugeBefore are the words in front of a number that name its gauge.
var gaugeBefore = [...]struct {
	word string
	is   system
}{
	{"#", anyGauge}, {"no", anyGauge}, {"nr", anyGauge}, {"number", anyGauge}, {"gauge", anyGauge}, {"gage", anyGauge},
	{"ga", anyGauge}, {"awg", brownSharpe}, {"b&s", brownSharpe}, {"swg", standard},
}

// gaugeAfter is the gauge that a folded word behind a number names.
func gaugeAfter(word string) system {
	switch word {
	case "ga", "gauge", "gage", "gauges":
		return anyGauge
	case "awg", "awggauge", "gaugeawg", "gaawg", "b&s", "bands", "b&sga", "b&sgauge", "gab&s", "gaugeb&s",
		"brown&sharpe", "brownandsharpe", "brown&sharpegauge", "americanwiregauge":
		return brownSharpe
	case "swg", "swggauge", "gaugeswg", "gaswg", "iswg", "britishgauge", "imperialgauge", "britishstandardwiregauge",
		"imperialstandardwiregauge", "imperialwiregauge":
		return standard
	}
	return noGauge
}

// takeGauge reads a tidied text as a gauge, in metres; found is false if it
// is no gauge.
//
//	gauge = ( "#" | "no" | "awg" | "swg" ... ) count | [ prefix ] count ( "ga" | "awg" | "swg" ... )
//	count = digits | digits "/0"
func takeGauge(s string) (metres float64, found bool, err *Error) {
	// Consume the word in front.
	lower := strings.ToLower(s)
	is := noGauge
	for _, w := range gaugeBefore {
		if after, ok := strings.CutPrefix(lower, w.word); ok && begins(strings.TrimLeft(after, ". "), digits) {
			is, lower = w.is, strings.TrimLeft(after, ". ")
			break
		}
	}

	// Consume the number.
	end := strings.IndexFunc(lower, func(r rune) bool { return !strings.ContainsRune(digits+".,/", r) })
	if end < 0 {
		end = len(lower)
	}
	count := strings.TrimRight(lower[:end], ".,/")

	// Consume the word behind.
	if word := fold(lower[end:]); word != "" {
		last := gaugeAfter(word)
		if last == noGauge {
			return 0, false, nil
		}
		if last != anyGauge || is == noGauge {
			is = last
		}
	}
	if is == noGauge || count == "" {
		return 0, false, nil
	}
	n, ok := gaugeNumber(count)
	if !ok {
		return 0, true, mistake(BadNumber, "a gauge is a whole number, or 00, 000, 2/0 and the like")
	}
	metres, err = gaugeOf(n, is)
	return metres, true, err
}

// gaugeNumber reads "18", "00" or "2/0"; 0 is 0, 00 is -1.
func gaugeNumber(count string) (int, bool) {
	if zeros, ok := strings.CutSuffix(count, "/0"); ok {
		n, err := strconv.Atoi(zeros)
		return 1 - n, err == nil && n >= 1 && n <= 7
	}
	if strings.Trim(count, "0") == "" {
		return 1 - len(count), true
	}
	if len(count) > 3 {
		return len(count) * 100, allDigits(count) // beyond every table
	}
	n, err := strconv.Atoi(count)
	return n, err == nil
}

func allDigits(s string) bool {
	_, rest := takeDigits(s)
	return rest == ""
}

// gaugeOf looks a gauge up, within its table.
func gaugeOf(n int, is system) (float64, *Error) {
	if is == standard {
		if i := n - standardWireFirst; i >= 0 && i < len(standardWire) {
			return standardWire[i] * 254 / 1e8, nil
		}
		return 0, mistake(OutOfSize, "British gauges go from 7/0 to 50")
	}
	if n < brownSharpeFirst || n > brownSharpeLast {
		return 0, mistake(OutOfSize, "gauges go from 0000 to "+strconv.Itoa(brownSharpeLast))
	}
	return BrownSharpe(n), nil
}
