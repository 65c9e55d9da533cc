package job

import (
	"strconv"
	"strings"

	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/metal"
)

// metalUsed is what was understood by the field metal.
type metalUsed struct {
	state   field.State
	reading metal.Reading
	density number // the typed one, else that of the reading
}

// understandMetal reads the metal's name.
func (b *bench) understandMetal() {
	v := b.fields.Value("metal")
	b.metal.state = v.State
	if v.State != field.Given {
		return
	}
	reading, err := metal.Understand(v.Text)
	if err != nil {
		b.metal.state = field.Bad
		b.fields.Fail(field.Error{Field: "metal", Code: field.Unknown, Text: err.Error() +
			". A copper, brass, bronze, nickel silver or silver is wanted, such as cartridge brass."})
		return
	}
	b.metal.reading = reading
	if b.metal.density = b.amount("metalDensity"); b.metal.density.state == field.Blank {
		b.metal.density = known(reading.Metal.Density)
	}
	why := reading.Why
	if reading.Typed {
		why += "; its density is reckoned by mixing, good to 3 %"
	}
	b.reply.Metals = append(b.reply.Metals, row(reading.Metal, why))
	for _, rival := range reading.Rivals {
		b.reply.Metals = append(b.reply.Metals, row(rival.Metal, rival.Why))
	}
}

func row(m *metal.Metal, why string) MetalRow {
	return MetalRow{ID: m.ID, Name: m.Name, Composition: composition(m), Density: m.Density / 1000,
		Family: m.Family.String(), Why: why, Remark: m.Remark}
}

// composition is what a metal holds, in per cent by mass, as "70 Cu 30 Zn".
func composition(m *metal.Metal) string {
	var parts []string
	for _, c := range m.Composition {
		parts = append(parts, strconv.FormatFloat(c.Share*100, 'g', 4, 64)+" "+c.Symbol)
	}
	return strings.Join(parts, " ")
}

// share is the share of an element in the metal; nothing without a metal.
// Kept out of its callers for the size of the program.
//
//go:noinline
func (b *bench) share(symbol string) float64 {
	if b.metal.state != field.Given {
		return 0
	}
	return b.metal.reading.Metal.Share(symbol)
}

// law is what ties depth to charge for this metal in this bath. It is not
// there without a metal that can be etched in it.
func (b *bench) law() (bite.Law, bool) {
	efficiency := b.amount("efficiency")
	if b.metal.state != field.Given || b.salt.state == field.Bad || b.blocked() ||
		!b.metal.density.known() || !efficiency.known() {
		return bite.Law{}, false
	}
	return bite.Law{Equivalent: b.equivalent().si, Density: b.metal.density.v, Efficiency: efficiency.v}, true
}

// equivalent is the metal's electrochemical equivalent in this bath, kg/C, with
// the lower one where an element may leave with more charge: tin as Sn(IV), and
// copper as Cu(II) in common salt.
func (b *bench) equivalent() answered {
	m := b.metal.reading.Metal
	if b.inCommonSalt() {
		return answered{m.EquivalentChloride(), m.Equivalent(), none}
	}
	low, ok := m.EquivalentLow()
	if !ok {
		low = none
	}
	return answered{m.Equivalent(), low, none}
}
