package metal

import (
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/agnivade/levenshtein"
)

// A word under six letters is taken as it stands, or for one of these four, a
// letter away; in a phrase that is otherwise right, five letters are enough.
const (
	spellableAlone  = 6
	spellableAmong  = 5
	twoSlipsFrom    = 9 // letters from which two slips are forgiven
	anyFirstLetter  = 8 // letters from which the first may be the slip
	mostSpellings   = 4 // of one word that are tried
	mostCorrections = 2 // words of a phrase that are corrected at once
)

var staples = []string{"brass", "copper", "bronze", "silver"}

// spellable is the list of words that a misspelt one is compared with, in the
// catalogue's order: long words of names, and names run together.
func (x *index) spellable() []string {
	var list []string
	had := map[string]bool{}
	take := func(w string) {
		if utf8.RuneCountInString(w) >= spellableAlone && !isNumber(w) && !strings.ContainsAny(w, "0123456789") && !had[w] {
			had[w] = true
			list = append(list, w)
		}
	}
	take("copper")
	list = append(list, "brass")
	for m := range All() {
		for _, name := range append([]string{m.Name}, slices.Concat(m.Names[:]...)...) {
			w := words(fold(name))
			for _, one := range w {
				take(one)
			}
			take(strings.Join(w, ""))
		}
	}
	return list
}

// spelling is a word that may have been meant, and how many slips away it is.
type spelling struct {
	word  string
	slips int
}

// spellings lists what a word may have been meant for, nearest first, in the
// vocabulary's order among equals; alone says that the word is all there is.
func (x *index) spellings(word string, alone bool) []spelling {
	n := utf8.RuneCountInString(word)
	if x.known[word] || strings.ContainsAny(word, "0123456789") {
		return nil
	}
	var near []spelling
	for _, v := range x.vocabulary {
		staple := slices.Contains(staples, v)
		if !staple && (n < spellableAmong || alone && n < spellableAlone) {
			continue
		}
		if d, ok := slips(word, v, n); ok {
			near = append(near, spelling{v, d})
		}
	}
	slices.SortStableFunc(near, func(a, b spelling) int { return a.slips - b.slips })
	return near[:min(len(near), mostSpellings)]
}

// slips counts letters wrong, missing or too many between a word of n letters
// and one of the vocabulary, two neighbours swapped as one; ok says that they
// are few enough for words of that length. The first letter is right: that
// keeps grass from being brass.
func slips(word, v string, n int) (d int, ok bool) {
	m := utf8.RuneCountInString(v)
	allowed := 1
	if min(n, m) >= twoSlipsFrom {
		allowed = 2
	}
	if m-n > allowed || n-m > allowed {
		return 0, false
	}
	if word[0] != v[0] && n < anyFirstLetter && !swapped(word, v) {
		return 0, false
	}
	if swapped(word, v) {
		return 1, true
	}
	d = levenshtein.ComputeDistance(word, v)
	return d, d <= allowed
}

// swapped says that two words differ by two neighbouring letters changing
// places, which the distance counts as two slips.
func swapped(a, b string) bool {
	if len(a) != len(b) {
		return false
	}
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	return i+1 < len(a) && a[i] == b[i+1] && a[i+1] == b[i] && a[i+2:] == b[i+2:]
}

// corrections yields a list of words with up to mostCorrections of them
// corrected, and how many slips that forgives. Every word that is not known
// must be corrected for a phrase to be one.
func (x *index) corrections(list []string, try func(corrected []string, slips int)) {
	options := make([][]spelling, len(list))
	unknown := 0
	for i, w := range list {
		if x.known[w] || isNumber(w) {
			continue
		}
		unknown++
		options[i] = x.spellings(w, len(list) == 1)
		if len(options[i]) == 0 || unknown > mostCorrections {
			return
		}
	}
	if unknown == 0 {
		return
	}
	var walk func(at, forgiven int, chosen []string)
	walk = func(at, forgiven int, chosen []string) {
		if at == len(list) {
			try(chosen, forgiven)
			return
		}
		if options[at] == nil {
			walk(at+1, forgiven, append(chosen, list[at]))
		}
		for _, o := range options[at] {
			walk(at+1, forgiven+o.slips, append(chosen, o.word))
		}
	}
	walk(0, 0, make([]string, 0, len(list)))
}
