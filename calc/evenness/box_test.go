package evenness

import "math"

// tank is the same problem by another way: finite volumes in three dimensions,
// the picture's cells in the plane and layers that grow thicker away from the
// sheet, solved by conjugate gradients with the layers above a cell as the
// preconditioner. It shares no code with what it checks.
type tank struct {
	nx, ny, nz   int
	h            float64   // m, a cell's side in the plane
	dz           []float64 // m, of the layers, from the sheet up
	conductivity float64
	polarisation float64
	open         []bool

	east, up, floor []float64 // conductances, S: to the next in a layer; to the layer above; into the metal
}

// newTank has layers that begin as thick as half a cell's side and grow by a
// quarter each.
func newTank(nx, ny int, h, gap, conductivity, polarisation float64, open func(x, y int) bool) *tank {
	t := &tank{nx: nx, ny: ny, h: h, conductivity: conductivity, polarisation: polarisation}
	var height float64
	for dz := h / 4; height < gap; dz = math.Min(dz*1.25, gap/8) {
		t.dz = append(t.dz, dz)
		height += dz
	}
	for k := range t.dz {
		t.dz[k] *= gap / height
	}
	t.nz = len(t.dz)
	for k, dz := range t.dz {
		t.east = append(t.east, conductivity*dz)
		if k+1 < t.nz {
			t.up = append(t.up, conductivity*h*h/((dz+t.dz[k+1])/2))
		}
	}
	t.up = append(t.up, conductivity*h*h/(t.dz[t.nz-1]/2)) // to the cathode, at 0 V
	into := h * h / (polarisation + t.dz[0]/2/conductivity)
	for y := range ny {
		for x := range nx {
			t.open = append(t.open, open(x, y))
			t.floor = append(t.floor, 0)
			if open(x, y) {
				t.floor[y*nx+x] = into
			}
		}
	}
	return t
}

// densities on the open cells at 1 V, and the resistance of the bath.
func (t *tank) solve() (density []float64, resistance float64) {
	plane := t.nx * t.ny
	size := plane * t.nz
	phi, r, z, p, q := make([]float64, size), make([]float64, size), make([]float64, size), make([]float64, size), make([]float64, size)
	for i, g := range t.floor {
		r[i*t.nz] = g // the metal is at 1 V
	}
	product := func(a, b []float64) (sum float64) {
		for i := range a {
			sum += a[i] * b[i]
		}
		return sum
	}
	t.columns(z, r)
	copy(p, z)
	before := product(r, z)
	for wanted := before * 1e-12; before > wanted; {
		t.apply(q, p)
		along := before / product(p, q)
		for i := range phi {
			phi[i] += along * p[i]
			r[i] -= along * q[i]
		}
		t.columns(z, r)
		now := product(r, z)
		for i := range p {
			p[i] = z[i] + now/before*p[i]
		}
		before = now
	}
	var current, lost float64
	for i, g := range t.floor {
		j := g * (1 - phi[i*t.nz]) / (t.h * t.h)
		density = append(density, j)
		current += j * t.h * t.h
		lost += j * j * t.polarisation * t.h * t.h
	}
	return density, (current - lost) / (current * current) // the power is 1 V x current
}

// apply is the sum of the currents out of each volume.
func (t *tank) apply(out, phi []float64) {
	nz := t.nz
	for y := range t.ny {
		for x := range t.nx {
			at := (y*t.nx + x) * nz
			out[at] = t.floor[y*t.nx+x] * phi[at]
			for k := 1; k < nz; k++ {
				out[at+k] = t.up[k-1] * (phi[at+k] - phi[at+k-1])
			}
			for k := range nz - 1 {
				out[at+k] += t.up[k] * (phi[at+k] - phi[at+k+1])
			}
			out[at+nz-1] += t.up[nz-1] * phi[at+nz-1]
			t.beside(out, phi, at, x > 0, -nz)
			t.beside(out, phi, at, x < t.nx-1, nz)
			t.beside(out, phi, at, y > 0, -nz*t.nx)
			t.beside(out, phi, at, y < t.ny-1, nz*t.nx)
		}
	}
}

func (t *tank) beside(out, phi []float64, at int, there bool, step int) {
	if !there {
		return
	}
	for k, g := range t.east {
		out[at+k] += g * (phi[at+k] - phi[at+step+k])
	}
}

// columns solves each column of volumes by itself, its neighbours at 0 V.
func (t *tank) columns(out, in []float64) {
	nz := t.nz
	ratio := make([]float64, nz)
	for i, floor := range t.floor {
		beside := 4.0
		if x := i % t.nx; x == 0 || x == t.nx-1 {
			beside--
		}
		if y := i / t.nx; y == 0 || y == t.ny-1 {
			beside--
		}
		at := i * nz
		below, pivot := floor, 0.0
		for k := range nz {
			diagonal := below + t.up[k] + beside*t.east[k]
			out[at+k] = in[at+k]
			if k > 0 {
				diagonal -= t.up[k-1] * ratio[k-1]
				out[at+k] += t.up[k-1] * out[at+k-1]
			}
			pivot = diagonal
			ratio[k] = t.up[k] / pivot
			out[at+k] /= pivot
			below = t.up[k]
		}
		for k := nz - 2; k >= 0; k-- {
			out[at+k] += ratio[k] * out[at+k+1]
		}
	}
}
