package drawing

import (
	"math"
	"strconv"
)

// Ageing is the efficiency of the runs of one metal in one salt, one after the other.
type Ageing struct {
	Of        string      // whose runs they are: "brass in copper sulfate"
	Runs      []AgeingRun // those that are used, in the order of their times
	Mean      Size        // a share
	Low, High float64     // between which the next run lies
	Slope     float64     // of the efficiency from run to run; 0 where none is sure
	Trend     string      // what is said of it
	Share     func(float64) string
}

// AgeingRun is one of them.
type AgeingRun struct {
	Efficiency float64 // a share
	Odd        bool    // it stands out
}

// fewestAgeing is how many runs say anything of a course.
const fewestAgeing = 2

// aged is the plot laid out: which runs are drawn, and what the axes go over.
type aged struct {
	Ageing
	drawing     *Drawing
	first       int     // of the drawn runs
	left        float64 // x of the axis
	least, most float64 // shares
}

// Draw draws them. It returns nil if there are too few.
func (a Ageing) Draw() *Drawing {
	if len(a.Runs) < fewestAgeing {
		return nil
	}
	p := aged{Ageing: a, first: max(0, len(a.Runs)-mostFound), least: a.Low, most: a.High}
	for _, run := range p.drawn() {
		p.least, p.most = math.Min(p.least, run.Efficiency), math.Max(p.most, run.Efficiency)
	}
	for _, run := range []int{p.first, len(p.Runs) - 1} {
		p.least, p.most = math.Min(p.least, p.usual(float64(run))), math.Max(p.most, p.usual(float64(run)))
	}
	margin := 0.05 * (p.most - p.least)
	p.least, p.most = p.least-margin, p.most+margin
	step := nice((p.most - p.least) * 100 / 3)
	if !(step > 0) || p.most > math.MaxFloat32 || p.least < -math.MaxFloat32 {
		return nil
	}
	p.drawing = &Drawing{Width: frameWidth, Height: frameHeight, Title: "Efficiency from run to run, " + p.Of, Words: p.words()}
	p.axes(step)
	p.course()
	return p.drawing
}

func (p *aged) drawn() []AgeingRun { return p.Runs[p.first:] }

// x is where a run stands, counted from 0, and y a share.
func (p *aged) x(run float64) float64 {
	return p.left + (plotRight-p.left)*(run-float64(p.first)+0.5)/float64(len(p.drawn()))
}

func (p *aged) y(share float64) float64 {
	return plotBottom - (plotBottom-plotTop)*(share-p.least)/(p.most-p.least)
}

// usual is the efficiency of a run as the line along which it changes has it.
func (p *aged) usual(run float64) float64 { return p.Mean.SI + p.Slope*(run-float64(len(p.Runs)-1)/2) }

// axes draws the grid at round per cent, and numbers the runs.
func (p *aged) axes(step float64) {
	d := p.drawing
	decimals := max(0, int(math.Ceil(-math.Log10(step)-1e-9)))
	var marks []float64
	for i := math.Ceil(p.least * 100 / step); i*step <= p.most*100; i++ {
		marks = append(marks, i*step)
		p.left = math.Max(p.left, widthOf(strconv.FormatFloat(i*step, 'f', decimals, 64), wordSize, false)+3)
	}
	d.add(Band, rectangle(p.left, p.y(p.High), plotRight, p.y(p.Low)))
	for _, mark := range marks {
		d.add(Grid, segment(p.left, p.y(mark/100), plotRight, p.y(mark/100)))
		d.write(Small, strconv.FormatFloat(mark, 'f', decimals, 64), p.left-1.2, p.y(mark/100)+1.5, wordSize, End)
	}
	wide := widthOf(strconv.Itoa(len(p.Runs)), wordSize, false) + 1.5
	every := 1
	for float64(every)*(plotRight-p.left)/float64(len(p.drawn())) < wide {
		every = int(niceAbove(1.1 * float64(every)))
	}
	for i := range p.drawn() {
		if number := p.first + i + 1; number%every == 0 {
			at := p.x(float64(p.first + i))
			d.add(Axis, segment(at, plotBottom, at, plotBottom+1))
			if at+wide/2 >= columnX {
				continue
			}
			d.write(Small, strconv.Itoa(number), at, ticksY, wordSize, Middle)
		}
	}
	d.write(Small, "efficiency, %", 1.5, 4.8, wordSize, Start)
	d.write(Small, "run", columnX, ticksY, wordSize, Start)
	d.add(Axis, from(p.left, plotTop).line(p.left, plotBottom).line(plotRight, plotBottom))
}

// course draws the mean, or the line along which the efficiency changes, and the runs.
func (p *aged) course() {
	d, last := p.drawing, float64(len(p.Runs)-1)
	from := float64(p.first)
	d.dash(Target, segment(p.x(from), p.y(p.usual(from)), p.x(last), p.y(p.usual(last))))
	middle := math.Max(plotTop+2, math.Min(p.y(p.usual(last))+1, columnBottom))
	d.pair("mean", p.Mean.Text, columnX, middle, columnRight-columnX)
	for i, run := range p.drawn() {
		d.add(Reading, spot(p.x(float64(p.first+i)), p.y(run.Efficiency), run.Odd))
	}
}

func (p *aged) words() string {
	var odd int
	low, high := math.Inf(1), math.Inf(-1)
	for _, run := range p.drawn() {
		low, high = math.Min(low, run.Efficiency), math.Max(high, run.Efficiency)
		if run.Odd {
			odd++
		}
	}
	said := "Each circle is a run of " + p.Of + ", the first at the left: upwards the share of the current that dissolved metal. The mean is " +
		p.Mean.Text + ", the lowest " + p.Share(low) + ", the highest " + p.Share(high) + ". " + p.Trend
	return said + remarks(odd, len(p.drawn()), len(p.Runs))
}
