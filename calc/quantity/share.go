package quantity

import (
	"math"
	"strconv"
	"strings"
)

// bare gives a number without a unit, typed as it was, the bare one. A part of a
// whole is a share, and a number that may be a part of a whole or so many per
// cent is asked about.
func (n number) bare(typed, bare string, kinds []Kind) (Quantity, *Error) {
	switch {
	case bare == "" && among(Number, kinds):
		return pure.quantity(n.value)
	case bare == "" && among(Share, kinds):
		return Quantity{}, asked("a unit or a % sign is needed", n.shareOrLength(typed)...)
	case bare == "":
		return Quantity{}, mistake(Ambiguous, "a unit is needed")
	}
	u := must(bare)
	switch size := math.Abs(n.value); {
	case u.kind != Share || size == 0 || n.mixed || !n.fraction && size >= 1:
		return u.quantity(n.value)
	case !n.fraction, size > 1:
		return Quantity{}, n.shareOrPercent()
	}
	return Quantity{n.value, Share, u.symbol}, nil
}

// of is a number in the unit that was typed. A fraction of one per cent is more
// likely a fraction of the whole, so it is asked about.
func (n number) of(u unit) (Quantity, *Error) {
	if u.kind == Share && n.fraction && !n.mixed {
		return Quantity{}, n.shareOrPercent()
	}
	return u.quantity(n.value)
}

// shareOrPercent asks whether 0.4 is 40 % or 0.4 %.
func (n number) shareOrPercent() *Error {
	whole, hundredth := percent(100*n.value), percent(n.value)
	return asked("it may be "+whole+" or "+hundredth, whole, hundredth)
}

// shareOrLength are the two that a least to leave may be.
func (n number) shareOrLength(typed string) []string {
	share, unit := n.value, " mm"
	if !n.fraction && math.Abs(n.value) < 1 || n.fraction && !n.mixed {
		share *= 100
	}
	if n.fraction {
		unit = " in"
	}
	return []string{percent(share), typed + unit}
}

// percent writes so many per cent, four figures at most.
func percent(x float64) string { return strconv.FormatFloat(x, 'g', 4, 64) + " %" }

// sharesAsTyped says whether a share in words is wanted: where shares are typed
// in per cent, and where a unit must be typed and a share has none.
func sharesAsTyped(bare string, kinds []Kind) bool {
	return among(Share, kinds) && (bare == "" || must(bare).kind == Share)
}

// numerals are the small numbers in words, from one on.
var numerals = [...]string{"one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"}

// inFigures is a small number in words, as it stands before a unit, in figures; ""
// for other words. "a" is 1.
func inFigures(words string) string {
	switch words {
	case "a", "an":
		return "1"
	case "half", "half a", "half an", "a half", "one half":
		return "1/2"
	}
	for i, numeral := range numerals {
		if numeral == words {
			return strconv.Itoa(i + 1)
		}
	}
	return ""
}

// ordinals are the parts of a whole in words, from a third on.
var ordinals = [...]string{"third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"}

// partsOf is how many parts of that name, folded, make a whole; 0 for other words.
func partsOf(word string) float64 {
	switch part := strings.TrimSuffix(word, "s"); part {
	case "half", "halve":
		return 2
	case "quarter":
		return 4
	default:
		for i, ordinal := range ordinals {
			if ordinal == part {
				return float64(i + 3)
			}
		}
	}
	return 0
}

// shareInWords reads "a third", "two thirds", "three-quarters", "2 thirds", "half".
//
//	share = [ count ] part
func shareInWords(s string) (share float64, ok bool) {
	words := strings.Fields(strings.ToLower(strings.ReplaceAll(s, "-", " ")))
	n := 1.0
	switch {
	case len(words) == 2:
		count := inFigures(words[0])
		if count == "" {
			count = words[0]
		}
		whole, err := strconv.ParseUint(count, 10, 8)
		if err != nil {
			return 0, false
		}
		n = float64(whole)
	case len(words) != 1 || words[0] != "half":
		return 0, false
	}
	of := partsOf(words[len(words)-1])
	if of == 0 {
		return 0, false
	}
	return n / of, true
}

// spelled is a text with the number in words at its front in digits: "two quarts"
// is "2 quarts". Without a unit behind it a word is left as it is.
func spelled(s string) string {
	words := strings.Fields(s)
	for n := min(2, len(words)-1); n > 0; n-- {
		if digits := inFigures(strings.ToLower(strings.Join(words[:n], " "))); digits != "" {
			return digits + " " + strings.Join(words[n:], " ")
		}
	}
	return s
}
