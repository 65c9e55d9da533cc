package metal

import (
	"slices"
	"strings"
)

// withoutShapes is the words as they stand; then, where several of them say in
// what form a metal comes or what is to be done with it, the words without those
// and without sizes but with one such word kept, each in turn, since it may be part
// of a name ("engraving grade brass"); last the words without any of them.
func withoutShapes(list []string) (forms [][]string) {
	forms = append(forms, list)
	isShape := func(w string) bool { return shapes[w] }
	first := slices.IndexFunc(list, isShape)
	if several := first >= 0 && slices.ContainsFunc(list[first+1:], isShape); several {
		for i, w := range list {
			if shapes[w] {
				forms = append(forms, dropShapes(list, i))
			}
		}
	}
	if bare := dropShapes(list, -1); !slices.Equal(bare, list) {
		forms = append(forms, bare)
	}
	return forms
}

// dropShapes drops the words that say in what form a metal comes or what is to be
// done with it, and sizes, but keeps the word at one place; it drops nothing if
// nothing would be left.
func dropShapes(list []string, keep int) []string {
	silver := slices.Contains(list, "sterling") || slices.Contains(list, "silver") && !slices.Contains(list, "nickel")
	var kept []string
	for i := 0; i < len(list); i++ {
		w := list[i]
		switch n := sizeLength(list[i:]); {
		case n > 0:
			i += n - 1
		case i == keep || silver && strings.HasPrefix(w, "plate"): // silver plate is a coat on another metal
			kept = append(kept, w)
		case !shapes[w] && !isTemper(w):
			kept = append(kept, withoutTail(w))
		}
	}
	if len(kept) == 0 {
		return list
	}
	return kept
}

// sizeLength is how many words at the beginning are a size: "18 ga", "18ga",
// "0.8 mm", "1 1/16 in", "6 x 12 in", "100x50mm".
func sizeLength(list []string) int {
	const most = 5
	for n, w := range list {
		switch {
		case n == 0 && isSize(w):
			return 1
		case n > 0 && sizes[w]:
			return n + 1
		case n > 0 && w == "x" || n < most && isNumber(strings.ReplaceAll(w, "/", "")):
			continue
		}
		return 0
	}
	return 0
}

// isTemper says that a word is a temper: "R300", "H04", "F37".
func isTemper(w string) bool {
	figures := strings.TrimLeft(w, "rhf")
	switch {
	case len(w) != len(figures)+1 || !isNumber(figures) || strings.Contains(figures, "."):
		return false
	case w[0] == 'r':
		return len(figures) == 3
	case w[0] == 'h':
		return len(figures) == 2 && figures[0] == '0' // H62 is a brass
	}
	return len(figures) == 2
}

// isSize says that a word is a number with its unit, or several with x between.
func isSize(w string) bool {
	figures := strings.TrimRight(w, "abcdefghijklmnopqrstuvwyz")
	if figures == w {
		return isNumber(strings.ReplaceAll(w, "x", "")) && strings.Contains(w, "x")
	}
	return sizes[w[len(figures):]] && isNumber(strings.ReplaceAll(figures, "x", ""))
}

// withoutTail drops the form that German joins to a metal ("Neusilberblech").
func withoutTail(w string) string {
	for _, tail := range tails {
		if head, ok := strings.CutSuffix(w, tail); ok && len(head) >= len("kupfer") {
			return head
		}
	}
	return w
}

// withoutSizes drops sizes from a folded text ("0.8 mm", "18 ga"): their numbers are
// not shares.
func withoutSizes(folded string) string {
	list := strings.Fields(folded)
	var kept []string
	for i := 0; i < len(list); i++ {
		if n := sizeLength(list[i:]); n > 0 {
			i += n - 1
			continue
		}
		kept = append(kept, list[i])
	}
	return strings.Join(kept, " ")
}
