package picture

import (
	"math"

	"saltbite/calc/advice"
	"saltbite/calc/artwork"
	"saltbite/calc/drawing"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/job"
)

// Line is laid across a picture, from A to B.
type Line struct{ A, B evenness.Place }

// AlongReply is the sheet cut through along a line; Drawing is nil if it can't be drawn.
type AlongReply struct {
	Drawing *drawing.Drawing
	Errors  []field.Error
}

// Along cuts the sheet through along a line across what was measured of a picture.
// Local depths are those of a solution, if it was solved: without cells, the job's
// depth stands for all.
func Along(m artwork.Map, solved evenness.Map, line Line, fields *field.Set) AlongReply {
	width := max(fields.Amount(field.Width).SI, fields.Amount(field.Diameter).SI)
	if !(width > 0) {
		return AlongReply{Errors: job.Missing(fields, field.Width)}
	}
	height := fields.Amount(field.Height).SI
	if !(height > 0) {
		height = width * float64(m.Height) / float64(m.Width)
	}
	w := job.Work(fields)
	length := math.Hypot(width*(line.B.X-line.A.X), height*(line.B.Y-line.A.Y))
	drawn := advice.Along(w, advice.Laid{Length: length, Open: line.stretches(m, solved, length), Computed: len(solved.Values) > 0})
	if drawn == nil && !w.Bite.Depth.Known() {
		return AlongReply{Errors: job.Missing(fields, field.Depth)}
	}
	return AlongReply{Drawing: drawn}
}

// at is a share of the way from A to B.
func (l Line) at(share float64) evenness.Place {
	return evenness.Place{X: l.A.X + share*(l.B.X-l.A.X), Y: l.A.Y + share*(l.B.Y-l.A.Y)}
}

// How many steps a line is followed in: one for each half cell that it crosses, within
// these.
const leastSteps, mostSteps = 64, 1200

// stretches are where the line, so long (m), crosses exposed metal. An edge is where half
// is exposed, between two steps by a straight line.
func (l Line) stretches(m artwork.Map, solved evenness.Map, length float64) (open []drawing.Stretch) {
	cells := math.Hypot(float64(m.Width)*(l.B.X-l.A.X), float64(m.Height)*(l.B.Y-l.A.Y))
	steps := max(leastSteps, min(int(2*cells), mostSteps))
	left, before := 0.0, 0.0
	for i := range steps + 1 {
		share := float64(i) / float64(steps)
		now := exposed(m, l.at(share)) - 0.5
		edge := share - now/(now-before)/float64(steps)
		switch {
		case i == 0:
		case before < 0 && now >= 0:
			left = edge
		case before >= 0 && now < 0 && edge > left:
			open = append(open, l.stretch(left, edge, steps, solved, length))
		}
		before = now
	}
	if before >= 0 && left < 1 {
		open = append(open, l.stretch(left, 1, steps, solved, length))
	}
	return open
}

// stretch is exposed from one share of the way to another.
func (l Line) stretch(left, right float64, steps int, solved evenness.Map, length float64) drawing.Stretch {
	s := drawing.Stretch{Left: left * length, Right: right * length}
	n := max(1, int(math.Ceil((right-left)*float64(steps))))
	for i := range n + 1 {
		depth := 1.0
		if len(solved.Values) > 0 {
			depth = solved.Near(l.at(left + (right-left)*float64(i)/float64(n)))
		}
		s.Depths = append(s.Depths, depth)
	}
	return s
}

// exposed is how far a place is exposed, between the middles of four cells.
func exposed(m artwork.Map, at evenness.Place) (share float64) {
	evenness.Corners(m.Width, m.Height, at, func(cell int, weight float64) {
		share += weight * float64(m.Open[cell]) / 255
	})
	return share
}
