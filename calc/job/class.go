package job

import (
	"math"
	"strconv"

	"saltbite/calc/batch"
	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Class is many pieces on few supplies by one clock.
type Class struct {
	Fields *field.Set
	Names  []string // of the rows
	Rows   []Worked // the jobs by themselves
	Plan   batch.Plan
	Known  bool // there is a plan

	Deepest       quantity.Optional // m, the same depth for all within the session
	CathodeNeeded quantity.Optional // m2
	SaltToAdd     quantity.Optional // kg
	Removed       quantity.Optional // kg
	ReadyAt       quantity.Optional // s after the midnight before the start
	Cost          quantity.Optional // in the money of the prices
	TooLong       bool              // the plan does not end within the session
	BathDrop      quantity.Optional // share of its metal that the bath which loses most loses
	SaltMass      quantity.Optional // kg, to mix the bath; unknown if the class needs several
	TankWidth     quantity.Optional // m, of the pieces of the widest load side by side
	CableNeeded   quantity.Optional // m, the thinnest wire that carries the most current
	Circuit       ClassCircuit
	Instead       Instead // of a plan that is too long

	Errors []RowError
}

// Instead is what fits the session where the plan does not.
type Instead struct {
	Supplies int     // the fewest with which all pieces fit; 0: none was found
	End      float64 // s after the beginning, with those
	InTime   int     // pieces that are lifted within the session all the same
	Pieces   int     // of all
	Series   Series  // of the fewest cells with which all pieces fit
}

// usualChangeover is the time between rounds if it is not given, s. Common
// practice, no source.
const usualChangeover = 600

// ofTheBath stand beside the rows for what a row leaves blank.
var ofTheBath = []field.Name{field.Strength, field.Volume, field.Temperature, field.Assay}

// Teach plans a class. Each row is a job with its pieces; its own density,
// current and time are set aside. What is said of the bath beside the rows stands
// for what they leave blank.
func Teach(rows []field.Named, fields *field.Set) Class {
	c := Class{Fields: fields, Errors: ofRow(-1, fields.Errors())}
	var worked []Worked
	for i, row := range rows {
		c.Names = append(c.Names, nameOf(row, i))
		w := Work(row.Set.Without(field.Density, field.Current, field.Time, field.Find, field.After, field.Readings, field.Amps).Under(fields, ofTheBath...))
		errors := unreadable(w)
		if !w.Law.Known || !w.Bite.bare().Known() || !w.Bite.Depth.Known() || !w.Bite.Count.Known() {
			errors = append(errors, Missing(w.Fields, field.Metal, field.Area, field.Depth)...)
		}
		c.Errors = append(c.Errors, ofRow(i, append(errors, w.Barred.mistakes(w.Fields, w.Salt)...))...)
		worked = append(worked, w)
	}
	c.Rows = worked
	amps := fields.Amount(field.Amps)
	if !amps.Known() {
		c.Errors = append(c.Errors, ofRow(-1, Missing(fields, field.Amps))...)
	}
	if len(rows) == 0 || !amps.Known() || blocking(c.Errors) {
		return c
	}
	pieces, supplies := rowsOf(worked, fields), batch.Supplies{
		Count: int(fields.Amount(field.Supplies).SI), Amps: amps.SI,
		Changeover: fields.Amount(field.Changeover).Or(quantity.Known(usualChangeover)).SI}
	plan, ok := batch.Arrange(pieces, supplies)
	if !ok {
		c.Errors = append(c.Errors, RowError{-1, field.Error{Field: field.Pieces.String(), Code: string(quantity.OutOfSize),
			Text: "More than " + strconv.Itoa(batch.MostPieces) + " pieces can't be planned at once. Plan fewer, such as 30."}})
		return c
	}
	c.Plan, c.Known = plan, true
	c = c.withFigures(worked)
	if c.TooLong {
		c.Instead = c.instead(pieces, supplies)
		c.Instead.Series = c.series(pieces, supplies)
	}
	return c
}

// Of larger classes, and of more supplies than so many more, it is not tried
// whether more supplies help: each is a plan of its own.
const (
	mostRetried  = 60
	moreSupplies = 4
)

// instead finds what fits the session.
func (c Class) instead(rows []batch.Row, supplies batch.Supplies) (i Instead) {
	session := c.Fields.Amount(field.Session).SI * (1 + 1e-9)
	for _, load := range c.Plan.Loads {
		for _, lift := range load.Lifts {
			i.Pieces += lift.Count
			if lift.At <= session {
				i.InTime += lift.Count
			}
		}
	}
	most := min(len(c.Plan.Loads), supplies.Count+moreSupplies)
	for supplies.Count++; supplies.Count <= most && i.Pieces <= mostRetried; supplies.Count++ {
		if plan, ok := batch.Arrange(rows, supplies); ok && plan.End <= session {
			i.Supplies, i.End = supplies.Count, plan.End
			return i
		}
	}
	return i
}

func nameOf(row field.Named, i int) string {
	if row.Name != "" {
		return row.Name
	}
	return "piece " + strconv.Itoa(i+1)
}

func blocking(errors []RowError) bool {
	for _, e := range errors {
		if e.Code != field.Unknown || e.Field == field.Metal.String() {
			return true
		}
	}
	return false
}

// rowsOf are the jobs as a plan takes them. What hangs in one bath has one
// density: the limit typed, else the least that is suggested there.
func rowsOf(worked []Worked, fields *field.Set) (rows []batch.Row) {
	limit := fields.Amount(field.DensityLimit)
	least := map[string]float64{}
	for _, w := range worked {
		if d := w.Suggest.Density; d.Known() && (least[w.Salt.Name] == 0 || d.SI < least[w.Salt.Name]) {
			least[w.Salt.Name] = d.SI
		}
	}
	for _, w := range worked {
		density := limit.Or(quantity.Known(least[w.Salt.Name])).SI
		rows = append(rows, batch.Row{Bath: w.Salt.Name, Density: density, Depth: w.Bite.Depth.SI, Law: w.Law.Law, Work: w.Bite.Piece(), Count: int(w.Bite.Count.SI)})
	}
	return rows
}

// withFigures adds what follows from the plan.
func (c Class) withFigures(worked []Worked) Class {
	session, start := c.Fields.Amount(field.Session), c.Fields.Amount(field.Start)
	if session.Known() {
		c.Deepest = quantity.Positive(c.Plan.DeepestWithin(session.SI))
		c.TooLong = c.Plan.End > session.SI*(1+1e-9)
	}
	c.ReadyAt = quantity.If(start.SI+c.Plan.End, start)
	c.CathodeNeeded = c.cathode(worked)
	c.CableNeeded = circuit.WireFor(c.Plan.Current)
	c.TankWidth = c.tankWidth()
	c.Circuit = c.circuit(c.Plan, worked)
	var removed, salt float64
	lost := map[string]float64{}
	for _, w := range worked {
		charge := w.Law.Charge(w.Bite.Piece(), w.Bite.Depth.SI).SI
		removed += w.Law.Removed(charge).SI
		run := w.Standing.Etched
		run.Charge = charge
		lost[w.Salt.Name] += run.Lost().SI
		salt += w.Salt.SaltToAdd(run.Lost().SI, w.Fields.Amount(field.Assay).SI).SI
	}
	c = c.withBaths(lost)
	c.Removed, c.SaltToAdd = quantity.Known(removed), quantity.Known(salt)
	c.Cost = c.cost(removed, salt)
	return c
}

// cathode is the area that the load of most current needs, m2: at half of the
// bath's limit where that is known, else as large as the exposed metal.
func (c Class) cathode(worked []Worked) (needed quantity.Optional) {
	for _, load := range c.Plan.Loads {
		area := load.Current / load.Density
		for _, w := range worked {
			if limit := w.Limits.Cathode; w.Salt.Name == load.Bath && limit.SI > 0 {
				area = math.Max(2*load.Current/limit.SI, 0)
			}
		}
		if area > needed.SI {
			needed = quantity.Known(area)
		}
	}
	return needed
}

// cost adds up what has a price.
func (c Class) cost(removed, salt float64) (sum quantity.Optional) {
	for _, of := range []struct {
		price  field.Name
		amount float64
	}{{field.PriceSalt, salt}, {field.PriceMetal, removed}, {field.PriceHour, c.Plan.End / 3600}} {
		if price := c.Fields.Amount(of.price); price.Known() {
			sum = quantity.Known(sum.SI + price.SI*of.amount)
		}
	}
	return sum
}
