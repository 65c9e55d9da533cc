// Package evenness works out how evenly a picture is etched: the current on
// every bit of bare metal, from Laplace's equation in the bath, and so the depth
// there as a multiple of the mean.
//
// The sheet is the floor of a box of bath, the cathode is the whole of the
// opposite wall, one gap away, and the box's sides insulate. Resist insulates;
// on bare metal the potential drops by a polarisation that is taken as linear
// round the mean density. Depth is taken as proportional to current density, and
// the picture as it is at the start: the bite does not change the geometry. The
// bath is taken as uniform: near the density at which a salt film forms the
// liquid, not the field, says where it bites, and none of this holds.
//
// It can't see what is finer than a cell of its grid beyond how much of the cell
// is open. It estimates its own error from two grids: see Result.Uncertainty.
package evenness

import (
	"errors"
	"math"
)

// Problem is a picture on a sheet that faces a cathode.
type Problem struct {
	Picture       Picture
	Width, Height float64 // m, of the picture

	Gap          float64 // m, sheet to cathode
	Conductivity float64 // S/m, of the bath
	Density      float64 // A/m2, mean over the picture's open metal
	Polarisation float64 // ohm m2, d eta / d i of the metal at that density; 0: none

	// Depth (m) is how deep it is etched on average. Local depths are averaged
	// over a disc that wide; 0: over no more than a cell. Shallowest: Depth is that of
	// the shallowest part, Result.Least of the mean.
	Depth      float64
	Shallowest bool

	// SectionWidth and SectionHeight (m) are the bath's section; the picture is in
	// its middle. 0: the sheet goes on, covered, for one gap on each side.
	SectionWidth, SectionHeight float64

	// Border (m) is the width of bare scrap round the picture, which draws current
	// off its edges; 0: none. It counts for current and resistance, not for depth.
	Border float64

	// Cells is how many cells the box has on its longer side at most; 0:
	// DefaultCells. Fewer are used where the answer has settled before: to Settled, or
	// on Usual cells and more to Rough. Usual 0: only to Settled.
	Cells, Usual int

	finest float64 // m, the least of a cell's sides; 0: any
}

// Picture is how much of each of its equal rectangles is bare metal, from 0 to
// 1, row after row from the top left.
type Picture struct {
	Columns, Rows int
	Open          []float32
}

// Result is how evenly the picture is etched. Depths are multiples of the mean.
type Result struct {
	Map         Map
	Least, Most float64 // 5th and 95th percentile of local depth, by open area
	Resistance  float64 // ohm, of the bath alone: the power lost in it over the current squared
	Current     float64 // A, on the picture and the border
	Share       float64 // of the current that is the picture's
	Wagner      float64 // conductivity x polarisation / root of the picture's open area

	Uncertainty float64 // of Least and Most (of the mean) and of Resistance (of itself): the largest change from the next coarser grid
	Cell        float64 // m, the longer side of a cell
	Iterations  int     // on the finest grid

	HotSpots []Spot   // where it is deepest, deepest first
	Islands  []Island // separate open areas, the one that goes deepest first
}

// Spread is the difference between the deepest and the shallowest, of the mean.
func (r Result) Spread() float64 { return r.Most - r.Least }

// Volts is what the bath takes, V, without what the electrodes take.
func (r Result) Volts() float64 { return r.Current * r.Resistance }

// Map is the local depth over the mean, row after row from the picture's top
// left; 0 on resist.
type Map struct {
	Columns, Rows int
	Values        []float32
}

// What Solve can't do.
var (
	ErrStopped = errors.New("stopped before the end")
	ErrPicture = errors.New("the picture needs a share from 0 to 1 for each of its rectangles")
	ErrCovered = errors.New("the picture has no bare metal")
	ErrSize    = errors.New("sizes, gap, conductivity and density must be positive and within reason, the others not negative")
	ErrSection = errors.New("the bath's section is smaller than the picture and its border")
	ErrSmall   = errors.New("the picture is too small for the bath round it: less than 1 % of its width or height")
	ErrSettle  = errors.New("the current did not settle")
)

const (
	// DefaultCells suits a tablet: about 60 MB.
	DefaultCells = 1024

	mostCells     = 2048 // four times the memory of DefaultCells
	mostBox       = 100  // sides of the picture: the grid would have too few cells for that
	coarsestCells = 64
	trustedCells  = 256 // a grid coarser than this may miss detail twice over, and seem settled
)

// Uncertainties of an answer, of the mean.
const (
	Settled = 0.01 // small enough
	Rough   = 0.03 // from here on it is to be told
)

// Solve works out where the current goes. It begins on a coarse grid and goes on
// to one twice as fine, from the answer that it has, until the answer changes by
// less than Settled or the grid is as fine as the problem allows. After each step it
// tells how much is done, from 0 to 1; it ends with ErrStopped as soon as step
// returns false. step may be nil.
func Solve(p Problem, step func(share float64) bool) (Result, error) {
	return p.solve(Map{}, step)
}

// solve begins with an answer to a problem that was much the same.
func (p Problem) solve(start Map, step func(share float64) bool) (Result, error) {
	if err := p.check(); err != nil {
		return Result{}, err
	}
	if step == nil {
		step = func(float64) bool { return true }
	}
	var result Result
	grids := p.grids()
	progress := newProgress(grids, step)
	for i, g := range grids {
		finer, err := p.solveOn(g, start, progress)
		if err != nil {
			return Result{}, err
		}
		finer.Uncertainty = finer.changeFrom(result)
		finer.settle(result.Map, p)
		result, start = finer, finer.Map
		if i > 0 && max(g.across, g.down) >= trustedCells && result.Uncertainty < p.enough(g) {
			break
		}
	}
	if !progress.end() {
		return Result{}, ErrStopped
	}
	return result, nil
}

// enough is the uncertainty that is small enough on a grid, whose cells are not just as
// many as were asked for.
func (p Problem) enough(g grid) float64 {
	if p.Usual > 0 && 10*max(g.across, g.down) >= 9*p.Usual {
		return Rough
	}
	return Settled
}

// changeFrom is the largest change of what is told as one figure.
func (r Result) changeFrom(coarser Result) float64 {
	return max(math.Abs(r.Least-coarser.Least), math.Abs(r.Most-coarser.Most), math.Abs(1-coarser.Resistance/r.Resistance))
}

// solveOn solves on one grid.
func (p Problem) solveOn(g grid, start Map, progress *progress) (Result, error) {
	open := p.cover(g)
	if !g.anyOfPicture(open) {
		return Result{}, ErrCovered
	}
	bath := newLayer(g, p.Gap, p.Conductivity)
	s := newSystem(bath, open, p.Polarisation, p.edgeResistance(g))
	iterations, err := s.solve(g.sample(start), progress.within(g))
	if err != nil {
		return Result{}, err
	}
	return p.result(g, s, iterations), nil
}

// check says what is wrong with a problem.
func (p Problem) check() error {
	const largest = 1e6 // of any size here, SI
	positive := []float64{p.Width, p.Height, p.Gap, p.Conductivity, p.Density}
	for _, x := range positive {
		if !(x >= 1/largest && x <= largest) {
			return ErrSize
		}
	}
	for _, x := range []float64{p.Polarisation, p.Depth, p.SectionWidth, p.SectionHeight, p.Border} {
		if !(x >= 0 && x <= largest) {
			return ErrSize
		}
	}
	if p.Cells < 0 || p.Cells > mostCells {
		return ErrSize
	}
	if p.tooSmall(p.SectionWidth, p.Width) || p.tooSmall(p.SectionHeight, p.Height) {
		return ErrSection
	}
	if x, y := p.sides(); x.box() > mostBox*x.picture || y.box() > mostBox*y.picture {
		return ErrSmall
	}
	return p.Picture.check()
}

// tooSmall says whether a side of the section is more than 1 % smaller than what
// hangs in it.
func (p Problem) tooSmall(section, picture float64) bool {
	return section > 0 && section < 0.99*(picture+2*p.Border)
}

func (p Picture) check() error {
	if p.Columns < 1 || p.Rows < 1 || len(p.Open)/p.Columns != p.Rows || len(p.Open)%p.Columns != 0 {
		return ErrPicture
	}
	for _, share := range p.Open {
		if !(share >= 0 && share <= 1) {
			return ErrPicture
		}
	}
	return nil
}
