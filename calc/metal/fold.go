package metal

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"saltbite/calc/quantity"
)

// The longest text that is looked at: about twice the catalogue's longest name.
const (
	longestQuery = 80 // letters
	mostWords    = 16
)

// fold turns a text into the form in which names are compared: small letters
// without accents; ASCII for letters of other scripts that look the same and for
// full-width letters; one kind of hyphen and of slash; "in" for a sign for inches
// after a figure; a blank for all else that is not a letter, a digit or a mark of a
// number.
func fold(text string) string {
	if isPlain(text) {
		return foldPlain(text)
	}
	text = replaceAll(strings.ToLower(inLatin(text)), endings[:])
	var b strings.Builder
	b.Grow(len(text))
	var before rune
	for _, r := range text {
		s := ""
		if r >= utf8.RuneSelf {
			s = foldRune(r)
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

// isPlain says that a text is ASCII and holds no apostrophe and no sign for inches.
// Nearly all texts are plain, and can be folded byte by byte.
func isPlain(text string) bool {
	for i := range len(text) {
		if c := text[i]; c >= utf8.RuneSelf || c == '\'' || c == '`' || c == '"' {
			return false
		}
	}
	return true
}

// foldPlain folds a plain text. A text that is folded already, like most names of
// the catalogue, is not copied.
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

// inLatin is a text with the Latin letters that its letters are drawn like.
func inLatin(text string) string {
	letters := []rune(text)
	for i, r := range letters {
		letters[i] = latin(r)
	}
	return string(letters)
}

// latin is the Latin letter that a rune is drawn like, else the rune itself.
// It must see capitals as they are: Greek capital nu looks like N, small nu like v.
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

// endings are replaced before letters are folded one by one. A possessive belongs
// to its word, and an elided article does not. An accent tells what is only coated
// or coloured ("cuivré", "plaqué") from the metal ("cuivre") and the sheet
// ("plaque"), and Swedish brass from the English word massing.
var endings = [...][2]string{{"'s", "s"}, {"’s", "s"}, {"´s", "s"}, {"`s", "s"},
	{"plaqué", "plated "}, {"argenté", "plated "}, {"cuivré", "plated "}, {"bronzé", "plated "}, {"laitonné", "plated "}, {"doré", "dore "}, {"mässing", "messing"}}

// replaceAll replaces the first of each pair by the second, one pair after the
// other.
func replaceAll(text string, pairs [][2]string) string {
	for _, p := range pairs {
		text = strings.ReplaceAll(text, p[0], p[1])
	}
	return text
}

// foldRune is what a rune outside ASCII stands for, "" if for itself.
func foldRune(r rune) string {
	switch r {
	case '‐', '‑', '‒', '–', '—', '―', '−':
		return "-"
	case '⁄', '∕', '÷':
		return "/"
	case '·':
		return "."
	}
	return quantity.Plain(r)
}

// words splits a folded text into words and numbers. A decimal mark inside a number
// stays, as a point. Joints are left out, and so is "er" after a number ("835er").
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

// withoutJoints drops joints. A single letter at the end of a name is a grade
// ("phosphor bronze D") and stays.
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
