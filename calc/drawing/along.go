package drawing

import (
	"math"
	"slices"
	"strconv"
)

// Along is the sheet cut through along a line that was laid across a picture of the
// resist, from A to B.
type Along struct {
	Metal      string // its family
	US         bool
	Length     Size // from A to B
	Open       []Stretch
	Depth      Size   // the mean over the picture
	Why        string // whose depth that is: "as asked for"
	Deepest    Size   // along the line; unknown where nothing is exposed
	Shallowest Size
	Where      Size // from A to the deepest place
	Computed   bool // local depths come from the current in the bath; else the mean stands for all
	Undercut   float64
	Sides      int

	Sheet, Left, Least Size // as in Section, Left under the deepest place
}

// Stretch is exposed metal along the line, m from A. Stretches come in order and apart.
type Stretch struct {
	Left, Right float64
	Depths      []float64 // m, at equal steps from one end to the other, both told
}

const alongTop = 4.8 // where the first word of the column may stand

// cutAlong is a cut laid out.
type cutAlong struct {
	Along
	xs, depths []float64 // m: the face, from A to B
	across     float64   // mm of drawing to a metre of length
	down       float64   // and of depth
	stretched  float64
	back       float64 // y of the back; of the broken edge where no sheet is known
	short      bool    // the sheet's middle is left out
	drawing    *Drawing
}

// Draw draws it; nil without a length or a depth.
func (a *Along) Draw() *Drawing {
	if !(a.Length.SI > 0) || !(a.Depth.SI > 0) {
		return nil
	}
	c := &cutAlong{Along: *a}
	c.chooseScale()
	c.face()
	c.drawing = &Drawing{Width: frameWidth, Height: frameHeight, Title: "A cut through the sheet from A to B", Metal: a.Metal}
	c.drawing.add(Bath, rectangle(0, 0, frameWidth, bathBottom))
	c.paintGone()
	c.paintMetal()
	c.paintResist()
	c.paintLeast()
	c.dimensions()
	c.ends()
	c.scale()
	c.drawing.Words = c.words()
	return c.drawing
}

// deepest is the depth that must be seen, m.
func (c *cutAlong) deepest() float64 { return math.Max(c.Deepest.SI, c.Depth.SI) }

// chooseScale fills the frame with the line, and draws depths larger by a round number
// where they could not be seen: so that the whole sheet has room, or else its faces.
func (c *cutAlong) chooseScale() {
	const room = backY - faceY
	c.across = math.Min((sheetRight-sheetLeft)/c.Length.SI, cutBite/c.deepest())
	c.back, c.short = backY, c.Sheet.Known()
	if c.Sheet.Known() {
		if times := room / (c.Sheet.SI * c.across); times >= 1 {
			c.stretched = nice(times)
		}
	}
	if high := c.Sheet.SI * c.across * c.stretched; c.stretched > 0 && c.deepest()*c.across*c.stretched >= leastBite {
		c.back, c.short = faceY+high, false
	} else {
		c.stretched = math.Max(1, niceAbove(leastBite/(c.deepest()*c.across)))
	}
	c.down = c.across * c.stretched
}

// face is how deep it is etched from A to B.
func (c *cutAlong) face() {
	for _, s := range c.Open {
		c.xs = append(c.xs, s.places(c.Undercut)...)
	}
	for i := range len(c.Open) - 1 {
		if x, ok := c.Open[i].meets(c.Open[i+1], c.Undercut); ok {
			c.xs = append(c.xs, x)
		}
	}
	c.xs = append(c.xs, 0, c.Length.SI)
	c.xs = slices.DeleteFunc(c.xs, func(x float64) bool { return x < 0 || x > c.Length.SI })
	slices.Sort(c.xs)
	c.xs = slices.Compact(c.xs)
	c.depths = make([]float64, len(c.xs))
	for i, x := range c.xs {
		c.depths[i] = math.Min(c.depthAt(x), c.most())
	}
}

// most is the depth at which the sheet is through, m.
func (c *cutAlong) most() float64 {
	if !c.Sheet.Known() {
		return math.Inf(1)
	}
	return c.Sheet.SI / float64(c.Sides)
}

// depthAt is the deepest of what any of the stretches makes of a place.
func (c *cutAlong) depthAt(x float64) (depth float64) {
	for _, s := range c.Open {
		depth = math.Max(depth, s.depthAt(x, c.Undercut))
	}
	return depth
}

// wallSteps is in how many straight pieces a wall is drawn.
const wallSteps = 6

// places are those whose depths tell the form of a stretch and of its walls. An upright
// wall has a width that can't be seen.
func (s Stretch) places(undercut float64) (xs []float64) {
	const upright = 1e-9
	for i := range s.Depths {
		xs = append(xs, s.Left+(s.Right-s.Left)*float64(i)/float64(len(s.Depths)-1))
	}
	first, last := s.edges()
	for i := 1; i <= wallSteps; i++ {
		share := math.Sin(math.Pi / 2 * float64(i) / wallSteps)
		xs = append(xs, s.Left-share*math.Max(undercut*first, upright), s.Right+share*math.Max(undercut*last, upright))
	}
	return xs
}

// edges are the depths at its ends.
func (s Stretch) edges() (first, last float64) { return s.Depths[0], s.Depths[len(s.Depths)-1] }

// depthAt is the local depth on a stretch, and beside it that of the quarter of an
// ellipse by which it is etched under the resist: see cut.
func (s Stretch) depthAt(x, undercut float64) float64 {
	first, last := s.edges()
	switch {
	case x < s.Left:
		return cut{depth: first, undercut: undercut}.wall(s.Left - x)
	case x > s.Right:
		return cut{depth: last, undercut: undercut}.wall(x - s.Right)
	}
	at := (x - s.Left) / (s.Right - s.Left) * float64(len(s.Depths)-1)
	i := min(int(at), len(s.Depths)-2)
	return s.Depths[i] + (at-float64(i))*(s.Depths[i+1]-s.Depths[i])
}

// meets is where the wall of a stretch meets that of the next, both of which are
// ellipses:
//
//	d1^2 - x^2 / u^2 = d2^2 - (g - x)^2 / u^2
//
// with x from the edge of the first and g the width of the resist between them.
func (s Stretch) meets(next Stretch, undercut float64) (x float64, ok bool) {
	_, d1 := s.edges()
	d2, _ := next.edges()
	g := next.Left - s.Right
	x = (undercut*undercut*(d1*d1-d2*d2) + g*g) / (2 * g)
	return s.Right + x, x > 0 && x < g
}

// wall is how deep it is etched so far under the resist; 0: not at all.
func (c cut) wall(in float64) float64 {
	if in >= c.reach(0) {
		return 0
	}
	return c.ridge(2 * in)
}

func (c *cutAlong) x(metres float64) float64 { return sheetLeft + metres*c.across }

// y is where a depth under the face is drawn; mirrored, over the back.
func (c *cutAlong) y(metres float64, mirrored bool) float64 {
	if mirrored {
		return c.back - metres*c.down
	}
	return faceY + metres*c.down
}

// onBack says whether the back is etched in the drawing too.
func (c *cutAlong) onBack() bool { return c.Sides == 2 && c.Sheet.Known() }

// runs calls visit with the first and the last place of each run of neighbours for all
// of which the condition holds.
func (c *cutAlong) runs(holds func(depth float64) bool, visit func(first, last int)) {
	for first := 0; first < len(c.xs); first++ {
		last := first
		for last < len(c.xs) && holds(c.depths[last]) {
			last++
		}
		if last > first {
			visit(first, last-1)
		}
		first = last
	}
}

// follow draws along the face from one place to another, or back along the mirrored one.
func (c *cutAlong) follow(p *path, first, last int, mirrored bool) *path {
	step := 1
	if mirrored {
		first, last, step = last, first, -1
	}
	for i := first; ; i += step {
		x, y := c.x(c.xs[i]), c.y(c.depths[i], mirrored)
		if len(p.data) == 0 {
			p = p.move(x, y)
		} else {
			p = p.line(x, y)
		}
		if i == last {
			return p
		}
	}
}

// paintGone draws what was etched away.
func (c *cutAlong) paintGone() {
	c.runs(func(depth float64) bool { return depth > 0 }, func(first, last int) {
		first, last = max(first-1, 0), min(last+1, len(c.xs)-1)
		for _, mirrored := range []bool{false, true} {
			if mirrored && !c.onBack() {
				continue
			}
			face := c.y(0, mirrored)
			p := c.follow(new(path), first, last, mirrored)
			c.drawing.add(Gone, p.line(c.x(c.xs[last]), face).line(c.x(c.xs[first]), face).close())
		}
	})
}

// paintMetal draws what stays, in pieces where it is through.
func (c *cutAlong) paintMetal() {
	c.runs(func(depth float64) bool { return depth < c.most() }, func(first, last int) {
		left, right := c.x(c.xs[first]), c.x(c.xs[last])
		upper := c.follow(new(path), first, last, false)
		switch {
		case !c.Sheet.Known():
			c.drawing.add(Metal, broken(upper, right, left, c.back).close())
		case c.short:
			c.drawing.add(Metal, broken(upper, right, left, c.breakY()).close())
			c.drawing.add(Metal, c.under(broken(new(path), left, right, c.breakY()+cutGap), first, last).close())
		default:
			c.drawing.add(Metal, c.under(upper, first, last).close())
		}
	})
}

// breakY is where a sheet that is cut short breaks off, in the middle of what it has.
func (c *cutAlong) breakY() float64 {
	if c.Sides == 2 {
		return (faceY+backY)/2 - cutGap/2
	}
	return backY - cutUnder - cutGap
}

// under goes on along the back.
func (c *cutAlong) under(p *path, first, last int) *path {
	if c.onBack() {
		return c.follow(p, first, last, true)
	}
	return p.line(c.x(c.xs[last]), c.back).line(c.x(c.xs[first]), c.back)
}

// paintResist draws the strips between the stretches, those with no metal left at their
// foot as lost.
func (c *cutAlong) paintResist() {
	c.eachStrip(func(left, right float64) {
		if !(right > left) {
			return
		}
		role := Resist
		if !c.stands(left, right) {
			role = Lost
		}
		c.drawing.add(role, rectangle(c.x(left), faceY-resistHigh, c.x(right), faceY))
		if c.onBack() {
			c.drawing.add(role, rectangle(c.x(left), c.back, c.x(right), c.back+resistHigh))
		}
	})
}

// eachStrip visits the resist from A to B.
func (c *cutAlong) eachStrip(visit func(left, right float64)) {
	from := 0.0
	for _, s := range c.Open {
		visit(from, s.Left)
		from = s.Right
	}
	visit(from, c.Length.SI)
}

// stands says whether some of the face under a strip is left.
func (c *cutAlong) stands(left, right float64) bool {
	for i, x := range c.xs {
		if x >= left && x <= right && c.depths[i] == 0 {
			return true
		}
	}
	return false
}

// lost is how many lines between two stretches have lost their tops.
func (c *cutAlong) lost() (count int) {
	c.eachStrip(func(left, right float64) {
		if left > 0 && right < c.Length.SI && !c.stands(left, right) {
			count++
		}
	})
	return count
}

func (c *cutAlong) paintLeast() {
	y, ok := c.leastY()
	if !ok {
		return
	}
	c.drawing.dash(Keep, segment(sheetLeft, y, chainX+keepOver, y))
	if c.Sides == 2 {
		c.drawing.dash(Keep, segment(sheetLeft, faceY+c.back-y, chainX+keepOver, faceY+c.back-y))
	}
}

// leastY is the level to which the face may be etched, if it is drawn.
func (c *cutAlong) leastY() (y float64, ok bool) {
	if !c.Sheet.Known() || !c.Least.Known() || !(c.Least.SI < c.Sheet.SI) {
		return 0, false
	}
	y = c.y((c.Sheet.SI-c.Least.SI)/float64(c.Sides), false)
	return y, !c.short || y < c.breakY()-2
}

// dimensions draws the deepest place, the chain of its depth beside the sheet, and the
// words of both ends.
func (c *cutAlong) dimensions() {
	if !c.Deepest.Known() {
		return
	}
	floor := c.y(math.Min(c.Deepest.SI, c.most()), false)
	chain := down(new(path), chainX, faceY, floor)
	notes := []note{{"deepest", c.Deepest.Text, floor}}
	if c.Shallowest.Text != c.Deepest.Text {
		y := c.y(math.Min(c.Shallowest.SI, c.most()), false)
		chain = chain.move(chainX-1, y).line(chainX+1, y)
		notes = insert(notes, note{"shallowest", c.Shallowest.Text, y})
	}
	if c.Left.Known() && c.Left.SI > 0 {
		bottom := c.back
		if c.Sides == 2 {
			bottom = c.y(c.Deepest.SI, true)
		}
		chain = down(chain, chainX, floor, bottom)
		notes = append(notes, note{"left", c.Left.Text, (floor + bottom) / 2})
	}
	if y, ok := c.leastY(); ok {
		notes = insert(notes, note{leaveAtLeast, c.Least.Text, y})
	}
	c.drawing.add(Dimension, down(chain, c.x(c.Where.SI), faceY, floor))
	c.drawing.noteColumn(notes, alongTop, chainX+1.3)
}

// ends names the ends of the line as they are named on the picture.
func (c *cutAlong) ends() {
	const y = faceY - resistHigh - 2.4
	c.drawing.write(Heading, "A", sheetLeft, y, wordSize, Start)
	c.drawing.bold(sheetRight)
	c.drawing.write(Heading, "B", math.Max(c.x(c.Length.SI), sheetLeft+10), y, wordSize, End)
	c.drawing.bold(sheetRight)
}

func (c *cutAlong) scale() {
	_, end := c.drawing.scaleBar(sheetLeft, scaleY, 18, c.across, c.US)
	c.drawing.besideScale(end, c.stretched, c.short)
}

// words says all that the cut shows.
func (c *cutAlong) words() string {
	return sentences(
		"A cut through the sheet along the line from A to B, "+c.Length.Text+".",
		c.openWords(), c.depthWords(), c.leftWords(), c.lostWords(),
		scaleWords(c.stretched, c.short),
	)
}

func (c *cutAlong) openWords() string {
	switch n := len(c.Open); n {
	case 0:
		return "It lies on resist from end to end."
	case 1:
		return "It crosses one exposed stretch."
	default:
		return "It crosses " + strconv.Itoa(n) + " exposed stretches."
	}
}

func (c *cutAlong) depthWords() string {
	switch {
	case !c.Deepest.Known():
		return ""
	case !c.Computed:
		return "All are drawn " + c.Depth.Text + " deep, " + c.Why + ": how even it will be is not worked out yet."
	case c.Shallowest.Text == c.Deepest.Text:
		return "It is etched " + c.Deepest.Text + " deep along it, where the mean is " + c.Depth.Text + ", " + c.Why + "."
	}
	return "It is etched from " + c.Shallowest.Text + " to " + c.Deepest.Text + " deep along it, deepest " + c.whereWords() + ", where the mean is " + c.Depth.Text + ", " + c.Why + "."
}

// whereWords are the place of the deepest, which is an end within a hundredth.
func (c *cutAlong) whereWords() string {
	const atEnd = 0.01
	switch share := c.Where.SI / c.Length.SI; {
	case share < atEnd:
		return "at A"
	case share > 1-atEnd:
		return "at B"
	}
	return c.Where.Text + " from A"
}

func (c *cutAlong) leftWords() string {
	switch {
	case !c.Deepest.Known() || !c.Sheet.Known():
		return ""
	case !(c.Left.SI > 0):
		return "There the sheet of " + c.Sheet.Text + " is eaten through."
	}
	return c.Left.Text + " is left of the sheet of " + c.Sheet.Text + " there."
}

func (c *cutAlong) lostWords() string {
	switch n := c.lost(); n {
	case 0:
		return ""
	case 1:
		return "One line between them has lost its top."
	default:
		return strconv.Itoa(n) + " lines between them have lost their tops."
	}
}
