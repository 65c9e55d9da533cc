package metal

import (
	"strings"
	"unicode/utf8"
)

// gap is a word of a name, and what the name calls.
type gap struct {
	call
	word string
	last bool // no word of the name comes after it
}

// gaps leads from names of several words without one of their words to that word:
// from "* metal" to "muntz" of "Muntz metal", and to others.
type gaps struct{ at map[string][]gap }

// withGaps makes the gaps. Numbers are left out, since a number is right or wrong,
// and so are words for shapes, except metal.
func (x *index) withGaps() *gaps {
	all := make(map[string][]gap, 2*manyNames)
	for _, p := range x.phrases {
		list := strings.Fields(p.folded)
		for i, w := range list {
			if len(w) >= shortestGap && !strings.ContainsAny(w, "0123456789") && !shapes[w] || w == "metal" {
				key := withGap(list, i)
				all[key] = append(all[key], gap{p.call, w, i == len(list)-1})
			}
		}
	}
	return &gaps{all}
}

// withGap joins words, with a star for one of them.
func withGap(list []string, at int) string {
	var b strings.Builder
	for i, w := range list {
		if i > 0 {
			b.WriteByte(' ')
		}
		if i == at {
			w = "*"
		}
		b.WriteString(w)
	}
	return b.String()
}

// nearly finds names of several words of which all but one are right, and that one
// has a slip or is cut short: "munz metal", "phos bronze". Since the other words
// confirm the name, the word may be shorter than those that are corrected by
// themselves. A word that means something else is never taken for a slip.
func (x *index) nearly(list []string) []call {
	if len(list) < 2 || len(list) > longestMisspelt {
		return nil
	}
	for at, typed := range list {
		if s := x.strangers(); s.fixed[typed] || len(typed) < shortestGap {
			continue
		}
		var slipped, cut []call
		for _, g := range x.gapsOf().at[withGap(list, at)] {
			switch {
			case g.isSlip(typed):
				slipped = addCall(slipped, g.call, "sounds like ")
			case !g.last && len(typed) >= shortestCut && strings.HasPrefix(g.word, typed):
				cut = addCall(cut, g.call, "short for ")
			}
		}
		if slipped == nil {
			slipped = cut
		}
		if slipped != nil {
			return slipped
		}
	}
	return nil
}

// How short the one word may be, and what is left of one that is cut short.
const (
	shortestGap = 3
	shortestCut = 4
)

// addCall adds a call, with its reason, unless its metal is called already.
func addCall(calls []call, c call, why string) []call {
	for _, had := range calls {
		if had.metal == c.metal {
			return calls
		}
	}
	c.why = why + c.name
	return append(calls, c)
}

// isSlip says that a word may be a slip for the word of the gap: two letters are
// swapped, or a letter is doubled or left out of a double; in an English name,
// whose everyday neighbours are listed, also any slip in a word of four letters or
// more that leaves the first letter right.
func (g *gap) isSlip(typed string) bool {
	n, m := utf8.RuneCountInString(typed), utf8.RuneCountInString(g.word)
	switch {
	case typed == g.word || strings.Contains(everyday, " "+typed+" "):
		return false
	case swapped(typed, g.word) || undoubled(typed) == undoubled(g.word) && max(n, m)-min(n, m) == 1:
		return true
	}
	english := g.why == "name" || g.why == "grade"
	return english && m >= 4 && slips(typed, g.word, n, m, 1) == 1
}

// undoubled is a word with one letter for every run of the same letter.
func undoubled(w string) string {
	b := make([]byte, 0, len(w))
	for i := range len(w) {
		if i == 0 || w[i] != w[i-1] {
			b = append(b, w[i])
		}
	}
	return string(b)
}
