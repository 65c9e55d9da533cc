package quantity

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// mostDigits is the longest number that is read; more are a mistake.
const mostDigits = 40

// number is a number as it was typed, without its sign.
type number struct {
	value    float64
	fraction bool // typed with a stroke
	mixed    bool // a whole number and a fraction
	marked   bool // typed with a decimal mark
	places   int  // digits before the mark
}

// takeNumber takes a number off the front of a tidied text.
//
//	number   = ( decimal [exponent] | fraction | digits ( " " | "-" ) fraction )
//	decimal  = digits [ mark [digits] ] | mark digits
//	mark     = "." | ","
//	exponent = ( "e" | "E" ) [sign] digits
//	fraction = digits "/" digits
func takeNumber(s string) (n number, rest string, err *Error) {
	whole, after := takeDigits(s)

	// Consume a fraction, alone or after a whole number.
	if value, rest, ok, err := takeFraction(s); ok {
		return number{value: value, fraction: true}, rest, err
	}
	if whole != "" && after != "" && (after[0] == ' ' || after[0] == '-') {
		if part, rest, ok, err := takeFraction(after[1:]); ok {
			n, short := parse(whole)
			if err == nil {
				err = short
			}
			if err == nil && part >= 1 {
				err = mistake(BadNumber, "a fraction of one or more after a whole number")
			}
			return number{value: n + part, fraction: true, mixed: true}, rest, err
		}
	}

	// Consume the decimals.
	decimals, mark := "", byte(0)
	if after != "" && (after[0] == '.' || after[0] == ',') {
		decimals, rest = takeDigits(after[1:])
		if decimals != "" || after[0] == '.' && whole != "" {
			mark, after = after[0], rest
		}
	}
	if whole == "" && decimals == "" {
		return number{}, s, mistake(BadNumber, "it does not begin with a number")
	}

	// Consume the exponent.
	exponent, after := takeExponent(after)

	if mark == ',' && exponent == "" && thousands(whole, decimals) && !begins(after, ".,") {
		thousand, point := whole+decimals, whole+"."+decimals
		return number{}, after, asked("it may be "+thousand+" or "+point, thousand, point)
	}
	value, err := parse(whole + "." + decimals + exponent)
	return number{value: value, marked: mark != 0, places: len(whole)}, after, err
}

// thousands is true where a comma may part thousands: before exactly three
// digits, after one to three that are not a lone 0.
func thousands(whole, decimals string) bool {
	return len(decimals) == 3 && len(whole) >= 1 && len(whole) <= 3 && whole != "0"
}

// takeFraction takes "1/16" off the front.
func takeFraction(s string) (value float64, rest string, ok bool, err *Error) {
	top, after := takeDigits(s)
	if top == "" || !begins(after, "/") {
		return 0, s, false, nil
	}
	bottom, rest := takeDigits(after[1:])
	if bottom == "" {
		return 0, s, false, nil
	}
	a, err := parse(top)
	if err != nil {
		return 0, rest, true, err
	}
	b, err := parse(bottom)
	if err == nil && b == 0 {
		err = mistake(BadNumber, "a fraction over zero")
	}
	if err != nil {
		return 0, rest, true, err
	}
	return a / b, rest, true, nil
}

// takeExponent takes "e-3" off the front; an e without digits is left to the unit.
func takeExponent(s string) (exponent, rest string) {
	if !begins(s, "eE") {
		return "", s
	}
	sign, after := "", s[1:]
	if begins(after, "+-") {
		sign, after = after[:1], after[1:]
	}
	digits, rest := takeDigits(after)
	if digits == "" {
		return "", s
	}
	return "e" + sign + digits, rest
}

// parse reads digits that the grammar has let through, so that it never sees
// "inf", "nan", a hexadecimal or an underscore.
func parse(digits string) (float64, *Error) {
	if len(digits) > mostDigits {
		return 0, mistake(OutOfSize, "more than "+strconv.Itoa(mostDigits)+" digits")
	}
	value, err := strconv.ParseFloat(digits, 64)
	if err != nil || math.IsInf(value, 0) {
		return 0, mistake(OutOfSize, "it is too large a number")
	}
	mantissa, _, _ := strings.Cut(digits, "e")
	if value < tiniest && strings.Trim(mantissa, "0.") != "" {
		return 0, mistake(OutOfSize, "it is too small a number")
	}
	return value, nil
}

// untidy says what is wrong with the text that follows a number, if it can't be
// a unit.
func untidy(s, rest string, n number) *Error {
	trimmed := strings.TrimLeft(rest, " ")
	if trimmed == "" {
		return nil
	}
	_, width := utf8.DecodeRuneInString(trimmed)
	next := strings.TrimLeft(trimmed[width:], " ")
	switch {
	case begins(trimmed, digits), trimmed != rest && begins(trimmed, ".,") && begins(next, digits):
		return mistake(BadNumber, "a blank inside a number")
	case begins(trimmed, ".,") && n.fraction:
		return mistake(BadNumber, "a fraction is one whole number over another")
	case begins(trimmed, ".,") && n.marked && begins(next, digits):
		return mistake(BadNumber, "two decimal marks")
	case begins(trimmed, ".,"):
		return mistake(BadNumber, "a mark without digits after it")
	case begins(trimmed, "/"):
		return mistake(BadNumber, "a fraction is one whole number over another")
	case begins(trimmed, "_"):
		return mistake(BadNumber, "a line inside a number")
	case strings.HasPrefix(s, "0x"), strings.HasPrefix(s, "0X"):
		return mistake(BadNumber, "only the digits 0 to 9 are read")
	case begins(trimmed, "-+*x×±~") && begins(next, digits), strings.HasPrefix(trimmed, "to "):
		return mistake(BadNumber, "two numbers, where one belongs")
	}
	return nil
}

const digits = "0123456789"

// takeDigits takes the digits off the front.
func takeDigits(s string) (taken, rest string) {
	n := 0
	for n < len(s) && '0' <= s[n] && s[n] <= '9' {
		n++
	}
	return s[:n], s[n:]
}

// begins is true of a text that begins with one of the characters.
func begins(s, characters string) bool {
	for _, r := range s {
		return strings.ContainsRune(characters, r)
	}
	return false
}
