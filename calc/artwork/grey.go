package artwork

import (
	"cmp"
	"slices"
)

// Flat grey is what is neither black nor white and hardly changes: the edges of
// shapes are grey too, but steep.
const (
	greyLeast  = 16  // of 255; darker is black
	greyMost   = 239 // lighter is white
	greyChange = 16  // most difference within three by three pixels
)

const mostPatches = 20

// patch is a stretch of flat grey, in pixels.
type patch struct{ area, x, y float64 }

// greys finds flat grey: every square of three by three pixels that is grey and
// nearly even, and of the pixels at the sides of such squares the share that
// their value puts between the grey and what lies beyond. It returns the area,
// and the largest stretches with the middle of each.
func greys(p raster) (area float64, largest []patch) {
	mask, any := flat(p)
	if !any {
		return 0, nil
	}
	var sets disjoint
	var patches []patch
	var above, here []run
	for y := range p.height {
		row := mask[y*p.width : (y+1)*p.width]
		area += p.rim(mask, y)
		here, _ = splitRow(row, here[:0], nil)
		link(above, here, 1, &sets)
		for range len(sets.parent) - len(patches) {
			patches = append(patches, patch{})
		}
		for _, run := range here {
			pixels := float64(run.end - run.begin)
			area += pixels
			to := &patches[run.set]
			to.area += pixels
			to.x += pixels * float64(run.begin+run.end) / 2
			to.y += pixels * (float64(y) + 0.5)
		}
		above, here = here, above
	}
	return area, middles(sets, patches)
}

// middles adds up the parts of each stretch and returns the largest.
func middles(sets disjoint, patches []patch) []patch {
	for i := len(patches) - 1; i > 0; i-- {
		if to := sets.parent[i]; to != int32(i) { // always a smaller number
			patches[to].area += patches[i].area
			patches[to].x += patches[i].x
			patches[to].y += patches[i].y
			patches[i] = patch{}
		}
	}
	patches = slices.DeleteFunc(patches, func(p patch) bool { return p.area == 0 })
	slices.SortStableFunc(patches, func(a, b patch) int { return cmp.Compare(b.area, a.area) })
	patches = slices.Clone(patches[:min(len(patches), mostPatches)])
	for i := range patches {
		patches[i].x /= patches[i].area
		patches[i].y /= patches[i].area
	}
	return patches
}

// flat marks, by 255, the pixels of all even grey squares of three by three.
func flat(p raster) (mask []byte, any bool) {
	least, most := make([]byte, p.width), make([]byte, p.width) // of three rows
	for y := 1; y+1 < p.height; y++ {
		above, row, below := p.row(y-1), p.row(y), p.row(y+1)
		for x, v := range row {
			least[x], most[x] = min(v, above[x], below[x]), max(v, above[x], below[x])
		}
		for x := 1; x+1 < p.width; x++ {
			if least[x] < greyLeast || most[x] > greyMost {
				continue
			}
			low, high := min(least[x-1], least[x], least[x+1]), max(most[x-1], most[x], most[x+1])
			if low < greyLeast || high > greyMost || high-low > greyChange {
				continue
			}
			if mask == nil {
				mask = make([]byte, len(p.open))
			}
			for at := (y-1)*p.width + x; at <= (y+1)*p.width+x; at += p.width {
				mask[at-1], mask[at], mask[at+1] = 255, 255, 255
			}
		}
	}
	return mask, mask != nil
}

// rim is what the pixels of a row that meet flat grey at a side add to it.
func (p raster) rim(mask []byte, y int) float64 {
	sum := 0.0
	row := p.row(y)
	for x, v := range row {
		at := y*p.width + x
		if mask[at] != 0 {
			continue
		}
		grey := -1
		for _, side := range [4]struct {
			there bool
			at    int
		}{{x > 0, at - 1}, {x+1 < p.width, at + 1}, {y > 0, at - p.width}, {y+1 < p.height, at + p.width}} {
			if side.there && mask[side.at] != 0 {
				grey = max(grey, int(p.open[side.at]))
			}
		}
		switch value := int(v); {
		case grey < 0 || value == grey:
		case value > grey:
			sum += float64(255-value) / float64(255-grey)
		default:
			sum += float64(value) / float64(grey)
		}
	}
	return sum
}

func (r raster) row(y int) []byte { return r.open[y*r.width : (y+1)*r.width] }
