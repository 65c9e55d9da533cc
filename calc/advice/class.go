package advice

import (
	"strconv"

	"saltbite/calc/job"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// Many is the reply to a call over many rows.
type Many struct {
	Sentence string
	Answers  []Figure
	Runs     []RunRow
	Loads    []LoadRow
	Instead  []string    // what fits the session where the plan does not
	Steps    []ClassStep // what is to be done, in its order
	Ticks    []Tick      // of the timetable
	Cards    []ClassCard
	Cautions []Caution
	Errors   []job.RowError
}

// RunRow is one finished run by itself.
type RunRow struct {
	Row                   int
	Efficiency, Low, High float64 // %
	Odd                   string  // why it stands out; "" if it does not
}

// Trial says what a log of finished runs tells of a bench.
func Trial(t job.Tried) Many {
	m := Many{Errors: t.Errors}
	fit := t.Fit
	if fit.Used > 0 {
		m.Answers = append(m.Answers, percent("efficiency", fit.Efficiency), alone("efficiencyLow", "%", 100*fit.Next.Low.SI), alone("efficiencyHigh", "%", 100*fit.Next.High.SI))
		m.Sentence = fitWords(fit)
	}
	if fit.Measured > 0 {
		m.Answers = append(m.Answers, ranged("undercut", "", fit.Undercut, 1, quantity.PrintNumber))
	}
	m.Answers = append(m.Answers, Figure{Name: "rowsUsed", Value: float64(fit.Used), Text: strconv.Itoa(fit.Used)})
	for i, run := range fit.Runs {
		m.Runs = append(m.Runs, RunRow{t.Rows[i], 100 * run.SI, 100 * run.Low.SI, 100 * run.High.SI, oddWords(run.Odd)})
	}
	return m
}

// oddWords say why a run stands out; "" of one that does not.
func oddWords(o trial.Oddity) string {
	switch o {
	case trial.Little:
		return "under 70 %: look for hidden metal, a film, a lost contact or a spent bath"
	case trial.Much:
		return "over 115 %: check area, current, weights and the name of the metal"
	case trial.Below:
		return "far below the other runs"
	case trial.Above:
		return "far above the other runs"
	}
	return ""
}

func fitWords(fit trial.Fit) string {
	said := "This bench dissolves " + share(fit.Efficiency.SI) + " of what the charge allows, by " + runs(fit.Used)
	said += "; the next run lies between " + share(fit.Next.Low.SI) + " and " + share(fit.Next.High.SI)
	if fit.Assumed {
		return said + ", with the scatter of common practice until there are three."
	}
	return said + "."
}

func share(x float64) string { return quantity.Print(x, quantity.Share, "%") }

func percent(name string, e quantity.Range) Figure {
	return ranged(name, "%", e, 100, func(x float64) string { return share(x / 100) })
}

// ranged is an estimate as an answer, times a factor.
func ranged(name, unit string, e quantity.Range, times float64, print func(float64) string) Figure {
	f := Figure{Name: name, Value: times * e.SI, Unit: unit, Text: print(times * e.SI)}
	if e.High.SI > e.Low.SI {
		low, high := times*e.Low.SI, times*e.High.SI
		f.Low, f.High, f.Range = &low, &high, print(low)+" to "+print(high)
	}
	return f
}

func alone(name, unit string, value float64) Figure {
	return Figure{Name: name, Value: value, Unit: unit, Text: share(value / 100)}
}
