package artwork

import (
	"fmt"
	"math"
	"slices"
)

// Options say how a picture is to be read. What is zero is not given.
type Options struct {
	Width, Height float64 // m, of the whole picture or of the sheet between Corners; one is enough
	BlackEtches   bool    // black is open; else black keeps the metal
	Threshold     float64 // of a photograph: the share of white above which it counts as white
	Corners       Corners // of a photograph
	Ruler         Ruler   // it gives the size where neither Width nor Height does
	Lost          float64 // m: resist narrower than this is lost, 2 x undercut x depth
}

// Result is what a picture says. Lengths and areas are 0 where the real size is
// not known: neither Options nor the file's density state it.
type Result struct {
	Width, Height float64 // m
	Open          float64 // share of the picture that is exposed
	Area          float64 // m2 that are exposed
	Edge          float64 // m of resist edge; the picture's border is none
	Line, Space   float64 // m, the narrowest resist and the narrowest open width; 0: none
	Grey          float64 // share that is flat grey
	Greys         []Patch // its largest stretches, at most 20
	Islands       int     // separate exposed areas, joined at sides
	Holes         int     // stretches of resist enclosed in them, joined at sides or corners
	Lost          int     // separate stretches of resist narrower than Options.Lost
	Kept          float64 // m, the narrowest resist that is no narrower than that; 0: none
	Narrow        []Place // where it is narrow, the narrowest first, at most 20
	Threshold     float64 // that was used; 0 where the picture is no photograph
	Pixel         float64 // m, of the grid on which edge and widths were measured
	Map           Map     // what was measured, small
}

// Map is what a picture was read as: how far each cell is open, from 0, resist, to
// 255, row by row from the top left. It has at most mapSide cells on a side.
type Map struct {
	Width, Height int
	Open          []byte
}

const mapSide = 1000

// Place is a narrow line or space. X and Y, m, are its middle.
type Place struct {
	Space bool // else a line
	X, Y  float64
	Width float64 // m
}

// Patch is a stretch of flat grey. X and Y, m, are its middle.
type Patch struct{ X, Y, Area float64 }

// Measure reads a picture. progress hears shares from 0 to 1.
//
// Open is the mean coverage of all pixels. Islands and holes are counted, and
// greys found, among all pixels too.
//
// Edge is the length of the contour at half coverage (marching squares with
// linear interpolation), smoothed 1-2-1, with what that takes off corners added
// again, from border to border. Its error is under 1 % for shapes of forty
// pixels and more, and 0.1 % for large ones; what is under two pixels wide may be missed.
//
// Line and Space are the least diameter of a disc that touches two edges which
// face each other, their directions 150 degrees or more apart, and no other, and
// lies wholly in the picture: found by a distance transform from the contour and
// refined against the contour's own points. The error is under half a pixel and
// 2 %, for edges two pixels apart or more; 0.8 pixels more for each of them that
// is a sharp corner. Corners and tapers of more than 30 degrees have no such disc.
//
// A photograph, which is what has Corners or a Threshold, is first turned flat and made black
// and white: see flatten and levelled.
func Measure(p Picture, o Options, progress func(share float64)) (Result, error) {
	sheet, r, err := o.covered(p, func(share float64) { progress(0.15 * share) })
	if err != nil {
		return Result{}, err
	}
	progress(0.15)
	r.findGreys(sheet)
	progress(0.25)
	all := o.raster(sheet)
	r.Islands, r.Holes = islandsAndHoles(all)
	r.Map = all.small()
	progress(0.4)
	if r.Width > 0 {
		r.gauge(all, o.Lost, func(share float64) { progress(0.4 + 0.6*share) })
	}
	progress(1)
	return r, nil
}

// Cover reads of a picture only its size, what is open and the map, in a fraction of
// the time that Measure takes.
func Cover(p Picture, o Options, progress func(share float64)) (Result, error) {
	sheet, r, err := o.covered(p, progress)
	if err != nil {
		return Result{}, err
	}
	r.Map = o.raster(sheet).small()
	return r, nil
}

// covered is the flat sheet, its size and how much of it is open. progress hears shares of it.
func (o Options) covered(p Picture, progress func(share float64)) (Picture, Result, error) {
	if err := p.whole(); err != nil {
		return Picture{}, Result{}, err
	}
	o, err := o.scaled(p)
	if err != nil {
		return Picture{}, Result{}, err
	}
	sheet, threshold, err := o.flat(p, progress)
	if err != nil {
		return Picture{}, Result{}, err
	}
	width, height, err := o.size(sheet)
	if err != nil {
		return Picture{}, Result{}, err
	}
	r := Result{Width: width, Height: height, Threshold: threshold, Open: o.open(sheet)}
	r.Area = r.Open * width * height
	return sheet, r, nil
}

// open is the mean coverage, as a share.
func (o Options) open(p Picture) float64 {
	sum := 0
	for _, v := range p.Grey {
		sum += int(v)
	}
	full := 255 * len(p.Grey)
	if o.BlackEtches {
		sum = full - sum
	}
	return float64(sum) / float64(full)
}

// raster is the picture with what is open as white.
func (o Options) raster(p Picture) raster {
	r := raster{p.Width, p.Height, p.Grey}
	if o.BlackEtches {
		r.open = make([]byte, len(p.Grey))
		for i, v := range p.Grey {
			r.open[i] = 255 - v
		}
	}
	return r
}

// small is the raster as a map of it.
func (r raster) small() Map {
	scale := min(1, mapSide/float64(max(r.width, r.height)))
	m := r.reduced(whole(float64(r.width)*scale, r.width), whole(float64(r.height)*scale, r.height))
	return Map{m.width, m.height, slices.Clone(m.open)}
}

// size is the real size, m, of a picture: as typed, else by its own density,
// else 0. A length that is not typed follows from the other.
func (o Options) size(p Picture) (width, height float64, err error) {
	width, height = positive(o.Width), positive(o.Height)
	// Of one pixel, in any unit.
	across, down := 1.0, 1.0
	if p.DensityX > 0 && p.DensityY > 0 {
		across, down = 1/p.DensityX, 1/p.DensityY
	}
	wide, tall := across*float64(p.Width), down*float64(p.Height)
	switch {
	case width > 0 && height > 0:
		if found := width * tall / wide; math.Abs(found/height-1) > 0.01 {
			return 0, 0, &Error{Field: "height", Text: fmt.Sprintf("the picture is %d by %d pixels: %.4g mm wide makes it %.4g mm high, not %.4g mm; leave one of the two blank",
				p.Width, p.Height, width*1000, found*1000, height*1000)}
		}
	case width > 0:
		height = width * tall / wide
	case height > 0:
		width = height * wide / tall
	case p.DensityX > 0 && p.DensityY > 0:
		width, height = wide, tall
	}
	return width, height, nil
}

// positive is x where it is a length, else 0.
func positive(x float64) float64 {
	if x > 0 && x <= math.MaxFloat64 {
		return x
	}
	return 0
}

func (r *Result) findGreys(p Picture) {
	area, patches := greys(raster{p.Width, p.Height, p.Grey})
	r.Grey = min(1, area/float64(len(p.Grey)))
	across, down := r.Width/float64(p.Width), r.Height/float64(p.Height)
	for _, p := range patches {
		r.Greys = append(r.Greys, Patch{p.x * across, p.y * down, p.area * across * down})
	}
}

// gauge reads the outline and the widths.
func (r *Result) gauge(all raster, lost float64, progress func(share float64)) {
	grid := forOutline(all, r.Width/r.Height, OutlinePixels)
	across, down := r.Width/float64(grid.width), r.Height/float64(grid.height)
	r.Pixel = math.Sqrt(across * down)
	edge := trace(grid)
	progress(0.2)
	r.Edge = edge.length(grid.width, grid.height) * r.Pixel
	w := measureWidths(grid.width, grid.height, &edge, []side{resistSide, openSide}, limits{resistSide: positive(lost) / r.Pixel},
		func(share float64) { progress(0.2 + 0.8*share) })
	r.Line, r.Space, r.Lost = w.narrowest[resistSide]*r.Pixel, w.narrowest[openSide]*r.Pixel, w.tooNarrow[resistSide]
	r.Kept = w.kept[resistSide] * r.Pixel
	for _, n := range w.narrow {
		r.Narrow = append(r.Narrow, Place{n.side == openSide, (n.x + 0.5) * across, (n.y + 0.5) * down, n.width * r.Pixel})
	}
}

// forOutline is the raster with square pixels and at most so many of them.
// One whose outline has more points than three quarters of its pixels (noise)
// is halved until it has fewer.
func forOutline(r raster, aspect float64, most float64) raster {
	width, height := float64(r.width), float64(r.height)
	if aspect*height < width {
		width = aspect * height
	} else {
		height = width / aspect
	}
	if pixels := width * height; pixels > most {
		scale := math.Sqrt(most / pixels)
		width, height = width*scale, height*scale
	}
	for {
		r = r.reduced(whole(width, r.width), whole(height, r.height))
		if crossings(r) <= len(r.open)/4*3+4 || len(r.open) < 16 {
			return r
		}
		width, height = width/2, height/2
	}
}

// whole is a number of pixels, from 1 to most.
func whole(x float64, most int) int { return max(1, min(int(x+1e-6), most)) }
