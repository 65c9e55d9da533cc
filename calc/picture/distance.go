package picture

import (
	"saltbite/calc/advice"
	"saltbite/calc/artwork"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Distanced is how even the etch would be at other distances to the cathode.
type Distanced struct {
	Evened
	Variants []evenness.Variant
}

// distanceCells is how many cells the bath has on its longer side at the largest distance;
// the nearer ones have smaller boxes and so fewer.
const distanceCells = 512

// Distances solves a picture at several distances round the one that there is, each from
// the answer to the one before. The density stays.
func Distances(p artwork.Picture, fields *field.Set, progress func(share float64)) Distanced {
	return distances(p, fields, distanceCells, progress)
}

func distances(p artwork.Picture, fields *field.Set, cells int, progress func(share float64)) Distanced {
	e, ok := posed(p, fields, cells, progress)
	d := Distanced{Evened: e}
	if !ok {
		return d
	}
	var err error
	d.Variants, err = evenness.Vary(d.Problem, d.Problem.Distances(), telling(progress))
	if d.Solved = d.without(err); d.Solved && len(d.Variants) == 0 {
		d.Solved = d.without(evenness.ErrSmall)
	}
	return d
}

// DistanceReply is what is said of them.
type DistanceReply struct {
	Sentence string
	Rows     []DistanceRow // the nearest first
	Errors   []field.Error
}

// DistanceRow is one distance; Volts are those of the bath alone, before one face.
type DistanceRow struct{ Distance, Least, Most, Spread, Volts advice.Cell }

// DistancesSaid says how even the etch would be at other distances.
func DistancesSaid(d Distanced) DistanceReply {
	r := DistanceReply{Errors: d.Errors}
	if !d.Solved {
		return r
	}
	p := picturePrinter{d.Fields.Printer().US}
	share := func(x float64) advice.Cell { return advice.Cell{Value: 100 * x, Unit: "%", Text: percent(x)} }
	best := d.Variants[0]
	for _, v := range d.Variants {
		if v.Spread() < best.Spread() {
			best = v
		}
		r.Rows = append(r.Rows, DistanceRow{p.cell(v.Gap), share(v.Least), share(v.Most), share(v.Spread()),
			advice.Cell{Value: v.Volts, Unit: "V", Text: quantity.PrintEstimate(v.Volts, quantity.Voltage, "V")}})
	}
	r.Sentence = "Of these distances " + p.say(field.Gap, best.Gap) + " is the most even: from " + percent(best.Least) + " to " + percent(best.Most) + " of the mean depth."
	return r
}
