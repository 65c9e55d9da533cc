package metal

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// mostHits is how many metals Find offers.
const mostHits = 8

// Hit is a metal that a text may name, and why.
type Hit struct {
	Metal  *Metal
	Why    string // "name", "German name", "grade", "composition", "sounds like …", "short for …", "begins like …"
	Remark string // the metal's own: what to know before choosing it
}

func hit(c call) Hit { return Hit{c.metal, c.why, c.metal.Remark} }

// Find lists at most eight metals that a text may name, the likeliest first, each
// once; the list is empty when nothing is near. The first is what Understand
// takes the text for. The beginning of a name is completed where it can mean
// nothing else. A composition that is not in the catalogue is a single hit, whose
// id is its symbol ("Cu79Zn21").
func Find(query string) []Hit {
	x := theIndex()
	calls, mixture, err := x.look(query)
	var list []Hit
	switch {
	case mixture != nil:
		return []Hit{{mixture, "composition", mixture.Remark}}
	case err != nil:
		list = x.begun(query)
	default:
		list = append(list, hit(calls[0]))
		list = append(list, rivals(calls)...)
		list = append(list, relatives(calls[0])...)
	}
	return distinct(list)
}

// distinct keeps the first hit of each metal, and mostHits in all.
func distinct(list []Hit) []Hit {
	kept := []Hit{}
	for _, h := range list {
		had := slices.ContainsFunc(kept, func(k Hit) bool { return k.Metal == h.Metal })
		if !had && len(kept) < mostHits {
			kept = append(kept, h)
		}
	}
	return kept
}

// How many letters of one word, or of several, must be typed before they are
// completed.
const (
	completeFrom      = 6
	completeWordsFrom = 7
)

// own are the words of names that share their beginning with no other word: these
// are completed letter by letter.
var own = set("sterling gunmetal cupronickel shibuichi shakudo pinchbeck neusilber feinsilber sterlingsilber princisbecco")

// begun completes a name: one of own as soon as completeFrom letters are typed;
// or a name of several words as soon as the second word is begun, unless the words
// before it are already a name. "nickel s" is nickel silver, "nickel" is nickel.
func (x *index) begun(query string) []Hit {
	if len(query) > longestQuery*utf8.UTFMax {
		return nil
	}
	list := words(fold(query))
	typed := strings.Join(list, " ")
	letters := utf8.RuneCountInString(strings.Join(list, ""))
	if letters < completeFrom || len(list) > 1 && letters < completeWordsFrom {
		return nil
	}
	head, last := list[:len(list)-1], list[len(list)-1]
	if x.strangers().others[last] != "" || len(head) > 0 && (shapes[head[0]] || x.inOrder(head) != nil) {
		return nil
	}
	var longer []whole
	for _, w := range x.wholes {
		if continues(w.folded, typed, len(list)) {
			longer = append(longer, w)
		}
		// The shortest name is the most usual; of equals, the first in the catalogue.
		for i := len(longer) - 1; i > 0 && len(longer[i].folded) < len(longer[i-1].folded); i-- {
			longer[i], longer[i-1] = longer[i-1], longer[i]
		}
	}
	var hits []Hit
	for _, w := range longer {
		hits = append(hits, Hit{w.metal, "begins like " + w.name, w.metal.Remark})
	}
	return hits
}

// continues says that a name starts with what was typed and goes on within the
// same word.
func continues(whole, typed string, n int) bool {
	rest, ok := strings.CutPrefix(whole, typed)
	if !ok || rest == "" || rest[0] == ' ' {
		return false
	}
	return n > 1 || own[whole]
}
