package evenness

import (
	"fmt"
	"testing"
)

// Art that needs the finest of its grids, so many cells square, from the coarsest up.
func BenchmarkSolve(b *testing.B) {
	for _, side := range []int{512, 1024} {
		p := copperBath(noise(side, 3))
		p.Width, p.Height = 0.4, 0.4
		p.SectionWidth, p.SectionHeight = p.Width, p.Height
		p.Cells = side
		b.Run(fmt.Sprint(side), func(b *testing.B) {
			b.ReportAllocs()
			for range b.N {
				r, err := Solve(p, nil)
				if err != nil {
					b.Fatal(err)
				}
				if r.Map.Columns != side {
					b.Fatalf("it settled on %d cells", r.Map.Columns)
				}
			}
		})
	}
}
