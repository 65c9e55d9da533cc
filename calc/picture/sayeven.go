package picture

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"saltbite/calc/advice"
	"saltbite/calc/bite"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// EvenReply is what is said of how evenly a picture is etched.
type EvenReply struct {
	Sentence string
	Answers  []advice.Figure
	Spots    []SpotRow // the deepest places, the deepest first
	Scale    []Shade   // of the colours, from shallow to deep
	Shades   []Shade   // of each level that the map holds, from First on
	First    int       // the least level but 0
	Contours []Contour
	Fields   []Filled
	Assumed  []field.Name
	Cautions []advice.Caution
	Errors   []field.Error
	Map      evenness.Map // local depth over the mean; empty if nothing was solved
	Levels   []byte       // the same in whole per cent, at most 255; 0 is resist
}

// SpotRow is a place that goes deep. X and Y are its middle, from the top left; Across
// and Down are the same as shares of the picture. Over: it is deeper than Depth, by how
// much the grid can't tell.
type SpotRow struct {
	X, Y, Depth  advice.Cell
	Across, Down float64
	Over         bool
}

// Shade is a local depth, in words and in colour.
type Shade struct{ Text, Colour string }

// mostLevel is the deepest that a level says apart, in per cent of the mean.
const mostLevel = 255

// scaleSteps are how many shades the scale shows.
const scaleSteps = 25

// EvenSaid says how evenly a picture is etched.
func EvenSaid(e Evened) EvenReply {
	r := EvenReply{Errors: e.Errors}
	if !e.Solved {
		return r
	}
	p := evenPrinter{picturePrinter{e.Fields.Printer().US}, e.mean()}
	r.Sentence = p.sentence(e.Result)
	r.Answers = p.answers(e.Result)
	for _, s := range e.Result.HotSpots {
		r.Spots = append(r.Spots, SpotRow{p.cell(s.X), p.cell(s.Y), p.spot(s, e.Result.Most), s.X / e.Art.Width, s.Y / e.Art.Height, s.Over})
	}
	r.Map = e.Result.Map
	r.Levels = levelsOf(r.Map)
	r.First, r.Shades = p.shades(r.Levels, e)
	low, high := e.ends()
	r.Contours = p.contours(r.Map, low, high)
	for i := range scaleSteps {
		share := float64(i) / (scaleSteps - 1)
		r.Scale = append(r.Scale, Shade{p.depth(low + share*(high-low)), colourOf(share)})
	}
	r.Scale[0].Text = "to " + r.Scale[0].Text
	r.Scale[scaleSteps-1].Text = "from " + r.Scale[scaleSteps-1].Text
	r.Assumed = e.Assumed
	r.Fields = e.filled(p.us)
	r.Cautions = e.cautions(p)
	return r
}

// evenPrinter prints local depths: in lengths where a mean depth is known, else in per
// cent of it.
type evenPrinter struct {
	picturePrinter
	mean quantity.Optional // m
}

// depth is a local depth over the mean. Two figures: the solution is no better.
func (p evenPrinter) depth(times float64) string {
	if !p.mean.Known() {
		return percent(times)
	}
	unit := field.Depth.Row().Bare
	if p.us {
		unit = field.Depth.Row().USUnit
	}
	return quantity.PrintEstimate(times*p.mean.SI, quantity.Length, unit)
}

// local is a local depth as a cell: in mm, or in per cent of the mean.
func (p evenPrinter) local(times float64) advice.Cell {
	if p.mean.Known() {
		unit := field.Depth.Row().Bare
		return advice.Cell{Value: quantity.In(times*p.mean.SI, unit), Unit: unit, Text: p.depth(times)}
	}
	return advice.Cell{Value: 100 * times, Unit: "%", Text: p.depth(times)}
}

// spot is the depth of a hot spot. Of one that has not settled it says that it is over
// what 95 % of the metal stays under, which every hot spot is.
func (p evenPrinter) spot(s evenness.Spot, most float64) advice.Cell {
	if !s.Over {
		return p.local(s.Depth)
	}
	cell := p.local(most)
	cell.Text = "over " + cell.Text
	return cell
}

func percent(times float64) string { return strconv.Itoa(int(math.Round(100*times))) + " %" }

func (p evenPrinter) sentence(r evenness.Result) string {
	said := "The shallowest part gets " + percent(r.Least) + " of the mean depth, the deepest " + percent(r.Most)
	if p.mean.Known() {
		said += ": " + p.depth(r.Least) + " and " + p.depth(r.Most)
	}
	return said + "."
}

func (p evenPrinter) answers(r evenness.Result) []advice.Figure {
	share := func(name string, x float64) advice.Figure {
		return advice.Figure{Name: name, Value: 100 * x, Unit: "%", Text: percent(x)}
	}
	plain := func(name string, x float64) advice.Figure {
		return advice.Figure{Name: name, Value: x, Text: quantity.PrintNumber(x)}
	}
	return []advice.Figure{
		share("least", r.Least), share("most", r.Most), share("spread", r.Spread()),
		{Name: "bathResistance", Value: r.Resistance, Unit: "ohm", Text: quantity.PrintEstimate(r.Resistance, quantity.Resistance, "ohm")},
		plain("wagner", r.Wagner), count("iterations", r.Iterations), share("uncertainty", r.Uncertainty),
	}
}

// levelsOf are local depths in whole per cent of the mean.
func levelsOf(m evenness.Map) []byte {
	levels := make([]byte, len(m.Values))
	for i, v := range m.Values {
		if v > 0 {
			levels[i] = byte(math.Max(1, math.Min(math.Round(100*float64(v)), mostLevel)))
		}
	}
	return levels
}

// shades are those of all levels from the least to the most of a map.
func (p evenPrinter) shades(levels []byte, e Evened) (first int, list []Shade) {
	most := int(slices.Max(levels))
	first = most
	for _, level := range levels {
		if level > 0 {
			first = min(first, int(level))
		}
	}
	low, high := e.ends()
	for level := first; level <= most; level++ {
		times := float64(level) / 100
		text := percent(times) + " of the mean"
		if p.mean.Known() {
			text = p.depth(times) + ", " + text
		}
		if level == mostLevel {
			text += ", or more"
		}
		list = append(list, Shade{text, colourOf((times - low) / (high - low))})
	}
	return first, list
}

// colourOf is the colour of a place on the scale, from 0 to 1, as a page writes it.
func colourOf(share float64) string {
	red, green, blue := evenness.Colour(share)
	return fmt.Sprintf("#%02x%02x%02x", red, green, blue)
}

// filled are the fields that the solution fills, so that the same job is answered alike
// without the picture. The resistance is that of all faces, side by side.
func (e *Evened) filled(us bool) (list []Filled) {
	faces := e.Fields.Amount(field.Pieces).SI * e.Fields.Amount(field.Sides).SI
	for _, row := range []struct {
		name field.Name
		si   float64
	}{{field.Least, math.Min(e.Result.Least, 1)}, {field.Resistance, e.Result.Resistance / faces}} {
		if e.Fields.Blank(row.name) && faces > 0 {
			list = append(list, Filled{Name: row.name.String(), Text: exactly(row.name, row.si, us)})
		}
	}
	return list
}

// cautions are what the solution calls for, the graver first.
func (e *Evened) cautions(p evenPrinter) (list []advice.Caution) {
	say := func(code string, level advice.Level, at field.Name, text string) {
		list = append(list, advice.Caution{Code: code, Level: level, Field: at.String(), Text: text})
	}
	if film := e.Job.Limits.Film; film.Known() && e.Problem.Density > film.SI {
		say("uneven-film", advice.Warn, field.Density, "Lower the current density: over "+p.say(field.Density, film.SI)+" the liquid says where it bites, and this picture is wrong.")
	}
	e.warnOfDeepest(p, say)
	e.tellIslands(p, say)
	if e.Result.Uncertainty >= evenness.Rough {
		say("uneven-rough", advice.Note, field.Width, "Rough: the grid is coarse for such fine lines, and the ends may be "+percent(e.Result.Uncertainty)+" of the mean off.")
	}
	if len(e.Assumed) > 0 {
		say("uneven-assumed", advice.Note, e.Assumed[0], "Assumed for what is blank: "+strings.Join(e.assumedWords(p), ", ")+".")
	}
	return list
}

// warnOfDeepest says what happens elsewhere by the time that the shallowest part is as
// deep as is wanted.
func (e *Evened) warnOfDeepest(p evenPrinter, say say) {
	if !p.mean.Known() {
		return
	}
	wanted := e.wanted().SI
	deepest := wanted * e.Result.Most / e.Result.Least
	say("uneven-time", advice.Note, field.Until, "To etch "+p.say(field.Depth, wanted)+" even where it is shallowest takes about "+
		strconv.FormatFloat(1/e.Result.Least, 'f', 1, 64)+" times as long; the deepest part is then "+p.length(deepest)+".")
	sheet, sides := e.Fields.Amount(field.Sheet), e.Fields.Amount(field.Sides)
	if sheet.Known() && sides.Known() && deepest*sides.SI >= sheet.SI {
		say("uneven-through", advice.Warn, field.Sheet, "Take a thicker sheet, or stop earlier: the deepest part is through before the shallowest is "+p.say(field.Depth, wanted)+" deep.")
	}
	line, undercut := e.Fields.Amount(field.Line), e.Fields.Amount(field.Undercut)
	if line.Known() && undercut.Known() && line.SI < bite.NarrowestLine(undercut.SI, deepest).SI && line.SI >= e.limit() {
		say("uneven-line", advice.Warn, field.Line, "Draw the finest line wider: where it is deepest it is gone before the shallowest part is "+p.say(field.Depth, wanted)+" deep.")
	}
}

// apart is how much deeper than the mean, of it, an exposed area must go on average to be told of.
const apart = 0.05

// tellIslands says which of the separate exposed areas goes deepest, and by how much.
func (e *Evened) tellIslands(p evenPrinter, say say) {
	islands := e.Result.Islands
	if len(islands) < 2 {
		return
	}
	deepest := islands[0]
	for _, island := range islands {
		if island.Mean > deepest.Mean {
			deepest = island
		}
	}
	if deepest.Mean < 1+apart {
		return
	}
	say("uneven-island", advice.Note, field.Depth, "Stop out first the exposed area "+p.say(field.Width, deepest.Deepest.X)+" from the left, "+p.say(field.Width, deepest.Deepest.Y)+
		" from the top: it goes deepest, "+p.depth(deepest.Mean)+" on average, "+percent(deepest.Mean-1)+" over the mean.")
}

// length is a depth, m, of which two figures are known.
func (p evenPrinter) length(si float64) string { return p.depth(si / p.mean.SI) }

// assumedWords are what stands for a blank.
func (e *Evened) assumedWords(p evenPrinter) (said []string) {
	for _, name := range e.Assumed {
		said = append(said, map[field.Name]string{
			field.Metal:    "copper",
			field.Gap:      p.say(field.Gap, e.Problem.Gap) + " to the cathode",
			field.Strength: "the usual strength",
			field.Density:  p.say(field.Density, e.Problem.Density),
		}[name])
	}
	return said
}
