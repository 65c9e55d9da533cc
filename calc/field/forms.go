package field

import (
	"strconv"
	"strings"

	"saltbite/calc/quantity"
)

// Pair is one entry of a Series, both in SI.
type Pair struct{ First, Second float64 }

// mostPairs is how many entries of a series are read: a reading a minute, all day.
const mostPairs = 1500

// series reads entries separated by semicolons or lines, each two amounts with a
// blank between them:
//
//	series = pair { ( ";" | newline ) pair }
//	pair   = amount blank amount
//
// An amount may hold blanks of its own ("2 h 30", "1 1/2 in"): the pair is
// split at the first blank where both sides can be read.
func (f *Field) series(v Value) (Value, *Error) {
	entries := strings.Split(strings.ReplaceAll(v.Text, "\n", ";"), ";")
	if len(entries) > mostPairs {
		return v, f.because(v.Text, string(quantity.OutOfSize), "holds more than "+strconv.Itoa(mostPairs)+" entries")
	}
	for _, entry := range entries {
		if entry = strings.TrimSpace(entry); entry == "" {
			continue
		}
		pair, ok := f.pair(entry)
		if !ok {
			return v, f.because(v.Text, string(quantity.BadNumber), "can't be read: "+quantity.Quote(entry)+" is no two amounts with a blank between")
		}
		v.Pairs = append(v.Pairs, pair)
	}
	if len(v.Pairs) == 0 {
		return v, f.because(v.Text, string(quantity.BadNumber), "holds no entry")
	}
	return v, nil
}

// pair reads one entry. Neither amount may be negative.
func (f *Field) pair(entry string) (Pair, bool) {
	const most = 80 // longer than any two amounts, so that no entry takes long
	if len(entry) > most {
		return Pair{}, false
	}
	for i, r := range entry {
		if r != ' ' && r != '\t' {
			continue
		}
		first, ok := f.first(entry[:i])
		if !ok {
			continue
		}
		if second, err := quantity.Read(entry[i:], f.Second, f.Kinds[1]); err == nil && first >= 0 && second.Value >= 0 {
			return Pair{first, second.Value}, true
		}
	}
	return Pair{}, false
}

// first reads an entry's first amount: a time may be one of the clock.
func (f *Field) first(text string) (float64, bool) {
	if q, err := quantity.Read(text, f.Bare, f.Kinds[0]); err == nil {
		return q.Value, true
	}
	if f.Kinds[0] == quantity.Time {
		return readClock(text)
	}
	return 0, false
}

// clock reads a time of day into seconds after midnight.
func (f *Field) clock(v Value) (Value, *Error) {
	seconds, ok := readClock(v.Text)
	if !ok {
		return v, f.because(v.Text, string(quantity.BadNumber), "can't be read as a time of day")
	}
	v.Q = quantity.Quantity{Value: seconds, Kind: quantity.Time}
	return v, nil
}

// readClock reads a time of day into seconds after midnight:
//
//	clock = hour [ ( ":" | "." | "h" ) minute ] [ "am" | "pm" | "h" | "Uhr" ]
//
// Twelve hours with am or pm, else twenty-four. An hour alone needs one of the
// words after it.
func readClock(text string) (seconds float64, ok bool) {
	text = strings.ToLower(strings.Join(strings.Fields(text), ""))
	text, half := cutHalf(strings.ReplaceAll(text, ".m.", "m"))
	hour, minute, parted := cutMinutes(text)
	h, okHour := digits(hour)
	m, okMinute := digits(minute)
	if !parted {
		m, okMinute = 0, half != ""
	}
	switch {
	case !okHour || !okMinute || m > 59:
		return 0, false
	case half == "am" || half == "pm":
		if h < 1 || h > 12 {
			return 0, false
		}
		h %= 12
		if half == "pm" {
			h += 12
		}
	case h > 23:
		return 0, false
	}
	return float64(h*3600 + m*60), true
}

func cutHalf(text string) (rest, half string) {
	for _, word := range []string{"am", "pm", "uhr", "h"} {
		if rest, ok := strings.CutSuffix(text, word); ok {
			return rest, word
		}
	}
	return text, ""
}

func cutMinutes(text string) (hour, minute string, parted bool) {
	i := strings.IndexAny(text, ":.h")
	if i < 0 {
		return text, "", false
	}
	return text[:i], text[i+1:], true
}

// digits reads one or two digits.
func digits(text string) (n int, ok bool) {
	if len(text) < 1 || len(text) > 2 {
		return 0, false
	}
	for _, r := range text {
		if r < '0' || r > '9' {
			return 0, false
		}
		n = n*10 + int(r-'0')
	}
	return n, true
}

// Baume is the unit of a Hydrometer that was read on that scale.
const Baume = "°Bé"

// gravity reads a hydrometer: a bare number is the specific gravity 20/20 C, a
// Number; "g/mL" makes it a Density; degrees Baume are a Number of that unit.
func (f *Field) gravity(v Value) (Value, *Error) {
	if number, ok := cutBaume(v.Text); ok {
		q, err := quantity.Read(number, "", quantity.Number)
		if err != nil || q.Value < 0 || q.Value > 100 {
			return v, f.because(v.Text, string(quantity.BadNumber), "can't be read as degrees Baumé from 0 to 100")
		}
		v.Q = quantity.Quantity{Value: q.Value, Kind: quantity.Number, Unit: Baume}
		return v, nil
	}
	q, err := quantity.Read(v.Text, "", quantity.Number)
	if err != nil {
		q, err = quantity.Read(v.Text, "", quantity.Density)
	}
	if err != nil {
		return v, f.wrong(v.Text, err)
	}
	size := q.Value
	if q.Kind == quantity.Density {
		size = quantity.In(q.Value, "g/mL")
	}
	if size < f.Min || size > f.Max {
		return v, f.because(v.Text, string(quantity.OutOfSize), "is no gravity of a bath, which is from "+limit(f.Min, "")+" to "+limit(f.Max, ""))
	}
	v.Q = q
	return v, nil
}

// cutBaume cuts off the words for degrees Baume.
func cutBaume(text string) (number string, ok bool) {
	folded := strings.ToLower(strings.ReplaceAll(text, "é", "e"))
	for _, word := range []string{"baume", "be", "bé"} {
		if rest, ok := strings.CutSuffix(strings.TrimSpace(folded), word); ok {
			rest = strings.TrimSpace(rest)
			for _, degree := range []string{"°", "degrees", "degree", "deg"} {
				rest = strings.TrimSuffix(rest, degree)
			}
			return rest, true
		}
	}
	return "", false
}
