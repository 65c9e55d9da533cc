package quantity

import (
	"strings"
	"unicode"
)

// longest is how many bytes of text are looked at: a quantity in words is
// shorter than 60.
const longest = 200

// tidy brings what was typed to one kind of blank, dash, prime, stroke and micro
// sign, and to fractions in ASCII; case stays. It refuses digits of other scripts
// and texts that are too long.
func tidy(text string) (string, *Error) {
	if len(text) > longest {
		return "", mistake(BadNumber, "it is too long for a number and a unit")
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
			return "", mistake(BadNumber, "only the digits 0 to 9 are read")
		}
		if blank(r) {
			if last != ' ' {
				b.WriteByte(' ')
			}
			last = ' '
			continue
		}
		if f := fractionOf(r); f != "" {
			if '0' <= last && last <= '9' {
				b.WriteByte(' ')
			}
			b.WriteString(f + " ")
			last = ' '
			continue
		}
		last = r
		if s := lookAlike(r); s != "" {
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

// fractionOf is a fraction of one character in ASCII; "" for other characters.
func fractionOf(r rune) string {
	switch r {
	case '½':
		return "1/2"
	case '⅓':
		return "1/3"
	case '⅔':
		return "2/3"
	case '¼':
		return "1/4"
	case '¾':
		return "3/4"
	case '⅕':
		return "1/5"
	case '⅖':
		return "2/5"
	case '⅗':
		return "3/5"
	case '⅘':
		return "4/5"
	case '⅙':
		return "1/6"
	case '⅚':
		return "5/6"
	case '⅐':
		return "1/7"
	case '⅛':
		return "1/8"
	case '⅜':
		return "3/8"
	case '⅝':
		return "5/8"
	case '⅞':
		return "7/8"
	case '⅑':
		return "1/9"
	case '⅒':
		return "1/10"
	}
	return ""
}

// lookAlike is what a character stands for that looks like another; "" for those
// that stand for themselves.
func lookAlike(r rune) string {
	switch r {
	case '\u2212', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014': // minus, hyphens, dashes
		return "-"
	case '\u2044', '\u2215': // fraction slash, division slash
		return "/"
	case '\u03bc': // Greek mu; the micro sign stays
		return "µ"
	case '′', '’', '‘', 'ʹ', '´', '`':
		return "'"
	case '″', '“', '”', '„', 'ʺ', '˝':
		return `"`
	case '²':
		return "^2"
	case '³':
		return "^3"
	case '¹':
		return "^1"
	case '⁻':
		return "^-"
	case '·', '⋅', '∙', '•':
		return "."
	case 'º', '˚':
		return "°"
	case '℃':
		return "°C"
	case '℉':
		return "°F"
	case 'Ω', '\u2126': // Greek omega, ohm sign
		return "ohm"
	case 'ℓ':
		return "l"
	case '％':
		return "%"
	case '，':
		return ","
	}
	return ""
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
			b = append(b, foldRune(unicode.ToLower(r))...)
		}
	}
	return string(b)
}

// foldRune folds a small letter or sign outside ASCII.
func foldRune(r rune) string {
	switch r {
	case 'µ', 'μ': // the small letter of the micro sign may be either
		return "u"
	case '°':
		return "deg"
	}
	if plain := Plain(r); plain != "" {
		return plain
	}
	return string(r)
}
