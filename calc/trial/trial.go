// Package trial reads a run backwards: from what a piece lost on the scale, or
// from what the ammeter showed, to how deep it is, how well the current bites,
// and how long it has to go. From a log of finished runs it works out what this
// bench does, with its range.
//
// All is in SI: kg, s, A, C, m, m2. Faraday's law is that of package bite.
//
// # Limits
//
// An answer is a finite number above zero, or 0, which means that there is
// none: something it is made of was zero, negative or not a number, or lies
// beyond what a float64 holds. The exceptions say so.
package trial
