package evenness

import "math"

// depths are local depths over the picture's mean, cell by cell of the picture;
// those of covered cells mean nothing.
type depths struct {
	columns, rows int
	dx, dy        float64 // m
	open          []float64
	local         []float64
}

// result is what is told of a solution.
func (p Problem) result(g grid, s *system, iterations int) Result {
	current, share, power := s.totals(g)
	d := newDepths(g, s)
	width := p.Depth
	if p.Shallowest {
		width /= newDepths(g, s).averaged(p.Depth).least()
	}
	d.averaged(width)
	area := d.area()
	scale := p.Density * area / (current * share) // V on the cell, for the density that is wanted
	least, most := d.percentiles(0.05, 0.95)
	return Result{
		Map:        d.asMap(),
		Least:      least,
		Most:       most,
		Resistance: power / (current * current),
		Current:    current * scale,
		Share:      share,
		Wagner:     p.Conductivity * p.Polarisation / math.Sqrt(area),
		Cell:       math.Max(g.dx, g.dy),
		Iterations: iterations,
		HotSpots:   d.hotSpots(most),
		Islands:    d.islands(),
	}
}

// totals are the current (A), the share of it that is the picture's and the power
// lost in the bath (W), all at 1 V.
func (s *system) totals(g grid) (current, share, power float64) {
	var picture float64
	g.eachOfPicture(func(i int) { picture += s.u[i] * s.root[i] })
	current = dot(s.u, s.root)
	area := g.dx * g.dy
	return current * area, picture / current, s.power() * area
}

func newDepths(g grid, s *system) *depths {
	columns, rows := g.picture()
	d := &depths{columns: columns, rows: rows, dx: g.dx, dy: g.dy,
		open: make([]float64, 0, columns*rows), local: make([]float64, 0, columns*rows)}
	g.eachOfPicture(func(i int) {
		open, local := s.open(i), 0.0
		if open > 0 {
			local = s.density(i)
		}
		d.open = append(d.open, open)
		d.local = append(d.local, local)
	})
	return d
}

// averaged takes the mean over discs so wide (m), and depths as multiples of the mean.
func (d *depths) averaged(width float64) *depths {
	d.average(width)
	d.normalise()
	return d
}

// least is Result.Least.
func (d *depths) least() float64 {
	least, _ := d.percentiles(0.05, 0.95)
	return least
}

// area is the picture's open area, m2.
func (d *depths) area() float64 {
	var sum float64
	for _, open := range d.open {
		sum += open
	}
	return sum * d.dx * d.dy
}

// normalise makes the mean over open metal 1.
func (d *depths) normalise() {
	mean := dot(d.open, d.local) * d.dx * d.dy / d.area()
	for i := range d.local {
		d.local[i] /= mean
	}
}

// average takes the mean over the open metal in a disc round each cell, so wide
// (m); a cell counts by the share of it that lies in the disc.
func (d *depths) average(width float64) {
	brush := newBrush(width/2/d.dx, width/2/d.dy, d.columns, d.rows)
	if brush.withinCell() {
		return
	}
	open := sums(d.columns, d.rows, func(i int) float64 { return d.open[i] })
	removed := sums(d.columns, d.rows, func(i int) float64 { return d.open[i] * d.local[i] })
	for i := range d.local {
		if d.open[i] > 0 {
			column, row := i%d.columns, i/d.columns
			d.local[i] = brush.over(removed, column, row) / brush.over(open, column, row)
		}
	}
}

// brush is the disc, an ellipse in cells: for its middle row of cells and those
// on one side of that, how many cells on each side of the middle are wholly in
// it, and the shares of those beyond.
type brush []stroke

type stroke struct {
	whole int // -1: not even the middle one
	parts []float64
}

// newBrush has these half-axes, in cells; what can't be on a map of so many
// columns and rows is left out.
func newBrush(across, down float64, columns, rows int) brush {
	var b brush
	for y := 0; float64(y)-0.5 < down && y < rows; y++ {
		s := stroke{whole: -1}
		for x := 0; float64(x)-0.5 < across && x < columns; x++ {
			switch share := shareOfCell(float64(x), float64(y), across, down); {
			case share == 1 && len(s.parts) == 0:
				s.whole = x
			case share > 0:
				s.parts = append(s.parts, share)
			}
		}
		if s.whole < 0 && len(s.parts) == 0 {
			break
		}
		b = append(b, s)
	}
	return b
}

// shareOfCell is how much of a cell round a place lies in an ellipse round 0, by
// counting 16 x 16 places in it.
func shareOfCell(x, y, across, down float64) float64 {
	const fine = 16
	inside := 0
	for sub := range fine * fine {
		u := (x - 0.5 + (float64(sub%fine)+0.5)/fine) / across
		v := (y - 0.5 + (float64(sub/fine)+0.5)/fine) / down
		if u*u+v*v <= 1 {
			inside++
		}
	}
	return float64(inside) / (fine * fine)
}

// withinCell says whether there is nothing to average.
func (b brush) withinCell() bool { return len(b) == 0 || len(b) == 1 && b[0].reach() == 0 }

// reach is how many cells it goes to each side.
func (s stroke) reach() int { return s.whole + len(s.parts) }

// over is the sum of what the brush covers.
func (b brush) over(r rowSums, column, row int) float64 {
	sum := b[0].over(r, column, row)
	for away, s := range b[1:] {
		sum += s.over(r, column, row-away-1) + s.over(r, column, row+away+1)
	}
	return sum
}

func (s stroke) over(r rowSums, column, row int) float64 {
	if row < 0 || row >= r.rows {
		return 0
	}
	sum := 0.0
	if s.whole >= 0 {
		sum = r.within(row, column-s.whole, column+s.whole)
	}
	for i, share := range s.parts {
		switch x := s.whole + 1 + i; x {
		case 0:
			sum += share * r.within(row, column, column)
		default:
			sum += share * (r.within(row, column-x, column-x) + r.within(row, column+x, column+x))
		}
	}
	return sum
}

// rowSums are the sums of each row's cells before each, and of all.
type rowSums struct {
	columns, rows int
	before        []float64
}

func sums(columns, rows int, value func(i int) float64) rowSums {
	r := rowSums{columns, rows, make([]float64, (columns+1)*rows)}
	for row := range rows {
		line := r.before[row*(columns+1):][:columns+1]
		for column := range columns {
			line[column+1] = line[column] + value(row*columns+column)
		}
	}
	return r
}

// within is the sum from one cell of a row to another; what is off the row is 0.
func (r rowSums) within(row, first, last int) float64 {
	first, last = max(first, 0), min(last, r.columns-1)
	if first > last {
		return 0
	}
	line := r.before[row*(r.columns+1):]
	return line[last+1] - line[first]
}

// percentiles are the depths that these shares of the open area don't reach, by
// counting in narrow bins.
func (d *depths) percentiles(low, high float64) (lowDepth, highDepth float64) {
	const bins = 1 << 16
	least, most := d.extremes()
	if most == least {
		return least, most
	}
	width := (most - least) / bins
	count := make([]float64, bins)
	var all float64
	for i, open := range d.open {
		if open > 0 {
			count[min(bins-1, int((d.local[i]-least)/width))] += open
			all += open
		}
	}
	at := func(share float64) float64 {
		below := 0.0
		for bin, open := range count {
			if below+open >= share*all {
				return least + width*(float64(bin)+(share*all-below)/open)
			}
			below += open
		}
		return most
	}
	return at(low), at(high)
}

// extremes is from the shallowest cell to the deepest.
func (d *depths) extremes() (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for i, open := range d.open {
		if open > 0 {
			least, most = math.Min(least, d.local[i]), math.Max(most, d.local[i])
		}
	}
	return least, most
}

func (d *depths) asMap() Map {
	m := Map{d.columns, d.rows, make([]float32, len(d.local))}
	for i, open := range d.open {
		if open > 0 {
			m.Values[i] = float32(d.local[i])
		}
	}
	return m
}
