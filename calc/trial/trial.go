// Package trial reads a run backwards: from what a piece lost on the scale, or
// from what the ammeter showed, to how deep it is, how well the current bites,
// and how long it has to go.
//
// All is in SI: kg, s, A, C, m, m2. Faraday's law is that of package bite.
//
// # Limits
//
// An answer is a finite number above zero, or 0, which means that there is
// none: something it is made of was zero, negative or not a number, or lies
// beyond what a float64 holds. The exceptions say so.
package trial

import "math"

// held is x if it can be an argument or an answer of this package, a finite
// number above zero; else 0, from which no answer follows. Set into each caller
// it would only make the program larger.
//
//go:noinline
func held(x float64) float64 {
	if x > 0 && x <= math.MaxFloat64 {
		return x
	}
	return 0
}
