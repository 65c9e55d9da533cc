package job

import (
	"math"
	"slices"

	"saltbite/calc/batch"
	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// ClassCircuit is what the load that needs the most volts takes of its supply.
type ClassCircuit struct {
	Volts   quantity.Range    // V, of its cell
	Assumed bool              // something stands for a blank, as for the verdict on a supply
	Drop    quantity.Optional // V, of the most current in the cable
	Limit   quantity.Optional // A, of the cable
}

// Series is a class in cells one behind the other on each supply: equal pieces
// hang in all of them at once, so that the same current is right for each.
type Series struct {
	Cells  int     // 0: there is no plan, or its volts are not known
	End    float64 // s after the beginning
	One    float64 // V, of one cell
	Volts  float64 // V, of all cells and the cable
	Padded bool    // some cells have a piece less than others
}

// mostCells is how many cells are tried behind each other.
const mostCells = 4

// series is the fewest cells in series with which a class ends within the session,
// and whose volts the supply gives, if it is known what that gives:
//
//	cells x (current x bath's resistance + allowance) + cable
func (c Class) series(rows []batch.Row, supplies batch.Supplies) Series {
	session, volts := c.Fields.Amount(field.Session).SI*(1+1e-9), c.Fields.Amount(field.Volts)
	if c.Instead.Pieces > mostRetried {
		return Series{}
	}
	for cells := 2; cells <= mostCells; cells++ {
		each, jobs, padded := c.oneCell(rows, cells)
		plan, ok := batch.Arrange(each, supplies)
		if !ok || plan.End > session {
			continue
		}
		needs := c.circuit(plan, jobs)
		s := Series{cells, plan.End, needs.Volts.SI, float64(cells)*needs.Volts.SI + needs.Drop.SI, padded}
		if !needs.Volts.Known() || volts.Known() && s.Volts > volts.SI {
			return Series{}
		}
		return s
	}
	return Series{}
}

// oneCell is what hangs in each of so many equal cells: of equal pieces their
// share, rounded up. jobs are those of the rows that are left, the first of each
// kind.
func (c Class) oneCell(rows []batch.Row, cells int) (each []batch.Row, jobs []Worked, padded bool) {
	for i, row := range rows {
		alike := func(other batch.Row) bool {
			other.Count, other.Work.Pieces = row.Count, row.Work.Pieces
			return other == row
		}
		if at := slices.IndexFunc(each, alike); at >= 0 {
			each[at].Count += row.Count
			continue
		}
		each, jobs = append(each, row), append(jobs, c.Rows[i])
	}
	for i, row := range each {
		padded = padded || row.Count%cells != 0
		each[i].Count = (row.Count + cells - 1) / cells
	}
	return each, jobs, padded
}

// circuit is that of a plan of such jobs.
func (c Class) circuit(plan batch.Plan, jobs []Worked) (most ClassCircuit) {
	wire := cable(c.Fields)
	most.Limit = wire.Limit()
	if wire.Diameter > 0 && wire.Length > 0 {
		most.Drop = wire.Drop(plan.Current)
	}
	for _, load := range plan.Loads {
		cell, assumed := c.cellOf(load, jobs)
		resistance := resistanceOf(cell)
		volts := circuit.VoltsNeeded(load.Current, resistance.SI, resistance.High.SI, allowance(jobs[load.Lifts[0].Row].Salt))
		if !volts.Known() {
			return ClassCircuit{Drop: most.Drop, Limit: most.Limit}
		}
		if volts.SI > most.Volts.SI {
			most.Volts = volts
		}
		most.Assumed = most.Assumed || assumed
	}
	return most
}

// cellOf is the bath between a load and its cathode, the pieces being equal ones of
// the mean size. What stands for a blank is that of the verdict on a supply.
func (c Class) cellOf(load batch.Load, jobs []Worked) (cell circuit.Cell, assumed bool) {
	gap, cathode := c.Fields.Amount(field.Gap), c.Fields.Amount(field.Cathode)
	conductivity := jobs[load.Lifts[0].Row].Standing.Conductivity
	assumed = !gap.Known() || !cathode.Known() || !conductivity.Known()
	if !conductivity.Known() {
		conductivity = UsualConductivity(jobs[load.Lifts[0].Row].Fields, jobs[load.Lifts[0].Row].Salt)
	}
	var faces []circuit.Face
	var counts []float64
	var pieces, open, bare float64
	for _, lift := range load.Lifts {
		w, count := jobs[lift.Row], float64(lift.Count)
		faces = append(faces, circuit.Face{Width: w.Face.Width.SI, Height: w.Face.Height.SI, Diameter: w.Face.Diameter.SI})
		counts = append(counts, count)
		pieces, open, bare = pieces+count, open+count*w.Bite.Area.SI, bare+count*(w.Bite.Piece().Area+w.Bite.Piece().Extra)
	}
	return circuit.Cell{Conductivity: conductivity.SI, Gap: gap.Or(quantity.Known(AssumedGap)).SI, Cathode: cathode.Or(quantity.Known(bare)).SI,
		Face: circuit.MeanFace(faces, counts), Open: open / pieces, Pieces: pieces,
		Section: tank(c.Fields).Section(position(c.Fields))}, assumed
}

// tankWidth is that of the pieces of the widest load side by side, m, with no room
// between them.
func (c Class) tankWidth() (widest quantity.Optional) {
	for _, load := range c.Plan.Loads {
		var width float64
		for _, lift := range load.Lifts {
			face := c.Rows[lift.Row].Face
			across := face.Width.Or(face.Diameter)
			if !across.Known() {
				return quantity.Optional{}
			}
			width += float64(lift.Count) * across.SI
		}
		widest = quantity.Known(math.Max(widest.SI, width))
	}
	return widest
}

// withBaths adds what each bath loses of its metal (kg, by salt) as a share of what
// was mixed, and the salt to mix it with, where its strength and volume are known.
func (c Class) withBaths(lost map[string]float64) Class {
	for _, w := range c.Rows {
		if !w.Mix.Ready || !w.Mix.Volume.Known() {
			continue
		}
		if inBath := w.Mix.MetalMass(w.Salt); inBath.SI > 0 {
			c.BathDrop = quantity.Known(math.Max(c.BathDrop.SI, lost[w.Salt.Name]/inBath.SI))
		}
		if len(lost) == 1 && w.Mix.Weighed {
			c.SaltMass = quantity.Known(w.Mix.Weights.SaltMass)
		}
	}
	return c
}
