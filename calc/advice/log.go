package advice

import (
	"math"
	"strconv"

	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// LogReply is what a log of runs tells.
type LogReply struct {
	Runs  []LoggedRow
	Fits  []FitRow
	Found *drawing.Drawing // depth found against predicted; nil where no run tells it
}

// LoggedRow is a run in words; what is not known of it is blank.
type LoggedRow struct {
	Metal, Salt       string
	Found, Wanted     string // depths
	Efficiency, Range string
	Odd               string // why it stands out
	Wrong             string // what keeps it from being used
}

// FitRow is what the runs of one metal in one salt say, and the fields by which
// an answer carries it.
type FitRow struct {
	ID, Metal, Salt string
	Runs            int
	Text            string // in sentences
	Fields          []Filled
}

// Filled is a field with its text.
type Filled struct{ Name, Text string }

// Log says what a log tells.
func Log(l job.Logged) LogReply {
	var r LogReply
	var found drawing.Found
	for _, run := range l.Runs {
		r.Runs = append(r.Runs, loggedRow(run))
		if run.Run.Predicted > 0 && run.Run.Found > 0 {
			found.Runs = append(found.Runs, drawing.FoundRun{Predicted: run.Run.Predicted, Found: run.Run.Found, Odd: run.Judged.Odd != trial.Usual})
			found.US = run.Printer().US
		}
	}
	for _, fit := range l.Fits {
		r.Fits = append(r.Fits, fitRow(fit))
	}
	r.Found = found.Draw()
	return r
}

func loggedRow(run job.LoggedRun) LoggedRow {
	row := LoggedRow{Salt: run.Salt, Wanted: run.Text(field.Depth), Odd: oddWords(run.Judged.Odd)}
	if run.Metal != nil {
		row.Metal = run.Metal.Name
	}
	for _, e := range run.Errors {
		row.Wrong = e.Text
		break
	}
	p := run.Printer()
	if depth := run.Amount(field.Depth); depth.Known() {
		row.Wanted = p.Say(field.AnswerDepth, depth.SI)
	}
	if run.Run.Found > 0 {
		row.Found = p.Say(field.AnswerDepth, run.Run.Found)
	}
	if j := run.Judged; run.Errors == nil && j.Known() {
		row.Efficiency, row.Range = share(j.SI), share(j.Low.SI)+" to "+share(j.High.SI)
	}
	return row
}

// runsToFill is how many runs an answer takes its range from.
const runsToFill = 3

func fitRow(fit job.LogFit) FitRow {
	row := FitRow{ID: fit.Metal.ID, Metal: fit.Metal.Name, Salt: fit.Salt, Runs: fit.Used}
	if fit.Used == 0 {
		row.Text = "No run of it counts."
		return row
	}
	row.Text = fitWords(fit.Fit) + " The mean lies between " + share(fit.Efficiency.Low.SI) + " and " + share(fit.Efficiency.High.SI) +
		". Both ranges hold in 95 of 100 cases." + driftWords(fit.Drift)
	low, high := inField(fit.Next.Low.SI), inField(fit.Next.High.SI)
	if fit.Used >= runsToFill && low <= fit.Next.SI && fit.Next.SI <= high {
		row.Fields = []Filled{{field.Efficiency.String(), share(fit.Next.SI)},
			{field.EfficiencyLow.String(), share(low)}, {field.EfficiencyHigh.String(), share(high)}}
	}
	return row
}

// inField is a share as near as the fields of the efficiency take it.
func inField(x float64) float64 {
	row := field.EfficiencyLow.Row()
	return math.Max(quantity.Of(row.Min, row.Limit), math.Min(quantity.Of(row.Max, row.Limit), x))
}

// driftWords say that the efficiency changes from run to run, where it surely does.
func driftWords(d quantity.Range) string {
	switch {
	case !d.Known():
		return ""
	case d.High.SI < 0:
		return " It falls by about " + share(-d.SI) + " of the charge from run to run: the bath ages, or something creeps in."
	case d.Low.SI > 0:
		return " It rises by about " + share(d.SI) + " of the charge from run to run."
	}
	return ""
}

// Faults say what a table held that could not be taken in.
func Faults(m job.MergedLog) (list []string) {
	for _, d := range m.Damaged {
		list = append(list, "Line "+strconv.Itoa(d.Line)+", “"+d.Text+"”: "+defectWords(d.Why)+".")
	}
	for _, name := range m.Strange {
		list = append(list, "Column “"+name+"”: no field has this name, so it is left out.")
	}
	return list
}

func defectWords(d trial.Defect) string {
	switch d {
	case trial.Cells:
		return "more or fewer cells than the first line has"
	case trial.Quote:
		return "a quotation mark is not closed, or text follows it"
	case trial.Encoding:
		return "its characters can't be read; save the table as CSV in UTF-8"
	}
	return "a second column of this name; the first counts"
}
