package advice

import (
	"math"
	"strconv"
	"strings"

	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// Verdict is whether the supply can do the job.
type Verdict struct {
	Fits    string // "yes", "limit" (hold it back), or "no"
	Text    string // one line
	Assumed []string
}

// verdict judges the supply as soon as its volts or its amperes are given; nil
// before that.
func (v *view) verdict() *Verdict {
	s := v.Supply
	if !s.Given {
		return nil
	}
	judged := &Verdict{Fits: "yes"}
	for _, name := range s.Assumed {
		judged.Assumed = append(judged.Assumed, name.String())
	}
	switch {
	case s.Unread:
		judged.Fits, judged.Text = "limit", "Correct what can't be read to see whether it fits. Until then, leave the supply off."
	case !s.Judged && v.Barred.Any():
		judged.Fits, judged.Text = "limit", "Choose another metal or bath first. Until then, leave the supply off."
	case !s.Judged:
		judged.Fits, judged.Text = "limit", "Type the metal and the exposed area to see whether it fits. Until then, set the lowest limit."
	case s.Verdict == circuit.Forbidden:
		judged.Fits, judged.Text = "no", v.supplyVolts()+" can kill. Use an isolated supply of 30 V at most."
	case s.Verdict == circuit.TooWeak:
		judged.Fits, judged.Text = "no", v.weakWords()
	case s.Verdict == circuit.NeedsALimit:
		judged.Fits, judged.Text = "limit", v.limitWords()
	default:
		judged.Text = v.fitsWords()
	}
	judged.Text += v.assumedWords()
	return judged
}

// words are the verdict's text; "" without a verdict.
func (v *Verdict) words() string {
	if v == nil {
		return ""
	}
	return v.Text
}

func (v *view) supplyVolts() string { return v.typed(field.Volts) }
func (v *view) supplyAmps() string  { return v.typed(field.Amps) }

// wanted is the current that the job takes, as it was typed, or as it is printed.
func (v *view) wanted() string {
	if v.Fields.Given(field.Current) {
		return v.typed(field.Current)
	}
	return v.Say(field.AnswerCurrent, v.Supply.Current.SI)
}

func (v *view) fitsWords() string {
	said := "Fits, if it can give " + v.wanted() + "."
	if v.Supply.Drives.Known() {
		said = "Fits: it would drive " + v.Say(field.AnswerCurrentAtVolts, v.Supply.Drives.SI) + ", and " + v.wanted() + " is needed."
	}
	if v.Fields.Amount(field.Amps).Known() {
		said = "Fits: " + v.wanted() + " of " + v.supplyAmps() + "."
	}
	if v.Fields.Amount(field.Volts).Known() && !v.Supply.Drives.Known() {
		said += " Set its limit to " + v.wanted() + ": what " + v.supplyVolts() + " would drive is not known here."
	}
	return said
}

// weakWords says what is lacking and what the supply can do instead.
func (v *view) weakWords() string {
	said, wayOut := "Needs "+v.Say(field.AnswerCellVolts, v.Supply.Volts.SI)+" for "+v.wanted()+", gives "+v.supplyVolts(), "bring the cathode nearer, or use less current"
	if amps := v.Fields.Amount(field.Amps); amps.Known() && amps.SI < v.Supply.Current.SI {
		said, wayOut = "Needs "+v.wanted()+", gives "+v.supplyAmps(), "use less current for longer"
	}
	if instead := v.instead(); instead != "" {
		wayOut = instead
	}
	return said + ": " + wayOut + "."
}

// instead is what the supply can do: fewer pieces at a time, or longer.
func (v *view) instead() string {
	var ways []string
	if fit := v.Circuit.PiecesThatFit.SI; fit >= 1 && fit < v.Bite.Count.SI {
		ways = append(ways, lower(countInWords(int(fit)))+plural(fit, " piece")+" at a time")
	}
	if longer := v.Circuit.TimeThatFits; longer.SI > v.Bite.Time.SI {
		if ways == nil {
			return "it takes " + v.text(field.AnswerTimeThatFits)
		}
		ways = append(ways, v.text(field.AnswerTimeThatFits))
	}
	return strings.Join(ways, ", or ")
}

func plural(n float64, word string) string {
	if n == 1 {
		return word
	}
	return word + "s"
}

// limitWords says how to hold a supply back that would drive far more than is
// wanted: by its own limit, or by a resistor.
func (v *view) limitWords() string {
	s := v.Supply
	drives := v.Say(field.AnswerCurrentAtVolts, s.Drives.SI)
	if amps := v.Fields.Amount(field.Amps); amps.Known() && amps.SI < s.Drives.SI {
		drives = "over " + v.Say(field.AnswerCurrentAtVolts, amps.SI) // what its label says need not stop it
	}
	said := v.supplyVolts() + " would drive " + drives + " where " + v.wanted() + " is wanted: set the supply's limit to " + v.wanted()
	switch r := s.Resistor; {
	case v.Fields.Amount(field.Volts).SI > circuit.TouchedWet:
		return said + ". Over 30 V no resistor is offered."
	case !s.Resists:
		return said + "."
	default:
		return said + "; if it has none, put " + resistorWords(r) + " resistor in the red cable (then " + v.Say(field.AnswerCurrent, r.Current) + ", likely " +
			v.Say(field.AnswerCurrent, r.Low) + " to " + v.Say(field.AnswerCurrent, r.High) + v.longer(r.Current/s.Current.SI) + "). Fuse a battery."
	}
}

// longer says how much longer it takes with that share of the current.
func (v *view) longer(share float64) string {
	if more := math.Round(100 * (1/share - 1)); more >= 1 {
		return ", and it takes " + strconv.Itoa(int(more)) + " % longer"
	}
	return ""
}

func resistorWords(r circuit.Resistor) string {
	ohms := quantity.PrintEstimate(r.Ohms, quantity.Resistance, "ohm")
	article := "a "
	if strings.HasPrefix(ohms, "8") || strings.HasPrefix(ohms, "18 ") {
		article = "an "
	}
	return article + ohms + ", " + quantity.PrintEstimate(r.Watts, quantity.Power, "W")
}

// assumed is what stands instead of a blank, in words.
func (v *view) assumed(name field.Name) string {
	switch name {
	case field.Gap:
		unit := "mm"
		if v.US {
			unit = "in"
		}
		return quantity.PrintEstimate(job.AssumedGap, quantity.Length, unit) + " to the cathode"
	case field.Cathode:
		return "a cathode as large as the exposed area"
	case field.Strength:
		return "a usual strength"
	}
	return "the suggested current"
}

func (v *view) assumedWords() string {
	var said []string
	for _, name := range v.Supply.Assumed {
		said = append(said, v.assumed(name))
	}
	if len(said) == 0 {
		return ""
	}
	return " Assumes " + strings.Join(said, ", ") + "."
}
