package picture

import (
	"errors"
	"math"

	"saltbite/calc/artwork"
	"saltbite/calc/bath"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// Evened is how evenly a picture of the resist is etched. What is not given of the
// bath is assumed, for this alone.
type Evened struct {
	Pictured
	Job     job.Worked
	Problem evenness.Problem
	Result  evenness.Result
	Solved  bool
	Assumed []field.Name // what stands for a blank
}

// How many cells the bath has on its longer side: usualCells where the answer has settled
// on them to evenness.Rough, else evenCells. Twice as many take 4.1 times as long: 1.7 s
// and 7.0 s for art of 3 cells, in WebAssembly on the machine it was made on. They are
// asked for often, since the bath round a picture of 80 mm, 50 mm from the cathode, is 180 mm
// wide: of patches of 0.25 to 5 mm the ends are then off by 2 to 8 % on 512 cells and by 1 to
// 4 % on 1024.
const usualCells, evenCells = 512, 1024

// Even works out how evenly a picture is etched. The cathode is taken to cover the
// whole wall across; of several pieces, and of two sides, each faces its own.
func Even(p artwork.Picture, fields *field.Set, progress func(share float64)) Evened {
	return even(p, fields, evenCells, progress)
}

func even(p artwork.Picture, fields *field.Set, cells int, progress func(share float64)) Evened {
	e, ok := posed(p, fields, cells, progress)
	if !ok {
		return e
	}
	var err error
	e.Problem.Usual = usualCells
	e.Result, err = evenness.Solve(e.Problem, telling(progress))
	e.Solved = e.without(err)
	return e
}

// ofPosing is the share of the work, about, that is done before it is solved.
const ofPosing = 0.1

// telling is a step of a solution that goes on.
func telling(progress func(share float64)) func(share float64) bool {
	return func(share float64) bool {
		progress(ofPosing + (1-ofPosing)*share)
		return true
	}
}

// without says whether there was no error, and notes the one that there was.
func (e *Evened) without(err error) bool {
	if err != nil {
		e.Errors = append(e.Errors, e.unsolved(err)...)
	}
	return err == nil
}

// posed is the problem of a picture and its bath, on so many cells at most; false if it
// can't be solved.
func posed(p artwork.Picture, fields *field.Set, cells int, progress func(share float64)) (Evened, bool) {
	e := Evened{Pictured: Pictured{Fields: fields}, Job: job.Work(fields)}
	for _, mistake := range e.Job.Errors {
		if mistake.Code != field.Missing { // what is blank is assumed
			e.Errors = append(e.Errors, mistake)
		}
	}
	options, ok := e.options()
	if !ok || e.unreadable(field.Gap, field.Depth, field.Until, field.Temperature, field.VesselWidth, field.Fill) {
		return e, false
	}
	if options.Width > 0 && options.Corners == (artwork.Corners{}) {
		options.Height = 0 // the pixels tell it better than a height that was rounded
	}
	art, err := artwork.Cover(p, options, func(share float64) { progress(ofPosing * share) })
	if err != nil {
		e.Pictured = e.refused(err)
		return e, false
	}
	e.Art, e.Known = art, true
	if art.Width == 0 {
		e.Errors = append(e.Errors, job.Missing(fields, field.Width)...)
		return e, false
	}
	ok = e.pose()
	e.Problem.Cells = cells
	return e, ok
}

// pose makes the problem of the picture and the bath; false if a part of it was typed
// and can't be used.
func (e *Evened) pose() bool {
	gap := e.assumed(e.Fields.Amount(field.Gap), field.Gap, quantity.Known(job.AssumedGap))
	conductivity := e.Job.Standing.Conductivity
	if conductivity.State == quantity.Blank {
		conductivity = e.assumed(e.Fields.Amount(field.Strength), field.Strength, job.UsualConductivity(e.Fields, e.salt()))
	}
	density := e.assumed(e.Job.Bite.Density, field.Density, e.Job.Suggest.Density.Or(quantity.Known(usualDensity)))
	temperature := e.Fields.Amount(field.Temperature)
	if quantity.Worst(gap, conductivity, density, temperature) != quantity.Given || e.Job.Metal.State == quantity.Bad {
		return false
	}
	if e.Job.Metal.State == quantity.Blank {
		e.Assumed = append(e.Assumed, field.Metal)
	}
	kinetics := evenness.Copper
	if e.salt().Holds("Ag") {
		kinetics = evenness.Silver
	}
	depth, until := e.Job.Bite.Depth, e.Job.Bite.Until
	if !until.Tells() {
		depth = e.Fields.Amount(field.Depth)
	}
	e.Problem = evenness.Problem{
		Picture: coverage(e.Art.Map), Width: e.Art.Width, Height: e.Art.Height,
		Gap: gap.SI, Conductivity: conductivity.SI, Density: density.SI,
		Polarisation: kinetics.Polarisation(density.SI, temperature.SI),
		Depth:        depth.SI, Shallowest: !until.Tells(),
	}
	if width, fill := e.Fields.Amount(field.VesselWidth), e.Fields.Amount(field.Fill); width.Known() && fill.Known() && e.Fields.Pick(field.Position) == "hanging" {
		e.Problem.SectionWidth, e.Problem.SectionHeight = width.SI, fill.SI
	}
	return true
}

// assumed lets something stand for what is blank, and notes it.
func (e *Evened) assumed(given quantity.Optional, name field.Name, stands quantity.Optional) quantity.Optional {
	if given.State == quantity.Blank {
		e.Assumed = append(e.Assumed, name)
	}
	return given.Or(stands)
}

// salt is the bath's, or the one of copper where neither it nor the metal is named.
func (e *Evened) salt() job.Salt {
	if e.Job.Salt.State == quantity.Blank {
		return job.Salt{Salt: bath.CopperSulfate, State: quantity.Assumed}
	}
	return e.Job.Salt
}

// coverage is the map of what is exposed, in shares.
func coverage(m artwork.Map) evenness.Picture {
	open := make([]float32, len(m.Open))
	for i, v := range m.Open {
		open[i] = float32(v) / 255
	}
	return evenness.Picture{Columns: m.Width, Rows: m.Height, Open: open}
}

// unsolved says why there is no answer, at the fields to change.
func (e *Evened) unsolved(err error) []field.Error {
	at, code := field.Width, string(quantity.OutOfSize)
	switch {
	case errors.Is(err, evenness.ErrSection):
		at, code = field.VesselWidth, field.Contradiction
	case errors.Is(err, evenness.ErrSmall):
		at = field.Gap
	case errors.Is(err, evenness.ErrCovered):
		return []field.Error{{Field: "", Code: field.Picture, Text: field.Capital(err.Error()) + ". Check whether black is resist or etched."}}
	}
	text := field.Capital(err.Error()) + "."
	if typed := e.Fields.Text(at); typed != "" {
		text = quantity.Quote(typed) + " can't be used: " + err.Error() + "."
	}
	return []field.Error{{Field: at.String(), Code: code, Text: text}}
}

// mean is the depth, m, on average; not known where none is asked for.
func (e *Evened) mean() quantity.Optional {
	if e.Problem.Depth == 0 {
		return quantity.Optional{}
	}
	if e.Problem.Shallowest {
		return quantity.Known(e.Problem.Depth / e.Result.Least)
	}
	return quantity.Known(e.Problem.Depth)
}

// wanted is the depth, m, that was asked for, of whatever is to reach it.
func (e *Evened) wanted() quantity.Optional {
	if e.Problem.Shallowest {
		return quantity.Known(e.Problem.Depth)
	}
	return e.Job.Bite.Until.Reached(e.mean())
}

// ends are the ends of the scale of colours, over the mean: a picture that is etched
// evenly has a plain colour.
func (e *Evened) ends() (low, high float64) {
	const narrowest = 0.05
	return math.Min(e.Result.Least, 1-narrowest), math.Max(e.Result.Most, 1+narrowest)
}
