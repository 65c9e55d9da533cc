package artwork

// nearest is a distance transform: for each pixel the point of the outline that
// lies nearest to its centre, -1 without an outline.
type nearest struct {
	width, height int
	point         []int32
	*outline
}

// transform carries nearest points from pixel to pixel in two passes over the
// picture, each with a pass back along every row (Danielsson 1980, Computer
// Graphics and Image Processing 14:227). It can miss the nearest point for one
// that is farther by a fraction of a pixel.
func transform(width, height int, o *outline) nearest {
	n := nearest{width, height, make([]int32, width*height), o}
	for i := range n.point {
		n.point[i] = -1
	}
	for i := range o.x {
		left, top := int(o.x[i])/subPixel, int(o.y[i])/subPixel
		for y := top; y <= min(top+1, height-1); y++ {
			for x := left; x <= min(left+1, width-1); x++ {
				if at := y*width + x; n.point[at] < 0 || n.squared(x, y, int32(i)) < n.squared(x, y, n.point[at]) {
					n.point[at] = int32(i)
				}
			}
		}
	}
	for y := range height {
		n.passRow(y, max(0, y-1))
	}
	for y := height - 1; y >= 0; y-- {
		n.passRow(y, min(y+1, height-1))
	}
	return n
}

// passRow takes over what is nearer from the row beside it, then from the pixel
// before and, on the way back, from the pixel after.
func (n nearest) passRow(y, beside int) {
	row, other := n.point[y*n.width:(y+1)*n.width], n.point[beside*n.width:(beside+1)*n.width]
	last := int32(-1)
	for x, held := range row {
		held = n.nearer(x, y, held, other[x])
		last = n.nearer(x, y, held, last)
		row[x] = last
	}
	for x := len(row) - 1; x >= 0; x-- {
		last = n.nearer(x, y, row[x], last)
		row[x] = last
	}
}

// nearer is that of two points, the one that is held or another, which lies
// nearer to a pixel's centre.
func (n nearest) nearer(x, y int, held, other int32) int32 {
	if other == held || other < 0 {
		return held
	}
	if held < 0 || n.squared(x, y, other) < n.squared(x, y, held) {
		return other
	}
	return held
}

func (n nearest) squared(x, y int, point int32) int64 {
	dx := int64(n.x[point]) - int64(x)*subPixel
	dy := int64(n.y[point]) - int64(y)*subPixel
	return dx*dx + dy*dy
}
