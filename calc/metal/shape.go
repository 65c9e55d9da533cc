package metal

import (
	"slices"
	"strings"
)

// withoutShapes drops the words that say in what form a metal comes or what is
// to be done with it, and sizes; all of them if there is nothing else.
func withoutShapes(list []string) []string {
	silver := slices.Contains(list, "sterling") || slices.Contains(list, "silver") && !slices.Contains(list, "nickel")
	var kept []string
	for i := 0; i < len(list); i++ {
		w := list[i]
		switch n := sizeLength(list[i:]); {
		case n > 0:
			i += n - 1
		case silver && strings.HasPrefix(w, "plate"): // silver plate is a coat on another metal
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

// sizeLength is how many words of the beginning are a size: "18 ga", "18ga",
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

// isSize says that a word is figures with a unit at their end, or figures
// multiplied.
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
		if head, ok := strings.CutSuffix(w, tail); ok && len(head) >= len("kupfer")-1 {
			return head
		}
	}
	return w
}

// withoutSizes drops sizes from a folded text ("0.8 mm", "18 ga"), whose numbers
// are no shares.
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
