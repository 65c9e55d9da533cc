package metal

import (
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
	case strings.ToLower(strings.TrimSpace(e.Typed)) == strings.ToLower(e.What):
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
	return "“" + text + "”"
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
