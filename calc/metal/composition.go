package metal

import "math"

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
//	copper and nickel of a nickel silver: rest zinc   12 % nickel 65 copper
//	silver alone: the rest is copper                  Ag 925   92.5 silver
//	numbers and a family                              70/30 brass   65/18/17 nickel silver
//	an element's number and a family                  30% zinc brass   15% nickel silver
//
// Shares may be per cent, thousandths, or parts of 1. A sum within one per cent of
// the whole counts as the whole.

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

// composition is a typed composition as it was read.
type composition struct {
	parts []Part  // shares of 1; empty if the shares don't add up
	sum   float64 // of the shares in per cent, if they don't add up
	like  *Metal  // the metal of the catalogue that was described by some of its shares
}

// readComposition reads a folded text; ok says that it is a composition, whether
// it adds up or not. Al and Au are elements, and articles in Romance languages:
// beside a family they are tried as articles first ("latón al 30 % de zinc"), else
// as elements ("Cu 95 Al 5").
func readComposition(folded string) (c composition, ok bool) {
	folded = replaceAll(folded, compounds[:])
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

// compounds are families of two words, one of which is an element that they don't
// hold, or a shape; and one word for each.
var compounds = [...][2]string{{"nickel silver", "neusilber"}, {"nickel-silver", "neusilber"}, {"german silver", "neusilber"}, {"gun metal", "gunmetal"}}

// read gives the numbers to elements, by how many there are of each.
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
		c, ok := ratio(symbols, numbers)
		if m := nickelSilverOf(symbols, numbers); ok && c.parts == nil && m != nil {
			return composition{like: m}, true
		}
		return c, ok
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

// alternate says that numbers and elements alternate.
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

// single reads one number and one element: the share of an element beside its
// family; the fineness of silver, the rest copper; a family's copper; the purity
// of copper.
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

// wholeOf is the whole that a fineness is given in: 1, 100 or 1000.
func wholeOf(share float64) float64 {
	switch {
	case share <= 1:
		return 1
	case share <= 100:
		return 100
	}
	return 1000
}

// inFamily is the alloy of a family with a given share of an element: the one of
// copper and that element alone if the catalogue has it; else the first in the
// catalogue with that share; else a mixture of copper and the element. A nickel
// silver has three elements, so no mixture is made of two.
func inFamily(family string, p Part) (composition, bool) {
	if p.Share <= 0 || p.Share >= 50 {
		return composition{}, false
	}
	binary := composition{parts: []Part{{"Cu", 1 - p.Share/100}, {p.Symbol, p.Share / 100}}}
	if family != "nickel silver" && nearest(binary.parts) != nil {
		return binary, true
	}
	for i := range catalogue {
		m := &catalogue[i]
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

// mainAddition is the main element of a copper alloy beside copper.
func mainAddition(m *Metal) string {
	var most Part
	for _, p := range m.Composition {
		if p.Symbol != "Cu" && p.Share > most.Share {
			most = p
		}
	}
	return most.Symbol
}

// nickelSilverOf is the nickel silver of the catalogue with given shares of copper
// and nickel, whose zinc was not typed ("12 % nickel 65 copper"): its nickel is
// near, and its copper within two per cent, since American and European grades
// differ by as much (common practice, no source). nil if no alloy fits.
func nickelSilverOf(symbols []string, numbers []float64) *Metal {
	if len(symbols) != 2 {
		return nil
	}
	copper, nickel := numbers[0]/100, numbers[1]/100
	if symbols[0] == "Ni" {
		symbols, copper, nickel = []string{symbols[1], "Ni"}, nickel, copper
	}
	if symbols[0] != "Cu" || symbols[1] != "Ni" {
		return nil
	}
	var best *Metal
	least := copperWithin
	for i := range catalogue {
		m := &catalogue[i]
		off := math.Abs(m.Share("Cu") - copper)
		if m.Family == NickelSilver && m.Share("Zn") > 0 && math.Abs(m.Share("Ni")-nickel) < near && off < least {
			best, least = m, off
		}
	}
	return best
}

const copperWithin = 0.02 + 1e-9

// withRest gives each number to the element after it if a number comes first, else
// to the element before it, and the rest to the one element without a number. If
// that is neither a copper nor a silver alloy, it tries the other way round:
// "copper with 5 % tin".
func (l lexed) withRest() (composition, bool) {
	step := -1
	if l.items[0].symbol == "" {
		step = 1
	}
	c, ok := l.restBeside(step)
	if !ok || c.isOurs() {
		return c, ok
	}
	if other, ok := l.restBeside(-step); ok && other.isOurs() {
		return other, true
	}
	return c, true
}

// isOurs says that at least half of a composition is copper and silver.
func (c composition) isOurs() bool {
	m := Metal{Composition: c.parts}
	return m.Share("Cu")+m.Share("Ag") >= 0.5
}

// restBeside gives each number to the element step places after it, and the rest
// to the one element without a number.
func (l lexed) restBeside(step int) (composition, bool) {
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

// tolerance is how much a sum of shares may differ from the whole, as a share of it.
const tolerance = 0.01

// weigh turns numbers that add up to 1, 100 or 1000, within tolerance, into shares
// of 1; of others it keeps the sum.
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
