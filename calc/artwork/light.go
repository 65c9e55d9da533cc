package artwork

import "math"

// levelled makes a photograph black and white in place, and returns the
// threshold, a share of white, that was used: as given, or Otsu's.
//
// Uneven light is divided out by its slow part. The light is taken as
//
//	exp(c0 + c1 x + c2 y + c3 x^2 + c4 x y + c5 y^2)
//
// fitted by least squares to the logarithm of what is light by Otsu's
// threshold, then divided out, and both again until they settle. White, the 1
// of the threshold, is that light. Hard shadows and reflections are no slow part and stay. An
// edge keeps its greys, steeper, so that it still lies within a pixel; noise
// is averaged over three by three pixels before. progress hears shares of it.
func levelled(p Picture, threshold float64, progress func(share float64)) float64 {
	smoothed(p)
	progress(0.2)
	light := lightOf(p)
	progress(0.4)
	shares := light.histogram(p)
	if threshold == 0 {
		threshold = shares.otsu()
	}
	dark, bright := shares.means(threshold)
	const steeper = 2
	slope := steeper / max(bright-dark, 0.05)
	for y := range p.Height {
		if y%rowsUntold == 0 {
			progress(0.6 + 0.4*float64(y)/float64(p.Height))
		}
		row := p.Grey[y*p.Width : (y+1)*p.Width]
		for x, v := range row {
			share := float64(v) / light.at(x, y)
			row[x] = byte(math.Round(255 * max(0, min(0.5+(share-threshold)*slope, 1))))
		}
	}
	return threshold
}

// smoothed takes weighted means, 1-2-1 both ways, in place.
func smoothed(p Picture) {
	line := func(begin, step, count int) {
		before := int(p.Grey[begin])
		for i := range count {
			at := begin + i*step
			here := int(p.Grey[at])
			after := here
			if i+1 < count {
				after = int(p.Grey[at+step])
			}
			p.Grey[at] = byte((before + 2*here + after + 2) / 4)
			before = here
		}
	}
	for y := range p.Height {
		line(y*p.Width, 1, p.Width)
	}
	for x := range p.Width {
		line(x, p.Width, p.Height)
	}
}

// surface is the light over a picture, in its greys.
type surface struct {
	fit          [6]float64
	width, scale float64 // of the picture, to coordinates of about -1 to 1
	height       float64
}

func (s surface) terms(x, y int) [6]float64 {
	u, v := (2*float64(x)-s.width)/s.scale, (2*float64(y)-s.height)/s.scale
	return [6]float64{1, u, v, u * u, u * v, v * v}
}

func (s surface) at(x, y int) float64 {
	sum := 0.0
	for i, term := range s.terms(x, y) {
		sum += s.fit[i] * term
	}
	return max(1, min(math.Exp(sum), 1000)) // beyond what was fitted it may be anything
}

// lightOf finds the light: at first an even one.
func lightOf(p Picture) surface {
	const rounds, mostSamples = 12, 60_000
	s := surface{width: float64(p.Width - 1), height: float64(p.Height - 1)}
	s.scale = max(1, s.width, s.height)
	s.fit[0] = math.Log(255)
	step := max(1, int(math.Sqrt(float64(len(p.Grey))/mostSamples)))
	before := math.Inf(1)
	for range rounds {
		threshold := s.sampled(p, step).otsu()
		s.refit(p, step, threshold)
		if math.Abs(threshold-before) < 1e-3 {
			break
		}
		before = threshold
	}
	return s
}

// refit fits the surface to the samples that are lighter than the threshold.
func (s *surface) refit(p Picture, step int, threshold float64) {
	var normal [6][7]float64
	for y := step / 2; y < p.Height; y += step {
		for x := step / 2; x < p.Width; x += step {
			v := float64(p.Grey[y*p.Width+x])
			if v < 1 || v/s.at(x, y) < threshold {
				continue
			}
			terms := s.terms(x, y)
			for i, a := range terms {
				for k, b := range terms {
					normal[i][k] += a * b
				}
				normal[i][6] += a * math.Log(v)
			}
		}
	}
	if fit, ok := solved(normal); ok {
		s.fit = fit
	}
}

// solved solves six linear equations whose matrix is symmetric and positive, a
// trifle added to its diagonal; not ok where too few samples made it.
func solved(m [6][7]float64) (x [6]float64, ok bool) {
	const fewest, ridge = 100, 1e-6
	if m[0][0] < fewest {
		return x, false
	}
	for i := range m {
		m[i][i] *= 1 + ridge
	}
	for i := range m {
		for k := i + 1; k < len(m); k++ {
			factor := m[k][i] / m[i][i]
			for j := i; j < 7; j++ {
				m[k][j] -= factor * m[i][j]
			}
		}
	}
	for i := len(m) - 1; i >= 0; i-- {
		x[i] = m[i][6]
		for k := i + 1; k < len(m); k++ {
			x[i] -= m[i][k] * x[k]
		}
		x[i] /= m[i][i]
		if !(math.Abs(x[i]) < 1e6) {
			return x, false
		}
	}
	return x, true
}

// histogram counts shares of white, in steps of 1/256 up to 1.25.
type histogram [320]float64

func (s surface) histogram(p Picture) *histogram { return s.sampled(p, 1) }

func (s surface) sampled(p Picture, step int) *histogram {
	var h histogram
	for y := step / 2; y < p.Height; y += step {
		for x := step / 2; x < p.Width; x += step {
			share := float64(p.Grey[y*p.Width+x]) / s.at(x, y)
			h[int(max(0, min(share*256, float64(len(h)-1))))]++
		}
	}
	return &h
}

// middle is the share that bin i stands for.
func middle(i int) float64 { return (float64(i) + 0.5) / 256 }

// otsu is the threshold that parts a histogram so that the variance between the
// two parts is greatest (Otsu 1979, IEEE Trans. SMC 9:62).
func (h *histogram) otsu() float64 {
	count, sum := 0.0, 0.0
	for i, n := range h {
		count += n
		sum += n * middle(i)
	}
	best, from, to := 0.0, 0, 0
	below, sumBelow := 0.0, 0.0
	for i, n := range h {
		below += n
		sumBelow += n * middle(i)
		if below == 0 || below == count {
			continue
		}
		apart := sumBelow/below - (sum-sumBelow)/(count-below)
		switch variance := below * (count - below) * apart * apart; {
		case variance > best:
			best, from, to = variance, i, i
		case variance == best: // an empty stretch between the parts: take its middle
			to = i
		}
	}
	if best == 0 {
		return 0.5 // all of one grey
	}
	return (middle(from) + middle(to) + 1.0/256) / 2
}

// means are the mean shares of what is darker than the threshold and of what is lighter.
func (h *histogram) means(threshold float64) (dark, bright float64) {
	var count, sum [2]float64
	for i, n := range h {
		part := 0
		if middle(i) >= threshold {
			part = 1
		}
		count[part] += n
		sum[part] += n * middle(i)
	}
	return sum[0] / max(count[0], 1), sum[1] / max(count[1], 1)
}
