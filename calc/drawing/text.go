package drawing

import "strings"

// Advance widths in hundredths of the font's size, of the characters from the
// blank to the tilde: of each the widest of DejaVu Sans (measured from the
// font's table) and Arial, Helvetica and Liberation Sans (which agree; from
// memory), so that what fits by this table fits in whatever face a device has.
var (
	plainWidths = [...]uint8{
		32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37, 32, 34,
		64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 56,
		102, 69, 69, 73, 78, 67, 62, 78, 76, 30, 50, 67, 56, 87, 75, 79,
		67, 79, 73, 67, 62, 74, 69, 99, 69, 67, 69, 40, 34, 40, 84, 56,
		50, 62, 64, 55, 64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62,
		64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84,
	}
	strongWidths = [...]uint8{
		35, 46, 53, 84, 70, 101, 88, 31, 46, 46, 53, 84, 38, 42, 38, 37,
		70, 70, 70, 70, 70, 70, 70, 70, 70, 70, 40, 40, 84, 84, 84, 62,
		100, 78, 77, 74, 84, 69, 69, 83, 84, 38, 56, 78, 64, 100, 84, 86,
		74, 86, 78, 73, 69, 82, 78, 111, 78, 73, 73, 46, 37, 46, 84, 56,
		50, 68, 72, 60, 72, 68, 44, 72, 72, 35, 35, 67, 35, 105, 72, 69,
		72, 72, 50, 60, 48, 72, 66, 93, 65, 66, 59, 72, 37, 72, 84,
	}
)

// Widths of what is not in the tables, in ems (from memory): at most this for
// letters with accents and most signs, and that for what fills a square and more.
const (
	letterWidth = 1.05
	squareWidth = 1.4
	firstSquare = '\u2e80' // Chinese, and most that follows
)

// widthOf is how wide a text may be in any face, in the unit of size.
func widthOf(text string, size float64, strong bool) float64 {
	var em float64
	for _, r := range text {
		em += widthOfRune(r, strong)
	}
	return em * size
}

func widthOfRune(r rune, strong bool) float64 {
	if ' ' <= r && r <= '~' {
		if strong {
			return float64(strongWidths[r-' ']) / 100
		}
		return float64(plainWidths[r-' ']) / 100
	}
	switch {
	case r == '²' || r == '³' || r == '°' || r == '–' || r == '’':
		return 0.56
	case r < firstSquare:
		return letterWidth
	}
	return squareWidth
}

// wrap breaks a text into lines that fit a width, between words where it can;
// a word wider than a line is broken within itself.
func wrap(text string, size, width float64, strong bool) (lines []string) {
	line, wide := "", 0.0
	blank := widthOf(" ", size, strong)
	for _, word := range strings.Fields(text) {
		w := widthOf(word, size, strong)
		if line != "" && wide+blank+w <= width {
			line, wide = line+" "+word, wide+blank+w
			continue
		}
		if line != "" {
			lines = append(lines, line)
		}
		for w > width {
			head := headOf(word, size, width, strong)
			lines = append(lines, head)
			word = word[len(head):]
			w = widthOf(word, size, strong)
		}
		line, wide = word, w
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// headOf is the longest beginning of a word that fits, at least one letter.
func headOf(word string, size, width float64, strong bool) string {
	var wide float64
	for i, r := range word {
		wide += widthOfRune(r, strong) * size
		if wide > width && i > 0 {
			return word[:i]
		}
	}
	return word
}
