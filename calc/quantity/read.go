package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Sizes beyond which nothing is printed, and far within them those beyond which
// nothing is read: what was read can be printed in any unit, and a change of
// unit neither overflows nor loses digits.
const (
	largest = 1e300
	tiniest = 1e-300

	mostRead  = 1e280
	leastRead = 1e-280
)

// Read reads a quantity of one of the kinds. bare is the symbol of the unit that
// a number without one takes; "" where one must be typed, and for a Number, which
// has none. The error is an *Error. A negative quantity is read: whether it can
// be is the caller's to say.
func Read(text, bare string, kinds ...Kind) (Quantity, error) {
	q, err := read(text, bare, kinds)
	if err != nil {
		return Quantity{}, err
	}
	return q, nil
}

// read follows the grammar of the package comment.
func read(text, bare string, kinds []Kind) (Quantity, *Error) {
	s, err := tidy(text)
	if err != nil {
		return Quantity{}, err
	}
	if s == "" {
		return Quantity{}, mistake(BadNumber, "nothing stands there")
	}

	// Consume the sign.
	sign, before := 1.0, ""
	if begins(s, "+-") {
		if s[0] == '-' {
			sign, before = -1, "-"
		}
		s = strings.TrimLeft(s[1:], " ")
	}

	// Words, a gauge and a clock's colons are no number with a unit: look for them first.
	if sharesAsTyped(bare, kinds) {
		if share, ok := shareInWords(s); ok {
			return Quantity{sign * share, Share, "%"}, nil
		}
	}
	if !begins(s, digits) {
		s = spelled(s)
	}
	if metres, found, err := takeGauge(s); found {
		return special(metres, "mm", Length, sign < 0, err, kinds)
	}
	if seconds, found, err := takeClock(s); found {
		return special(sign*seconds, "h", Time, false, err, kinds)
	}

	// Consume the number.
	n, rest, err := takeNumber(s)
	if err == nil || err.Code == Ambiguous {
		if wrong := untidy(s, rest, n); wrong != nil {
			err = wrong
		}
	}
	typed := before + strings.TrimSpace(strings.TrimSuffix(s, rest))
	rest = strings.TrimSpace(rest)
	if err != nil {
		for i, reading := range err.Readings {
			err.Readings[i] = strings.TrimSpace(before + reading + " " + rest)
		}
		return Quantity{}, err
	}
	n.value *= sign

	// Consume the unit, or more numbers with theirs.
	if rest == "" {
		return n.bare(typed, bare, kinds)
	}
	u, known, err := choose(rest, kinds)
	if err == nil {
		return n.of(u)
	}
	for i, symbol := range err.Readings {
		err.Readings[i] = typed + " " + strings.ReplaceAll(symbol, "_", " ")
	}
	if strings.ContainsAny(rest, digits) && !(known && powered(rest)) {
		if q, ok := takeCompound(s, sign, kinds); ok {
			return q, nil
		}
		if !known && sizes(rest) {
			err = mistake(BadNumber, "two numbers, where one belongs")
		}
	}
	return Quantity{}, err
}

// sizes is true of what follows the first number of "4 in x 6 in" and "10 mm to 20 mm".
func sizes(rest string) bool {
	for _, between := range []string{" x ", " X ", " × ", " by ", " to ", " - "} {
		if _, second, ok := strings.Cut(rest, between); ok && begins(second, digits+".") {
			return true
		}
	}
	return false
}

// powered is true of a unit that ends in a power: "5 ft2" is an area in the wrong
// place, but "5 ft 2" is five feet two.
func powered(rest string) bool {
	return !strings.HasSuffix(rest, " 2") && !strings.HasSuffix(rest, " 3")
}

// special is a quantity that has its own notation.
func special(si float64, symbol string, kind Kind, signed bool, err *Error, kinds []Kind) (Quantity, *Error) {
	switch {
	case !among(kind, kinds) && kind == Length:
		return Quantity{}, mistake(BadUnit, "a gauge measures length")
	case !among(kind, kinds):
		return Quantity{}, mistake(BadUnit, "a colon stands between hours and minutes")
	case err != nil:
		return Quantity{}, err
	case signed:
		return Quantity{}, mistake(BadNumber, "a gauge has no sign")
	}
	return Quantity{si, kind, symbol}, nil
}

// quantity makes a quantity of a value in the unit, unless its size is absurd.
func (u unit) quantity(x float64) (Quantity, *Error) {
	si := u.to(x)
	switch {
	case math.Abs(si) > mostRead:
		return Quantity{}, mistake(OutOfSize, "it is too large a number")
	case x != 0 && math.Abs(si) < leastRead && u.zero == 0:
		return Quantity{}, mistake(OutOfSize, "it is too small a number")
	}
	return Quantity{si + 0, u.kind, u.symbol}, nil // + 0 makes a plain zero of -0
}

// takeClock reads "1:40" as hours and minutes, "1:40:30" with seconds; found is
// false without a colon between digits.
//
//	clock = digits ":" digits [ ":" digits ] [ "h" ]
func takeClock(s string) (seconds float64, found bool, err *Error) {
	hours, rest := takeDigits(s)
	if hours == "" || !begins(rest, ":") {
		return 0, false, nil
	}
	n, err := parse(hours)
	seconds = 3600 * n
	for size := 60.0; begins(rest, ":"); size /= 60 {
		var count string
		count, rest = takeDigits(rest[1:])
		switch n, short := strconv.Atoi(count); {
		case size < 1:
			return 0, true, mistake(BadNumber, "more than hours, minutes and seconds")
		case short != nil || len(count) > 2 || n > 59:
			return 0, true, mistake(BadNumber, "after a colon stand the minutes, 00 to 59")
		default:
			seconds += size * float64(n)
		}
	}
	switch fold(rest) {
	case "", "h", "hr", "hrs", "hour", "hours", "hmin", "hm", "h:min", "h:mm", "hms", "hh:mm", "std":
		return seconds, true, err
	case "min", "mins", "minutes", "m", "min:s", "m:s", "mm:ss":
		return 0, true, asked("it may be hours and minutes or minutes and seconds", clockReadings(s)...)
	}
	return 0, true, mistake(BadUnit, Quote(strings.TrimSpace(rest))+" after hours and minutes is no unit known here")
}

// clockReadings are "1 h 40 min" and "1 min 40 s" for "1:40"; none where there
// are seconds too.
func clockReadings(s string) []string {
	first, rest := takeDigits(s)
	second, rest := takeDigits(rest[1:])
	if begins(rest, ":") {
		return nil
	}
	return []string{first + " h " + second + " min", first + " min " + second + " s"}
}

// compounds are the kinds that are said in more than one unit.
var compounds = []Kind{Time, Length, Mass, Volume}

// below is the unit that a last number without one takes after a unit, and how
// many of it make that; "" where one must be typed.
func below(unit string) (symbol string, most float64) {
	switch unit {
	case "h":
		return "min", 60
	case "min":
		return "s", 60
	case "ft":
		return "in", 12
	}
	return "", 0
}

// takeCompound reads several numbers, each with a unit smaller than the last one's.
//
//	compound = number word { number word } number [word]
func takeCompound(s string, sign float64, kinds []Kind) (Quantity, bool) {
	wanted := make([]Kind, 0, len(compounds))
	for _, k := range compounds {
		if among(k, kinds) {
			wanted = append(wanted, k)
		}
	}
	total, first, last := 0.0, unit{}, unit{}
	for s != "" {
		n, rest, err := takeNumber(s)
		if err != nil {
			return Quantity{}, false
		}
		word, rest := cutWord(rest)
		u, ok := last.next(word, n, rest == "", wanted)
		if !ok {
			return Quantity{}, false
		}
		if last.symbol == "" {
			first, wanted = u, []Kind{u.kind}
		}
		total, last, s = total+u.to(n.value), u, rest
	}
	return Quantity{sign*total + 0, first.kind, first.symbol}, total <= mostRead
}

// next is the unit of a compound's next number, after one in the unit u.
func (u unit) next(word string, n number, final bool, wanted []Kind) (unit, bool) {
	if word == "" {
		symbol, most := below(u.symbol)
		if symbol == "" || !final || n.value >= most || n.places > 2 {
			return unit{}, false
		}
		return *must(symbol), true
	}
	v, _, err := choose(word, wanted)
	if err != nil || u.symbol != "" && v.to(1) >= u.to(1) {
		return unit{}, false
	}
	return v, true
}

// joints are what may stand between the parts of a compound.
var joints = []string{",", "&", " and", " und", " et", " y", " e"}

// cutWord takes the text before the next digit off the front: a unit, and what
// joins it to the next number.
func cutWord(s string) (word, rest string) {
	at := strings.IndexAny(s, digits)
	if at < 0 {
		return strings.TrimSpace(s), ""
	}
	word = s[:at]
	if strings.HasSuffix(word, " .") || strings.HasSuffix(word, " ,") { // ".5" is a number
		at--
		word = s[:at]
	}
	word = strings.TrimSpace(word)
	for _, j := range joints {
		if cut, ok := strings.CutSuffix(word, j); ok {
			return strings.TrimSpace(cut), s[at:]
		}
	}
	return word, s[at:]
}
