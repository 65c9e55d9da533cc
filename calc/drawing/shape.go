// Package drawing is the geometry of what the page draws: a cut through the
// sheet, depth against time, the bench card, the jar's label. A drawing is a
// list of shapes in millimetres of its own frame, each with the role that it
// plays; it knows no colours, no browser and no clock.
//
// What is drawn is not worked out here. Every figure comes in as a Size: in SI
// for the geometry, and as the text that is printed beside it, so that a
// picture and an answer can't differ.
package drawing

import (
	"math"
	"strconv"
	"strings"
)

// Drawing is a picture with the words that say the same.
type Drawing struct {
	Width, Height float64 // of its frame, mm
	Title         string  // a short name
	Words         string  // all that the picture says, in plain sentences
	Metal         string  // family of the metal, for its tone; "" where none is drawn
	Shapes        []Shape // in painting order
}

// Shape is a path or a text; never both.
type Shape struct {
	Role Role
	Path string // SVG path data: M, L, A and Z, absolute, mm, at most 3 decimals
	Dash bool

	Text   string
	X, Y   float64 // of the text's anchor, on its baseline
	Size   float64 // of the font, mm
	Anchor Anchor
	Strong bool
}

// Role is what a shape is, which is all that a page may style it by.
type Role string

const (
	Bath      Role = "bath"      // the liquid
	Metal     Role = "metal"     // what stays
	Gone      Role = "gone"      // metal that was etched away
	Resist    Role = "resist"    // what covers the metal
	Lost      Role = "lost"      // resist with no metal left under it
	Keep      Role = "keep"      // the level to which it may be etched
	Dimension Role = "dimension" // a thin line with its ends
	Leader    Role = "leader"    // from a word to its thing
	Scale     Role = "scale"     // the scale bar
	Frame     Role = "frame"
	Axis      Role = "axis"
	Grid      Role = "grid"
	Line      Role = "line"    // the curve
	Band      Role = "band"    // its range
	Limit     Role = "limit"   // where the sheet or the line ends
	Target    Role = "target"  // where this job is to end
	Reading   Role = "reading" // a point that was measured
	Half      Role = "half"    // half time
	Rule      Role = "rule"    // a line to write on
	Positive  Role = "positive"
	Negative  Role = "negative"
	Cathode   Role = "cathode"
	Supply    Role = "supply"
	LabelEdge Role = "label-edge" // where a label is cut
	WarnMark  Role = "warn"
	StopMark  Role = "stop"

	Word    Role = "word" // roles of texts
	Figure  Role = "figure"
	Title   Role = "title"
	Small   Role = "small"
	Heading Role = "heading"
)

// Anchor says which end of a text stands at its X.
type Anchor string

const (
	Start  Anchor = "start"
	Middle Anchor = "middle"
	End    Anchor = "end"
)

// Size is a quantity to draw: in SI, and as it is printed. One that is not
// known has no text.
type Size struct {
	SI   float64
	Text string
}

// Known says whether there is such a quantity.
func (s Size) Known() bool { return s.Text != "" }

// add puts a path down.
func (d *Drawing) add(role Role, p *path) {
	d.Shapes = append(d.Shapes, Shape{Role: role, Path: string(p.data)})
}

// dash puts a dashed path down.
func (d *Drawing) dash(role Role, p *path) {
	d.add(role, p)
	d.Shapes[len(d.Shapes)-1].Dash = true
}

// write puts a text down.
func (d *Drawing) write(role Role, text string, x, y, size float64, anchor Anchor) {
	d.Shapes = append(d.Shapes, Shape{Role: role, Text: text, X: round(x), Y: round(y), Size: size, Anchor: anchor})
}

// bold makes the last text strong, if it still has room to be.
func (d *Drawing) bold(room float64) {
	last := &d.Shapes[len(d.Shapes)-1]
	last.Strong = widthOf(last.Text, last.Size, true) <= room
}

// path is SVG path data in the making.
type path struct{ data []byte }

// from begins a path.
func from(x, y float64) *path { return new(path).move(x, y) }

func (p *path) move(x, y float64) *path { return p.to('M', x, y) }

func (p *path) line(x, y float64) *path { return p.to('L', x, y) }

func (p *path) close() *path {
	p.data = append(p.data, 'Z')
	return p
}

func (p *path) to(letter byte, x, y float64) *path {
	p.data = append(p.data, letter)
	p.number(x)
	p.number(y)
	return p
}

// arc is a part of an ellipse, less than half of it, against the clock.
func (p *path) arc(rx, ry, x, y float64) *path {
	if round(rx) == 0 || round(ry) == 0 {
		return p.line(x, y)
	}
	p.to('A', rx, ry)
	p.data = append(p.data, " 0 0 0"...)
	p.number(x)
	p.number(y)
	return p
}

// number writes a coordinate with at most 3 decimals, a blank before it unless
// a letter stands there.
func (p *path) number(x float64) {
	if last := p.data[len(p.data)-1]; last < 'A' {
		p.data = append(p.data, ' ')
	}
	n := int64(math.Round(math.Max(-farthestOut, math.Min(x, farthestOut)) * 1000))
	if n < 0 {
		p.data = append(p.data, '-')
		n = -n
	}
	p.data = strconv.AppendInt(p.data, n/1000, 10)
	if n %= 1000; n > 0 {
		p.data = append(p.data, '.', '0'+byte(n/100), '0'+byte(n/10%10), '0'+byte(n%10))
		for p.data[len(p.data)-1] == '0' {
			p.data = p.data[:len(p.data)-1]
		}
	}
}

// farthestOut is more than the radius of any arc, mm.
const farthestOut = 1e9

// round is a coordinate to a thousandth of a millimetre.
func round(x float64) float64 { return math.Round(x*1000)/1000 + 0 }

func segment(x1, y1, x2, y2 float64) *path { return from(x1, y1).line(x2, y2) }

func rectangle(x1, y1, x2, y2 float64) *path {
	return from(x1, y1).line(x2, y1).line(x2, y2).line(x1, y2).close()
}

// sentences joins what there is to say.
func sentences(said ...string) string {
	kept := said[:0]
	for _, s := range said {
		if s != "" {
			kept = append(kept, s)
		}
	}
	return strings.Join(kept, " ")
}
