package drawing

import (
	"math"
	"strconv"

	"saltbite/calc/quantity"
)

// Found is the depth that finished runs have against the depth of their charge.
type Found struct {
	US   bool
	Runs []FoundRun // in the order of their times
}

// FoundRun is one of them.
type FoundRun struct {
	Predicted, Found float64 // m, by all of the charge, and as weighed or measured
	Odd              bool    // it stands out
}

// mostFound is how many runs are drawn, the last ones: more can't be told apart.
const mostFound = 300

// Draw draws them. It returns nil without a run to draw.
func (f Found) Draw() *Drawing {
	runs := f.Runs
	if len(runs) > mostFound {
		runs = runs[len(runs)-mostFound:]
	}
	unit := lengthUnit(f.US)
	var most float64
	for _, run := range runs {
		most = math.Max(most, math.Max(run.Predicted, run.Found))
	}
	most *= 1.06
	step := nice(quantity.In(most, unit) / 3)
	if !(step > 0) || most > math.MaxFloat32 {
		return nil
	}
	d := &Drawing{Width: frameWidth, Height: frameHeight, Title: "Depth found against depth predicted", Words: f.words(len(runs))}
	texts := ticks(step, quantity.In(most, unit))
	var left float64
	for _, text := range texts {
		left = math.Max(left, widthOf(text, wordSize, false)+3)
	}
	x := func(m float64) float64 { return left + (plotRight-left)*m/most }
	y := func(m float64) float64 { return plotBottom - (plotBottom-plotTop)*m/most }
	for i, text := range texts {
		at := quantity.Of(float64(i)*step, unit)
		if i > 0 {
			d.add(Grid, segment(left, y(at), plotRight, y(at)))
		}
		d.write(Small, text, left-1.2, y(at)+1.5, wordSize, End)
	}
	wide := widthOf(texts[len(texts)-1], wordSize, false) + 1.5
	for x(quantity.Of(step, unit))-left < wide {
		step = niceAbove(1.1 * step)
	}
	for i, text := range ticks(step, quantity.In(most, unit)) {
		at := x(quantity.Of(float64(i)*step, unit))
		d.add(Axis, segment(at, plotBottom, at, plotBottom+1))
		if i > 0 && at+wide/2 < columnX {
			d.write(Small, text, at, ticksY, wordSize, Middle)
		}
	}
	d.write(Small, "found, "+unit, 1.5, 4.8, wordSize, Start)
	d.write(Small, "predicted", columnX, ticksY, wordSize, Start)
	d.add(Axis, from(left, plotTop).line(left, plotBottom).line(plotRight, plotBottom))
	d.dash(Target, segment(x(0), y(0), x(most), y(most)))
	d.write(Word, "as predicted", columnX, plotTop+2, wordSize, Start)
	for _, run := range runs {
		d.add(Reading, spot(x(run.Predicted), y(run.Found), run.Odd))
	}
	return d
}

// spot is a circle, or the diamond of a run that stands out.
func spot(x, y float64, odd bool) *path {
	const round, diamond = 0.9, 1.5
	if odd {
		return from(x-diamond, y).line(x, y-diamond).line(x+diamond, y).line(x, y+diamond).close()
	}
	return from(x-round, y).arc(round, round, x+round, y).arc(round, round, x-round, y).close()
}

func (f Found) words(drawn int) string {
	var odd int
	for _, run := range f.Runs[len(f.Runs)-drawn:] {
		if run.Odd {
			odd++
		}
	}
	said := "Each circle is a run: to the right the depth that all of its current would etch, upwards the depth that was found. On the line they are alike."
	return said + remarks(odd, drawn, len(f.Runs))
}

// remarks say how many of the drawn runs stand out, and whether earlier ones are left out.
func remarks(odd, drawn, all int) (said string) {
	if odd > 0 {
		said += " Diamonds stand out: " + strconv.Itoa(odd) + " of " + strconv.Itoa(drawn) + "."
	}
	if drawn < all {
		said += " The last " + strconv.Itoa(drawn) + " runs are drawn."
	}
	return said
}
