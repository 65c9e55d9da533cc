package quantity

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// longest is how many bytes of text are looked at: a quantity in words is
// shorter than 60.
const longest = 200

// tidy brings what was typed to one kind of blank, dash, prime, stroke and micro
// sign, and to fractions in ASCII; case stays. It refuses digits of other scripts
// and texts that are too long.
func tidy(text string) (string, *Error) {
	if len(text) > longest {
		return "", &Error{BadNumber, "it is too long for a number and a unit"}
	}
	var b strings.Builder
	last := rune(' ') // so that blanks in front are dropped
	for _, r := range text {
		if ' ' < r && r <= '~' { // nothing to tidy
			b.WriteRune(r)
			last = r
			continue
		}
		if unicode.IsDigit(r) {
			return "", &Error{BadNumber, "only the digits 0 to 9 are read"}
		}
		if blank(r) {
			if last != ' ' {
				b.WriteByte(' ')
			}
			last = ' '
			continue
		}
		if f, ok := fractions[r]; ok {
			if '0' <= last && last <= '9' {
				b.WriteByte(' ')
			}
			b.WriteString(f + " ")
			last = ' '
			continue
		}
		last = r
		if s, ok := lookAlikes[r]; ok {
			b.WriteString(s)
		} else {
			b.WriteRune(r)
		}
	}
	tidied := strings.TrimSpace(b.String())
	return strings.ReplaceAll(tidied, "''", `"`), nil
}

// blank is true of what is seen as a blank or not at all.
func blank(r rune) bool {
	return unicode.IsSpace(r) || unicode.IsControl(r) || unicode.Is(unicode.Cf, r) || r == '\u2800'
}

// fractions are the fractions of one character.
var fractions = map[rune]string{
	'½': "1/2", '⅓': "1/3", '⅔': "2/3", '¼': "1/4", '¾': "3/4", '⅕': "1/5", '⅖': "2/5", '⅗': "3/5", '⅘': "4/5",
	'⅙': "1/6", '⅚': "5/6", '⅐': "1/7", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8", '⅑': "1/9", '⅒': "1/10",
}

// lookAlikes are characters that stand for others.
var lookAlikes = map[rune]string{
	'\u2212': "-", '\u2010': "-", '\u2011': "-", '\u2012': "-", '\u2013': "-", '\u2014': "-", // minus, hyphens, dashes
	'\u2044': "/", '\u2215': "/", // fraction slash, division slash
	'\u03bc': "µ", // Greek mu; the micro sign stays
	'′':      "'", '’': "'", '‘': "'", 'ʹ': "'", '´': "'", '`': "'", '″': `"`, '“': `"`, '”': `"`, '„': `"`, 'ʺ': `"`, '˝': `"`,
	'²': "^2", '³': "^3", '¹': "^1", '⁻': "^-",
	'·': ".", '⋅': ".", '∙': ".", '•': ".",
	'º': "°", '˚': "°", '℃': "°C", '℉': "°F",
	'Ω': "ohm", '\u2126': "ohm", // Greek omega, ohm sign
	'ℓ': "l", '％': "%", '，': ",",
}

// fold brings a unit's word to the form in which the table has it: lower case,
// no blanks, full stops, brackets, carets or dashes, no accents.
func fold(text string) string {
	b := make([]byte, 0, 64)
	for _, r := range text {
		switch {
		case 'A' <= r && r <= 'Z':
			b = append(b, byte(r-'A'+'a'))
		case strings.ContainsRune(" .()^-", r):
		case r <= unicode.MaxASCII:
			b = append(b, byte(r))
		default:
			r = unicode.ToLower(r)
			if f, ok := folded[r]; ok {
				b = append(b, f...)
			} else {
				b = utf8.AppendRune(b, r)
			}
		}
	}
	return string(b)
}

// folded are the letters outside ASCII that units' words are typed with.
var folded = map[rune]string{
	'µ': "u", 'μ': "u", '°': "deg", 'ß': "ss", // lower case of the micro sign may be either
	'à': "a", 'â': "a", 'ä': "a", 'á': "a", 'é': "e", 'è': "e", 'ê': "e", 'ë': "e", 'í': "i", 'ì': "i", 'î': "i",
	'ó': "o", 'ò': "o", 'ô': "o", 'ö': "o", 'ú': "u", 'ù': "u", 'û': "u", 'ü': "u", 'ñ': "n", 'ç': "c",
}
