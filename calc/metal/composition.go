package metal

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// A typed composition, once folded:
//
//	composition = { item }                 blanks and : ; / + - % , between items mean nothing
//	item        = number | metal | family | joint | shape
//	number      = digits [ mark digits ] | mark digits      mark: "." or ","
//	metal       = element's name in five languages | symbols run together ("cuzn")
//	family      = "brass", "bronze", "nickel silver" ..., which says what numbers are of
//	joint, shape: words of the vocabulary that mean nothing here
//
// and then, by how many numbers and elements there are:
//
//	a number for each element, before or after it     Cu 85 Zn 15   70Cu30Zn
//	elements, then as many numbers, or the reverse    Cu:Sn 88:12   70/30 copper zinc
//	one element without a number takes the rest       CuZn37   AgCu7.5   copper 70 zinc
//	silver alone: the rest is copper                  Ag 925   92.5 silver
//	numbers and a family                              70/30 brass   65/18/17 nickel silver
//	an element's number and a family                  30% zinc brass   15% nickel silver
//
// Shares may be per cent, thousandths, or parts of 1; within a per cent of the
// whole they are taken to be the whole.

// item is a piece of a typed composition.
type item struct {
	number float64
	symbol string // of an element, when it is no number
}

// lexed is a typed composition in pieces.
type lexed struct {
	items    []item
	family   string // of the numbers, "" if none is named
	bySymbol bool   // the elements are written as symbols
}

// partsOf lists the elements that n numbers of a family are of, in the trade's
// order ("85-5-5-5" is copper, tin, lead, zinc).
func partsOf(family string, n int) []string {
	switch {
	case n < 2:
		return nil
	case family == "brass" && n <= 3:
		return []string{"Cu", "Zn", "Pb"}[:n]
	case family == "bronze" && n <= 3:
		return []string{"Cu", "Sn", "Zn"}[:n]
	case family == "bronze" && n == 4:
		return []string{"Cu", "Sn", "Pb", "Zn"}
	case family == "nickel silver" && n <= 3:
		return []string{"Cu", "Ni", "Zn"}[:n]
	case family == "cupronickel" && n <= 2:
		return []string{"Cu", "Ni"}[:n]
	}
	return nil
}

// familyWords name a family in a composition.
var familyWords = map[string]string{
	"brass": "brass", "messing": "brass", "laiton": "brass", "laton": "brass", "ottone": "brass", "tombak": "brass", "tombac": "brass", "gilding": "brass",
	"bronze": "bronze", "bronce": "bronze", "bronzo": "bronze", "gunmetal": "bronze", "zinnbronze": "bronze", "rotguss": "bronze",
	"neusilber": "nickel silver", "maillechort": "nickel silver", "alpaca": "nickel silver",
	"cupronickel": "cupronickel", "kupfernickel": "cupronickel", "cupronichel": "cupronickel", "cuproniquel": "cupronickel",
}

// connectives stand between the parts of a composition.
var connectives = set("and und et y e with mit avec con per cent percent pct prozent rest balance remainder bal rem phosphor gehalt er")

// composition is what a text was read as.
type composition struct {
	parts []Part  // shares of 1; empty when they make no whole
	sum   float64 // in per cent, when they make no whole
	like  *Metal  // a catalogue metal that a family and one share point to
}

// readComposition reads a folded text; ok says that it is a composition, if only
// one that doesn't add up. Al and Au are elements, and small words of Romance
// languages: beside a family they are tried as the latter first ("latón al 30 %
// de zinc"), else as the former ("Cu 95 Al 5").
func readComposition(folded string) (c composition, ok bool) {
	folded = compounds.Replace(folded)
	asWords, words := lex(folded, true)
	asElements, elements := lex(folded, false)
	if words && asWords.family != "" {
		if c, ok = asWords.read(); ok {
			return c, true
		}
	}
	if elements {
		if c, ok = asElements.read(); ok {
			return c, true
		}
	}
	if words {
		return asWords.read()
	}
	return c, false
}

// compounds are families of two words, one of them an element that they hold
// none of, or a shape.
var compounds = strings.NewReplacer("nickel silver", "neusilber", "nickel-silver", "neusilber", "german silver", "neusilber", "gun metal", "gunmetal")

// read tells what the numbers are of by how many there are.
func (l lexed) read() (composition, bool) {
	symbols, numbers := l.kinds()
	switch n, e := len(numbers), len(symbols); {
	case n == 0:
		if e == 1 && l.family == "" && l.bySymbol {
			return composition{parts: []Part{{symbols[0], 1}}}, true
		}
	case n == 1 && e == 0 && l.family == "nickel silver":
		return inFamily(l.family, Part{"Ni", numbers[0]})
	case n == 1 && e == 1:
		return l.single(Part{symbols[0], numbers[0]})
	case n == 2 && e == 0 && l.family == "nickel silver": // "65/18": the rest is zinc
		return ratio(partsOf(l.family, 3), append(numbers, 100-numbers[0]-numbers[1]))
	case e == 0:
		return ratio(partsOf(l.family, n), numbers)
	case n == 2 && e == 1 && l.family != "":
		return ratio([]string{"Cu", symbols[0]}, numbers) // "90/10 aluminium bronze"
	case n == 2 && e == 1 && symbols[0] == "Ag":
		return ratio([]string{"Ag", "Cu"}, numbers)
	case n == e && (l.alternate() || l.apart()):
		return ratio(symbols, numbers)
	case n == e-1:
		return l.withRest()
	}
	return composition{}, false
}

// kinds are the elements and the numbers, each in their order.
func (l lexed) kinds() (symbols []string, numbers []float64) {
	for _, i := range l.items {
		if i.symbol != "" {
			symbols = append(symbols, i.symbol)
		} else {
			numbers = append(numbers, i.number)
		}
	}
	return symbols, numbers
}

// ratio gives elements their numbers in turn.
func ratio(symbols []string, numbers []float64) (composition, bool) {
	if len(symbols) == 0 || len(symbols) != len(numbers) {
		return composition{}, false
	}
	var parts []Part
	for i, s := range symbols {
		parts = append(parts, Part{s, numbers[i]})
	}
	return weigh(parts)
}

// alternate says that numbers and elements take turns.
func (l lexed) alternate() bool { return l.changes() == len(l.items)-1 }

// apart says that all numbers stand on one side of all elements.
func (l lexed) apart() bool { return l.changes() == 1 }

// changes counts how often a number follows an element or an element a number.
func (l lexed) changes() (n int) {
	for i := 1; i < len(l.items); i++ {
		if (l.items[i].symbol == "") != (l.items[i-1].symbol == "") {
			n++
		}
	}
	return n
}

// single reads one number and one element: an element and the family it makes;
// silver of a fineness, the rest copper; a family's copper; all but pure copper.
func (l lexed) single(p Part) (composition, bool) {
	switch {
	case l.family != "" && p.Symbol != "Cu" && p.Symbol != "Ag":
		return inFamily(l.family, p)
	case l.family == "" && p.Symbol == "Ag":
		share := p.Share / wholeOf(p.Share)
		if share < 0.5 {
			return composition{}, false
		}
		return weigh([]Part{{"Ag", share}, {"Cu", 1 - share}})
	case p.Symbol == "Cu" && p.Share <= 100+100*tolerance:
		rest := partsOf(l.family, 2)
		if l.family == "" || l.family == "nickel silver" || p.Share >= 100 {
			return weigh([]Part{p})
		}
		return weigh([]Part{p, {rest[1], 100 - p.Share}})
	}
	return composition{}, false
}

// wholeOf is what a fineness is a part of: 1, 100 or 1000.
func wholeOf(share float64) float64 {
	switch {
	case share <= 1:
		return 1
	case share <= 100:
		return 100
	}
	return 1000
}

// inFamily is the alloy of a family with so much of an element: of copper and
// that element alone if the catalogue has it, else the catalogue's first with as
// much of it; else a mixture of the two, but no nickel silver, which is of three.
func inFamily(family string, p Part) (composition, bool) {
	if p.Share <= 0 || p.Share >= 50 {
		return composition{}, false
	}
	binary := composition{parts: []Part{{"Cu", 1 - p.Share/100}, {p.Symbol, p.Share / 100}}}
	if family != "nickel silver" && nearest(binary.parts) != nil {
		return binary, true
	}
	for m := range All() {
		same := m.Family.String() == family && math.Abs(m.Share(p.Symbol)-p.Share/100) < near
		if same && (family == "nickel silver" || mainAddition(m) == p.Symbol) {
			return composition{like: m}, true
		}
	}
	if family == "nickel silver" {
		return composition{}, false
	}
	return binary, true
}

// mainAddition is the element that a copper alloy holds most of beside copper.
func mainAddition(m *Metal) string {
	var most Part
	for _, p := range m.Composition {
		if p.Symbol != "Cu" && p.Share > most.Share {
			most = p
		}
	}
	return most.Symbol
}

// withRest gives each number to its element, the one after it when a number
// comes first, else the one before it, and what is over to the one element
// without a number.
func (l lexed) withRest() (composition, bool) {
	step := -1
	if l.items[0].symbol == "" {
		step = 1
	}
	shares := map[string]float64{}
	for at, i := range l.items {
		if i.symbol != "" {
			continue
		}
		of := at + step
		if of < 0 || of >= len(l.items) || l.items[of].symbol == "" {
			return composition{}, false
		}
		shares[l.items[of].symbol] = i.number
	}
	symbols, numbers := l.kinds()
	if len(shares) != len(numbers) {
		return composition{}, false
	}
	rest := 100.0
	for _, x := range numbers {
		rest -= x
	}
	var parts []Part
	for _, s := range symbols {
		share, given := shares[s]
		if !given {
			share = rest
		}
		parts = append(parts, Part{s, share})
	}
	return weigh(parts)
}

// tolerance is how far a sum may be from the whole, as a share of it.
const tolerance = 0.01

// weigh makes numbers shares of 1, if they sum to 1, 100 or 1000 nearly enough.
func weigh(parts []Part) (composition, bool) {
	if len(parts) == 0 {
		return composition{}, false
	}
	var sum float64
	had := map[string]bool{}
	for _, p := range parts {
		if had[p.Symbol] || p.Share < 0 {
			return composition{}, false
		}
		had[p.Symbol] = true
		sum += p.Share
	}
	for _, whole := range []float64{1, 100, 1000} {
		if math.Abs(sum-whole) > tolerance*whole*(1+1e-9) {
			continue
		}
		var c composition
		for _, p := range parts {
			if p.Share > 0 {
				c.parts = append(c.parts, Part{p.Symbol, p.Share / sum})
			}
		}
		return c, true
	}
	return composition{sum: sum}, true
}

// near is how far each share may be from a catalogue alloy's for a composition
// to be that alloy.
const near = 0.005 + 1e-9

// resolve is the catalogue's metal for a composition, or a mixture of its own.
func (c composition) resolve(text string) ([]call, *Metal, error) {
	if c.like != nil {
		return []call{{metal: c.like, name: c.like.Name, why: "composition"}}, nil, nil
	}
	if c.parts == nil {
		return nil, nil, &Unbalanced{Typed: text, Sum: c.sum}
	}
	if m := nearest(c.parts); m != nil {
		return []call{{metal: m, name: m.Name, why: "composition"}}, nil, nil
	}
	m := &Metal{Composition: c.parts}
	if m.Share("Cu")+m.Share("Ag") < 0.5 {
		return nil, nil, &Unknown{Typed: text, What: mostly(c.parts)}
	}
	m.Family = familyOf(c.parts)
	m.Density = mixedDensity(c.parts, m.Family)
	m.ID, m.Name = symbolOf(c.parts)
	m.Source = "composition as typed; density by ideal mixing times the mean ratio of its family, good to 3 %"
	m.Confidence = "computed"
	return nil, m, nil
}

// nearest is the catalogue's metal whose every share is near; of several the
// nearest to a tenth of a per cent, of equals the first. Fired clay is not
// meant by a composition, nor a metal without the poison that was typed.
func nearest(parts []Part) *Metal {
	var best *Metal
	least := math.Inf(1)
	typed := Metal{Composition: parts}
	for m := range All() {
		if m.Family == Clay || typed.poisonMissing(m) {
			continue
		}
		var most float64
		for _, p := range slices.Concat(parts, m.Composition) {
			most = math.Max(most, math.Abs(typed.Share(p.Symbol)-m.Share(p.Symbol)))
		}
		if rounded := math.Round(most * 1000); most <= near && rounded < least {
			best, least = m, rounded
		}
	}
	return best
}

// poisonMissing says that a metal is warned of for an element that another has
// none of: any beryllium, lead and nickel from a thousandth.
func (m *Metal) poisonMissing(in *Metal) bool {
	for _, p := range poisons {
		if share := m.Share(p.Symbol); share > 0 && share >= p.Share && in.Share(p.Symbol) == 0 {
			return true
		}
	}
	return false
}

// poisons are the elements that are warned of, and from which share on.
var poisons = [...]Part{{"Be", 0}, {"Pb", 0.001}, {"Ni", 0.001}}

// mostly names a mixture by the element it holds most of.
func mostly(parts []Part) string {
	var most Part
	for _, p := range parts {
		if p.Share > most.Share {
			most = p
		}
	}
	name := element(most.Symbol).Name[English][0]
	if most.Share > 0.99 {
		return name
	}
	if strings.ContainsRune("aeiou", rune(name[0])) {
		return "an " + name + " alloy"
	}
	return "a " + name + " alloy"
}

// symbolOf writes a composition as an id, "CuZn21", and as a name, "Cu 79 Zn 21".
func symbolOf(parts []Part) (id, name string) {
	var i, n strings.Builder
	for _, p := range parts {
		share := percent(100 * p.Share)
		i.WriteString(p.Symbol + share)
		if n.Len() > 0 {
			n.WriteByte(' ')
		}
		n.WriteString(p.Symbol + " " + share)
	}
	return i.String(), n.String()
}

// percent prints a share to a hundredth.
func percent(share float64) string {
	return strconv.FormatFloat(math.Round(share*100)/100, 'f', -1, 64)
}

// withoutSizes drops sizes from a folded text ("0.8 mm", "18 ga"), whose numbers
// are no shares.
func withoutSizes(folded string) string {
	list := strings.Fields(folded)
	var kept []string
	for i := 0; i < len(list); i++ {
		if n := sizeLength(list[i:]); n > 0 {
			i += n - 1
			continue
		}
		kept = append(kept, list[i])
	}
	return strings.Join(kept, " ")
}

// lex splits a folded text into numbers and elements; small takes "al" and "au"
// for small words; ok says that it holds nothing else but words that mean
// nothing here.
func lex(folded string, small bool) (l lexed, ok bool) {
	rest := folded
	for rest != "" {
		r, size := utf8.DecodeRuneInString(rest)
		switch {
		case isDigit(rest[0]) || (r == '.' || r == ',') && len(rest) > 1 && isDigit(rest[1]):
			// Consume a number.
			n := numberLength(rest)
			x, err := strconv.ParseFloat(strings.Replace(rest[:n], ",", ".", 1), 64)
			if err != nil || x > 1000 {
				return l, false
			}
			l.items = append(l.items, item{number: x})
			rest = rest[n:]
		case unicode.IsLetter(r):
			// Consume a word.
			n := strings.IndexFunc(rest, func(r rune) bool { return !unicode.IsLetter(r) })
			if n < 0 {
				n = len(rest)
			}
			if !l.word(rest[:n], small) {
				return l, false
			}
			rest = rest[n:]
		case strings.ContainsRune(" .,:;/+-%", r):
			// Consume a mark.
			rest = rest[size:]
		default:
			return l, false
		}
	}
	return l, true
}

// numberLength is how many bytes of digits with at most one decimal mark among
// them, digits after it, a text begins with.
func numberLength(s string) int {
	n, marked := 0, false
	for n < len(s) {
		switch {
		case isDigit(s[n]):
		case (s[n] == '.' || s[n] == ',') && !marked && n+1 < len(s) && isDigit(s[n+1]):
			marked = true
		default:
			return n
		}
		n++
	}
	return n
}

// word takes a word of a composition in; false if it has no place in one.
func (l *lexed) word(w string, small bool) bool {
	if family := familyWords[w]; family != "" {
		fits := l.family == "" || l.family == family
		l.family = family
		return fits
	}
	if symbol, ok := elementNamed(w); ok {
		l.items = append(l.items, item{symbol: symbol})
		return true
	}
	article := w == "al" || w == "au"
	if (joints[w] || connectives[w] || shapes[w]) && (small || !article) {
		return true
	}
	symbols, ok := symbolsIn(w)
	for _, s := range symbols {
		l.items = append(l.items, item{symbol: s})
	}
	l.bySymbol = ok
	return ok
}

// symbolsIn splits letters into elements' symbols, the longer first ("cuzn").
// C and O alone are letters of grades ("C 101"), not carbon and oxygen.
func symbolsIn(w string) (symbols []string, ok bool) {
	for w != "" {
		best := ""
		for _, e := range Elements {
			s := e.Symbol
			if len(s) > len(best) && len(w) >= len(s) && strings.EqualFold(s, w[:len(s)]) && s != "C" && s != "O" {
				best = s
			}
		}
		if best == "" {
			return nil, false
		}
		symbols = append(symbols, best)
		w = w[len(best):]
	}
	return symbols, true
}
