package metal

import (
	"strings"

	"saltbite/calc/quantity"
)

// Reading is the metal that a text was understood as.
type Reading struct {
	Metal *Metal
	Why   string // "name", "German name", "grade", "composition", "sounds like yellow brass", "short for cartridge brass"

	// Rivals are the other metals that the text may mean: "bronze" is a tin bronze
	// or a brass called bronze, C101 a British or an American copper.
	// Empty for a text that means one metal only. Where the text says that the
	// metal is not known ("unknown brass"), they are the usual metals of the family.
	Rivals []Hit

	Typed bool // a composition that is not in the catalogue: its density is calculated by mixing, to within 3 %
}

// Unknown is the error for a text that names no metal of this calculator. It
// quotes at most 40 characters of the text.
type Unknown struct {
	Typed string
	What  string // what it is, where that is known: "zinc", "pewter, a tin alloy"
}

func (e *Unknown) Error() string {
	switch {
	case e.What == "":
		return quantity.Quote(e.Typed) + " is not a metal that this calculator knows"
	case e.byItsName():
		return "This calculator doesn't cover " + quantity.Quote(e.Typed) + e.why()
	}
	return quantity.Quote(e.Typed) + " is " + e.What + ". This calculator doesn't cover it" + e.why()
}

// Sentence says it in an answer's place, with its name as in any sentence; "" where
// it is not known what it is, since half a name is not known either.
func (e *Unknown) Sentence() string {
	switch {
	case e.What == "":
		return ""
	case e.byItsName():
		return "This calculator doesn't cover " + e.What + e.why() + "."
	}
	return e.Error() + "."
}

// byItsName says whether what was typed is the very name of what it is.
func (e *Unknown) byItsName() bool {
	return strings.ToLower(strings.TrimSpace(e.Typed)) == strings.ToLower(e.What)
}

func (e *Unknown) why() string {
	if isThing(e.What) {
		return ""
	}
	return ": it needs other baths"
}

// Unbalanced is the error for a composition whose shares don't add up.
type Unbalanced struct {
	Typed string
	Sum   float64 // in per cent
}

func (e *Unbalanced) Error() string {
	return "the shares in " + quantity.Quote(e.Typed) + " add up to " + percent(e.Sum) + " %, not 100 %"
}

// Understand says which metal a text names. The error is *Unknown, or
// *Unbalanced for a composition that doesn't add up.
func Understand(text string) (Reading, error) {
	calls, mixture, err := theIndex().look(text)
	switch {
	case err != nil:
		return Reading{}, err
	case mixture != nil:
		return Reading{Metal: mixture, Why: "composition", Typed: true}, nil
	}
	first := calls[0]
	return Reading{Metal: first.metal, Why: first.why, Rivals: rivals(calls)}, nil
}
