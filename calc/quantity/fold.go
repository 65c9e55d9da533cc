package quantity

// Plain is the plain small letters that an accented or joined Latin letter
// stands for: "e" for É, "ss" for ß, "ae" for æ; "" for every other rune, ASCII
// letters included. It covers what European languages are written with, U+00C0
// to U+017F.
func Plain(r rune) string {
	switch r {
	case 'ß':
		return "ss"
	case 'Æ', 'æ':
		return "ae"
	case 'Œ', 'œ':
		return "oe"
	}
	if i := r - 'À'; i >= 0 && int(i) < len(plainLetters) && plainLetters[i] != ' ' {
		return plainLetters[i : i+1]
	}
	return ""
}

// plainLetters are the letters from À on without their marks; a blank where there
// is no such letter.
const plainLetters = "" +
	"aaaaaa ceeeeiiiidnooooo ouuuuy  " + // À to ß
	"aaaaaa ceeeeiiiidnooooo ouuuuy y" + // à to ÿ
	"aaaaaaccccccccddddeeeeeeeeeegggg" + // Ā to ğ
	"gggghhhhiiiiiiiiii  jjkk lllllll" + // Ġ to Ŀ
	"lllnnnnnn   oooooo  rrrrrrssssss" + // ŀ to ş
	"ssttttttuuuuuuuuuuuuwwyyyzzzzzzs" // Š to ſ
