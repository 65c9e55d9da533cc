package artwork

import (
	"fmt"
	"math"
)

// Paper is a sheet, m.
type Paper struct{ Width, Height float64 }

// The sheets that art is set out on (ISO 216; ANSI/ASME Y14.1).
var (
	A4     = Paper{0.210, 0.297}
	Letter = Paper{0.2159, 0.2794}
)

// Printing says how art is to be printed.
type Printing struct {
	DPI    float64 // the printer's dots per inch; 0: 600
	Mirror bool
	Widen  float64 // m, by which resist grows on each side: undercut x depth
	Copies int     // on the paper; 0: 1
	Paper  Paper   // zero: the art alone
}

// Prepared is art that is ready to print.
type Prepared struct {
	PNG                     []byte  // one bit a pixel, its size stated by pHYs
	SheetWidth, SheetHeight float64 // m, of the whole PNG
	Art                     Result  // of one copy as it is printed; it has no greys
	Closed                  int     // separate open stretches that the widening closes
}

const (
	usualDPI       = 600
	mostDots       = 150_000_000 // A4 at 1,200 dots per inch
	widenPixels    = 8_000_000   // of the grid on which resist is widened
	mostWideningOf = 0.5         // of the art's longer side
)

// Prepare makes art ready to print: pure black and white at the printer's dots
// per inch and at true size, mirrored if asked. What is black in the picture is
// black in print.
//
// Resist grows by Widen on each side, by the distance from its edge, so that
// an undercut of as much gives the drawing back, within a pixel of the picture;
// where open metal has a sharp corner, or a gap was closed, it stays away from it.
//
// On paper the copies stand in rows, 8 mm apart, each with marks to cut by, over a rule of 50 mm
// with a tick every 10 mm, 10 mm above the bottom edge: the free strip right of it is for the
// words that are printed with it. The paper is turned if the art fits only so.
func Prepare(p Picture, o Options, with Printing, progress func(share float64)) (Prepared, error) {
	if err := p.whole(); err != nil {
		return Prepared{}, err
	}
	o, err := o.scaled(p)
	if err != nil {
		return Prepared{}, err
	}
	sheet, threshold, err := o.flat(p, func(share float64) { progress(0.1 * share) })
	if err != nil {
		return Prepared{}, err
	}
	width, height, err := o.size(sheet)
	if err != nil {
		return Prepared{}, err
	}
	if width == 0 {
		return Prepared{}, &Error{Field: "width", Text: "the picture does not state its size; type its width, for example 40 mm"}
	}
	if with.DPI == 0 {
		with.DPI = usualDPI
	}
	plan, err := with.plan(width, height)
	if err != nil {
		return Prepared{}, err
	}
	progress(0.1)
	grid := o.raster(sheet)
	out := Prepared{Art: Result{Width: width, Height: height, Threshold: threshold}}
	if widen := positive(with.Widen); widen > 0 {
		grid = forOutline(grid, width/height, widenPixels)
		grid, out.Closed = widened(grid, widen/math.Sqrt(width*height/float64(len(grid.open))), progress)
	}
	progress(0.5)
	art := printed(grid, plan.art.across, plan.art.down, with.Mirror)
	out.Art.Open = 1 - float64(art.count())/(float64(plan.art.across)*float64(plan.art.down))
	out.Art.Area = out.Art.Open * width * height
	out.Art.Islands, out.Art.Holes = islandsAndHoles(grid)
	out.Art.gauge(grid, o.Lost, func(share float64) { progress(0.5 + 0.3*share) })
	if o.BlackEtches {
		art.invert()
	}
	page := plan.setOut(art)
	progress(0.9)
	out.PNG = page.png(with.DPI / metresPerInch)
	out.SheetWidth, out.SheetHeight = with.metres(page.across), with.metres(page.down)
	progress(1)
	return out, nil
}

// dots is a length, m, in the printer's dots.
func (w Printing) dots(metres float64) int { return int(math.Round(metres * w.DPI / metresPerInch)) }

func (w Printing) metres(dots int) float64 { return float64(dots) * metresPerInch / w.DPI }

// widened is the raster with resist grown by so many pixels on each side, and
// how many open stretches that closes. Its greys are no coverage, but half
// lies where the new edge is.
func widened(r raster, by float64, progress func(share float64)) (raster, int) {
	by = min(by, mostWideningOf*float64(max(r.width, r.height)))
	edge := trace(r)
	if len(edge.x) == 0 {
		return r, 0
	}
	n := transform(r.width, r.height, &edge)
	grown := raster{r.width, r.height, make([]byte, len(r.open))}
	for y := range r.height {
		for x := range r.width {
			at := y*r.width + x
			away := n.distance(x, y)
			if r.open[at] < half {
				away = -away
			}
			const perPixel = 0.5
			grown.open[at] = byte(255*max(0, min(0.5+(away-by)*perPixel, 1)) + 0.5)
		}
	}
	n.point = nil
	progress(0.3)
	small := forOutline(r, float64(r.width)/float64(r.height), OutlinePixels)
	edge = trace(small)
	shrunk := float64(small.width) / float64(r.width)
	w := measureWidths(small.width, small.height, &edge, []side{openSide}, limits{openSide: 2 * by * shrunk}, func(share float64) { progress(0.3 + 0.2*share) })
	return grown, w.tooNarrow[openSide]
}

// distance is how far the centre of a pixel lies from the edge, in pixels. Close
// to it the edge is taken as straight between its points.
func (n nearest) distance(x, y int) float64 {
	const close = 1.5
	point := n.point[y*n.width+x]
	away := math.Sqrt(float64(n.squared(x, y, point))) / subPixel
	if away >= close {
		return away
	}
	dx, dy := float64(x)-float64(n.x[point])/subPixel, float64(y)-float64(n.y[point])/subPixel
	return math.Abs(dx*float64(n.nx[point]) + dy*float64(n.ny[point]))
}

// printed is the raster in dots: black where a dot is more than half resist.
func printed(r raster, across, down int, mirror bool) bitmap {
	r = r.reduced(min(across, r.width), min(down, r.height))
	b := newBitmap(across, down)
	columns, rows := interpolations(across, r.width), interpolations(down, r.height)
	line := make([]float64, r.width) // between two rows
	for y, v := range rows {
		upper, lower := r.row(v.from), r.row(v.to)
		for x, above := range upper {
			line[x] = float64(above)*(1-v.share) + float64(lower[x])*v.share
		}
		for x, h := range columns {
			if line[h.from]*(1-h.share)+line[h.to]*h.share >= half-0.5 {
				continue
			}
			if mirror {
				b.set(across-1-x, y)
			} else {
				b.set(x, y)
			}
		}
	}
	return b
}

// interpolation is between which pixels a dot lies, and how far from the first.
type interpolation struct {
	from, to int
	share    float64
}

func interpolations(dots, pixels int) []interpolation {
	all := make([]interpolation, dots)
	for i := range all {
		at := max(0, min((float64(i)+0.5)*float64(pixels)/float64(dots)-0.5, float64(pixels-1)))
		from := int(at)
		all[i] = interpolation{from, min(from+1, pixels-1), at - float64(from)}
	}
	return all
}

// plan says where the copies stand on the page, in dots.
type plan struct {
	art    size
	page   size
	places []place
	marks  *marks // nil: the art alone
}

type size struct{ across, down int }

type place struct{ left, top int }

// marks are the measures, in dots, of what is printed beside the art.
type marks struct {
	thick, away, long int // of a mark to cut by
	rule              place
	ticks             [ruleTicks + 1]int // from the rule's left end
}

// On paper, m.
const (
	margin     = 0.010
	footer     = 0.020 // from the bottom edge, with the rule in it
	apart      = 0.008 // between copies
	ruleTicks  = 5     // of 10 mm
	mostCopies = 1000
)

func (w Printing) plan(width, height float64) (plan, error) {
	if !(w.DPI >= 50 && w.DPI <= 10_000) {
		return plan{}, &Error{Field: "dpi", Text: "a printer has between 50 and 10000 dots per inch, for example 600"}
	}
	page := w.Paper
	if page == (Paper{}) {
		page = Paper{width, height}
	}
	if page.Width*page.Height*w.DPI*w.DPI > mostDots*metresPerInch*metresPerInch {
		return plan{}, &Error{Field: "dpi", Text: fmt.Sprintf("%.0f by %.0f mm at %.4g dots per inch is over %d million dots; type fewer dots per inch, for example 600",
			page.Width*1000, page.Height*1000, w.DPI, mostDots/1_000_000)}
	}
	p := plan{art: size{max(1, w.dots(width)), max(1, w.dots(height))}}
	copies := max(1, w.Copies)
	if w.Paper == (Paper{}) {
		if copies > 1 {
			return plan{}, &Error{Field: "copies", Text: "several copies need a paper to stand on; choose A4 or letter"}
		}
		p.page, p.places = p.art, []place{{}}
		return p, nil
	}
	columns, rows := page.holds(width, height)
	turned := Paper{page.Height, page.Width}
	if wide, high := turned.holds(width, height); columns*rows < copies && wide*high > columns*rows {
		page, columns, rows = turned, wide, high
	}
	if columns*rows == 0 {
		return plan{}, &Error{Field: "paper", Text: fmt.Sprintf("art of %.4g by %.4g mm does not fit on the paper, which leaves %.4g by %.4g mm; choose a larger paper or print the art alone",
			width*1000, height*1000, (w.Paper.Width-2*margin)*1000, (w.Paper.Height-margin-footer)*1000)}
	}
	if copies > columns*rows || copies > mostCopies {
		return plan{}, &Error{Field: "copies", Text: fmt.Sprintf("the paper holds %d copies of %.4g by %.4g mm, not %d; type %d or fewer",
			min(columns*rows, mostCopies), width*1000, height*1000, copies, min(columns*rows, mostCopies))}
	}
	p.page = size{w.dots(page.Width), w.dots(page.Height)}
	for i := range copies {
		left := w.dots(margin+float64(i%columns)*(width+apart)) / 8 * 8 // whole bytes
		p.places = append(p.places, place{left, w.dots(margin + float64(i/columns)*(height+apart))})
	}
	p.marks = &marks{
		thick: max(1, w.dots(0.0002)), away: w.dots(0.001), long: w.dots(0.003),
		rule: place{w.dots(margin), w.dots(page.Height - margin)},
	}
	for i := range p.marks.ticks {
		p.marks.ticks[i] = w.dots(0.010 * float64(i))
	}
	return p, nil
}

// holds is how many columns and rows of the art a paper has room for.
func (p Paper) holds(width, height float64) (columns, rows int) {
	const rounding = 1e-9
	columns = int((p.Width - 2*margin + apart + rounding) / (width + apart))
	rows = int((p.Height - margin - footer + apart + rounding) / (height + apart))
	return max(0, columns), max(0, rows)
}

// setOut puts the copies on the page, and what is printed beside them.
func (p plan) setOut(art bitmap) bitmap {
	if p.marks == nil {
		return art
	}
	page := newBitmap(p.page.across, p.page.down)
	m := p.marks
	for _, at := range p.places {
		page.copyTo(art, at)
		right, bottom := at.left+art.across, at.top+art.down
		for _, x := range [2]int{at.left, right} {
			page.fill(x-m.thick/2, at.top-m.away-m.long, m.thick, m.long)
			page.fill(x-m.thick/2, bottom+m.away, m.thick, m.long)
		}
		for _, y := range [2]int{at.top, bottom} {
			page.fill(at.left-m.away-m.long, y-m.thick/2, m.long, m.thick)
			page.fill(right+m.away, y-m.thick/2, m.long, m.thick)
		}
	}
	// From the left side of the first tick to that of the last it is 50 mm.
	page.fill(m.rule.left, m.rule.top-m.thick, m.ticks[ruleTicks], m.thick)
	for _, tick := range m.ticks {
		page.fill(m.rule.left+tick, m.rule.top-m.long, m.thick, m.long)
	}
	return page
}
