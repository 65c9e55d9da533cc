package metal

import (
	"math/bits"
	"strings"
	"unicode/utf8"

	"github.com/agnivade/levenshtein"
)

// How far a word may be from what was meant. One under six letters is taken as
// it stands, or for one of the staples, a letter away; beside other words that
// are right, five letters are enough.
const (
	spellableAlone  = 6
	spellableAmong  = 5
	twoSlipsFrom    = 9 // letters from which two slips are forgiven
	anyFirstLetter  = 8 // letters from which the first may be the one slip
	mostSpellings   = 4 // of one word that are tried
	mostCorrections = 2 // words of a phrase that are corrected at once
	longestMisspelt = 6 // words of a phrase of which some are
)

var staples = set("brass copper bronze silver")

// spellable is a word that a misspelt one is compared with.
type spellable struct {
	word   string
	n      int     // letters
	which  letters // to see at a glance that a word is too far off
	staple bool
	run    bool // a name of several words run together
}

// letters is a set of the letters a to z.
type letters uint32

// lettersOf is kept out of its callers for the size of the program.
//
//go:noinline
func lettersOf(w string) (l letters) {
	for i := range len(w) {
		if c := w[i] - 'a'; c < 26 {
			l |= 1 << c
		}
	}
	return l
}

// apart is how many slips it takes at least to turn words of these letters into
// each other: one for each letter that only the one or only the other has.
func (l letters) apart(other letters) int {
	return max(bits.OnesCount32(uint32(l&^other)), bits.OnesCount32(uint32(other&^l)))
}

// strangers tell what a text may be that calls no metal by its name: a name that
// is misspelt, or another thing.
type strangers struct {
	vocabulary []spellable     // what a misspelt word is compared with
	known      map[string]bool // words of names
	fixed      map[string]bool // words that mean something else, and are never misspelt ones

	others       map[string]string // other things, see others.go
	longestOther int               // in words
	guesses      []spellable       // their names of one long word
}

func newStrangers(names []whole) *strangers {
	x := &strangers{known: make(map[string]bool, manyNames), fixed: map[string]bool{}}
	x.others, x.longestOther = otherThings()
	for _, list := range []map[string]bool{joints, shapes, lookAlikes} {
		for w := range list {
			x.fixed[w] = true
		}
	}
	for name := range x.others {
		for w := range strings.FieldsSeq(name) {
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

// addSpellable enters the staples, the long words of names and Spanish brass,
// which the French write longer, and names run together, in the catalogue's
// order.
func (x *strangers) addSpellable(names []whole) {
	had := map[string]bool{}
	for _, w := range names {
		for one := range strings.FieldsSeq(w.folded) {
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
	x.vocabulary = append(x.vocabulary, spellable{w, n, lettersOf(w), staples[w], run})
}

// spelling is a word that may have been meant, and how many slips away it is.
type spelling struct {
	word  string
	slips int
}

// spellings lists what a word may have been meant for, nearest first, in the
// vocabulary's order among equals; alone says that the word is all there is.
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
	near = append(near, far...)
	return near[:min(len(near), mostSpellings)]
}

// slips counts letters wrong, missing or too many between two words of n and m
// letters, two neighbours swapped as one; words that are further apart than
// allowed count as allowed + 1. The first letter is right in all but long words:
// that keeps grass from being brass.
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

// corrections tries a list of words with up to mostCorrections of them
// corrected, and says how many slips that forgives. A word of no name must be
// corrected; a word of one may be, since names are mixed ("sterling silber").
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
