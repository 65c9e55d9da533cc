package artwork

import "math"

// Coordinates of outlines are whole numbers, subPixel to a pixel, from the
// centre of the first pixel: a picture that is turned or mirrored gives the same
// ones, turned or mirrored.
const (
	rawPixel = 1 << 12      // of a crossing between two pixels
	subPixel = 4 * rawPixel // of a smoothed point: a weighted sum of crossings
)

// outline is the resist edge: where the coverage is one half.
type outline struct {
	x, y   []int32 // of the points, chain after chain
	chains []chain
	nx, ny []float32 // unit normals, out of the resist into what is open
}

// chain is a stretch of an outline: the points from begin up to end, in an
// order that keeps what is open on the left. A chain that is not closed runs
// from border to border.
type chain struct {
	begin, end int
	closed     bool
}

// trace follows the edges of a raster by marching squares: a point on each
// line between the centres of two neighbours of which one is more than half open
// and one is not, by linear interpolation. Where two open pixels touch at a
// corner only, resist runs through between them.
//
// The points are then smoothed once, 1-2-1 along the chain. That is the
// correction for the steps that interpolation leaves along an oblique edge.
func trace(r raster) outline {
	t := tracer{raster: r, seen: make([]bool, len(r.open))}
	right, bottom := r.width-1, r.height-1
	for x := range right {
		t.enter(crossing{x, 0, true}, down)
		t.enter(crossing{x, bottom, true}, up)
	}
	for y := range bottom {
		t.enter(crossing{0, y, false}, east)
		t.enter(crossing{right, y, false}, west)
	}
	for y := range r.height {
		row := r.open[y*r.width : (y+1)*r.width]
		for x := range right {
			if row[x] >= half && row[x+1] < half && !t.seen[y*r.width+x] {
				t.follow(crossing{x, y, true}, up)
			}
		}
	}
	t.smooth()
	t.setNormals()
	return t.outline
}

// crossings counts the points that trace would find.
func crossings(r raster) int {
	count := 0
	for y := range r.height {
		row := r.open[y*r.width : (y+1)*r.width]
		for x := 1; x < len(row); x++ {
			if (row[x]^row[x-1])&half != 0 {
				count++
			}
		}
		if y > 0 {
			above := r.open[(y-1)*r.width : y*r.width]
			for x, v := range row {
				if (v^above[x])&half != 0 {
					count++
				}
			}
		}
	}
	return count
}

// crossing is a line between the centres of a pixel and the next one, to the
// east or below.
type crossing struct {
	x, y     int
	eastward bool
}

type heading int

const (
	up heading = iota
	east
	down
	west
)

type tracer struct {
	raster
	outline
	seen []bool // the eastward crossings that a chain has gone through
}

func (t *tracer) isOpen(x, y int) bool { return t.open[y*t.width+x] >= half }

// crossed tells whether the edge goes through there, with what is open on the left
// of the heading.
func (t *tracer) crossed(c crossing, h heading) bool {
	first, second := t.isOpen(c.x, c.y), false
	if c.eastward {
		second = t.isOpen(c.x+1, c.y)
	} else {
		second = t.isOpen(c.x, c.y+1)
	}
	if h == up || h == east {
		return first && !second
	}
	return second && !first
}

// enter follows an edge that comes in over the border there.
func (t *tracer) enter(c crossing, h heading) {
	if t.crossed(c, h) {
		t.follow(c, h)
	}
}

// follow adds the chain that begins there.
func (t *tracer) follow(c crossing, h heading) {
	begin := len(t.x)
	first := c
	for {
		t.add(c)
		var inside bool
		c, h, inside = t.next(c, h)
		if !inside || c == first {
			t.chains = append(t.chains, chain{begin, len(t.x), inside})
			return
		}
	}
}

// next is the crossing by which the edge leaves the square that lies ahead.
func (t *tracer) next(c crossing, h heading) (crossing, heading, bool) {
	left, top := c.x, c.y // of the square, whose corners are pixels' centres
	switch h {
	case up:
		top--
	case west:
		left--
	}
	if left < 0 || top < 0 || left >= t.width-1 || top >= t.height-1 {
		return c, h, false
	}
	sides := [4]crossing{up: {left, top, true}, east: {left + 1, top, false}, down: {left, top + 1, true}, west: {left, top, false}}
	// To the left first: at a saddle the chain then turns round its own open corner.
	for _, turn := range [3]heading{h + 3, h, h + 1} {
		if turn %= 4; t.crossed(sides[turn], turn) {
			return sides[turn], turn, true
		}
	}
	return c, h, false
}

func (t *tracer) add(c crossing) {
	at := c.y*t.width + c.x
	before, after := int(t.open[at]), 0
	x, y := c.x*rawPixel, c.y*rawPixel
	if c.eastward {
		t.seen[at] = true
		after = int(t.open[at+1])
		x += between(before, after)
	} else {
		after = int(t.open[at+t.width])
		y += between(before, after)
	}
	t.x, t.y = append(t.x, int32(x)), append(t.y, int32(y))
}

// between is how far from the first pixel's centre half coverage lies. Its
// denominator is odd once powers of two are cancelled, so that nothing is
// rounded from a tie, and from the other side it is the rest of the pixel.
func between(before, after int) int {
	return int(math.Round(float64((255-2*before)*rawPixel) / float64(2*(after-before))))
}

// smooth replaces each point by a quarter of its neighbours and half of itself;
// the ends of an open chain stay.
func (o *outline) smooth() {
	for _, c := range o.chains {
		for _, line := range [2][]int32{o.x[c.begin:c.end], o.y[c.begin:c.end]} {
			last := len(line) - 1
			before, first := line[last], line[0]
			if !c.closed {
				before = first
			}
			for i, here := range line {
				after := first
				if i < last {
					after = line[i+1]
				} else if !c.closed {
					after = here
				}
				if !c.closed && (i == 0 || i == last) {
					line[i] = 4 * here
				} else {
					line[i] = before + 2*here + after
				}
				before = here
			}
		}
	}
}

// normalReach is over how many points to each side the direction of an edge is taken.
const normalReach = 3

func (o *outline) setNormals() {
	o.nx, o.ny = make([]float32, len(o.x)), make([]float32, len(o.x))
	for _, c := range o.chains {
		for i := c.begin; i < c.end; i++ {
			before, after := c.around(i)
			dx, dy := float64(o.x[after]-o.x[before]), float64(o.y[after]-o.y[before])
			if length := math.Hypot(dx, dy); length > 0 {
				// What is open lies to the left; y points down.
				o.nx[i], o.ny[i] = float32(dy/length), float32(-dx/length)
			}
		}
	}
}

// around is the points of the chain on either side of i by which its direction is taken.
func (c chain) around(i int) (before, after int) {
	length := c.end - c.begin
	reach := max(1, min(normalReach, length/4))
	before, after = i-reach, i+reach
	if c.closed {
		return c.begin + (before-c.begin+length)%length, c.begin + (after-c.begin)%length
	}
	return max(before, c.begin), min(after, c.end-1)
}

// length is the length of the edge in pixels, each chain carried on straight
// from its outermost points to the picture's border, half a pixel away. What the
// smoothing takes off corners is added again.
func (o outline) length(width, height int) float64 {
	sum := 0.0
	for _, c := range o.chains {
		pieces := 0.0
		for i := c.begin + 1; i < c.end; i++ {
			pieces += o.apart(i, i-1)
		}
		first, last := c.begin, c.end-1
		if c.closed {
			pieces += o.apart(first, last)
		} else {
			pieces += o.toBorder(first, width, height) + o.toBorder(last, width, height)
		}
		sum += pieces + o.cutOff(c)
	}
	return sum
}

// apart is the distance between two points, in pixels.
func (o outline) apart(i, j int) float64 {
	return math.Hypot(float64(o.x[i]-o.x[j]), float64(o.y[i]-o.y[j])) / subPixel
}

// A corner is where the edge turns by more than leastTurn between the stretches
// of cornerReach points before it and after it, and by more than at any other point so near.
const (
	cornerReach = 4
	leastTurn   = math.Pi / 4
)

// cutOff is by how much the corners of a chain make it too short, in pixels:
//
//	1.85 (1 / cos(t/2) - 1)
//
// for each, with t the turn as it is left by the smoothing. Fitted to rhombi with corners of
// 20 to 160 degrees at forty angles and places each; within 15 % of the mean.
func (o outline) cutOff(c chain) float64 {
	length := c.end - c.begin
	if length <= 2*cornerReach {
		return 0
	}
	sum := 0.0
	turns := make([]float64, length)
	for k := range turns {
		turns[k] = o.turn(c, k)
	}
	for k, turn := range turns {
		if turn > leastTurn && isCorner(turns, k) {
			sum += 1.85 * (1/math.Cos(turn/2) - 1)
		}
	}
	return sum
}

// turn is by what angle, at most 150 degrees, the edge turns at point k of a chain.
func (o outline) turn(c chain, k int) float64 {
	const most = math.Pi * 5 / 6
	length := c.end - c.begin
	if !c.closed && (k < cornerReach || k+cornerReach >= length) {
		return 0
	}
	here, before, after := c.begin+k, c.begin+(k-cornerReach+length)%length, c.begin+(k+cornerReach)%length
	x1, y1 := float64(o.x[here]-o.x[before]), float64(o.y[here]-o.y[before])
	x2, y2 := float64(o.x[after]-o.x[here]), float64(o.y[after]-o.y[here])
	return min(most, math.Atan2(math.Abs(x1*y2-x2*y1), x1*x2+y1*y2))
}

// isCorner tells whether the turn is greater there than before it and no less than
// after it.
func isCorner(turns []float64, k int) bool {
	length := len(turns)
	for d := 1; d <= cornerReach; d++ {
		if turns[(k-d+length)%length] >= turns[k] || turns[(k+d)%length] > turns[k] {
			return false
		}
	}
	return true
}

// toBorder is how far the edge still runs beyond the end of an open chain: half
// a pixel, over the cosine of its slope, at most a whole one.
func (o outline) toBorder(i, width, height int) float64 {
	const straight = 0.5
	if o.nx[i] == 0 && o.ny[i] == 0 {
		return straight // a chain of one point, in a picture of one row
	}
	// Along the border the normal's part that is parallel to it is the cosine.
	across := math.Abs(float64(o.nx[i]))
	if y := int(o.y[i]); y != 0 && y != (height-1)*subPixel {
		across = math.Abs(float64(o.ny[i]))
	}
	return straight / max(across, 0.5)
}
