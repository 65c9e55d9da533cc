package artwork

import (
	"math"
	"testing"
)

// The parts of a grey stretch that meet further down are one, with their middle; the
// largest comes first. By hand: of 10 pixels at 5, 5 and 30 at 9, 1 the middle is 8, 2.
func TestMiddles(t *testing.T) {
	var sets disjoint
	for range 4 {
		sets.add()
	}
	sets.join(3, 1)
	sets.join(2, 1)
	got := middles(sets, []patch{{area: 2, x: 2 * 40, y: 2 * 50}, {area: 10, x: 10 * 5, y: 10 * 5}, {area: 12, x: 12 * 9, y: 12 * 1}, {area: 18, x: 18 * 9, y: 18 * 1}})
	want := []patch{{40, 8, 2}, {2, 40, 50}}
	if len(got) != len(want) || got[0] != want[0] || got[1] != want[1] {
		t.Errorf("the stretches are %v, not %v", got, want)
	}
}

// The weights of red, green and blue are 0.299, 0.587 and 0.114 (ITU-R BT.601), rounded
// to the nearest whole grey; greys keep theirs.
func TestLuma(t *testing.T) {
	for _, c := range []struct{ r, g, b, want byte }{
		{255, 0, 0, 76}, {0, 255, 0, 150}, {0, 0, 255, 29}, {255, 255, 0, 226}, {0, 255, 255, 179}, {255, 0, 255, 105}, // 76.2, 149.7, 29.1, 225.9, 178.8, 105.3
	} {
		if got := luma(c.r, c.g, c.b); got != c.want {
			t.Errorf("%d, %d, %d is %d, not %d", c.r, c.g, c.b, got, c.want)
		}
	}
	for v := range 256 {
		if got := luma(byte(v), byte(v), byte(v)); int(got) != v {
			t.Errorf("a grey of %d becomes %d", v, got)
		}
	}
}

// Beyond its last point an edge runs half a pixel more if it meets the border at a right
// angle, longer at a slope, and never more than a pixel.
func TestToBorder(t *testing.T) {
	const width, height = 10, 8
	slope := float32(math.Sqrt(0.5))
	for _, c := range []struct {
		x, y   int32 // pixels
		nx, ny float32
		want   float64
	}{
		{4, 0, 1, 0, 0.5}, {4, height - 1, -1, 0, 0.5}, {0, 3, 0, 1, 0.5}, {width - 1, 3, 0, -1, 0.5}, // straight on
		{4, 0, slope, slope, math.Sqrt(0.5)}, {0, 3, slope, -slope, math.Sqrt(0.5)},
		{4, 0, 0.6, 0.8, 0.5 / 0.6}, {0, 3, 0.6, 0.8, 0.5 / 0.8}, // 3, 4, 5
		{4, 0, 0.28, 0.96, 1}, {4, 0, 0, 1, 1}, // along it
		{4, 0, 0, 0, 0.5}, // a point by itself
	} {
		o := outline{x: []int32{c.x * subPixel}, y: []int32{c.y * subPixel}, nx: []float32{c.nx}, ny: []float32{c.ny}}
		if got := o.toBorder(0, width, height); math.Abs(got-c.want) > 1e-6 {
			t.Errorf("%+v: %g", c, got)
		}
	}
}

// Points that are too narrow are one stretch along an edge while they are at most 8 pixels
// apart, the first of the edge too; round a closed one the last meets the first.
func TestStretchesAlongAnEdge(t *testing.T) {
	for _, c := range []struct {
		at     []int32 // the points that are too narrow
		closed bool
		want   int
	}{
		{[]int32{0, 8}, false, 1}, {[]int32{0, 9}, false, 2}, {[]int32{3, 11, 19}, false, 1}, {[]int32{3, 11, 20}, false, 2},
		{[]int32{1, 26}, false, 2}, {[]int32{1, 26}, true, 1}, {[]int32{1, 20}, true, 2}, {nil, true, 0},
	} {
		// An edge goes 15 pixels out and back, a point at each.
		o := outline{chains: []chain{{0, 31, c.closed}}}
		for i := range int32(31) {
			o.x, o.y = append(o.x, min(i, 30-i)*subPixel), append(o.y, 0)
		}
		s := newStretches(&o, 1)
		for _, i := range c.at {
			s.opposite[i] = i // it counts, and is joined to nothing across
		}
		if got := s.count(); got != c.want {
			t.Errorf("points at %v, closed %v, are %d stretches, not %d", c.at, c.closed, got, c.want)
		}
	}
}

// Marks to cut by lie half on each side of the line to cut along, away from the corner
// (by hand): of art from 10 to 18 across and 10 to 16 down, marks of 4 by 2 dots, 1 away.
func TestMarksToCutBy(t *testing.T) {
	p := plan{art: size{8, 6}, page: size{32, 32}, places: []place{{10, 10}}, marks: &marks{thick: 2, away: 1, long: 4}}
	page := p.setOut(newBitmap(8, 6))
	black := func(x, y int) bool { return page.dots[y*page.stride+x/8]&(0x80>>(x%8)) != 0 }
	for y := range 32 {
		for x := range 32 {
			beside := func(at, from, to int) bool { return at == from-1 || at == from || at == to-1 || at == to }
			beyond := func(at, from, to int) bool { return at >= from-5 && at < from-1 || at >= to+1 && at < to+5 }
			want := beside(x, 10, 18) && beyond(y, 10, 16) || beside(y, 10, 16) && beyond(x, 10, 18)
			if black(x, y) != want && y > 1 { // the rule of no length stands in the first rows
				t.Errorf("black at %d, %d is %v", x, y, !want)
			}
		}
	}
}
