package metal

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// item is a piece of a typed composition.
type item struct {
	number float64
	symbol string // of an element; "" for a number
}

// lexed is a typed composition in pieces.
type lexed struct {
	items    []item
	family   string // the family named, "" if no family is named
	bySymbol bool   // the elements are written as symbols
}

// familyOfWord is the family that a word names in a composition; "" for other words.
func familyOfWord(w string) string {
	switch w {
	case "brass", "messing", "laiton", "laton", "ottone", "tombak", "tombac", "gilding":
		return "brass"
	case "bronze", "bronce", "bronzo", "gunmetal", "zinnbronze", "rotguss":
		return "bronze"
	case "neusilber", "maillechort", "alpaca":
		return "nickel silver"
	case "cupronickel", "kupfernickel", "cupronichel", "cuproniquel":
		return "cupronickel"
	}
	return ""
}

// connectives stand between the parts of a composition.
var connectives = set(`and und et y e with mit avec con per cent rest balance remainder bal rem phosphor sterling er
	pure fine pur fin rein fein puro fino pura fina coin`)

// lex splits a folded text into numbers and elements. With small, "al" and "au"
// are articles, not elements. ok is false if the text holds any other word than
// those without a meaning here.
func lex(folded string, small bool) (l lexed, ok bool) {
	rest := folded
	for rest != "" {
		r, size := utf8.DecodeRuneInString(rest)
		switch {
		case isDigit(rest[0]) || (r == '.' || r == ',') && len(rest) > 1 && isDigit(rest[1]):
			// Consume a number.
			n := numberLength(rest)
			x, err := strconv.ParseFloat(strings.Replace(rest[:n], ",", ".", 1), 64)
			if err != nil || x > 1000 {
				return l, false
			}
			l.items = append(l.items, item{number: x})
			rest = rest[n:]
		case unicode.IsLetter(r):
			// Consume a word.
			n := strings.IndexFunc(rest, func(r rune) bool { return !unicode.IsLetter(r) })
			if n < 0 {
				n = len(rest)
			}
			if !l.word(rest[:n], small) {
				return l, false
			}
			rest = rest[n:]
		case strings.ContainsRune(" .,:;/+-%", r):
			// Consume a mark.
			rest = rest[size:]
		default:
			return l, false
		}
	}
	return l, true
}

// numberLength is the length in bytes of the number that a text begins with:
// digits, with at most one decimal mark that digits follow.
func numberLength(s string) int {
	n, marked := 0, false
	for n < len(s) {
		switch {
		case isDigit(s[n]):
		case (s[n] == '.' || s[n] == ',') && !marked && n+1 < len(s) && isDigit(s[n+1]):
			marked = true
		default:
			return n
		}
		n++
	}
	return n
}

// word adds a word of a composition; false if compositions hold no such word.
func (l *lexed) word(w string, small bool) bool {
	if family := familyOfWord(w); family != "" {
		fits := l.family == "" || l.family == family
		l.family = family
		return fits
	}
	if symbol, ok := elementNamed(w); ok {
		l.items = append(l.items, item{symbol: symbol})
		return true
	}
	article := w == "al" || w == "au"
	if (joints[w] || connectives[w] || shapes[w]) && (small || !article) {
		return true
	}
	symbols, ok := symbolsIn(w)
	for _, s := range symbols {
		l.items = append(l.items, item{symbol: s})
	}
	l.bySymbol = ok
	return ok
}

// symbolsIn splits letters into elements' symbols, the longer first ("cuzn").
// C and O are letters of grades ("C 101"), not carbon and oxygen.
func symbolsIn(w string) (symbols []string, ok bool) {
	for w != "" {
		best := ""
		for i := range Elements {
			s := Elements[i].Symbol
			if len(s) > len(best) && strings.HasPrefix(w, strings.ToLower(s)) && s != "C" && s != "O" {
				best = s
			}
		}
		if best == "" {
			return nil, false
		}
		symbols = append(symbols, best)
		w = w[len(best):]
	}
	return symbols, true
}
