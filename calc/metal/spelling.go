package metal

import (
	"math/bits"
	"strings"
	"unicode/utf8"

	"github.com/agnivade/levenshtein"
)

// How far a word may be from the word that was meant. A word under six letters,
// or under five beside others that are right, is corrected only to one of the
// staples (see nearly for short words of names).
const (
	spellableAlone  = 6
	spellableAmong  = 5
	twoSlipsFrom    = 9 // letters from which two slips are forgiven
	anyFirstLetter  = 8 // letters from which the first may be the one slip
	mostSpellings   = 4 // of one word that are tried
	mostCorrections = 2 // words of a phrase that are corrected at once
	longestMisspelt = 6 // words of a phrase that is corrected
)

var staples = set("brass copper bronze silver ottone")

// spellable is a word that a misspelt one is compared with.
type spellable struct {
	word   string
	n      int     // letters
	which  letters // shows quickly that a word is too far off
	staple bool
	run    bool // a name of several words run together
}

// letters is a set of the letters a to z.
type letters uint32

// lettersOf is the letters of a word; what is not a to z is left out.
func lettersOf(w string) (l letters) {
	for i := range len(w) {
		if c := w[i] - 'a'; c < 26 {
			l |= 1 << c
		}
	}
	return l
}

// apart is the least number of slips between two words of these letters: one for
// each letter that only one of them has.
func (l letters) apart(other letters) int {
	return max(bits.OnesCount32(uint32(l&^other)), bits.OnesCount32(uint32(other&^l)))
}

// strangers tell what a text may mean that is not a name in the catalogue: a name
// that is misspelt, or another material.
type strangers struct {
	vocabulary []spellable     // what a misspelt word is compared with
	withPh     []string        // those of them that are written with ph
	known      map[string]bool // words of names
	fixed      map[string]bool // words that mean something else and are never corrected

	others       map[string]string // other metals and things by name, see others.go
	longestOther int               // in words
	guesses      []spellable       // names of others that are one long word
}

func newStrangers(names []whole) *strangers {
	x := &strangers{known: make(map[string]bool, manyNames), fixed: map[string]bool{}}
	x.others, x.longestOther = othersByName()
	for _, list := range []map[string]bool{joints, shapes, lookAlikes} {
		for w := range list {
			x.fixed[w] = true
		}
	}
	for name := range x.others {
		for _, w := range strings.Fields(name) {
			x.fixed[w] = true
		}
		if n := utf8.RuneCountInString(name); n >= guessable && !strings.Contains(name, " ") {
			x.guesses = append(x.guesses, spellable{word: name, n: n, which: lettersOf(name)})
		}
	}
	delete(x.fixed, "silicone") // beside bronze it is meant for silicon
	x.addSpellable(names)
	return x
}

// addSpellable enters, in the catalogue's order, the staples, the long words of
// names, the Spanish word for brass, and names without their blanks.
func (x *strangers) addSpellable(names []whole) {
	had := map[string]bool{}
	for _, w := range names {
		for _, one := range strings.Fields(w.folded) {
			x.known[one] = true
			x.addOneSpellable(one, false, had)
		}
	}
	for _, w := range names {
		x.addOneSpellable(strings.ReplaceAll(w.folded, " ", ""), true, had)
	}
}

func (x *strangers) addOneSpellable(w string, run bool, had map[string]bool) {
	n := utf8.RuneCountInString(w)
	if had[w] || n < spellableAlone && !staples[w] && w != "laton" || strings.ContainsAny(w, "0123456789") {
		return
	}
	had[w] = true
	if strings.Contains(w, "ph") {
		x.withPh = append(x.withPh, w)
	}
	x.vocabulary = append(x.vocabulary, spellable{w, n, lettersOf(w), staples[w], run})
}

// spelling is a word that may have been meant, and its distance in slips.
type spelling struct {
	word  string
	slips int
}

// spellings lists the words that may have been meant by a misspelt one, nearest
// first, and among equals in the vocabulary's order; alone says that the text has
// no other word.
func (x *strangers) spellings(word string, alone bool) []spelling {
	n := utf8.RuneCountInString(word)
	if x.fixed[word] || strings.ContainsAny(word, "0123456789") {
		return nil
	}
	short := n < spellableAmong || alone && n < spellableAlone
	which := lettersOf(word)
	var near, far []spelling // one slip away, two
	for _, v := range x.vocabulary {
		allowed := 1
		if min(n, v.n) >= twoSlipsFrom && !v.run {
			allowed = 2
		}
		if !v.staple && (short || min(n, v.n) < spellableAmong || max(n, v.n) < spellableAlone) || which.apart(v.which) > allowed || word == v.word {
			continue
		}
		switch d := slips(word, v.word, n, v.n, allowed); {
		case d > allowed:
		case d == 1:
			near = append(near, spelling{v.word, d})
		default:
			far = append(far, spelling{v.word, d})
		}
	}
	for _, w := range x.withPh {
		if w != word && withoutPh(w) == withoutPh(word) {
			near = append(near, spelling{w, 1}) // "phosfor"
		}
	}
	near = append(near, far...)
	return near[:min(len(near), mostSpellings)]
}

// withoutPh is a word with f for ph, which some languages write.
func withoutPh(w string) string { return strings.ReplaceAll(w, "ph", "f") }

// slips is the distance between two words of n and m letters: each letter that is
// wrong, missing or too many counts one, two swapped neighbours count one together.
// Words further apart than allowed count as allowed + 1. The first letter must be
// right in all but long words, so that grass is not brass.
func slips(a, b string, n, m, allowed int) int {
	switch {
	case m-n > allowed || n-m > allowed:
		return allowed + 1
	case swapped(a, b):
		return 1
	case a[0] == b[0]:
		return min(levenshtein.ComputeDistance(a, b), allowed+1)
	case n >= anyFirstLetter && levenshtein.ComputeDistance(a, b) == 1:
		return 1
	}
	return allowed + 1
}

// swapped says that two words differ by two neighbouring letters that changed
// places, which Levenshtein's distance counts as two.
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

// corrections calls try with every correction of a list of words, of at most
// mostCorrections words, and with its number of slips. A word that is in no name
// must be corrected. A word of a name may be, since people mix languages
// ("sterling silber").
func (x *strangers) corrections(list []string, try func(corrected []string, slips int)) {
	if len(list) > longestMisspelt {
		return
	}
	options := make([][]spelling, len(list))
	for i, w := range list {
		if x.known[w] || x.fixed[w] || isNumber(w) {
			options[i] = []spelling{{w, 0}}
		}
		options[i] = append(options[i], x.spellings(w, len(list) == 1)...)
		if len(options[i]) == 0 {
			return
		}
	}
	chosen := make([]string, len(list))
	var walk func(at, corrected, forgiven int)
	walk = func(at, corrected, forgiven int) {
		if at == len(list) {
			if corrected > 0 {
				try(chosen, forgiven)
			}
			return
		}
		for _, o := range options[at] {
			chosen[at] = o.word
			if o.slips == 0 {
				walk(at+1, corrected, forgiven)
			} else if corrected < mostCorrections {
				walk(at+1, corrected+1, forgiven+o.slips)
			}
		}
	}
	walk(0, 0, 0)
}
