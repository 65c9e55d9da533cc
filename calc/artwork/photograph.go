package artwork

import "math"

// Corners are the four corners of a sheet in a photograph, in its pixels from
// the top left corner of the first, clockwise from the top left of the sheet.
// All zero: not given.
type Corners [4]Point

// Point is a place in a photograph, in pixels.
type Point struct{ X, Y float64 }

// flat is what is to be measured: the picture itself, or the black and white
// that a photograph shows, with the threshold between them. progress hears shares of it.
func (o Options) flat(p Picture, progress func(share float64)) (Picture, float64, error) {
	photograph := o.Threshold != 0 || o.Corners != Corners{}
	if !photograph {
		return p, 0, nil
	}
	if !(o.Threshold >= 0 && o.Threshold < 1) {
		return Picture{}, 0, &Error{Field: "threshold", Text: "the threshold is a share of white between 0 and 100 %, for example 50 %"}
	}
	sheet, err := o.flattened(p, func(share float64) { progress(0.5 * share) })
	if err != nil {
		return Picture{}, 0, err
	}
	threshold := levelled(sheet, o.Threshold, func(share float64) { progress(0.5 + 0.5*share) })
	return sheet, threshold, nil
}

// flattened is a copy of the photograph, or of the sheet between its corners as seen straight
// on, with at most OutlinePixels.
func (o Options) flattened(p Picture, progress func(share float64)) (Picture, error) {
	if o.Corners == (Corners{}) {
		small := p
		scale := min(1, math.Sqrt(OutlinePixels/float64(len(p.Grey))))
		small.Width, small.Height = whole(float64(p.Width)*scale, p.Width), whole(float64(p.Height)*scale, p.Height)
		small.Grey = append([]byte(nil), raster{p.Width, p.Height, p.Grey}.reduced(small.Width, small.Height).open...)
		small.DensityX *= float64(small.Width) / float64(p.Width)
		small.DensityY *= float64(small.Height) / float64(p.Height)
		return small, nil
	}
	if !o.Corners.sound(p) {
		return Picture{}, &Error{Field: "corners", Text: "the corners are four places in the photograph, clockwise from the top left of the sheet, for example 12 30; 980 44; 970 700; 20 690"}
	}
	width, height := positive(o.Width), positive(o.Height)
	aspect := width / height
	if width == 0 || height == 0 {
		aspect = o.Corners.aspect(p)
	}
	across, down := o.Corners.pixels(aspect)
	sheet := o.Corners.project(p, across, down, progress)
	if width > 0 && height > 0 {
		sheet.DensityX, sheet.DensityY = float64(across)/width, float64(down)/height
	}
	return sheet, nil
}

// sound tells whether the corners lie in the picture or close to it and make a
// convex figure, clockwise, that is not too thin to be read.
func (c Corners) sound(p Picture) bool {
	const near, leastTurn = 0.1, 25
	for i, at := range c {
		wide, tall := float64(p.Width), float64(p.Height)
		if !(at.X >= -near*wide && at.X <= (1+near)*wide && at.Y >= -near*tall && at.Y <= (1+near)*tall) {
			return false
		}
		after, beyond := c[(i+1)%4], c[(i+2)%4]
		if !((after.X-at.X)*(beyond.Y-after.Y)-(after.Y-at.Y)*(beyond.X-after.X) > leastTurn) {
			return false
		}
	}
	return true
}

// pixels is the size of a flat sheet of that aspect, with about as many pixels
// along its longer side as the photograph gives it: at least 500, and at most
// OutlinePixels in all.
func (c Corners) pixels(aspect float64) (across, down int) {
	wide := max(c.side(0, 1), c.side(3, 2), aspect*max(c.side(1, 2), c.side(0, 3)))
	wide = max(wide, 500, 500*aspect)
	wide = min(wide, math.Sqrt(OutlinePixels*aspect), MostSide, MostSide*aspect)
	return whole(wide, MostSide), whole(wide/aspect, MostSide)
}

func (c Corners) side(i, k int) float64 { return math.Hypot(c[i].X-c[k].X, c[i].Y-c[k].Y) }

// mapping takes a place on the sheet, both coordinates from 0 to 1, to the
// photograph:
//
//	x = (a u + b v + c) / (g u + h v + 1),  y = (d u + e v + f) / (g u + h v + 1)
type mapping struct{ a, b, c, d, e, f, g, h float64 }

// projective is the mapping that takes the corners of the unit square to four
// places (Heckbert 1989, Fundamentals of texture mapping and image warping, 2.2.3).
func (c Corners) projective() mapping {
	x1, y1 := c[1].X-c[2].X, c[1].Y-c[2].Y
	x2, y2 := c[3].X-c[2].X, c[3].Y-c[2].Y
	x, y := c[0].X-c[1].X+c[2].X-c[3].X, c[0].Y-c[1].Y+c[2].Y-c[3].Y
	area := x1*y2 - x2*y1
	g, h := (x*y2-x2*y)/area, (x1*y-x*y1)/area
	return mapping{
		c[1].X - c[0].X + g*c[1].X, c[3].X - c[0].X + h*c[3].X, c[0].X,
		c[1].Y - c[0].Y + g*c[1].Y, c[3].Y - c[0].Y + h*c[3].Y, c[0].Y,
		g, h,
	}
}

func (m mapping) at(u, v float64) (x, y float64) {
	w := m.g*u + m.h*v + 1
	return (m.a*u + m.b*v + m.c) / w, (m.d*u + m.e*v + m.f) / w
}

// aspect is the width of the sheet over its height, found from its perspective:
// the sheet's sides are at right angles, the lens is straight before the middle
// of the photograph and its pixels are square (Zhang and He 2003, Microsoft Research MSR-TR-2003-39). Where
// the view is so straight that the focal length can't be found, it is the ratio of the
// sides as they are seen, and as far off as the view is slanted.
func (c Corners) aspect(p Picture) float64 {
	const least, most = 0.45, 4 // of the picture's diagonal: lenses of cameras and tablets
	for i := range c {
		c[i].X -= float64(p.Width) / 2
		c[i].Y -= float64(p.Height) / 2
	}
	m := c.projective()
	// The directions of the sheet's sides, times the matrix of the lens.
	alongX, alongY := m.a, m.d
	downX, downY := m.b, m.e
	diagonal := float64(p.Width)*float64(p.Width) + float64(p.Height)*float64(p.Height)
	squared := -(alongX*downX + alongY*downY) / (m.g * m.h) // of the focal length
	if !(squared > least*least*diagonal && squared < most*most*diagonal) {
		return math.Sqrt(c.side(0, 1)*c.side(3, 2)) / math.Sqrt(c.side(0, 3)*c.side(1, 2))
	}
	return math.Sqrt((alongX*alongX + alongY*alongY + m.g*m.g*squared) / (downX*downX + downY*downY + m.h*m.h*squared))
}

// rowsUntold is how many rows are worked on between two shares of progress.
const rowsUntold = 128

// project samples the sheet: each pixel is the mean of a square grid of points
// in it, as fine as the photograph's pixels, each interpolated linearly.
func (c Corners) project(p Picture, across, down int, progress func(share float64)) Picture {
	m := c.projective()
	photographed := max(c.side(0, 1)/float64(across), c.side(3, 2)/float64(across), c.side(0, 3)/float64(down), c.side(1, 2)/float64(down))
	fine := max(2, min(int(math.Ceil(photographed)), 8))
	sheet := Picture{Width: across, Height: down, Grey: make([]byte, across*down)}
	for y := range down {
		if y%rowsUntold == 0 {
			progress(float64(y) / float64(down))
		}
		for x := range across {
			sum := 0.0
			for k := range fine * fine {
				u := (float64(x) + (float64(k%fine)+0.5)/float64(fine)) / float64(across)
				v := (float64(y) + (float64(k/fine)+0.5)/float64(fine)) / float64(down)
				sum += p.between(m.at(u, v))
			}
			sheet.Grey[y*across+x] = byte(sum/float64(fine*fine) + 0.5)
		}
	}
	return sheet
}

// between is the grey at a place, linear between the centres of four pixels.
func (p Picture) between(x, y float64) float64 {
	x = max(0, min(x-0.5, float64(p.Width-1)))
	y = max(0, min(y-0.5, float64(p.Height-1)))
	left, top := int(x), int(y)
	right, below := min(left+1, p.Width-1), min(top+1, p.Height-1)
	fx, fy := x-float64(left), y-float64(top)
	grey := func(x, y int) float64 { return float64(p.Grey[y*p.Width+x]) }
	return (grey(left, top)*(1-fx)+grey(right, top)*fx)*(1-fy) + (grey(left, below)*(1-fx)+grey(right, below)*fx)*fy
}
