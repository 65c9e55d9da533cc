package trial

import "math"

// studentT is how far from zero, either way, Student's t with that many degrees
// of freedom (one at least) stays with a probability of share: for 0.95 the
// value that tables list under 0.975, or under 95 % two-sided. It is the root
// of withinT, found by bisection over theta, where the function rises evenly.
//
// The finite sums have positive terms only, so that nothing cancels. They have
// half as many terms as there are degrees of freedom.
func studentT(share float64, degrees int) float64 {
	low, high := 0.0, math.Pi/2
	for {
		theta := low + (high-low)/2
		if theta <= low || theta >= high {
			return math.Sqrt(float64(degrees)) * math.Tan(theta)
		}
		if withinT(theta, degrees) < share {
			low = theta
		} else {
			high = theta
		}
	}
}

// withinT is the probability that Student's t lies within +-t, with theta =
// arctan(t / sqrt(degrees)). For an odd number n of degrees of freedom
//
//	2/pi (theta + sin theta (cos theta + 2/3 cos^3 theta + ... + (2 4 ... (n-3)) / (3 5 ... (n-2)) cos^(n-2) theta))
//
// and for an even one
//
//	sin theta (1 + 1/2 cos^2 theta + ... + (1 3 ... (n-3)) / (2 4 ... (n-2)) cos^(n-2) theta)
//
// Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and
// 26.7.4 (from memory).
func withinT(theta float64, degrees int) float64 {
	sin, cos := math.Sincos(theta)
	term, first := 1.0, 2
	if degrees%2 == 1 {
		term, first = cos, 3
	}
	var sum float64
	for i := first; i <= degrees; i += 2 {
		sum += term
		term *= cos * cos * float64(i-1) / float64(i)
	}
	if degrees%2 == 1 {
		return 2 / math.Pi * (theta + sin*sum)
	}
	return sin * sum
}
