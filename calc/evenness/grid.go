package evenness

import (
	"math"
	"slices"
)

// grid is how the box's floor is cut into cells. Current can flow on the piece,
// a rectangle of them: the picture and its border.
type grid struct {
	across, down  int // cells of the box
	columns, rows int // cells of the piece
	left, top     int // cells of the box before the piece
	borderX       int // cells of the piece before the picture
	borderY       int
	dx, dy        float64 // m, a cell's sides
}

// cells is how many cells the box has.
func (g grid) cells() float64 { return float64(g.across) * float64(g.down) }

// picture is how many cells the picture has.
func (g grid) picture() (columns, rows int) { return g.columns - 2*g.borderX, g.rows - 2*g.borderY }

// eachOfPicture calls visit with the places in the piece of the picture's cells,
// row after row.
func (g grid) eachOfPicture(visit func(i int)) {
	columns, rows := g.picture()
	for row := range rows {
		first := (row+g.borderY)*g.columns + g.borderX
		for i := first; i < first+columns; i++ {
			visit(i)
		}
	}
}

// anyOfPicture says whether any of the picture is open.
func (g grid) anyOfPicture(open []float64) bool {
	any := false
	g.eachOfPicture(func(i int) { any = any || open[i] > 0 })
	return any
}

// feltGaps is how many gaps away a wall is felt no more. What differs from the
// mean dies away as exp(-pi x / 2 g), to 0.0001 over the way there and back.
const feltGaps = 3

// grids are those on which the problem is solved, each about twice as fine as
// the one before.
func (p Problem) grids() []grid {
	most := max(p.mostCells(), 16)
	if p.finest > 0 {
		most = min(most, max(16, int(math.Round(p.box()/p.finest))))
	}
	var grids []grid
	for cells := min(coarsestCells, most/2); cells < most; cells *= 2 {
		grids = append(grids, p.grid(cells))
	}
	return slices.Compact(append(grids, p.grid(most)))
}

// mostCells is Cells, or what stands for it.
func (p Problem) mostCells() int {
	if p.Cells == 0 {
		return DefaultCells
	}
	return p.Cells
}

// box is the longer side of the box, m.
func (p Problem) box() float64 {
	x, y := p.sides()
	return math.Max(x.box(), y.box())
}

// grid has about so many cells on the longer side of the box.
func (p Problem) grid(cells int) grid {
	x, y := p.sides()
	cell := p.box() / float64(cells)
	var g grid
	g.across, g.columns, g.borderX, g.left, g.dx = x.cut(cell)
	g.down, g.rows, g.borderY, g.top, g.dy = y.cut(cell)
	return g
}

// sides are the box's directions.
func (p Problem) sides() (x, y side) {
	return side{p.Width, p.Border, p.margin(p.Width, p.SectionWidth)},
		side{p.Height, p.Border, p.margin(p.Height, p.SectionHeight)}
}

// margin is how much resist there is between the piece and the box's side.
func (p Problem) margin(picture, section float64) float64 {
	if section == 0 {
		return math.Max(p.Gap-p.Border, 0)
	}
	return math.Max(0, math.Min((section-picture)/2-p.Border, feltGaps*p.Gap))
}

// side is one direction of the box: the picture, and twice the other two.
type side struct{ picture, border, margin float64 }

func (s side) box() float64 { return s.picture + 2*(s.border+s.margin) }

// cut makes cells of about the size that is wanted. The picture's edge falls on
// a cell's edge; the box's side is moved to one, and on by a fiftieth of the
// margin where that gives the box a number of cells that the transforms like.
func (s side) cut(cell float64) (box, piece, border, margin int, size float64) {
	for picture := max(4, int(math.Round(s.picture/cell))); ; picture++ {
		size = s.picture / float64(picture)
		border = int(math.Round(s.border / size))
		piece = picture + 2*border
		wanted := int(math.Round(s.margin / size))
		for off := range wanted/50 + 1 {
			for _, margin := range []int{wanted + off, wanted - off} {
				if box = piece + 2*margin; smooth(box) {
					return box, piece, border, margin, size
				}
			}
		}
	}
}

// smooth says whether n has no prime factor over 5, for which the transforms
// are fast.
func smooth(n int) bool {
	for _, prime := range []int{2, 3, 5} {
		for n%prime == 0 {
			n /= prime
		}
	}
	return n == 1
}

// leastShare is how much of a cell must be open at least to count.
const leastShare = 1e-6

// cover brings the picture to the grid: how much of each of the piece's cells is
// open. Open area is kept.
func (p Problem) cover(g grid) []float64 {
	open := make([]float64, g.columns*g.rows)
	columns, rows := g.picture()
	across := overlaps(p.Picture.Columns, columns)
	line := make([]float64, columns)
	for _, down := range overlaps(p.Picture.Rows, rows) {
		p.Picture.row(down.from, across, line)
		place := (down.to+g.borderY)*g.columns + g.borderX
		for i, share := range line {
			open[place+i] += share * down.share
		}
	}
	for i, share := range open {
		if open[i] = math.Min(share, 1); share < leastShare { // the sum of many parts of a whole is not exact
			open[i] = 0
		}
	}
	g.exposeBorder(open)
	return open
}

// row brings a row of the picture to columns of the grid.
func (p Picture) row(row int, across []overlap, line []float64) {
	clear(line)
	source := p.Open[row*p.Columns : (row+1)*p.Columns]
	for _, o := range across {
		line[o.to] += float64(source[o.from]) * o.share
	}
}

// exposeBorder opens the cells round the picture.
func (g grid) exposeBorder(open []float64) {
	for row := range g.rows {
		for column := range g.columns {
			if row < g.borderY || row >= g.rows-g.borderY || column < g.borderX || column >= g.columns-g.borderX {
				open[row*g.columns+column] = 1
			}
		}
	}
}

// overlap is the part of a cell that one of the picture's rectangles fills.
type overlap struct {
	from, to int
	share    float64
}

// overlaps of n equal parts of a length with m equal parts of it.
func overlaps(n, m int) []overlap {
	list := make([]overlap, 0, n+m)
	for from, to := 0, 0; from < n && to < m; {
		// In units of 1 / (n m) everything is whole.
		begin, end := max(from*m, to*n), min((from+1)*m, (to+1)*n)
		list = append(list, overlap{from, to, float64(end-begin) / float64(n)})
		if (from+1)*m <= end {
			from++
		}
		if (to+1)*n <= end {
			to++
		}
	}
	return list
}

// sample is an earlier answer at each of the piece's cells: 1 without one.
func (g grid) sample(m Map) []float64 {
	values := make([]float64, g.columns*g.rows)
	for i := range values {
		values[i] = 1
	}
	if len(m.Values) == 0 {
		return values
	}
	columns, rows := g.picture()
	place := 0
	g.eachOfPicture(func(i int) {
		x := (place%columns*2 + 1) * m.Columns / (2 * columns)
		y := (place/columns*2 + 1) * m.Rows / (2 * rows)
		if v := m.Values[y*m.Columns+x]; v > 0 {
			values[i] = float64(v)
		}
		place++
	})
	return values
}
