package job

import (
	"saltbite/calc/bite"
	"saltbite/calc/field"
)

// BiteRow is one of several bites, with areas stopped out between them.
type BiteRow struct{ Depth, Area, Minutes, Amperes Cell }

// Cell is a figure in a list.
type Cell struct {
	Value float64
	Unit  string
	Text  string
}

// workBites answers successive bites, each with the open area it starts with,
// at one density: that given, or what the current makes on the first.
func (b *bench) workBites() {
	w := &b.bite
	v := b.fields.Value("bites")
	law, ok := b.law()
	if v.State != field.Given || !ok || w.shape == field.Bad {
		return
	}
	var bites []bite.Bite
	for _, p := range v.Pairs {
		bites = append(bites, bite.Bite{Depth: p.First, Area: p.Second})
	}
	density := w.density
	if first := w.work; density.state == field.Blank && w.current.known() {
		first.Area = bites[0].Area
		density = known(w.current.v / first.Bare())
		b.put("density", density.v)
	}
	if !density.known() {
		return
	}
	row := law.Bites(w.work, density.v, bites)
	for _, bitten := range row {
		b.reply.Bites = append(b.reply.Bites, BiteRow{
			b.cell("depth", bitten.Depth), b.cell("area", bitten.Area), b.cell("time", bitten.Time), b.cell("current", bitten.Current)})
	}
	all := bite.InAll(row)
	w.time = known(all.Time)
	b.put("time", all.Time)
	b.put("charge", all.Charge)
	b.put("removed", all.Removed)
	b.put("removedEach", all.Removed/w.pieces.v)
	b.reply.Found = append(b.reply.Found, "time")
}

// cell is a figure as the answer of that name would be.
func (b *bench) cell(name string, si float64) Cell {
	row := field.AnswerByName(name)
	return Cell{row.In(si), row.Unit, b.print(row, si)}
}
