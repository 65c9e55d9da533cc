package evenness

import "math"

// system is the equation for the current. With c the open share of a cell, J
// the current density over the whole cell and j = J / c that on its metal, the
// potential over the cathode's is the same everywhere on the sheet:
//
//	T J + R j = V,  where c > 0
//
// T being the bath and R the polarisation. With the unknown u = J / sqrt c it is
// symmetric and positive, and hardly open cells don't spoil it:
//
//	sqrt(c) T (sqrt(c) u) + R u = sqrt(c) V
//
// It is solved by conjugate gradients, preconditioned with 1 / (T + R) mode by
// mode, which is exact where all is open, so that the number of steps hardly
// grows with the grid.
type system struct {
	bath      *layer
	root      []float64 // of the open share
	polarised float64   // R, ohm m2
	edge      float64   // what R is larger by in a cell that is hardly open
	u         []float64 // for V = 1 V
	residual  []float64
	direction []float64
	image     []float64 // of the residual, or of the direction
}

// The residual, in the norm that the preconditioner makes, is brought down to
// this share of the right side.
const (
	tolerance = 1e-4
	mostSteps = 300
)

// newSystem takes over the open shares.
func newSystem(bath *layer, open []float64, polarised, edge float64) *system {
	for i, share := range open {
		open[i] = math.Sqrt(share)
	}
	vector := func() []float64 { return make([]float64, len(open)) }
	return &system{bath: bath, root: open, polarised: polarised, edge: edge,
		u: vector(), residual: vector(), direction: vector(), image: vector()}
}

// open is a cell's open share.
func (s *system) open(i int) float64 { return s.root[i] * s.root[i] }

// density is that on a cell's metal, A/m2 at 1 V; the cell must not be covered.
func (s *system) density(i int) float64 { return s.u[i] / s.root[i] }

// apply puts what the left side makes of u into image.
func (s *system) apply(u []float64) {
	s.bath.filter(s.image, u, s.root, multiply)
	for i, v := range u {
		s.image[i] += s.local(i) * v
	}
}

// local is what stands in a cell's own way, ohm m2.
func (s *system) local(i int) float64 { return s.polarised + s.edge*(1-s.open(i)) }

// precondition puts the preconditioned residual into image.
func (s *system) precondition() {
	s.bath.filter(s.image, s.residual, nil, func(modes, bath []float64) {
		for i, t := range bath {
			modes[i] /= t + s.polarised
		}
	})
	for i, root := range s.root {
		if root == 0 {
			s.image[i] = 0
		}
	}
}

// solve begins with densities that are right but for a factor. step hears how
// far the residual has come, from 0 to 1, and says whether to go on.
func (s *system) solve(start []float64, step func(part float64) bool) (steps int, err error) {
	copy(s.residual, s.root)
	s.precondition()
	wanted := tolerance * tolerance * dot(s.residual, s.image)
	s.begin(start)
	var first, before float64
	for steps = range mostSteps {
		s.precondition()
		size := dot(s.residual, s.image)
		if steps == 0 {
			first = size
		}
		if !step(way(first, size, wanted)) {
			return steps, ErrStopped
		}
		if size <= wanted {
			return steps, nil
		}
		s.turn(size, before)
		before = size
		s.apply(s.direction)
		along := size / dot(s.direction, s.image)
		add(s.u, along, s.direction)
		add(s.residual, -along, s.image)
	}
	return steps, ErrSettle
}

// power is what is lost in the bath for each area of a cell, V A/m2 at 1 V: of
// what the sheet takes, V sqrt(c) u less the residual, without what is lost in
// the cells themselves.
func (s *system) power() (sum float64) {
	for i, u := range s.u {
		sum += u * (s.root[i] - s.residual[i] - s.local(i)*u)
	}
	return sum
}

// begin takes the start with the factor that fits best.
func (s *system) begin(start []float64) {
	copy(s.u, s.root)
	multiply(s.u, start)
	s.apply(s.u)
	factor := dot(s.u, s.root) / dot(s.u, s.image)
	for i, root := range s.root {
		s.u[i] *= factor
		s.residual[i] = root - factor*s.image[i]
	}
}

// turn makes the next direction.
func (s *system) turn(size, before float64) {
	keep := 0.0
	if before > 0 {
		keep = size / before
	}
	for i, v := range s.image {
		s.direction[i] = v + keep*s.direction[i]
	}
}

// way is how far a residual has come from the first to the one that is wanted,
// each squared.
func way(first, now, wanted float64) float64 {
	if now <= wanted || first <= wanted {
		return 1
	}
	return math.Max(0, math.Log(first/now)/math.Log(first/wanted))
}

func dot(a, b []float64) float64 {
	var sum float64
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}

// add adds so many times b to a.
func add(a []float64, times float64, b []float64) {
	for i, v := range b {
		a[i] += times * v
	}
}
