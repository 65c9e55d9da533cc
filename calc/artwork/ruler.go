package artwork

import "math"

// Ruler is a known length in a picture: the places of its two ends, in pixels of the
// picture from the top left corner of the first, and the length between them, m. Zero:
// not given.
type Ruler struct {
	From, To Point
	Length   float64
}

// shortestRuler is how far apart the ends must be, in pixels: a pixel is then a tenth.
const shortestRuler = 10

// scaled is the options with the width, m, that a ruler gives, where neither width nor
// height is given:
//
//	width = length x width in pixels / distance of the ends in pixels
//
// Between corners both ends are taken back to the sheet first, so that a ruler that lies
// in its plane is read in a slanted view too, and may lie beside it.
func (o Options) scaled(p Picture) (Options, error) {
	if positive(o.Ruler.Length) == 0 || positive(o.Width) > 0 || positive(o.Height) > 0 {
		return o, nil
	}
	from, to := o.Ruler.From, o.Ruler.To
	apart := math.Hypot(to.X-from.X, to.Y-from.Y)
	if !p.holds(from) || !p.holds(to) || !(apart >= shortestRuler) {
		return o, &Error{Field: "ruler", Text: "the ruler's ends are two places in the picture, at least 10 pixels apart, for example 120 340; 980 352"}
	}
	if o.Corners == (Corners{}) {
		if p.DensityX > 0 && p.DensityY > 0 { // pixels need not be square
			apart = math.Hypot(to.X-from.X, (to.Y-from.Y)*p.DensityX/p.DensityY)
		}
		o.Width = o.Ruler.Length * float64(p.Width) / apart
		return o, nil
	}
	if !o.Corners.sound(p) {
		return o, nil // which is told where they are used
	}
	m, aspect := o.Corners.projective(), o.Corners.aspect(p)
	u0, v0, before := m.back(from)
	u1, v1, behind := m.back(to)
	o.Width = positive(o.Ruler.Length / math.Hypot(u1-u0, (v1-v0)/aspect))
	if !before || !behind || o.Width == 0 {
		return o, &Error{Field: "ruler", Text: "the ruler's ends don't lie in the plane of the sheet; lay it beside the sheet, or type the width"}
	}
	return o, nil
}

func (p Picture) holds(at Point) bool {
	return at.X >= 0 && at.X <= float64(p.Width) && at.Y >= 0 && at.Y <= float64(p.Height)
}

// back takes a place in the photograph to the sheet's plane; false if it lies beyond
// the horizon of that.
func (m mapping) back(at Point) (u, v float64, before bool) {
	a, b := m.a-m.g*at.X, m.b-m.h*at.X
	d, e := m.d-m.g*at.Y, m.e-m.h*at.Y
	x, y := at.X-m.c, at.Y-m.f
	area := a*e - b*d
	u, v = (x*e-b*y)/area, (a*y-x*d)/area
	return u, v, m.g*u+m.h*v+1 > 0
}
