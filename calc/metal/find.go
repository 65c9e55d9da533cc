package metal

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// mostHits is how many metals Find offers.
const mostHits = 8

// Hit is a metal found, and why.
type Hit struct {
	Metal  *Metal
	Why    string // "name", "German name", "grade", "composition", "sounds like …", "begins like …"
	Remark string // of the metal
}

func hit(c call) Hit { return Hit{c.metal, c.why, c.metal.Remark} }

// Find lists the metals that a text may name, the likeliest first; none when
// nothing is near. While a name is being typed it completes it, but only where
// the beginning can mean nothing else. A composition that is none of the
// catalogue's is one hit, whose id is its symbol.
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
		list = slices.Concat([]Hit{hit(calls[0])}, rivals(calls), relatives(calls[0]))
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

// Completion starts at so many letters of one word, or of several.
const (
	completeFrom      = 6
	completeWordsFrom = 7
)

// own are words that belong to a metal and are the beginning of no other word:
// these are completed letter by letter.
var own = set("sterling gunmetal cupronickel shibuichi shakudo pinchbeck neusilber feinsilber sterlingsilber princisbecco")

// begun completes a name: one of own from completeFrom letters on; or a name of
// two words and more from the first letter of a further word on, unless the words
// before it are a name already. "nickel s" is nickel silver, "nickel" is nickel.
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
		// The shortest name is the commonest, of equals the catalogue's first.
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

// continues says that a name goes on where what was typed stops, within a word.
func continues(whole, typed string, n int) bool {
	rest, ok := strings.CutPrefix(whole, typed)
	if !ok || rest == "" || rest[0] == ' ' {
		return false
	}
	return n > 1 || own[whole]
}
