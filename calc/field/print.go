package field

import (
	"strconv"

	"saltbite/calc/quantity"
)

// Printer prints answers in the units that a set asks for.
type Printer struct{ US bool }

// Printer returns what prints answers in the units that the set asks for.
func (s *Set) Printer() Printer { return Printer{s.Pick(Units) == "us"} }

// Say prints a quantity in SI as the answer of that name is printed.
func (p Printer) Say(name AnswerName, si float64) string {
	a := name.Row()
	switch {
	case a.Form == ClockTime:
		return quantity.PrintClock(si)
	case a.Form == GaugeNumber:
		return gaugeText(si)
	case a.Kind == quantity.Number:
		return quantity.PrintCount(si)
	}
	if a.Form == Estimated {
		return quantity.PrintEstimate(si, a.Kind, p.unit(a))
	}
	return quantity.Print(si, a.Kind, p.unit(a))
}

// unit is the unit in which an answer is printed.
func (p Printer) unit(a *Answer) string {
	switch {
	case p.US && a.US != "":
		return a.US
	case a.Text != "":
		return a.Text
	}
	return a.Unit
}

// gaugeText prints a Brown & Sharpe number, 0 for 0, -1 for 00.
func gaugeText(n float64) string {
	if n < 0 {
		zeros := "0"
		for ; n < 0; n++ {
			zeros += "0"
		}
		return zeros + " ga"
	}
	return strconv.Itoa(int(n)) + " ga"
}
