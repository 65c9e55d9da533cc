package evenness

// Classic is a picture to learn from.
type Classic struct {
	Picture       Picture
	Width, Height float64 // m
}

const (
	classicPixels = 160
	classicSide   = 0.04 // m
)

// LoneLine is a line of 1 mm beside an open field of 20 mm: the line has all the
// bath on its left to itself and goes deeper than the middle of the field.
func LoneLine() Classic {
	return classic(func(x, y int) bool {
		tall := y >= 20 && y < 140
		return tall && (x >= 20 && x < 24 || x >= 60 && x < 140)
	})
}

// Frame is a frame of 2 mm round an open field, a line of resist of 4 mm between
// them: the frame draws the current off the field's edges.
func Frame() Classic {
	return classic(func(x, y int) bool {
		in := min(x, y, classicPixels-1-x, classicPixels-1-y)
		return in >= 12 && in < 20 || in >= 36
	})
}

func classic(open func(x, y int) bool) Classic {
	shares := make([]float32, classicPixels*classicPixels)
	for i := range shares {
		if open(i%classicPixels, i/classicPixels) {
			shares[i] = 1
		}
	}
	return Classic{Picture{classicPixels, classicPixels, shares}, classicSide, classicSide}
}
