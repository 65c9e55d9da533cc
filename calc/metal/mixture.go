package metal

import (
	"math"
	"strconv"
	"strings"
)

// near is how much each share of a composition may differ from an alloy of the
// catalogue that it is taken for: half a per cent, this project's own rule.
const near = 0.005 + 1e-9

// resolve is the catalogue's metal for a composition, else a mixture made from it.
// The error is *Unbalanced, or *Unknown for what is mostly neither copper nor
// silver.
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
	return nil, m, nil
}

// nearest is the metal of the catalogue whose every share is near; of several, the
// nearest to a tenth of a per cent, and of equals the first; nil if no metal is near.
// Fired clay is left out, and so is a metal without an element that was typed and
// is warned of.
func nearest(parts []Part) *Metal {
	var best *Metal
	least := math.Inf(1)
	typed := Metal{Composition: parts}
	for i := range catalogue {
		m := &catalogue[i]
		if m.Family == Clay || typed.poisonMissing(m) {
			continue
		}
		var most float64
		for _, list := range [...][]Part{parts, m.Composition} {
			for _, p := range list {
				most = math.Max(most, math.Abs(typed.Share(p.Symbol)-m.Share(p.Symbol)))
			}
		}
		if rounded := math.Round(most * 1000); most <= near && rounded < least {
			best, least = m, rounded
		}
	}
	return best
}

// poisonMissing says that the metal holds enough of an element to be warned of, and
// that another metal holds none of it.
func (m *Metal) poisonMissing(in *Metal) bool {
	for _, p := range poisons {
		if share := m.Share(p.Symbol); share > 0 && share >= p.Share && in.Share(p.Symbol) == 0 {
			return true
		}
	}
	return false
}

// poisons are the elements that are warned of, and the least share that is.
var poisons = [...]Part{{"Be", 0}, {"Pb", 0.001}, {"Ni", 0.001}}

// mostly names a mixture by its main element: "a tin alloy".
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
