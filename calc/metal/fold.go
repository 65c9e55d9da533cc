package metal

import (
	"strings"
	"unicode"
)

// A text may have so many letters and words to be a name; the catalogue's longest
// has about half. What is longer is no name and is not looked at.
const (
	longestQuery = 80 // runes
	mostWords    = 16
)

// fold brings a text to the letters that names are compared in: lower case
// without accents, look-alikes of other scripts and full-width letters as
// ASCII, every dash a hyphen, every slash a slash, what is neither letter,
// digit nor a mark of a number a blank.
func fold(text string) string {
	var b strings.Builder
	b.Grow(len(text))
	text = endings.Replace(strings.ToLower(text))
	for _, r := range text {
		switch s, special := foldings[r]; {
		case special:
			b.WriteString(s)
		case r >= 0xFF01 && r <= 0xFF5E: // full width
			b.WriteRune(unicode.ToLower(r - 0xFF01 + '!'))
		case unicode.Is(unicode.Mn, r): // a combining accent
		case unicode.IsLetter(r) || unicode.IsDigit(r) || strings.ContainsRune("./,%:;+-", r):
			b.WriteRune(r)
		default:
			b.WriteByte(' ')
		}
	}
	return strings.TrimSpace(b.String())
}

// endings are replaced before letters are folded one by one: a possessive
// belongs to its word, as an elided article does not; and an accent tells what is
// only coated or coloured ("cuivré", "plaqué") from the metal ("cuivre") and the
// sheet ("plaque").
var endings = strings.NewReplacer("'s", "s", "’s", "s", "´s", "s", "`s", "s",
	"plaqué", "plated ", "argenté", "plated ", "cuivré", "plated ", "bronzé", "plated ", "laitonné", "plated ", "doré", "dore ")

// foldings are the runes that stand for other letters.
var foldings = func() map[rune]string {
	m := map[rune]string{'ß': "ss", 'æ': "ae", 'œ': "oe", 'ı': "i", '⁄': "/", '∕': "/", '÷': "/", '٪': "%", '·': ".", '：': ":"}
	for letters, to := range map[string]string{
		"àáâãäåāăą": "a", "çćč": "c", "ďđ": "d", "èéêëēĕėęě": "e", "ìíîïīĭį": "i", "ñńň": "n", "òóôõöøōŏő": "o",
		"řŕ": "r", "śšş": "s", "ťţ": "t", "ùúûüūŭůű": "u", "ýÿ": "y", "źżž": "z", "łľ": "l",
		// Cyrillic and Greek letters of the same shape.
		"аα": "a", "вβ": "b", "с": "c", "еε": "e", "һ": "h", "іι": "i", "ј": "j", "кκ": "k", "м": "m", "ոη": "n", "оο": "o", "рρ": "p", "ѕ": "s", "тτ": "t", "υ": "u", "ν": "v", "хχ": "x", "уγ": "y", "ζ": "z",
		"‐‑‒–—―−_": "-",
	} {
		for _, r := range letters {
			m[r] = to
		}
	}
	return m
}()

// words splits a folded text into words and numbers. A mark stays within a
// number that it stands inside of, as a point. Words that only join others are
// left out, and so is "er" after a number ("835er").
func words(folded string) []string {
	var list []string
	rest := folded
	for {
		rest = strings.TrimLeftFunc(rest, isMark)
		if rest == "" {
			return withoutJoints(list)
		}
		n := wordLength(rest)
		w := strings.ReplaceAll(rest[:n], ",", ".")
		if number, ok := strings.CutSuffix(w, "er"); ok && isNumber(number) {
			w = number
		}
		list = append(list, w)
		rest = rest[n:]
	}
}

func isMark(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }

// wordLength is how many bytes the first word has: up to the first mark that
// does not stand between two digits as a decimal mark does.
func wordLength(s string) int {
	for i, r := range s {
		if !isMark(r) {
			continue
		}
		decimal := (r == '.' || r == ',') && i > 0 && isDigit(s[i-1]) && i+1 < len(s) && isDigit(s[i+1])
		if !decimal {
			return i
		}
	}
	return len(s)
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

func isNumber(w string) bool {
	for i := range len(w) {
		if !isDigit(w[i]) && w[i] != '.' && w[i] != ',' {
			return false
		}
	}
	return w != "" && strings.ContainsAny(w, "0123456789")
}

// withoutJoints drops the small words that names in five languages are joined
// by. A letter that ends a name is a grade ("phosphor bronze D") and stays.
func withoutJoints(list []string) []string {
	kept := list[:0]
	for i, w := range list {
		letter := len(w) == 1 && i == len(list)-1
		if !joints[w] || letter {
			kept = append(kept, w)
		}
	}
	return kept
}

// code is a grade as grades are compared: without blanks and marks, and with
// the figures that letters are taken for.
func code(list []string) string {
	var b strings.Builder
	for _, w := range list {
		for _, r := range w {
			switch r {
			case '.', ',':
			case 'o':
				b.WriteByte('0')
			case 'i', 'l':
				b.WriteByte('1')
			default:
				b.WriteRune(r)
			}
		}
	}
	return b.String()
}
