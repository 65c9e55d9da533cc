package quantity

import "strings"

// KindOf says what a unit measures, by its symbol ("mA/cm2"), and whether there
// is such a unit. A symbol that belongs to a table or a reply is checked with it.
func KindOf(symbol string) (Kind, bool) {
	if u := bySign(symbol); u != nil {
		return u.kind, true
	}
	return 0, false
}

// In turns a value in SI into one in the unit. The symbol comes from a table,
// never from what was typed: an unknown one is a mistake in the program and
// panics.
func In(si float64, symbol string) float64 { return must(symbol).from(si) }

// Of turns a value in the unit into SI, and is the reverse of In.
func Of(value float64, symbol string) (si float64) { return must(symbol).to(value) }

// to and from convert between a unit and SI: si = (value + zero) x up / down.
func (u *unit) to(value float64) float64 { return (value + u.zero) * u.up / u.down }
func (u *unit) from(si float64) float64  { return si*u.down/u.up - u.zero }

// must finds the unit of a symbol, which there has to be.
func must(symbol string) *unit {
	u := bySign(symbol)
	if u == nil {
		panic("quantity: no unit " + symbol)
	}
	return u
}

// pure is the unit of a number without one.
var pure = unit{kind: Number, up: 1, down: 1}

// bySign finds a unit by its symbol; nil if no unit has it.
func bySign(symbol string) *unit {
	if symbol == "" {
		return &pure
	}
	if u, ok := bySymbol[symbol]; ok && u.ask == "" {
		return u
	}
	found := readings(symbol)
	for i := range found {
		if u := &found[i]; u.symbol == symbol && u.ask == "" {
			return u
		}
	}
	return nil
}

// choose reads a unit's text and picks the reading of a kind that is wanted.
// known is false where the text is no unit at all.
func choose(text string, kinds []Kind) (u unit, known bool, err *Error) {
	found := readings(text)
	for _, u := range found {
		if !among(u.kind, kinds) {
			continue
		}
		if u.ask != "" {
			return unit{}, true, asked(u.ask, strings.Fields(u.means)...)
		}
		return u, true, nil
	}
	if len(found) > 0 {
		return unit{}, true, mistake(BadUnit, found[0].sign+" measures "+found[0].kind.String())
	}
	return unit{}, false, mistake(BadUnit, Quote(text)+" is no unit known here")
}

func among(k Kind, kinds []Kind) bool {
	for _, wanted := range kinds {
		if k == wanted {
			return true
		}
	}
	return false
}

// readings lists the units that a tidied text can mean, the likeliest first.
//
//	unit = part [ ( "/" | "per" ) [digits] part ] [ "of" ] [ "water" | "bath" ] | part part "-1"
func readings(text string) []unit {
	if found := parts(text); len(found) > 0 {
		return found
	}
	text, liquid := cutLiquid(text)
	over, under, ok := cutPer(text)
	if !ok {
		return nil
	}
	count, under := takeDigits(under)
	n, ok := divisor(count)
	if !ok {
		return nil
	}
	var found []unit
	for _, a := range parts(over) {
		for _, b := range parts(under) {
			if u, ok := compose(a, b, count, n, liquid); ok {
				found = append(found, u)
			}
		}
	}
	return found
}

// compose makes a unit of one per n of another.
func compose(a, b unit, count string, n float64, liquid string) (unit, bool) {
	for _, c := range compositions {
		if c.over != a.kind || c.under != b.kind {
			continue
		}
		u := unit{kind: c.kind, up: a.up * b.down, down: a.down * b.up * n, ask: a.ask + b.ask}
		u.symbol = a.symbol + "/" + prefixed(count, b.symbol)
		u.sign = a.sign + "/" + prefixed(count, b.sign)
		switch {
		case liquid == "water" && u.kind == Density:
			u.kind, u.symbol, u.sign = PerWater, u.symbol+" water", u.sign+" water"
		case liquid == "water", liquid == "bath" && u.kind != Density && u.kind != Molarity:
			return unit{}, false
		}
		return u, true
	}
	return unit{}, false
}

// prefixed writes what stands under the stroke: "100 mL", "(A.h)".
func prefixed(count, symbol string) string {
	if strings.ContainsAny(symbol, ".·") {
		symbol = "(" + symbol + ")"
	}
	if count != "" {
		return count + " " + symbol
	}
	return symbol
}

// divisor reads the number under the stroke, as in g/100 mL: a whole one of at
// most four digits.
func divisor(count string) (float64, bool) {
	if count == "" {
		return 1, true
	}
	n := 0.0
	for _, d := range count {
		n = 10*n + float64(d-'0')
	}
	return n, n > 0 && len(count) <= 4 && count[0] != '0'
}

// liquidOf is what the litre in "g/L" is of, by the word after it; "" for other words.
func liquidOf(word string) string {
	switch word {
	case "water", "h2o", "wasser", "eau", "agua", "acqua":
		return "water"
	case "bath", "solution", "soln":
		return "bath"
	}
	return ""
}

// cutLiquid takes "of water" or "of bath" off the end of a unit.
func cutLiquid(text string) (rest, liquid string) {
	at := strings.LastIndexAny(text, " ('")
	if at < 0 {
		return text, ""
	}
	liquid = liquidOf(strings.ToLower(strings.Trim(text[at+1:], "()")))
	if liquid == "" {
		return text, ""
	}
	rest = strings.TrimRight(text[:at], " (")
	for _, of := range []string{" of finished", " finished", " of", " de", " d", " di"} {
		rest = strings.TrimSuffix(rest, of)
	}
	return rest, liquid
}

// pers are the words that stand for the stroke.
var pers = []string{" per ", " pro ", " par ", " por "}

// cutPer parts a unit at its stroke, at "per", or at a last part with a negative
// power ("mA cm-2").
func cutPer(text string) (over, under string, ok bool) {
	if over, under, ok = strings.Cut(text, "/"); ok {
		return strings.TrimSpace(over), strings.TrimSpace(under), true
	}
	lower := strings.ToLower(text)
	for _, per := range pers {
		if at := strings.Index(lower, per); at >= 0 && len(lower) == len(text) {
			return text[:at], text[at+len(per):], true
		}
	}
	text = strings.ReplaceAll(text, "^", "")
	at, minus := strings.LastIndexAny(text, " ."), len(text)-2
	if at < 0 || minus <= at || text[minus] != '-' {
		return "", "", false
	}
	over, under = text[:at], text[at+1:minus]
	switch text[minus+1] {
	case '1':
		return over, under, true
	case '2', '3':
		return over, under + text[minus+1:], true
	}
	return "", "", false
}

// parts lists the units that one word can mean, a power of a length among them.
func parts(text string) []unit {
	var found []unit
	if u, ok := bySymbol[strings.ReplaceAll(text, " ", "")]; ok && u.ask == "" {
		found = append(found, *u)
	}
	key := fold(text)
	for _, u := range byWord[key] {
		if len(found) == 0 || *u != found[0] {
			found = append(found, shouted(*u, text, key))
		}
	}
	if len(found) > 0 {
		return found
	}
	return power(key)
}

// shouted marks a unit of electricity that was typed with a capital M where it
// has a small one: a million, or a thousandth.
func shouted(u unit, text, key string) unit {
	switch u.kind {
	case Current, Voltage, Power, Resistance, Charge, conductance:
		if text[0] == 'M' && u.symbol[0] == 'm' && !strings.HasPrefix(key, "milli") {
			u.ask = "M stands for a million, m for a thousandth: " + u.sign + " is a thousandth"
			u.means = u.symbol
		}
	}
	return u
}

// powers are the words before and after a length that make it an area or a volume.
var powers = [...]struct {
	kind   Kind
	before bool
	words  []string
}{
	{Area, true, []string{"square", "quadrat", "sq", "q"}},
	{Volume, true, []string{"cubic", "kubik", "cu"}},
	{Area, false, []string{"2", "squared", "square", "sq", "carres", "carre", "cuadrados", "cuadrado", "quadrati", "quadrato"}},
	{Volume, false, []string{"3", "cubed", "cubes", "cube", "cubicos", "cubico", "cubi", "cubo"}},
}

// power reads a folded word as a squared or cubed length.
func power(key string) []unit {
	for _, p := range powers {
		for _, word := range p.words {
			length, cut := strings.CutSuffix(key, word)
			if p.before {
				length, cut = strings.CutPrefix(key, word)
			}
			if u, ok := lengthOf(length, cut); ok {
				return []unit{raised(u, p.kind)}
			}
		}
	}
	return nil
}

// lengthOf finds the length that is left of a word once a power's word was cut
// off. Primes are not raised: 5'2 is five feet two.
func lengthOf(key string, cut bool) (unit, bool) {
	if !cut || key == "'" || key == `"` {
		return unit{}, false
	}
	for _, u := range byWord[key] {
		if u.kind == Length {
			return *u, true
		}
	}
	return unit{}, false
}

// raised squares a length, or cubes it where that is wanted.
func raised(u unit, kind Kind) unit {
	up, down, digit, sign := u.up*u.up, u.down*u.down, "2", "²"
	if kind == Volume {
		up, down, digit, sign = up*u.up, down*u.down, "3", "³"
	}
	return unit{kind: kind, symbol: u.symbol + digit, sign: u.sign + sign, up: up, down: down}
}
