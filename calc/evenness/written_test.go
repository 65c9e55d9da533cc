package evenness

import (
	_ "embed"
	"fmt"
	"slices"
	"strings"
	"testing"

	"saltbite/testdata"
)

// solved is what is worked out of some pictures, to five figures, and the steps it took.
// The same picture gives the same natively, in WebAssembly, and in the next version: what a
// change shifts by less than the other tests allow is seen here. It proves no
// figure right: the other tests do. The pictures are invented. It is written with
// SALTBITE_WRITE=1 go test ./calc/evenness -run Written.
//
//go:embed testdata/solved.txt
var solved string

func TestSolvedAsWritten(t *testing.T) {
	line, frame := LoneLine(), Frame()
	tall := draw(90, 140, 2, func(x, y float64) bool { return (x-0.4)*(x-0.4)+(y-0.3)*(y-0.3) < 0.05 || y > 0.6 && x < 0.8 })
	narrow := draw(120, 40, 3, func(x, y float64) bool { return int(12*x)%2 == 0 && y > 0.1*x })
	var told strings.Builder
	for n, c := range []struct {
		name string
		p    Problem
	}{
		{"a line beside a field", with(copperBath(line.Picture), func(p *Problem) { p.Cells = 128 })},
		{"a frame, averaged over its depth", with(copperBath(frame.Picture), func(p *Problem) { p.Cells, p.Depth = 160, 8e-4 })},
		{"a frame, its shallowest so deep", with(copperBath(frame.Picture), func(p *Problem) { p.Cells, p.Depth, p.Shallowest = 160, 8e-4, true })},
		{"a frame without polarisation", with(copperBath(frame.Picture), func(p *Problem) { p.Cells, p.Polarisation = 96, 0 })},
		{"a tall picture in a wide bath", with(copperBath(tall), func(p *Problem) {
			p.Width, p.Height, p.Cells, p.SectionWidth, p.SectionHeight = 0.03, 0.05, 128, 0.12, 0.09
		})},
		{"a tall picture with scrap", with(copperBath(tall), func(p *Problem) { p.Width, p.Height, p.Cells, p.Border = 0.03, 0.05, 128, 0.004 })},
		{"a narrow picture, far away", with(copperBath(narrow), func(p *Problem) { p.Height, p.Cells, p.Gap, p.Depth = 0.0133, 128, 0.09, 1e-4 })},
		{"noise on usual cells", with(copperBath(noise(60, 12)), func(p *Problem) { p.Cells, p.Usual, p.Depth = 128, 64, 3e-3 })},
	} {
		r, err := Solve(c.p, nil)
		fmt.Fprintf(&told, "%s: %s %v\n", c.name, r.written(), err)
		if n%3 > 0 {
			continue
		}
		all, err := Vary(with(c.p, func(p *Problem) { p.Cells = 64 }), append(c.p.Distances(), c.p.Scrap()...), nil)
		for _, v := range all {
			fmt.Fprintf(&told, "  %.4g away, scrap %.4g: %.5g to %.5g, %.5g A, %.5g V, uncertain by %.2g\n", v.Gap, v.Border, v.Least, v.Most, v.Current, v.Volts, v.Uncertainty)
		}
		if err != nil {
			t.Error(err)
		}
	}
	if changed, err := testdata.Changed("testdata/solved.txt", solved, told.String()); changed != "" || err != nil {
		t.Fatal(changed, err)
	}
}

func with(p Problem, change func(*Problem)) Problem {
	change(&p)
	return p
}

// written is all that is worked out; of the map its size, its sum, some places and a contour.
func (r Result) written() string {
	var sum float64
	for _, v := range r.Map.Values {
		sum += float64(v)
	}
	said := fmt.Sprintf("%.5g to %.5g, %.5g ohm, %.5g A, share %.5g, Wagner %.5g, uncertain by %.2g, cell %.5g, %d iterations, map %d by %d of %.5g",
		r.Least, r.Most, r.Resistance, r.Current, r.Share, r.Wagner, r.Uncertainty, r.Cell, r.Iterations, r.Map.Columns, r.Map.Rows, sum)
	for _, at := range []Place{{0.15, 0.5}, {0.5, 0.5}, {0.62, 0.31}} {
		said += fmt.Sprintf(", %.5g", r.Map.Near(at))
	}
	var spots []string // of equal ones rounding says which comes first
	for _, s := range r.HotSpots {
		spots = append(spots, fmt.Sprintf("; %.5g at %.4g %.4g %v", s.Depth, s.X, s.Y, s.Over))
	}
	slices.Sort(spots)
	said += strings.Join(spots, "")
	for _, i := range r.Islands {
		said += fmt.Sprintf("; island of %.5g, %.5g, %.5g", i.Area, i.Mean, i.Deepest.Depth)
	}
	for _, chain := range r.Map.Contours(1) {
		said += fmt.Sprintf("; %d points from %.4g %.4g", len(chain), chain[0].X, chain[0].Y)
	}
	return said
}
