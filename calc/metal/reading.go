package metal

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// Reading is what a text that names a metal was understood as.
type Reading struct {
	Metal *Metal
	Why   string // "name", "German name", "grade", "composition", "sounds like yellow brass"

	// Rivals are other metals that the same text may mean: "bronze" is a tin
	// bronze or a brass called bronze, C101 a British or an American copper.
	// None for a text that means one metal only.
	Rivals []Hit

	Typed         bool    // a composition that is none of the catalogue's
	DensitySpread float64 // how far off the density may be, as a share of it; 0 for the catalogue's own
}

// Unknown is the error for a text that names no metal etched here.
type Unknown struct {
	Typed string
	What  string // what it is, where that is known: "zinc", "pewter, a tin alloy"
}

func (e *Unknown) Error() string {
	switch {
	case e.What == "":
		return quote(e.Typed) + " is no metal known here"
	case strings.EqualFold(strings.TrimSpace(e.Typed), e.What):
		return quote(e.Typed) + " is not etched on this bench"
	}
	return quote(e.Typed) + " is " + e.What + ", which this bench doesn't etch"
}

// Unbalanced is the error for a composition whose shares make no whole.
type Unbalanced struct {
	Typed string
	Sum   float64 // in per cent
}

func (e *Unbalanced) Error() string {
	return "the shares in " + quote(e.Typed) + " add up to " + percent(e.Sum) + " %, not 100 %"
}

// quote puts a text between quotation marks, at most 40 characters of it.
func quote(text string) string {
	const most = 40
	if utf8.RuneCountInString(text) > most {
		text = string([]rune(text)[:most]) + "…"
	}
	return `"` + text + `"`
}

// Understand says which metal a text names. The error is *Unknown, or
// *Unbalanced for a composition that doesn't add up.
func Understand(text string) (Reading, error) {
	calls, mixture, err := theIndex().look(text)
	switch {
	case err != nil:
		return Reading{}, err
	case mixture != nil:
		return Reading{Metal: mixture, Why: "composition", Typed: true, DensitySpread: DensitySpread}, nil
	}
	first := calls[0]
	return Reading{Metal: first.metal, Why: first.why, Rivals: rivals(calls)}, nil
}

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
	return nil, nil, &Unknown{Typed: text, What: x.other(list)}
}

// inOrder finds a grade or a name that is these words in this order, with or
// without blanks between.
func (x *index) inOrder(list []string) []call {
	if calls := x.graded(list); calls != nil {
		return calls
	}
	if calls := x.names[strings.Join(list, " ")]; calls != nil {
		return calls
	}
	return x.joined[strings.Join(list, "")]
}

// called finds a name or grade in the words of a text, all of which belong to it.
func (x *index) called(list, bare []string) []call {
	if calls := x.inOrder(bare); calls != nil {
		return calls
	}
	for _, l := range [][]string{list, bare} {
		if calls := x.bags[bag(l)]; calls != nil {
			return calls
		}
	}
	if calls := x.within(bare); calls != nil {
		return calls
	}
	return x.within(list)
}

// corrected is called with misspelt words corrected. Of several corrections the
// one with the fewest slips is taken, of equals the first in the catalogue.
func (x *index) corrected(list, bare []string) []call {
	var best []call
	fewest := 0
	for _, l := range [][]string{list, bare} {
		x.corrections(l, func(right []string, slips int) {
			if best != nil && slips >= fewest {
				return
			}
			calls := x.inOrder(right)
			if calls == nil {
				calls = x.called(right, withoutShapes(right))
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

// standards are the bodies whose name before a code tells which of two metals
// with the same code is meant.
var standards = map[string]func(m *Metal) string{
	"bs":       func(m *Metal) string { return m.British },
	"british":  func(m *Metal) string { return m.British },
	"uns":      func(m *Metal) string { return m.UNS },
	"us":       func(m *Metal) string { return m.UNS },
	"american": func(m *Metal) string { return m.UNS },
	"cda":      func(m *Metal) string { return m.UNS },
	"astm":     func(m *Metal) string { return m.UNS },
}

// graded finds a grade that the words make when run together, after the name of
// its standard if that is there.
func (x *index) graded(list []string) []call {
	of, named := standards[list[0]]
	if named && len(list) > 1 {
		list = list[1:]
	}
	key := code(list)
	calls := x.grades[key]
	if named && calls == nil {
		key = "c" + key // "CDA 360"
		calls = x.grades[key]
	}
	switch {
	case calls == nil:
		return nil
	case isNumber(key) && !strings.Contains(list[0], "."):
		return nil // 20321 is any number; 2.0321 is a brass
	case !strings.ContainsAny(strings.Join(list, ""), "0123456789"):
		// A letter is taken for a figure only beside figures.
		calls = slices.DeleteFunc(slices.Clone(calls), func(c call) bool { return strings.ContainsAny(c.name, "0123456789") })
	case named:
		own := slices.DeleteFunc(slices.Clone(calls), func(c call) bool { return !strings.HasPrefix(code(words(fold(of(c.metal)))), key) })
		if len(own) > 0 {
			calls = own
		}
	}
	if len(calls) == 0 {
		return nil
	}
	return calls
}

// within finds a name or grade that stands among words which all belong to the
// same metal: words of its names, or more names and grades. The longest stretch
// that names one decides, of equals a grade.
func (x *index) within(list []string) []call {
	for n := len(list) - 1; n > 0; n-- {
		var named []call
		for at := 0; at+n <= len(list); at++ {
			var own []call
			for _, c := range x.inOrder(list[at : at+n]) {
				if x.belong(c.metal, list[:at]) && x.belong(c.metal, list[at+n:]) {
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

// belong says that words occur in a metal's names, or are more names or grades
// of it ("C26000 / CW505L").
func (x *index) belong(m *Metal, list []string) bool {
	fits := make([]bool, len(list)+1) // the words up to there belong
	fits[0] = true
	for end := 1; end <= len(list); end++ {
		fits[end] = fits[end-1] && x.wordsOf[m][list[end-1]]
		for at := 0; at < end && !fits[end]; at++ {
			fits[end] = fits[at] && slices.ContainsFunc(x.inOrder(list[at:end]), func(c call) bool { return c.metal == m })
		}
	}
	return fits[len(list)]
}

// guessable is how many letters another thing's name must have to be known when
// misspelt: of shorter ones too many are a letter apart ("plátano", "platino").
const guessable = 8

// other says what else than a metal of this bench a text speaks of: the longest
// name of such a thing in it, rightly spelt or nearly.
func (x *index) other(list []string) string {
	if what := x.otherIn(list); what != "" {
		return what
	}
	for _, w := range list {
		n := utf8.RuneCountInString(w)
		if n < guessable-1 || x.known[w] || x.fixed[w] {
			continue
		}
		which := lettersOf(w)
		for _, g := range x.guesses {
			if which.apart(g.which) <= 1 && slips(w, g.word, n, g.n, 1) <= 1 {
				return x.others[g.word]
			}
		}
	}
	return ""
}

// otherIn is other's for words rightly spelt. A single word that stands beside a
// metal's says nothing of the two: "steel brass" is anybody's guess.
func (x *index) otherIn(list []string) string {
	for n := min(x.longestOther, len(list)); n > 0; n-- {
		for at := 0; at+n <= len(list); at++ {
			what := x.others[strings.Join(list[at:at+n], " ")]
			if what != "" && (n > 1 || what == plated || !x.metalBeside(list, at)) {
				return what
			}
		}
	}
	return ""
}

// metalBeside says that another word of a list than the one there is a metal's.
func (x *index) metalBeside(list []string, there int) bool {
	for i, w := range list {
		_, element := elementNamed(w)
		if i != there && w != list[there] && (element || familyWords[w] != "" || len(x.others[w]) > 0) {
			return true
		}
	}
	return false
}
