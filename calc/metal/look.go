package metal

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// look finds what a text calls by name, the likeliest first; or the mixture it
// describes. It tries, in this order, and stops at what it finds:
//
//	the text as a grade, as a name, as a name run together or apart
//	the text as a composition
//	the same without the words for shape and size ("brass sheet", "18 ga brass")
//	its words in another order
//	a name or a grade with other words that belong to the same metal ("brass C260")
//	the same again with a word or two corrected
func (x *index) look(text string) (calls []call, mixture *Metal, err error) {
	if len(text) > longestQuery*utf8.UTFMax || utf8.RuneCountInString(text) > longestQuery {
		return nil, nil, &Unknown{Typed: text}
	}
	folded := fold(text)
	list := words(folded)
	if len(list) == 0 || len(list) > mostWords {
		return nil, nil, &Unknown{Typed: text}
	}
	bare := withoutShapes(list)
	if calls := x.inOrder(list); calls != nil {
		return calls, nil, nil
	}
	if c, ok := readComposition(withoutSizes(folded)); ok {
		return c.resolve(text)
	}
	if calls := x.called(list, bare); calls != nil {
		return calls, nil, nil
	}
	if calls := x.corrected(list, bare); calls != nil {
		return calls, nil, nil
	}
	return nil, nil, &Unknown{Typed: text, What: x.strangers().other(list)}
}

// inOrder finds a grade or a name that is these words in this order, with or
// without blanks between.
func (x *index) inOrder(list []string) []call {
	if calls := x.graded(list); calls != nil {
		return calls
	}
	if calls := x.names.at[strings.Join(list, " ")]; calls != nil {
		return calls
	}
	return x.joined().at[strings.Join(list, "")]
}

// called finds a name or grade in the words of a text, all of which belong to it.
func (x *index) called(list, bare []string) []call {
	if calls := x.inOrder(bare); calls != nil {
		return calls
	}
	for _, l := range [][]string{list, bare} {
		if calls := x.bags().at[bag(l)]; calls != nil {
			return calls
		}
	}
	if calls := x.within(bare, bare); calls != nil {
		return calls
	}
	return x.within(list, list)
}

// corrected is called with misspelt words corrected. Of several corrections the
// one with the fewest slips is taken, of equals the first in the catalogue. A
// word corrected to one for a shape is none: "silver gravel" is no graver's silver.
func (x *index) corrected(list, bare []string) []call {
	var best []call
	fewest := 0
	for _, l := range [][]string{list, bare} {
		x.strangers().corrections(l, func(right []string, slips int) {
			if best != nil && slips >= fewest {
				return
			}
			calls := x.inOrder(right)
			if calls == nil {
				calls = x.bags().at[bag(right)]
			}
			if calls == nil {
				calls = x.within(right, l)
			}
			if calls != nil {
				best, fewest = soundsLike(calls), slips
			}
		})
	}
	return best
}

func soundsLike(calls []call) []call {
	calls = slices.Clone(calls)
	for i := range calls {
		calls[i].why = "sounds like " + calls[i].name
	}
	return calls
}

// within finds a name or grade that stands among words which all belong to the
// same metal: words of its names, or more names and grades. The longest stretch
// that names one decides, of equals a grade. A word that was typed otherwise may
// be part of a name, but bears none out.
func (x *index) within(list, typed []string) []call {
	for n := len(list) - 1; n > 0; n-- {
		var named []call
		for at := 0; at+n <= len(list); at++ {
			var own []call
			for _, c := range x.inOrder(list[at : at+n]) {
				if x.belong(c.metal, list[:at], typed[:at]) && x.belong(c.metal, list[at+n:], typed[at+n:]) {
					c.amid = true
					own = append(own, c)
				}
			}
			if own != nil && (named == nil || named[0].why != "grade" && own[0].why == "grade") {
				named = own
			}
		}
		if named != nil {
			return named
		}
	}
	return nil
}

// belong says that words occur in a metal's names, as typed, or are more names or
// grades of it ("C26000 / CW505L").
func (x *index) belong(m *Metal, list, typed []string) bool {
	fits := make([]bool, len(list)+1) // the words up to there belong
	fits[0] = true
	for end := 1; end <= len(list); end++ {
		fits[end] = fits[end-1] && x.isWordOf(m, typed[end-1])
		for at := 0; at < end && !fits[end]; at++ {
			fits[end] = fits[at] && slices.ContainsFunc(x.inOrder(list[at:end]), func(c call) bool { return c.metal == m })
		}
	}
	return fits[len(list)]
}
