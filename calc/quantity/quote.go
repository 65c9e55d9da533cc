package quantity

// Quote puts what was typed between quotation marks, its first 40 characters.
func Quote(text string) string { return "“" + Shorten(text) + "”" }

// Shorten is a text's first 40 characters, and a sign where there were more.
func Shorten(text string) string {
	const most = 40
	n := 0
	for at := range text {
		if n == most {
			return text[:at] + "…"
		}
		n++
	}
	return text
}
