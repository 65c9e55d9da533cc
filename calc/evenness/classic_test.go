package evenness

import (
	"slices"
	"testing"
)

// Across and down the middle a picture to learn from has the widths, mm, that are said of
// it: resist first, metal and resist by turns.
func TestClassicWidths(t *testing.T) {
	for _, c := range []struct {
		name         string
		of           Classic
		across, down []float64
	}{
		{"a line of 1 mm beside a field of 20 mm", LoneLine(), []float64{5, 1, 9, 20, 5}, []float64{5, 30, 5}},
		{"a frame of 2 mm and 4 mm of resist", Frame(), []float64{3, 2, 4, 22, 4, 2, 3}, []float64{3, 2, 4, 22, 4, 2, 3}},
	} {
		p := c.of.Picture
		widths := func(pixels int, side float64, open func(i int) float32) (all []float64) {
			before := float32(1)
			for i := range pixels {
				if now := open(i); now != before {
					all, before = append(all, 0), now
				}
				all[len(all)-1] += 1000 * side / float64(pixels)
			}
			return all
		}
		same := func(a, b float64) bool { return near(a, b, 1e-9) }
		if got := widths(p.Columns, c.of.Width, func(i int) float32 { return p.Open[p.Rows/2*p.Columns+i] }); !slices.EqualFunc(got, c.across, same) {
			t.Errorf("%s: across %v mm, not %v", c.name, got, c.across)
		}
		if got := widths(p.Rows, c.of.Height, func(i int) float32 { return p.Open[i*p.Columns+p.Columns/2] }); !slices.EqualFunc(got, c.down, same) {
			t.Errorf("%s: down %v mm, not %v", c.name, got, c.down)
		}
	}
}
