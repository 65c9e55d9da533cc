package evenness

import "math"

// progress tells how much of the work is done, taking each grid's as so many
// times its cells.
type progress struct {
	step              func(share float64) bool
	told              float64
	done, ahead, work float64 // cells
}

func newProgress(grids []grid, step func(share float64) bool) *progress {
	p := &progress{step: step}
	for _, g := range grids {
		p.ahead += g.cells()
	}
	return p
}

// within is for the steps on one grid, each of which knows how far its residual
// has come on the way to what is wanted, from 0 to 1.
func (p *progress) within(g grid) func(part float64) bool {
	p.done, p.work = p.done+p.work, g.cells()
	return func(part float64) bool { return p.tell((p.done + p.work*part) / p.ahead) }
}

// tell never goes back.
func (p *progress) tell(share float64) bool {
	p.told = math.Min(1, math.Max(p.told, share))
	return p.step(p.told)
}

func (p *progress) end() bool { return p.tell(1) }
