package evenness

import "math"

// Change is what could be done otherwise.
type Change struct {
	Gap    float64 // m; 0: as it is
	Border float64 // m, of bare scrap round the picture
}

// Variant is what a change would do. The density on the picture stays.
type Variant struct {
	Change
	Least, Most float64 // as in Result
	Current     float64 // A, on picture and border
	Volts       float64 // V, of the bath
	Uncertainty float64
}

// Spread is the difference between the deepest and the shallowest, of the mean.
func (v Variant) Spread() float64 { return v.Most - v.Least }

// TimeToLeast is how long it takes until the shallowest part is at the depth that
// is wanted, as a multiple of what the mean takes.
func (v Variant) TimeToLeast() float64 { return 1 / v.Least }

// Vary works out what each change would do, each from the answer to the one
// before. A change that the bath has no room for is left out. step is as in Solve. The cells
// are as large as the largest box of them has them, so that the edges, whose depths grow
// as cells get finer, are seen alike in all.
func Vary(p Problem, changes []Change, step func(share float64) bool) ([]Variant, error) {
	var variants []Variant
	var start Map
	for _, c := range changes {
		p.finest = math.Max(p.finest, p.with(c).box()/float64(p.mostCells()))
	}
	for i, c := range changes {
		r, err := p.with(c).solve(start, part(step, i, len(changes)))
		switch err {
		case nil:
			start = r.Map
			variants = append(variants, Variant{c, r.Least, r.Most, r.Current, r.Volts(), r.Uncertainty})
		case ErrSection, ErrSmall:
		default:
			return nil, err
		}
	}
	return variants, nil
}

// part is for the work that is one of so many parts of the whole.
func part(step func(share float64) bool, done, of int) func(share float64) bool {
	if step == nil {
		return nil
	}
	return func(share float64) bool { return step((float64(done) + share) / float64(of)) }
}

func (p Problem) with(c Change) Problem {
	if c.Gap > 0 {
		p.Gap = c.Gap
	}
	p.Border = c.Border
	return p
}

// Distances are gaps round the one there is, for a curve of spread against
// distance.
func (p Problem) Distances() []Change {
	var changes []Change
	for _, times := range []float64{0.25, 0.5, 1, 1.5, 2} {
		changes = append(changes, Change{Gap: times * p.Gap, Border: p.Border})
	}
	return changes
}

// Scrap are widths of a border of bare scrap, from none to half the gap.
func (p Problem) Scrap() []Change {
	var changes []Change
	for _, times := range []float64{0, 0.125, 0.25, 0.5} {
		changes = append(changes, Change{Border: times * p.Gap})
	}
	return changes
}
