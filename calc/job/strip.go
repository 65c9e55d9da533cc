package job

import (
	"math"

	"saltbite/calc/field"
	"saltbite/calc/metal"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// Strip is the smallest trial on scrap that tells the efficiency of a metal within
// StripWithin.
type Strip struct {
	trial.TestRun
	Fields     *field.Set
	Metal      *metal.Metal // nil where none is named
	Resolution float64      // kg, of the balance
	Known      bool         // there is such a trial
	Beyond     bool         // it takes more than the supply gives
	Errors     []field.Error
}

// What a strip is planned for where the fields don't say. Common practice, no source.
const (
	StripWithin  = 0.05
	stripDeepest = 0.1e-3 // m
	stripThinned = 0.25   // of the sheet from each side, at most: half of it stays
	stripLongest = 4 * 3600
	stripLeast   = 0.1 // A: what an ammeter that shows 0.01 A still tells within 5 %
)

// stripFields are those that a strip is planned by.
var stripFields = []field.Name{field.Metal, field.MetalDensity, field.Salt, field.Resolution, field.Density, field.Sheet, field.Amps}

// PlanStrip plans a trial on scrap of the metal, for the balance, at the density and
// with the supply that the fields name: at the density of their job, else at the one
// that is suggested. Its time is a whole number of minutes, rounded up, so that the
// loss is not less than what the balance needs.
func PlanStrip(read *field.Set) Strip {
	w := Work(read)
	strip := Strip{Fields: w.Fields, Metal: w.Metal.Reading.Metal, Resolution: resolution(w.Fields, noFields), Errors: unreadableOf(w, stripFields)}
	if strip.Metal == nil || !w.Law.Known || strip.Errors != nil {
		return strip
	}
	amps := w.Fields.Amount(field.Amps)
	deepest := stripDeepest
	if sheet := w.Fields.Amount(field.Sheet); sheet.Known() {
		deepest = math.Min(deepest, stripThinned*sheet.SI)
	}
	strip.TestRun, strip.Known = trial.TestStrip{
		Law: w.Law.Law, Resolution: strip.Resolution, Within: StripWithin,
		Density: w.Bite.Density.Or(w.Suggest.Density).SI,
		Deepest: deepest, Longest: stripLongest,
		LeastCurrent: math.Min(stripLeast, amps.Or(quantity.Known(stripLeast)).SI),
	}.Smallest()
	if !strip.Known {
		return strip
	}
	strip.Beyond = amps.Known() && strip.Current > amps.SI*(1+1e-9)
	longer := math.Ceil(strip.Time/60-1e-9) * 60 / strip.Time
	strip.Time, strip.Depth, strip.Loss = longer*strip.Time, longer*strip.Depth, longer*strip.Loss
	return strip
}

// unreadableOf are the mistakes at some fields, other than that they are blank.
func unreadableOf(w Worked, names []field.Name) (errors []field.Error) {
	for _, e := range unreadable(w) {
		for _, name := range names {
			if e.Field == name.String() && e.Code != field.Contradiction {
				errors = append(errors, e)
			}
		}
	}
	return errors
}
