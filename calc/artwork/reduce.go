package artwork

// raster is a picture whose bytes say how far each pixel is open: 0 resist,
// 255 bare metal.
type raster struct {
	width, height int
	open          []byte
}

// half parts open from resist: from this value on a pixel is more than half
// open. Half of 255 falls between two values, so that nothing lies on it.
const half = 128

// reduced is the raster at another size. Each new pixel is the mean of the area
// that it covers, pixels at its rim by their share, in whole numbers and rounded
// once: a picture that is turned or mirrored gives the same values.
func (r raster) reduced(width, height int) raster {
	if width >= r.width && height >= r.height {
		return r
	}
	out := raster{width, height, make([]byte, width*height)}
	row := make([]uint64, width) // of one source row, times its width
	sum := make([]uint64, width)
	whole := uint64(r.width) * uint64(r.height)
	y := 0
	for top := 0; top < r.height; top++ {
		sumAcross(row, r.open[top*r.width:(top+1)*r.width])
		// This row covers height parts of the r.height that make a new row.
		for begin, end := top*height, (top+1)*height; begin < end; {
			rim := min(end, (y+1)*r.height)
			for x, v := range row {
				sum[x] += v * uint64(rim-begin)
			}
			if rim == (y+1)*r.height {
				for x, v := range sum {
					out.open[y*width+x] = byte((v + whole/2) / whole)
				}
				clear(sum)
				y++
			}
			begin = rim
		}
	}
	return out
}

// sumAcross adds a row of pixels up into fewer, each weighted by the share of
// it, in parts of the new width.
func sumAcross(sums []uint64, pixels []byte) {
	parts, across := len(sums), len(pixels)
	clear(sums)
	x, left := 0, across // what the new pixel still has room for
	for _, v := range pixels {
		need := parts
		for need > left {
			sums[x] += uint64(v) * uint64(left)
			need -= left
			x, left = x+1, across
		}
		sums[x] += uint64(v) * uint64(need)
		left -= need
		if left == 0 && x+1 < parts {
			x, left = x+1, across
		}
	}
}
