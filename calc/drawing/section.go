package drawing

import (
	"math"
)

// Section is the sheet cut through its narrowest line.
type Section struct {
	Metal    string // its family
	US       bool
	Depth    Size
	Why      string // whose depth it is: "as asked for"
	Undercut float64
	SideBite Size // how far it is etched under the resist
	Sides    int  // how many faces are etched

	Sheet, Left Size
	Least       Size // of the sheet, to leave
	Line, Space Size // as typed
	LineLeft    Size
	SpaceGets   Size // what the gap widens to
}

// What stands where in the frame, mm.
const (
	sheetLeft, sheetRight = 3, 61.5
	faceY, backY          = 18, 40 // the most room for the sheet
	resistHigh            = 1.6
	bathBottom            = 43.5
	scaleY                = 46.7
	chainX                = 64.6 // of the dimensions beside the sheet
	keepOver              = 1.4  // how far the level to leave goes past them
	columnX               = 68.2 // of their words
	columnRight           = 99
	sectionColumn         = 12.6 // where the first of them may stand
	lineColumn            = 37   // of the words of the line, beside those of the gap
	leastBlock            = 4    // of resist at each end
	leastBite             = 3.5  // of a depth, so that it can be seen
	cutBite               = 7    // of a depth where the sheet is cut short
	cutUnder              = 5    // of metal under it, and at the back
	cutGap                = 2
	mostLines             = 5
)

// drawn is a section laid out: a cut, and where its metres go.
type drawn struct {
	Section
	cut
	strips    []opening // of resist: lines and both ends
	across    float64   // mm of drawing to a metre of width
	down      float64   // and of depth
	back      float64   // y of the back; of the broken edge where no sheet is known
	short     bool      // the sheet's middle is left out
	named     int       // the line that is dimensioned; the space is the one before it
	drawing   *Drawing
	stretched float64 // how many times depths are larger than widths
}

// Draw draws the section; nil without a depth, and of a sheet that is eaten
// through, which has none.
func (s *Section) Draw() *Drawing {
	if !s.Depth.Known() || !(s.Depth.SI > 0) || s.through() {
		return nil
	}
	d := &drawn{Section: *s}
	d.measure()
	d.drawing = &Drawing{Width: frameWidth, Height: frameHeight, Title: "A cut through the sheet", Metal: s.Metal}
	d.drawing.add(Bath, rectangle(0, 0, frameWidth, bathBottom))
	d.paintSheet()
	d.paintResist()
	d.paintLeast()
	d.dimensions()
	d.headings()
	d.scale()
	d.drawing.Words = d.words()
	return d.drawing
}

// through says whether nothing is left of the sheet under the open spaces.
func (s *Section) through() bool {
	return s.Sheet.Known() && s.Depth.SI*float64(s.Sides) >= s.Sheet.SI
}

// measure chooses the widths that are drawn and the scale.
func (d *drawn) measure() {
	d.depth, d.undercut = d.Depth.SI, d.Undercut
	line, space := d.widths()
	d.chooseScale(line + 2*space + 2*d.reach(0))
	lines := 1
	for lines < mostLines && d.across*(float64(lines+1)*(line+space)+space+2*d.reach(0)) <= sheetRight-sheetLeft-2*leastBlock {
		lines++
	}
	d.place(lines, line, space)
}

// widths are the line's and the space's, or such as show the depth well.
func (d *drawn) widths() (line, space float64) {
	line, space = d.Line.SI, d.Space.SI
	if !d.Line.Known() {
		line = 2*d.reach(0) + 2.5*d.depth
	}
	if !d.Space.Known() {
		space = 3 * d.depth
	}
	return line, space
}

// chooseScale draws widths and depths to one scale if the depth can then be
// seen: with the whole sheet, or else with its middle left out. Where it can't,
// depths are drawn larger by a round number.
func (d *drawn) chooseScale(width float64) {
	fit := (sheetRight - sheetLeft - 2*leastBlock) / width
	whole := fit
	if d.Sheet.Known() {
		whole = math.Min(fit, (backY-faceY)/d.Sheet.SI)
	}
	least := leastBite / d.depth
	d.across, d.down, d.stretched = fit, 0, 1
	switch room := cutBite / d.depth; {
	case d.Sheet.Known() && whole >= least:
		d.across = whole
	case math.Min(fit, room) >= least:
		d.across = math.Min(fit, room)
	default:
		d.stretched = niceAbove(least / fit)
	}
	d.down = d.across * d.stretched
	d.back = backY
	if high := d.Sheet.SI * d.down; d.Sheet.Known() && high <= backY-faceY+1e-9 {
		d.back = faceY + high
	} else {
		d.short = d.Sheet.Known()
	}
}

// place sets the lines side by side about the middle of the sheet.
func (d *drawn) place(lines int, line, space float64) {
	half := (sheetRight - sheetLeft) / 2 / d.across
	d.left, d.right = -half, half
	d.named = (lines + 1) / 2
	at := -(float64(lines)*line + float64(lines+1)*space) / 2
	edge := -half
	for range lines + 1 {
		d.strips = append(d.strips, opening{edge, at})
		d.spaces = append(d.spaces, opening{at, at + space})
		edge = at + space
		at = edge + line
	}
	d.strips = append(d.strips, opening{edge, half})
}

func (d *drawn) x(metres float64) float64 { return (sheetLeft+sheetRight)/2.0 + metres*d.across }

// y is where a depth under the face is drawn; mirrored, over the back.
func (d *drawn) y(metres float64, mirrored bool) float64 {
	if mirrored {
		return d.back - metres*d.down
	}
	return faceY + metres*d.down
}

// follow draws along the nodes of a face: forward from the left, or the
// mirrored face backward from the right.
func (d *drawn) follow(p *path, nodes []node, mirrored bool) *path {
	arc := false
	for i := range nodes {
		n := nodes[i]
		if mirrored {
			n = nodes[len(nodes)-1-i]
		}
		x, y := d.x(n.x), d.y(n.y, mirrored)
		curved := n.arc
		if mirrored {
			curved, arc = arc, n.arc
		}
		switch {
		case len(p.data) == 0:
			p = p.move(x, y)
		case curved && i > 0:
			p = p.arc(d.undercut*d.depth*d.across, d.depth*d.down, x, y)
		default:
			p = p.line(x, y)
		}
	}
	return p
}

// paintSheet draws what was etched away and what stays.
func (d *drawn) paintSheet() {
	face := d.top()
	for _, bite := range bitten(face) {
		d.drawing.add(Gone, d.follow(new(path), bite, false).close())
		if d.Sides == 2 && d.Sheet.Known() {
			d.drawing.add(Gone, d.follow(new(path), bite, true).close())
		}
	}
	d.paintBody(face)
}

// paintBody draws a sheet that holds together, in one piece or cut short.
func (d *drawn) paintBody(face []node) {
	upper := d.follow(new(path), face, false)
	switch {
	case !d.Sheet.Known():
		d.drawing.add(Metal, broken(upper, sheetRight, sheetLeft, d.back).close())
	case d.short:
		d.drawing.add(Metal, broken(upper, sheetRight, sheetLeft, d.breakY()).close())
		d.drawing.add(Metal, d.under(broken(new(path), sheetLeft, sheetRight, d.breakY()+cutGap), face).close())
	default:
		d.drawing.add(Metal, d.under(upper, face).close())
	}
}

// breakY is where a sheet that is cut short breaks off.
func (d *drawn) breakY() float64 {
	if d.Sides == 2 {
		return (faceY+backY)/2 - cutGap/2
	}
	return backY - cutUnder - cutGap
}

// under goes on along the back of what was followed along its face: back to
// the left, etched too or straight.
func (d *drawn) under(p *path, body []node) *path {
	if d.Sides == 2 {
		return d.follow(p, body, true)
	}
	return p.line(d.x(body[len(body)-1].x), d.back).line(d.x(body[0].x), d.back)
}

// broken is an edge in the way that drawings break off, from x to x.
func broken(p *path, from, to, y float64) *path {
	const teeth, high = 12, 0.7
	for i := range teeth + 1 {
		x, up := from+(to-from)*float64(i)/teeth, high*float64(i%2)
		if len(p.data) == 0 {
			p = p.move(x, y-up)
			continue
		}
		p = p.line(x, y-up)
	}
	return p
}

// standing says whether the line that is drawn keeps some of its top.
func (d *drawn) standing() bool {
	line := d.strips[d.named]
	return line.right-line.left > 2*d.reach(0)
}

// paintResist draws the strips, those with no metal left under them as lost.
func (d *drawn) paintResist() {
	for i, s := range d.strips {
		role := Resist
		if i > 0 && i < len(d.strips)-1 && !d.standing() {
			role = Lost
		}
		d.drawing.add(role, rectangle(d.x(s.left), faceY-resistHigh, d.x(s.right), faceY))
		if d.Sides == 2 && d.Sheet.Known() {
			d.drawing.add(role, rectangle(d.x(s.left), d.back, d.x(s.right), d.back+resistHigh))
		}
	}
}

// leastY is the level to which the face may be etched, if it is drawn.
func (d *drawn) leastY() (y float64, ok bool) {
	if !d.Sheet.Known() || !d.Least.Known() || !(d.Least.SI < d.Sheet.SI) {
		return 0, false
	}
	y = d.y((d.Sheet.SI-d.Least.SI)/float64(d.Sides), false)
	if d.short {
		return y, y < d.breakY()-2
	}
	return y, y <= d.back
}

func (d *drawn) paintLeast() {
	y, ok := d.leastY()
	if !ok {
		return
	}
	d.drawing.dash(Keep, segment(sheetLeft, y, chainX+keepOver, y))
	if d.Sides == 2 {
		d.drawing.dash(Keep, segment(sheetLeft, faceY+d.back-y, chainX+keepOver, faceY+d.back-y))
	}
}

const leaveAtLeast = "leave at least"

// dimensions draws the chain of depths beside the sheet, its words in rows of
// their own with leaders, so that they never meet however thin a depth is.
func (d *drawn) dimensions() {
	floorY := d.y(d.depth, false)
	notes := []note{{"etched", d.Depth.Text, (faceY + floorY) / 2}}
	chain := down(new(path), chainX, faceY, floorY)
	if bottom := d.bottomY(); d.Left.Known() {
		down(chain, chainX, floorY, bottom)
		notes = append(notes, note{"left", d.Left.Text, (floorY + bottom) / 2})
	}
	if y, ok := d.leastY(); ok {
		notes = insert(notes, note{leaveAtLeast, d.Least.Text, y})
	}
	d.drawing.add(Dimension, chain)
	d.drawing.noteColumn(notes, sectionColumn, chainX+0.3)
}

// bottomY is the lower end of what is left: the back, or the floor of its bite.
func (d *drawn) bottomY() float64 {
	if d.Sides == 2 {
		return d.y(d.depth, true)
	}
	return d.back
}

// headings names the resist, the line and the gap over the sheet, with the
// dimensions of what the line keeps and the gap widens to.
func (d *drawn) headings() {
	const y, markY, middle = 4.8, 14.8, lineColumn - 2
	end := d.strips[len(d.strips)-1]
	d.drawing.write(Word, "resist", columnX, y, wordSize, Start)
	d.drawing.add(Leader, segment(columnX-0.6, y-1, d.x(end.right)-2, faceY-resistHigh))
	line, before := d.strips[d.named], d.spaces[d.named-1]
	if d.Line.Known() {
		word, figure := "line keeps", d.LineLeft.Text
		if !d.standing() || !d.LineLeft.Known() {
			word, figure = "finest line", "gone"
		}
		d.drawing.pair(word, figure, lineColumn, y, columnX-2-lineColumn)
		d.span(line.left+d.reach(0), line.right-d.reach(0), (line.left+line.right)/2, markY, lineColumn+1)
	}
	if d.Space.Known() && d.SpaceGets.Known() && d.standing() {
		d.drawing.pair("gap widens to", d.SpaceGets.Text, sheetLeft, y, middle-sheetLeft)
		d.span(before.left-d.reach(0), before.right+d.reach(0), (before.left+before.right)/2, markY, middle-6)
	}
}

// span marks a width over the resist with a leader to its word, or, where
// there is no width any more, its middle.
func (d *drawn) span(left, right, middle, y, word float64) {
	const ends, underRows = 0.9, 11
	if left < right {
		d.drawing.add(Dimension, across(d.x(left), d.x(right), y, ends))
	} else {
		y = faceY - resistHigh
	}
	d.drawing.add(Leader, segment(d.x(middle), y, word, underRows))
}

// scale draws the scale bar, and says beside it what does not go by it.
func (d *drawn) scale() {
	_, end := d.drawing.scaleBar(sheetLeft, scaleY, 18, d.across, d.US)
	d.drawing.besideScale(end, d.stretched, d.short)
}

// words says all that the section shows.
func (d *drawn) words() string {
	return sentences(
		"A cut through the sheet, across its finest line.",
		"It is etched "+d.Depth.Text+" deep, "+d.Why+d.onSides()+".",
		d.sheetWords(),
		d.underWords(),
		d.lineWords(),
		d.spaceWords(),
		d.assumedWords(),
		scaleWords(d.stretched, d.short),
	)
}

func (d *drawn) onSides() string {
	if d.Sides == 2 {
		return ", on both sides"
	}
	return ""
}

func (d *drawn) sheetWords() string {
	switch {
	case !d.Sheet.Known():
		return "The sheet's thickness is not given, so it is drawn with a broken edge."
	case !d.Left.Known():
		return "The sheet is " + d.Sheet.Text + "."
	}
	said := d.Left.Text + " is left of the sheet of " + d.Sheet.Text
	if !d.Least.Known() {
		return said + "."
	}
	if d.Left.SI < d.Least.SI*(1-1e-9) {
		return said + ", less than the " + d.Least.Text + " to leave."
	}
	return said + ", and at least " + d.Least.Text + " is to stay."
}

func (d *drawn) underWords() string {
	if !d.SideBite.Known() {
		return "It is not etched under the resist."
	}
	return "Under the resist it is etched " + d.SideBite.Text + " from each side."
}

func (d *drawn) lineWords() string {
	switch {
	case !d.Line.Known():
		return ""
	case !d.standing():
		return "The finest line, under " + d.Line.Text + " of resist, is gone, and the gaps beside it run together."
	case !d.LineLeft.Known():
		return "The finest line is under " + d.Line.Text + " of resist."
	}
	return "The finest line keeps " + d.LineLeft.Text + " at its top, under " + d.Line.Text + " of resist."
}

func (d *drawn) spaceWords() string {
	if !d.Space.Known() || !d.SpaceGets.Known() || !d.standing() {
		return ""
	}
	return "The finest gap, " + d.Space.Text + " in the resist, widens to " + d.SpaceGets.Text + "."
}

func (d *drawn) assumedWords() string {
	switch {
	case !d.Line.Known() && !d.Space.Known():
		return "The widths of line and gap are not given: those drawn are examples."
	case !d.Line.Known():
		return "The line's width is not given: the one drawn is an example."
	case !d.Space.Known():
		return "The gap's width is not given: the one drawn is an example."
	}
	return ""
}
