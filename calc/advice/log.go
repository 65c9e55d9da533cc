package advice

import (
	"math"
	"strconv"
	"strings"

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
	Aged  *drawing.Drawing // efficiency from run to run, of the metal and salt with the most runs
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
// an answer carries it. Without an ID it is that of all metals in the salt, for those
// with too few runs of their own.
type FitRow struct {
	ID, Metal, Salt string
	Runs            int
	From            string // "from 3 runs on this bench"
	Text            string // in sentences
	Fields          []Filled
	Undercut        string // what was measured of it, in a sentence; blank where nothing was
	Ratio           string // the undercut as its field takes it; blank where too few runs show it
}

// Filled is a field with its text.
type Filled struct{ Name, Text string }

// Log says what a log tells, and of its last runs, as many as rows says, what each tells.
func Log(l job.Logged, rows int) LogReply {
	var r LogReply
	var found drawing.Found
	for i, run := range l.Runs {
		if i >= len(l.Runs)-rows {
			r.Runs = append(r.Runs, loggedRow(run))
		}
		if run.Run.Predicted > 0 && run.Run.Found > 0 {
			found.Runs = append(found.Runs, drawing.FoundRun{Predicted: run.Run.Predicted, Found: run.Run.Found, Odd: run.Judged.Odd != trial.Usual})
			found.US = run.Printer().US
		}
	}
	for _, fit := range l.Fits {
		r.Fits = append(r.Fits, fitRow(fit))
	}
	for _, pool := range l.Pool {
		if pool.Used >= runsToFill {
			r.Fits = append(r.Fits, poolRow(pool))
		}
	}
	if len(l.Fits) > 0 {
		r.Aged = aged(l.Fits[0]).Draw()
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
	row := FitRow{ID: fit.Metal.ID, Metal: fit.Metal.Name, Salt: fit.Salt, Runs: fit.Used, From: "from " + runs(fit.Used) + " on this bench"}
	row.Undercut, row.Ratio = undercutWords(fit.Fit)
	if fit.Used == 0 {
		row.Text = "No run of it counts."
		return row
	}
	row.Text = fitWords(fit.Fit) + " The mean lies between " + share(fit.Efficiency.Low.SI) + " and " + share(fit.Efficiency.High.SI) +
		". Both ranges hold in 95 of 100 cases." + driftWords(fit.Drift)
	row.Fields = carried(fit.Fit)
	return row
}

// poolRow is what a metal with fewer runs than runsToFill is given.
func poolRow(pool job.LogPool) FitRow {
	return FitRow{Metal: "Any metal with fewer than three runs", Salt: pool.Salt, Runs: pool.Used, From: pooledFrom(pool.From), Fields: carried(pool.Fit),
		Text: "Its answers take the runs of all metals in this salt, " + pooledFrom(pool.From) + ": " + share(pool.Efficiency.SI) +
			"; the next run lies between " + share(pool.Next.Low.SI) + " and " + share(pool.Next.High.SI) + "."}
}

// mostNamed is how many metals are named that runs are from.
const mostNamed = 3

// pooledFrom says what runs are from: "from 2 runs with brass and 4 with copper on
// this bench".
func pooledFrom(from []job.PooledRuns) string {
	if len(from) > mostNamed {
		all := 0
		for _, of := range from {
			all += of.Runs
		}
		return "from " + runs(all) + " with " + strconv.Itoa(len(from)) + " metals on this bench"
	}
	var said string
	for i, of := range from {
		switch {
		case i == 0:
			said = "from " + runs(of.Runs)
		case i == len(from)-1:
			said += " and " + strconv.Itoa(of.Runs)
		default:
			said += ", " + strconv.Itoa(of.Runs)
		}
		said += " with " + lower(of.Metal)
	}
	return said + " on this bench"
}

// carried are the fields by which an answer carries what so many runs say; none
// where they are too few.
func carried(fit trial.Fit) []Filled {
	low, high := inField(fit.Next.Low.SI), inField(fit.Next.High.SI)
	if fit.Used < runsToFill || low > fit.Next.SI || fit.Next.SI > high {
		return nil
	}
	return []Filled{{field.Efficiency.String(), share(fit.Next.SI)},
		{field.EfficiencyLow.String(), share(low)}, {field.EfficiencyHigh.String(), share(high)}}
}

// undercutWords say what the measured lines and gaps tell of the undercut, and give it
// for its field where enough runs do.
func undercutWords(fit trial.Fit) (said, ratio string) {
	u := fit.Undercut
	switch {
	case fit.Measured == 0:
		return "", ""
	case fit.Measured < runsToFill:
		return "Its undercut is " + quantity.PrintNumber(u.SI) + ", from " + runs(fit.Measured) + " whose line or gap was measured: too few for a range.", ""
	}
	row := field.Undercut.Row()
	ratio = quantity.PrintNumber(math.Max(quantity.Of(row.Min, row.Limit), math.Min(quantity.Of(row.Max, row.Limit), u.SI)))
	return "Its undercut is " + quantity.PrintNumber(u.SI) + ", between " + quantity.PrintNumber(u.Low.SI) + " and " + quantity.PrintNumber(u.High.SI) +
		" in 95 of 100 cases, from " + runs(fit.Measured) + " whose line or gap was measured.", ratio
}

// aged is the efficiency of the runs that are used, one after the other.
func aged(fit job.LogFit) drawing.Ageing {
	a := drawing.Ageing{Of: lower(fit.Metal.Name) + " in " + fit.Salt, Mean: drawing.Size{SI: fit.Efficiency.SI, Text: share(fit.Efficiency.SI)},
		Low: fit.Next.Low.SI, High: fit.Next.High.SI, Share: share, Trend: "It neither falls nor rises for sure."}
	if said := driftWords(fit.Drift); said != "" {
		a.Slope, a.Trend = fit.Drift.SI, strings.TrimSpace(said)
	}
	for i, run := range fit.Told {
		if !run.Skip && fit.Runs[i].Known() {
			a.Runs = append(a.Runs, drawing.AgeingRun{Efficiency: run.Efficiency, Odd: fit.Runs[i].Odd != trial.Usual})
		}
	}
	return a
}

// runs says how many there are.
func runs(n int) string {
	if n == 1 {
		return "1 run"
	}
	return strconv.Itoa(n) + " runs"
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
