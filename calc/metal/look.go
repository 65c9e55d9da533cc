package metal

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// look finds the metals that a text names, the likeliest first; or the mixture
// that it describes. It tries the following, in this order, and stops at the first
// that finds something:
//
//	the text as a grade, as a name, as a name run together or apart
//	the same without the words for shape and size ("brass sheet", "18 ga brass")
//	the text as a composition
//	its words in another order
//	a name or a grade with other words that belong to the same metal ("brass C260")
//	the same again with a word or two corrected
//	a name of which one short word is wrong or cut short ("munz metal", "phos bronze")
func (x *index) look(text string) (calls []call, mixture *Metal, err error) {
	if len(text) > longestQuery*utf8.UTFMax || utf8.RuneCountInString(text) > longestQuery {
		return nil, nil, &Unknown{Typed: text}
	}
	folded := withoutThousand(fold(text))
	list := words(folded)
	if len(list) == 0 || len(list) > mostWords {
		return nil, nil, &Unknown{Typed: text}
	}
	certain := withoutVague(list)
	if len(certain) == len(list) {
		return x.lookAmong(list, folded, text)
	}
	calls, mixture, err = x.lookAmong(certain, strings.Join(certain, " "), text)
	calls = slices.Clone(calls)
	for i := range calls {
		calls[i].vague = true
	}
	return calls, mixture, err
}

// lookAmong does the work of look: list are the words of the folded text, and text
// is what an error quotes.
func (x *index) lookAmong(list []string, folded, text string) (calls []call, mixture *Metal, err error) {
	forms := withoutShapes(list)
	ends := [][]string{list}
	if len(forms) > 1 {
		ends = append(ends, forms[len(forms)-1])
	}
	for _, l := range forms {
		if calls := x.inOrder(l); calls != nil {
			return calls, nil, nil
		}
	}
	if calls := x.besideFamily(ends[len(ends)-1]); calls != nil {
		return calls, nil, nil
	}
	if c, ok := readComposition(withoutSizes(folded)); ok {
		return c.resolve(text)
	}
	if calls := x.called(ends); calls != nil {
		return calls, nil, nil
	}
	if calls := x.corrected(ends); calls != nil {
		return calls, nil, nil
	}
	for _, l := range forms {
		if calls := x.nearly(l); calls != nil {
			return calls, nil, nil
		}
	}
	return nil, nil, &Unknown{Typed: text, What: x.strangers().other(list)}
}

// besideFamily finds a grade beside the word for its family ("Messing CuZn39Pb3").
func (x *index) besideFamily(list []string) []call {
	for i, w := range list {
		family := familyOfWord(w)
		if family == "" || len(list) == 1 {
			continue
		}
		calls := x.graded(append(list[:i:i], list[i+1:]...))
		if calls != nil && calls[0].metal.Family.String() == family {
			return calls
		}
	}
	return nil
}

// withoutThousand drops the whole that a fineness is a part of: "925/1000", as
// some write it "925/000".
func withoutThousand(folded string) string {
	if strings.IndexByte(folded, '/') < 0 {
		return folded
	}
	number, rest, cut := strings.Cut(folded, "/1000")
	if !cut {
		number, rest, cut = strings.Cut(folded, "/000")
	}
	if !cut || number == "" || !isDigit(number[len(number)-1]) || rest != "" && isDigit(rest[0]) {
		return folded
	}
	return number + rest
}

// withoutVague drops the words that say that the rest is not known; none of them
// if there is nothing else.
func withoutVague(list []string) []string {
	var kept []string
	for _, w := range list {
		if !vague[w] {
			kept = append(kept, w)
		}
	}
	if len(kept) == 0 {
		return list
	}
	return kept
}

// inOrder finds the grade or name that consists of these words in this order, with
// or without blanks between them.
func (x *index) inOrder(list []string) []call {
	if calls := x.graded(list); calls != nil {
		return calls
	}
	if calls := x.names.at[strings.Join(list, " ")]; calls != nil {
		return calls
	}
	return x.joined().at[strings.Join(list, "")]
}

// called finds a name whose words are in another order, or a name or grade that
// stands among more words of the same metal. lists are the words as typed and, if
// some say a shape, those without them.
func (x *index) called(lists [][]string) []call {
	for _, l := range lists {
		if calls := x.bags().at[bag(l)]; calls != nil {
			return calls
		}
	}
	for i := range lists {
		l := lists[len(lists)-1-i]
		if calls := x.within(l, l); calls != nil {
			return calls
		}
	}
	return nil
}

// corrected finds a name after correcting misspelt words. The correction with the
// fewest slips is taken; of equals, the first in the catalogue. No word is
// corrected to a word for a shape: "silver gravel" is not silver for a graver.
func (x *index) corrected(lists [][]string) []call {
	var best []call
	fewest := 0
	for _, l := range lists {
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

// within finds a name or grade among other words which all belong to the same
// metal: words of its names, or more names and grades of it. The longest name
// decides; of equals, a grade. typed are the words before they were corrected: a
// corrected word may be part of the name, but does not count as one of the others.
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

// belong says that every word occurs in a metal's names as it was typed, or is part
// of another name or grade of it ("C26000 / CW505L").
func (x *index) belong(m *Metal, list, typed []string) bool {
	fits := make([]bool, len(list)+1) // fits[n]: the first n words belong
	fits[0] = true
	for end := 1; end <= len(list); end++ {
		fits[end] = fits[end-1] && x.isWordOf(m, typed[end-1])
		for at := 0; at < end && !fits[end]; at++ {
			fits[end] = fits[at] && slices.ContainsFunc(x.inOrder(list[at:end]), func(c call) bool { return c.metal == m })
		}
	}
	return fits[len(list)]
}
