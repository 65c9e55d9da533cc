//go:build !js

package artwork

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

// ornament is a drawing with much edge: curled strokes and leaves over 100 by 75 units.
func ornament() drawing {
	random := rand.New(rand.NewPCG(1, 2))
	var shapes strings.Builder
	for i := range 160 {
		x, y := random.Float64()*96+2, random.Float64()*71+2
		at := func() (float64, float64) {
			a, r := random.Float64()*2*math.Pi, 2+random.Float64()*8
			return x + r*math.Cos(a), y + r*math.Sin(a)
		}
		x1, y1 := at()
		x2, y2 := at()
		if i%2 == 0 {
			fmt.Fprintf(&shapes, `<path fill="none" stroke="black" stroke-width="%.2f" d="M%.3f %.3fQ%.3f %.3f %.3f %.3f"/>`, 0.3+random.Float64(), x, y, x1, y1, x2, y2)
		} else {
			fmt.Fprintf(&shapes, `<path d="M%.3f %.3fQ%.3f %.3f %.3f %.3fZ"/>`, x, y, x1, y1, x2, y2)
		}
	}
	return drawing{100, 75, shapes.String()}
}

func BenchmarkMeasure(b *testing.B) {
	for _, scale := range []float64{11.547, 40} {
		p := ornament().picture(b, scale)
		b.Run(fmt.Sprintf("%.0fMpx", float64(len(p.Grey))/1e6), func(b *testing.B) {
			b.ReportAllocs()
			for range b.N {
				if _, err := Measure(p, Options{Width: 0.1, Lost: 0.0002}, silent); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkDecode(b *testing.B) {
	for _, scale := range []float64{11.547, 40} {
		drawn := ornament().png(b, scale)
		b.Run(fmt.Sprintf("%gpx", scale), func(b *testing.B) {
			b.ReportAllocs()
			for range b.N {
				if _, err := Decode(drawn); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
