package job

import (
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Until is what the depth is reached by: the mean of the exposed metal, or its
// shallowest part, whose depth is so many times the mean. All else here is worked
// out with means.
type Until struct {
	Shallowest bool
	Least      quantity.Optional // the shallowest depth over the mean
}

func readUntil(fields *field.Set) (Until, []field.Error) {
	u := Until{Shallowest: fields.Pick(field.Until) == "least", Least: fields.Amount(field.Least)}
	switch {
	case fields.Value(field.Until).State == quantity.Bad:
		return Until{Shallowest: true, Least: quantity.Optional{State: quantity.Bad}}, nil
	case u.Shallowest:
		return u, Missing(fields, field.Least)
	}
	return u, nil
}

// Tells says whether a mean depth says what is reached.
func (u Until) Tells() bool { return !u.Shallowest || u.Least.Known() }

// Mean is the mean depth, m, at which the depth is reached that is asked for. It
// is Bad where nobody knows how much shallower the shallowest part is.
func (u Until) Mean(depth quantity.Optional) quantity.Optional {
	if !u.Shallowest || !depth.Known() {
		return depth
	}
	if !u.Tells() {
		return quantity.Optional{State: quantity.Bad}
	}
	return quantity.Known(depth.SI / u.Least.SI)
}

// Reached is the depth, m, that a mean depth comes to: the inverse of Mean.
func (u Until) Reached(mean quantity.Optional) quantity.Optional {
	if !u.Shallowest || !mean.Known() {
		return mean
	}
	if !u.Tells() {
		return quantity.Optional{State: quantity.Bad}
	}
	return quantity.Known(mean.SI * u.Least.SI)
}

// ReachedRange is Reached, of a range.
func (u Until) ReachedRange(mean quantity.Range) quantity.Range {
	return quantity.Range{Optional: u.Reached(mean.Optional), Low: u.Reached(mean.Low), High: u.Reached(mean.High)}
}
