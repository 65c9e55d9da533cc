package quantity

import "math"

// State says what is known of a number.
type State uint8

const (
	Blank   State = iota // there is no number
	Assumed              // it was not given; a default stands for it
	Given                // it was read, or it follows from what was
	Bad                  // it was given and can't be used
)

// Optional is a number in SI that may not be there. SI is 0 unless the number
// is known.
type Optional struct {
	SI    float64
	State State
}

// Known returns x as a number that is there. What is not finite is not there.
func Known(x float64) Optional {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return Optional{}
	}
	return Optional{x, Given}
}

// Positive returns x as a number that is there if it is finite and above zero.
func Positive(x float64) Optional {
	if !(x > 0) {
		return Optional{}
	}
	return Known(x)
}

// If returns x where all that it follows from is known; else it says what they
// lack.
func If(x float64, from ...Optional) Optional {
	switch state := Worst(from...); state {
	case Given:
		return Known(x)
	default:
		return Optional{State: state}
	}
}

// Known says whether there is a number.
func (o Optional) Known() bool { return o.State == Given || o.State == Assumed }

// Typed says whether something was given or assumed, even if it can't be used.
func (o Optional) Typed() bool { return o.State != Blank }

// Bad says whether what was given can't be used.
func (o Optional) Bad() bool { return o.State == Bad }

// Or returns the number, or another if it was not given. A bad number stays
// bad.
func (o Optional) Or(other Optional) Optional {
	if o.State == Blank {
		return other
	}
	return o
}

// Worst returns the state of what depends on all of these: Bad if one is bad,
// else Blank if one is not there, else Given.
func Worst(all ...Optional) State {
	state := Given
	for _, o := range all {
		switch o.State {
		case Bad:
			return Bad
		case Blank:
			state = Blank
		}
	}
	return state
}

// Sum adds what is there. It is Bad if a part is, and Blank if no part is there.
func Sum(parts ...Optional) Optional {
	var all Optional
	for _, p := range parts {
		switch {
		case p.State == Bad:
			return Optional{State: Bad}
		case p.Known():
			all = Known(all.SI + p.SI)
		}
	}
	return all
}

// Range is a number with the ends of the range in which it is likely to lie.
// An end that is not known is the number itself.
type Range struct {
	Optional
	Low, High Optional
}

// Alone returns a number whose range is not known.
func Alone(o Optional) Range { return Range{Optional: o} }

// Spread says whether an end of the range is known.
func (r Range) Spread() bool { return r.Low.Known() || r.High.Known() }

// Ends returns the ends of the range.
func (r Range) Ends() (low, high float64) { return r.Low.Or(r.Optional).SI, r.High.Or(r.Optional).SI }
