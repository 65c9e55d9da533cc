package metal

import "saltbite/calc/quantity"

// Slimes says whether the metal's silver stays behind in a bath of copper
// sulfate: copper dissolves before silver does, so the silver of an alloy that
// is mostly copper falls as fine metal, which copper refiners call anode slime.
// Textbook electrochemistry (silver is the nobler metal), no source.
func (m *Metal) Slimes() bool {
	silver := m.Share("Ag")
	return silver > 0 && m.Share("Cu") > silver
}

// EquivalentSulfate is Equivalent in a bath of copper sulfate, where silver in a
// copper alloy takes no charge: it counts by its mass only. With w z / M of the
// others alone
//
//	E = 1 / (F sum(w z / M))
//
// It is Equivalent for every other metal. True while the slime falls off; where
// it clings, the bite slows down.
func (m *Metal) EquivalentSulfate() float64 { return m.inSulfate().Equivalent() }

// EquivalentSulfateLow is EquivalentLow in a bath of copper sulfate, with the
// tin leaving as Sn(IV).
func (m *Metal) EquivalentSulfateLow() quantity.Optional { return m.inSulfate().EquivalentLow() }

// inSulfate is what of the metal takes charge in a bath of copper sulfate. Its
// shares are still those of the whole metal.
func (m *Metal) inSulfate() *Metal {
	if !m.Slimes() {
		return m
	}
	bare := *m
	bare.Composition = nil
	for _, p := range m.Composition {
		if p.Symbol != "Ag" {
			bare.Composition = append(bare.Composition, p)
		}
	}
	return &bare
}
