// Package circuit is what lies between the supply and the work: how much the
// bath resists, how many volts the cell and its wires need, what a supply can
// give into them, and what fits where it can't give enough.
//
//	supply volts = current x (bath + wire + ballast) + allowance
//
// All is in SI: S/m, m, m2, ohm, V, A, W, kg, K. Nothing here is a measurement
// of a bench: the bath's resistance is an estimate from a few lengths, and an
// ammeter tells better.
//
// # Limits
//
// An answer is a finite number above zero, or not known: something it is made
// of was zero, negative or not a number, or lies beyond what a float64 holds. So
// nothing here ever gives NaN or an infinity.
package circuit
