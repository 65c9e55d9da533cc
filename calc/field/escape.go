package field

import (
	"strings"
	"unicode/utf8"
)

// unescape undoes the escapes of the text form, which are those of
// URLSearchParams (WHATWG URL Standard, "application/x-www-form-urlencoded
// parsing"):
//
//	"+"           a blank
//	"%" hex hex   the byte of that number
//
// A damaged escape is taken as it stands, so that nothing typed is lost, and
// bytes that are no UTF-8 become U+FFFD. net/url does as much, but brings 2 % of
// the shipped program with it.
func unescape(text string) string {
	if !strings.ContainsAny(text, "+%") && utf8.ValidString(text) {
		return text
	}
	plain := make([]byte, 0, len(text))
	for i := 0; i < len(text); i++ {
		c := text[i]
		switch {
		case c == '+':
			c = ' '
		case c == '%' && i+2 < len(text):
			high, low := nibble(text[i+1]), nibble(text[i+2])
			if high >= 0 && low >= 0 {
				c = byte(high<<4 | low)
				i += 2
			}
		}
		plain = append(plain, c)
	}
	if !utf8.Valid(plain) {
		return string([]rune(string(plain)))
	}
	return string(plain)
}

// nibble is the value of a hexadecimal digit, -1 of any other character.
func nibble(c byte) int {
	switch {
	case '0' <= c && c <= '9':
		return int(c - '0')
	case 'a' <= c && c <= 'f':
		return int(c - 'a' + 10)
	case 'A' <= c && c <= 'F':
		return int(c - 'A' + 10)
	}
	return -1
}
