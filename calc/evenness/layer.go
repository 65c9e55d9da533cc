package evenness

import (
	"math"

	"gonum.org/v1/gonum/dsp/fourier"
)

// layer is the bath between the sheet and the cathode, as an operator on fields
// over the piece. The current through the box's floor is a sum of cosine modes,
// whose slope is zero at the box's sides; the bath turns each mode of the current
// density into the same mode of the potential: see multiplier. No current flows
// outside the piece, so only the piece's cells are kept.
type layer struct {
	grid
	bath                []float64 // the multiplier of each mode, column after column
	rowwise, columnwise *fourier.QuarterWaveFFT
	modes               []float64 // rows of the piece, as wide as the box
	strip               []float64 // some columns of the box
}

// stripWidth is how many columns are transformed at a time: a line of a
// processor's cache holds eight numbers.
const stripWidth = 8

func newLayer(g grid, gap, conductivity float64) *layer {
	l := &layer{
		grid:       g,
		bath:       make([]float64, g.across*g.down),
		rowwise:    fourier.NewQuarterWaveFFT(g.across),
		columnwise: fourier.NewQuarterWaveFFT(g.down),
		modes:      make([]float64, g.across*g.rows),
		strip:      make([]float64, stripWidth*g.down),
	}
	for i := range g.across {
		kx := math.Pi * float64(i) / (float64(g.across) * g.dx)
		for j := range g.down {
			ky := math.Pi * float64(j) / (float64(g.down) * g.dy)
			l.bath[i*g.down+j] = multiplier(math.Sqrt(kx*kx+ky*ky), gap, conductivity)
		}
	}
	return l
}

// multiplier turns the current density (A/m2) of a mode with the wave number k
// (1/m) into the potential (V) at the sheet, over the cathode's:
//
//	T(k) = tanh(k g) / (kappa k),  g / kappa at k = 0
//
// with g the gap and kappa the conductivity: Laplace's equation with an
// equipotential far wall (separation of variables, textbook).
func multiplier(k, gap, conductivity float64) float64 {
	switch depth := k * gap; {
	case depth < 1e-8:
		return gap / conductivity
	case depth > 20: // the hyperbolic tangent is 1 to the last digit
		return 1 / (conductivity * k)
	default:
		return math.Tanh(depth) / (conductivity * k)
	}
}

// edgeResistance is what a cell that is hardly open has in its way besides
// polarisation, h / kappa, ohm m2; a cell that is open by a share c has (1 - c) of
// it. Its metal lies at one side of the cell, not all over it. With this an edge
// stands where it is to 0.2 of a cell (h) wherever it cuts a cell, 0.1 on average,
// and without it up to 0.8 of a cell too far out (measured against the exact strip).
func (p Problem) edgeResistance(g grid) float64 { return math.Sqrt(g.dx*g.dy) / p.Conductivity }

// filter puts into dst what is left of src when change has been at its modes,
// a column of them at a time, with the bath's multiplier of each. With weights,
// src is multiplied by them first and dst afterwards.
func (l *layer) filter(dst, src, weights []float64, change func(modes, bath []float64)) {
	for row := range l.rows {
		l.spread(row, src, weights)
	}
	for first := 0; first < l.across; first += stripWidth {
		l.filterColumns(first, min(stripWidth, l.across-first), change)
	}
	for row := range l.rows {
		l.gather(row, dst, weights)
	}
}

// spread makes modes of a row.
func (l *layer) spread(row int, src, weights []float64) {
	wide := l.modes[row*l.across : (row+1)*l.across]
	clear(wide)
	first, last := row*l.columns, (row+1)*l.columns
	copy(wide[l.left:], src[first:last])
	if weights != nil {
		multiply(wide[l.left:], weights[first:last])
	}
	l.rowwise.CosSequence(wide, wide)
}

// gather makes a row of modes.
func (l *layer) gather(row int, dst, weights []float64) {
	wide := l.modes[row*l.across : (row+1)*l.across]
	l.rowwise.CosCoefficients(wide, wide)
	first, last := row*l.columns, (row+1)*l.columns
	copy(dst[first:last], wide[l.left:])
	if weights != nil {
		multiply(dst[first:last], weights[first:last])
	}
}

// filterColumns filters a few columns of modes. The transforms multiply by 4 n
// there and back.
func (l *layer) filterColumns(first, count int, change func(modes, bath []float64)) {
	clear(l.strip)
	for row := range l.rows {
		for i, v := range l.modes[row*l.across+first:][:count] {
			l.strip[i*l.down+l.top+row] = v
		}
	}
	for i := range count {
		column := l.strip[i*l.down:][:l.down]
		l.columnwise.CosSequence(column, column)
		change(column, l.bath[(first+i)*l.down:][:l.down])
		l.columnwise.CosCoefficients(column, column)
	}
	scale := 1 / (16 * l.cells())
	for row := range l.rows {
		for i := range count {
			l.modes[row*l.across+first+i] = scale * l.strip[i*l.down+l.top+row]
		}
	}
}

// multiply multiplies a by b, as long as b is.
func multiply(a, b []float64) {
	for i, v := range b {
		a[i] *= v
	}
}
