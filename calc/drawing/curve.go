package drawing

import (
	"math"
	"strconv"

	"saltbite/calc/quantity"
)

// Curve is depth against time.
type Curve struct {
	US         bool
	Flow       string                  // the current or density that it is drawn for: "0.257 A"
	Why        string                  // where that is from, if it is not simply given
	Depth      func(s float64) float64 // m, after so many seconds
	Slow, Fast func(s float64) float64 // ends of its range; nil where none is known
	RangeWhy   string

	Target Point // where the job is to end
	Half   Size  // time
	Sheet  Size  // deepest safe etch for the sheet
	Line   Size  // depth at which the finest line is gone

	Readings []Point // by the ammeter
	Weighing Point
}

// Point is a depth at a time; what is not known of it has no text.
type Point struct{ Time, Depth Size }

// What stands where in the frame, mm.
const (
	plotTop, plotBottom = 8.5, 41.5
	plotRight           = 65.5
	ticksY              = 47.3 // of the numbers under it
	curveColumn         = 9.4  // where the first note may stand
	overrun             = 1.2  // of the time that is drawn, over the target's
	farthest            = 1.6  // of a limit that is drawn, over what else is
	samples             = 24   // of the curve
	mostReadings        = 60   // that are drawn; more can't be told apart
)

// plotted is a curve laid out.
type plotted struct {
	Curve
	drawing   *Drawing
	left      float64 // x of the axis of depth
	time      float64 // s, to the right edge
	depth     float64 // m, to the upper
	timeUnit  string
	timeStep  float64 // between ticks, in that unit
	depthStep float64 // in the unit of lengths
}

// Draw draws the curve; nil where its end is not known.
func (c *Curve) Draw() *Drawing {
	if c.Depth == nil {
		return nil
	}
	p := &plotted{Curve: *c}
	if !p.measure() {
		return nil
	}
	p.drawing = &Drawing{Width: frameWidth, Height: frameHeight, Title: "Depth against time", Words: p.words()}
	p.axes()
	p.band()
	p.limits()
	p.drawing.add(Line, p.along(new(path), p.Depth, false))
	p.times()
	p.readings()
	p.notes()
	return p.drawing
}

// measure chooses how far the axes go.
func (p *plotted) measure() bool {
	p.time = overrun * math.Max(p.Target.Time.SI, p.lastMeasured())
	if !(p.time > 0) {
		return false
	}
	p.depth = math.Max(p.Depth(p.time), p.Target.Depth.SI)
	if p.Fast != nil {
		p.depth = math.Max(p.depth, p.Fast(p.time))
	}
	p.depth = math.Max(p.depth, p.Weighing.Depth.SI)
	for i := range p.Readings {
		p.depth = math.Max(p.depth, p.Readings[i].Depth.SI)
	}
	most := p.depth * farthest
	for _, limit := range []Size{p.Sheet, p.Line} {
		if limit.SI <= most {
			p.depth = math.Max(p.depth, limit.SI)
		}
	}
	p.depth *= 1.03
	p.timeUnit = timeUnit(p.time)
	p.timeStep = nice(quantity.In(p.time, p.timeUnit) / 3)
	p.depthStep = nice(quantity.In(p.depth, lengthUnit(p.US)) / 3)
	return p.depthStep > 0 && p.depth < math.MaxFloat64 && p.time < math.MaxFloat64
}

func (p *plotted) lastMeasured() float64 {
	last := p.Weighing.Time.SI
	for i := range p.Readings {
		last = math.Max(last, p.Readings[i].Time.SI)
	}
	return last
}

// timeUnit is the unit for an axis of so many seconds.
func timeUnit(s float64) string {
	switch {
	case s < 150:
		return "s"
	case s < 2.5*3600:
		return "min"
	}
	return "h"
}

func (p *plotted) x(seconds float64) float64 { return p.left + (plotRight-p.left)*seconds/p.time }
func (p *plotted) y(metres float64) float64  { return plotBottom - (plotBottom-plotTop)*metres/p.depth }

// ticks lists the round numbers from 0 to an end.
func ticks(step, end float64) (texts []string) {
	decimals := max(0, int(math.Ceil(-math.Log10(step)-1e-9)))
	for i := 0; float64(i)*step <= end; i++ {
		texts = append(texts, strconv.FormatFloat(float64(i)*step, 'f', decimals, 64))
	}
	return texts
}

// axes draws grid and axes, the axis of depth as far in as its numbers need.
func (p *plotted) axes() {
	d, unit := p.drawing, lengthUnit(p.US)
	depths := ticks(p.depthStep, quantity.In(p.depth, unit))
	for _, text := range depths {
		p.left = math.Max(p.left, widthOf(text, wordSize, false)+3)
	}
	for i, text := range depths {
		y := p.y(quantity.Of(float64(i)*p.depthStep, unit))
		if i > 0 {
			d.add(Grid, segment(p.left, y, plotRight, y))
		}
		d.write(Small, text, p.left-1.2, y+1.5, wordSize, End)
	}
	p.timeAxis()
	d.write(Small, unit, 1.5, 4.8, wordSize, Start)
	d.write(Small, p.timeUnit, columnX, ticksY, wordSize, Start)
	d.add(Axis, from(p.left, plotTop).line(p.left, plotBottom).line(plotRight, plotBottom))
}

// timeAxis writes the ticks of time, as far apart as their numbers need.
func (p *plotted) timeAxis() {
	d, end := p.drawing, quantity.In(p.time, p.timeUnit)
	wide := func(text string) float64 { return widthOf(text, wordSize, false) + 1.5 }
	texts := ticks(p.timeStep, end)
	for len(texts) > 2 && wide(texts[len(texts)-1]) > p.x(quantity.Of(p.timeStep, p.timeUnit))-p.left {
		p.timeStep = niceAbove(1.1 * p.timeStep)
		texts = ticks(p.timeStep, end)
	}
	for i, text := range texts {
		x := p.x(quantity.Of(float64(i)*p.timeStep, p.timeUnit))
		d.add(Axis, segment(x, plotBottom, x, plotBottom+1))
		if x+wide(text)/2 < columnX {
			d.write(Small, text, x, ticksY, wordSize, Middle)
		}
	}
}

// along draws a curve from its start to the right edge, or back.
func (p *plotted) along(way *path, depth func(float64) float64, back bool) *path {
	for i := range samples + 1 {
		share := float64(i) / samples
		if back {
			share = 1 - share
		}
		x, y := p.x(share*p.time), p.y(depth(share*p.time))
		if len(way.data) == 0 {
			way = way.move(x, y)
			continue
		}
		way = way.line(x, y)
	}
	return way
}

func (p *plotted) band() {
	if p.Slow == nil || p.Fast == nil {
		return
	}
	p.drawing.add(Band, p.along(p.along(new(path), p.Slow, false), p.Fast, true).close())
}

// inside says whether a level is on the picture.
func (p *plotted) inside(level Size) bool { return level.Known() && level.SI <= p.depth }

func (p *plotted) limits() {
	for _, level := range []Size{p.Sheet, p.Line} {
		if p.inside(level) {
			p.drawing.add(Limit, segment(p.left, p.y(level.SI), plotRight, p.y(level.SI)))
		}
	}
}

// times marks half time and the end, with their words over the picture.
func (p *plotted) times() {
	const row, from = 4.8, 11
	d, t := p.drawing, &p.Target
	right := float64(from)
	if p.Half.Known() {
		x, width := p.x(p.Half.SI), widthOf("half-way", wordSize, false)
		d.dash(Half, segment(x, plotBottom, x, plotTop-2.5))
		left := math.Max(right, x-width/2)
		d.write(Word, "half-way", left, row, wordSize, Start)
		right = left + width + 2
	}
	if !t.Time.Known() || !t.Depth.Known() {
		return
	}
	x, y := p.x(t.Time.SI), p.y(t.Depth.SI)
	d.dash(Target, segment(x, plotBottom, x, plotTop-2.5))
	d.dash(Target, segment(x, y, plotRight, y))
	d.add(Target, rectangle(x-1, y-1, x+1, y+1))
	width := widthOf(t.Time.Text, wordSize, true)
	d.write(Figure, t.Time.Text, math.Max(right, math.Min(x-width/2, columnRight-width)), row, wordSize, Start)
	d.bold(columnRight - right)
}

// readings draws what was measured: circles by the ammeter, a diamond by weight.
func (p *plotted) readings() {
	const round, diamond = 0.9, 1.5
	every := (len(p.Readings) + mostReadings - 1) / mostReadings
	for i := range p.Readings {
		if (len(p.Readings)-1-i)%every != 0 {
			continue
		}
		x, y := p.x(p.Readings[i].Time.SI), p.y(p.Readings[i].Depth.SI)
		p.drawing.add(Reading, from(x-round, y).arc(round, round, x+round, y).arc(round, round, x-round, y).close())
	}
	if w := &p.Weighing; w.Depth.Known() {
		x, y := p.x(w.Time.SI), p.y(w.Depth.SI)
		p.drawing.add(Reading, from(x-diamond, y).line(x, y-diamond).line(x+diamond, y).line(x, y+diamond).close())
	}
}

// notes writes the words of the levels beside the picture.
func (p *plotted) notes() {
	var notes []note
	measured, depth := "by weight", p.Weighing.Depth
	if last := len(p.Readings) - 1; !depth.Known() && last >= 0 {
		measured, depth = "so far", p.Readings[last].Depth
	}
	for i, level := range [...]Size{p.Sheet, p.Line, p.Target.Depth, depth} {
		if p.inside(level) {
			word := [...]string{"sheet's limit", "line is gone", "this job", measured}[i]
			notes = insert(notes, note{word, level.Text, p.y(level.SI)})
		}
	}
	for i, y := range spread(notes, curveColumn) {
		p.drawing.add(Leader, segment(plotRight+0.3, notes[i].at, columnX-0.6, y+1))
		p.drawing.pair(notes[i].word, notes[i].figure, columnX, y, columnRight-columnX)
	}
}

// words says all that the curve shows.
func (p *plotted) words() string {
	return sentences(
		"Depth against time at "+p.Flow+p.Why+".",
		p.targetWords(),
		p.RangeWhy,
		p.limitWords("The sheet's limit is ", p.Sheet),
		p.limitWords("The finest line is gone at ", p.Line),
		p.measuredWords(),
	)
}

func (p *plotted) targetWords() string {
	t := &p.Target
	if !t.Time.Known() || !t.Depth.Known() {
		return ""
	}
	said := t.Depth.Text + " is reached after " + t.Time.Text
	if p.Half.Known() {
		said += "; half-way is at " + p.Half.Text
	}
	return said + "."
}

func (p *plotted) limitWords(what string, level Size) string {
	switch {
	case !level.Known():
		return ""
	case !p.inside(level):
		return what + level.Text + ", deeper than is drawn."
	}
	return what + level.Text + "."
}

func (p *plotted) measuredWords() string {
	var said []string
	if last := len(p.Readings) - 1; last >= 0 {
		r := &p.Readings[last]
		said = append(said, "By the ammeter it is "+r.Depth.Text+" deep after "+r.Time.Text+".")
	}
	if w := &p.Weighing; w.Depth.Known() {
		said = append(said, "By its weight it is "+w.Depth.Text+" deep after "+w.Time.Text+".")
	}
	return sentences(said...)
}
