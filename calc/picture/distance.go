package picture

import (
	"math"
	"strconv"

	"saltbite/calc/advice"
	"saltbite/calc/artwork"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Distanced is how even the etch would be at other distances to the cathode, and with a
// border of exposed scrap round the picture.
type Distanced struct {
	Evened
	Variants []evenness.Variant
}

// distanceCells is how many cells the bath has on its longer side at the largest distance;
// the nearer ones have smaller boxes and so fewer.
const distanceCells = 512

// Distances solves a picture at several distances round the one that there is, and there
// with borders of scrap, each from the answer to the one before. The density stays.
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
	bare := d.Problem.Scrap()[1:] // without a border it is the distance that there is
	d.Variants, err = evenness.Vary(d.Problem, append(d.Problem.Distances(), bare...), telling(progress))
	if d.Solved = d.without(err); d.Solved && len(d.Variants) == 0 {
		d.Solved = d.without(evenness.ErrSmall)
	}
	return d
}

// DistanceReply is what is said of them.
type DistanceReply struct {
	Sentence string
	Rows     []VariedRow // the nearest first
	Scrap    []VariedRow // first without a border, then the narrowest
	Errors   []field.Error
}

// VariedRow is one distance, or one width of the border. Volts are those of the bath
// alone, before one face; Longer is how much more time it takes until the shallowest
// part is at the depth than where all is etched alike.
type VariedRow struct{ At, Least, Most, Spread, Volts, Longer advice.Cell }

// DistancesSaid says how even the etch would be at other distances.
func DistancesSaid(d Distanced) DistanceReply {
	r := DistanceReply{Errors: d.Errors}
	if !d.Solved {
		return r
	}
	p := picturePrinter{d.Fields.Printer().US}
	best := d.Variants[0]
	var asIs, bordered *evenness.Variant
	for i := range d.Variants {
		switch v := &d.Variants[i]; {
		case v.Gap == 0: // with a border, where it hangs
			r.Scrap = append(r.Scrap, p.varied(v.Border, *v))
			if bordered == nil || v.Spread() < bordered.Spread() {
				bordered = v
			}
		default:
			r.Rows = append(r.Rows, p.varied(v.Gap, *v))
			if v.Spread() < best.Spread() {
				best = *v
			}
			if v.Gap == d.Problem.Gap {
				asIs = v
			}
		}
	}
	r.Sentence = "Of these distances " + p.say(field.Gap, best.Gap) + " is the most even: from " + percent(best.Least) + " to " + percent(best.Most) + " of the mean depth."
	if asIs != nil && bordered != nil {
		none := p.varied(0, *asIs)
		none.At.Text = "none"
		r.Scrap = append([]VariedRow{none}, r.Scrap...)
		r.Sentence += " " + p.scrapSentence(*asIs, *bordered)
	}
	return r
}

func (p picturePrinter) varied(at float64, v evenness.Variant) VariedRow {
	share := func(x float64) advice.Cell { return advice.Cell{Value: 100 * x, Unit: "%", Text: percent(x)} }
	return VariedRow{p.cell(at), share(v.Least), share(v.Most), share(v.Spread()),
		advice.Cell{Value: v.Volts, Unit: "V", Text: quantity.PrintEstimate(v.Volts, quantity.Voltage, "V")},
		share(math.Max(0, v.TimeToLeast()-1))}
}

// worthwhile is how much less the spread must be, of the mean, for a border to be advised.
const worthwhile = 0.02

// scrapSentence says what the best border of exposed scrap does, and what it takes.
func (p picturePrinter) scrapSentence(asIs, with evenness.Variant) string {
	if asIs.Spread()-with.Spread() < worthwhile {
		return "A border of exposed scrap round the picture makes it no more even."
	}
	return "A border of exposed scrap " + p.say(field.Width, with.Border) + " wide, at " + p.say(field.Gap, asIs.Gap) + ", makes it from " + percent(with.Least) + " to " + percent(with.Most) +
		", and takes " + strconv.FormatFloat(with.Current/asIs.Current, 'f', 1, 64) + " times the current."
}
