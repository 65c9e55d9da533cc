package metal

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// A text may have so many letters and words to be a name; the catalogue's longest
// has about half. What is longer is no name and is not looked at.
const (
	longestQuery = 80 // runes
	mostWords    = 16
)

// fold brings a text to the letters that names are compared in: lower case
// without accents, look-alikes of other scripts and full-width letters as
// ASCII, every dash a hyphen, every slash a slash, inches after a figure as such,
// what is neither letter, digit nor a mark of a number a blank.
func fold(text string) string {
	if isPlain(text) {
		return foldPlain(text)
	}
	text = replaceAll(strings.ToLower(strings.Map(latin, text)), endings[:])
	var b strings.Builder
	b.Grow(len(text))
	var before rune
	for _, r := range text {
		s := ""
		if r >= utf8.RuneSelf {
			s = foldings[r]
		}
		switch {
		case s != "":
			b.WriteString(s)
		case unicode.Is(unicode.Mn, r): // a combining accent
		case strings.ContainsRune("\"″”", r) && unicode.IsDigit(before):
			b.WriteString(" in ")
		case r < utf8.RuneSelf:
			b.WriteByte(foldByte(byte(r)))
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			b.WriteRune(r)
		default:
			b.WriteByte(' ')
		}
		before = r
	}
	return strings.TrimSpace(b.String())
}

// isPlain says that a text is ASCII and holds no apostrophe and no sign for
// inches, as nearly all do: each of its bytes is folded by itself then.
func isPlain(text string) bool {
	for i := range len(text) {
		if c := text[i]; c >= utf8.RuneSelf || c == '\'' || c == '`' || c == '"' {
			return false
		}
	}
	return true
}

// foldPlain folds a plain text. What is folded already, as most names of the
// catalogue are, is not written anew.
func foldPlain(text string) string {
	for i := range len(text) {
		if foldByte(text[i]) == text[i] {
			continue
		}
		b := []byte(text)
		for ; i < len(b); i++ {
			b[i] = foldByte(b[i])
		}
		text = string(b)
		break
	}
	return strings.TrimSpace(text)
}

// foldByte folds an ASCII letter, digit or mark.
func foldByte(c byte) byte {
	switch {
	case 'A' <= c && c <= 'Z':
		return c - 'A' + 'a'
	case 'a' <= c && c <= 'z' || isDigit(c) || strings.IndexByte("./,%:;+-", c) >= 0:
		return c
	}
	return ' '
}

// latin is the Latin letter that a rune is drawn like, else the rune itself.
// Capitals come before they are made small: Greek capital nu is an N, small nu a v.
func latin(r rune) rune {
	switch {
	case r < utf8.RuneSelf:
		return r
	case r >= 0xFF01 && r <= 0xFF5E: // full width
		return r - 0xFF01 + '!'
	}
	if i := strings.IndexRune(drawnLike, r); i >= 0 {
		return rune(drawn[utf8.RuneCountInString(drawnLike[:i])])
	}
	return r
}

// Greek and Cyrillic letters, and what they are drawn like.
const (
	drawnLike = "\u0391\u0392\u0395\u0396\u0397\u0399\u039a\u039c\u039d\u039f\u03a1\u03a4\u03a5\u03a7" + // Greek capitals
		"\u03b1\u03bd\u03bf\u03c1\u03c4\u03c5\u03c7" + // Greek
		"\u0410\u0412\u0415\u041a\u041c\u041d\u041e\u0420\u0421\u0422\u0423\u0425\u0405\u0406\u0408" + // Cyrillic capitals
		"\u0430\u0435\u043e\u0440\u0441\u0443\u0445\u0455\u0456\u0458" // Cyrillic
	drawn = "ABEZHIKMNOPTYX" + "avoptux" + "ABEKMHOPCTYXSIJ" + "aeopcyxsij"
)

// endings are replaced before letters are folded one by one: a possessive
// belongs to its word, as an elided article does not; and an accent tells what is
// only coated or coloured ("cuivré", "plaqué") from the metal ("cuivre") and the
// sheet ("plaque").
var endings = [...][2]string{{"'s", "s"}, {"’s", "s"}, {"´s", "s"}, {"`s", "s"},
	{"plaqué", "plated "}, {"argenté", "plated "}, {"cuivré", "plated "}, {"bronzé", "plated "}, {"laitonné", "plated "}, {"doré", "dore "}}

// replaceAll replaces the first of each pair by the second, one pair after the
// other.
func replaceAll(text string, pairs [][2]string) string {
	for _, p := range pairs {
		text = strings.ReplaceAll(text, p[0], p[1])
	}
	return text
}

// foldings are the runes that stand for other letters or marks.
var foldings = func() map[rune]string {
	m := map[rune]string{}
	for _, f := range [...]struct{ runes, to string }{
		{"àáâãäåāăą", "a"}, {"çćč", "c"}, {"ďđ", "d"}, {"èéêëēĕėęě", "e"}, {"ìíîïīĭį", "i"}, {"ñńň", "n"},
		{"òóôõöøōŏő", "o"}, {"řŕ", "r"}, {"śšş", "s"}, {"ťţ", "t"}, {"ùúûüūŭůű", "u"}, {"ýÿ", "y"}, {"źżž", "z"}, {"łľ", "l"},
		{"ß", "ss"}, {"æ", "ae"}, {"œ", "oe"}, {"ı", "i"}, {"‐‑‒–—―−_", "-"}, {"⁄∕÷", "/"}, {"·", "."},
	} {
		for _, r := range f.runes {
			m[r] = f.to
		}
	}
	return m
}()

// words splits a folded text into words and numbers. A mark stays within a
// number that it stands inside of, as a point. Words that only join others are
// left out, and so is "er" after a number ("835er").
func words(folded string) []string {
	list := make([]string, 0, 4) // as many as most names have
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

// isMark says that a rune of a folded text is neither letter nor digit.
func isMark(r rune) bool {
	if r < utf8.RuneSelf {
		return !('a' <= r && r <= 'z' || '0' <= r && r <= '9')
	}
	return !unicode.IsLetter(r) && !unicode.IsDigit(r)
}

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
