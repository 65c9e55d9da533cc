package artwork

import (
	"bytes"
	"image"
	"image/png"
	"math"
	"runtime"
	"testing"
)

// discs is a picture of black discs in rows, their radius three tenths of the
// way from one to the next; the coverage of a pixel follows from its distance to the edge.
func discs(width, height int, step float64) Picture {
	p := Picture{Width: width, Height: height, Grey: make([]byte, width*height)}
	for y := range height {
		for x := range width {
			u, v := math.Mod(float64(x)+0.5, step)-step/2, math.Mod(float64(y)+0.5, step)-step/2
			away := math.Hypot(u, v) - 0.3*step
			p.Grey[y*width+x] = byte(math.Round(255 * max(0, min(away+0.5, 1))))
		}
	}
	return p
}

func silent(float64) {}

// The same runs natively and in wasm.
func TestDiscs(t *testing.T) {
	p := discs(800, 600, 40)
	r, err := Measure(p, Options{Width: 0.080, Lost: 0.0025}, silent)
	if err != nil {
		t.Fatal(err)
	}
	// 300 discs of 1.2 mm radius, 1.6 mm apart where they are closest.
	for _, c := range []struct {
		what             string
		got, want, slack float64
	}{
		{"open", r.Open, 1 - math.Pi*0.09, 0.001},
		{"edge", r.Edge, 300 * 2 * math.Pi * 0.0012, 0.005 * 300 * 2 * math.Pi * 0.0012},
		{"line", r.Line, 0.0024, 0.0001},
		{"space", r.Space, 0.0016, 0.00008},
		{"islands", float64(r.Islands), 1, 0},
		{"holes", float64(r.Holes), 300, 0},
		{"lost", float64(r.Lost), 300, 0},
		{"height", r.Height, 0.060, 1e-12},
	} {
		if !(math.Abs(c.got-c.want) <= c.slack) {
			t.Errorf("%s is %v, want %v", c.what, c.got, c.want)
		}
	}
}

// A picture that is reduced keeps its mean, and turned or mirrored before it is
// the same turned or mirrored after it.
func TestReduced(t *testing.T) {
	p := discs(203, 151, 23)
	small := raster{p.Width, p.Height, p.Grey}.reduced(90, 67)
	mean := func(open []byte) float64 {
		sum := 0.0
		for _, v := range open {
			sum += float64(v)
		}
		return sum / float64(len(open))
	}
	if a, b := mean(p.Grey), mean(small.open); math.Abs(a-b) > 0.05 {
		t.Errorf("the mean was %v, is %v", a, b)
	}
	for orientation := 2; orientation <= 8; orientation++ {
		before := p.turned(orientation)
		after := Picture{Width: 90, Height: 67, Grey: small.open}.turned(orientation)
		got := raster{before.Width, before.Height, before.Grey}.reduced(after.Width, after.Height)
		if !bytes.Equal(got.open, after.Grey) {
			t.Errorf("orientation %d differs", orientation)
		}
	}
}

// Progress goes from 0 to 1 and never back.
func TestProgress(t *testing.T) {
	p := discs(400, 300, 40)
	before := 0.0
	hear := func(share float64) {
		if share < before || share > 1 {
			t.Errorf("progress went from %v to %v", before, share)
		}
		before = share
	}
	if _, err := Measure(p, Options{Width: 0.04}, hear); err != nil || before != 1 {
		t.Errorf("ended at %v, %v", before, err)
	}
	before = 0
	if _, err := Prepare(p, Options{Width: 0.04}, Printing{Widen: 0.0002}, hear); err != nil || before != 1 {
		t.Errorf("ended at %v, %v", before, err)
	}
}

// At twelve million pixels, what is held at once is under six bytes a pixel
// beyond the picture, seen at each step of the progress with what is garbage by then counted.
func TestMemory(t *testing.T) {
	if testing.Short() {
		t.Skip("it takes a few seconds")
	}
	p := discs(4000, 3000, 40)
	before, most := inUse(), uint64(0)
	if _, err := Measure(p, Options{Width: 0.08, Lost: 0.0001, BlackEtches: true}, func(float64) { most = max(most, inUse()) }); err != nil {
		t.Fatal(err)
	}
	if perPixel := float64(most-before) / float64(len(p.Grey)); perPixel > 6 {
		t.Errorf("%v bytes a pixel", perPixel)
	} else {
		t.Logf("%.2f bytes a pixel", perPixel)
	}
	runtime.KeepAlive(p)
}

// inUse is how much the program holds, with what has become garbage since the
// last collection.
func inUse() uint64 {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}

func BenchmarkDiscs(b *testing.B) {
	for name, size := range map[string][3]int{"1Mpx": {1154, 866, 40}, "12Mpx": {4000, 3000, 40}, "12Mpx fine": {4000, 3000, 13}} {
		b.Run(name, func(b *testing.B) {
			p := discs(size[0], size[1], float64(size[2]))
			b.ResetTimer()
			for range b.N {
				Measure(p, Options{Width: 0.08, Lost: 0.0001}, silent)
			}
		})
	}
}

func BenchmarkDecodeDiscs(b *testing.B) {
	p := discs(4000, 3000, 40)
	rgba := image.NewNRGBA(image.Rect(0, 0, p.Width, p.Height))
	for i, v := range p.Grey {
		copy(rgba.Pix[4*i:], []byte{v, v, v, 255})
	}
	var file bytes.Buffer
	(&png.Encoder{CompressionLevel: png.BestSpeed}).Encode(&file, rgba)
	b.ResetTimer()
	for range b.N {
		if _, err := Decode(file.Bytes()); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPrepareDiscs(b *testing.B) {
	p := discs(4000, 3000, 40)
	for range b.N {
		if _, err := Prepare(p, Options{Width: 0.15}, Printing{Paper: A4, Widen: 0.0002}, silent); err != nil {
			b.Fatal(err)
		}
	}
}
