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
	symbol string // of an element, when it is no number
}

// lexed is a typed composition in pieces.
type lexed struct {
	items    []item
	family   string // of the numbers, "" if none is named
	bySymbol bool   // the elements are written as symbols
}

// familyWords name a family in a composition.
var familyWords = map[string]string{
	"brass": "brass", "messing": "brass", "laiton": "brass", "laton": "brass", "ottone": "brass", "tombak": "brass", "tombac": "brass", "gilding": "brass",
	"bronze": "bronze", "bronce": "bronze", "bronzo": "bronze", "gunmetal": "bronze", "zinnbronze": "bronze", "rotguss": "bronze",
	"neusilber": "nickel silver", "maillechort": "nickel silver", "alpaca": "nickel silver",
	"cupronickel": "cupronickel", "kupfernickel": "cupronickel", "cupronichel": "cupronickel", "cuproniquel": "cupronickel",
}

// connectives stand between the parts of a composition.
var connectives = set(`and und et y e with mit avec con per cent rest balance remainder bal rem phosphor sterling er
	pure fine pur fin rein fein puro fino pura fina`)

// lex splits a folded text into numbers and elements; small takes "al" and "au"
// for small words; ok says that it holds nothing else but words that mean
// nothing here.
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

// numberLength is how many bytes of digits with at most one decimal mark among
// them, digits after it, a text begins with.
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

// word takes a word of a composition in; false if it has no place in one.
func (l *lexed) word(w string, small bool) bool {
	if family := familyWords[w]; family != "" {
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
// C and O alone are letters of grades ("C 101"), not carbon and oxygen.
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
