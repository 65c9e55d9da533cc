package evenness

import "testing"

// A grid of the usual cells is enough where the answer has settled to Rough there, and
// where it has not the next one is taken.
func TestUsualCells(t *testing.T) {
	p := copperBath(noise(240, 24))
	p.Cells, p.Depth = 512, 3e-3
	whole := mustSolve(t, p)
	p.Usual = 256
	usual := mustSolve(t, p)
	if usual.Uncertainty >= Rough || usual.Uncertainty < Settled || !(usual.Cell > 1.5*whole.Cell) {
		t.Errorf("cells of %g and %g m, uncertain by %g and %g", whole.Cell, usual.Cell, whole.Uncertainty, usual.Uncertainty)
	}
	p.Depth = 0
	if fine := mustSolve(t, p); !(fine.Cell < 0.7*usual.Cell) {
		t.Errorf("cells of %g m although it is uncertain by %g", fine.Cell, fine.Uncertainty)
	}
}
