//go:build long || !js

package main

import (
	"strconv"
	"strings"

	"saltbite/calc/advice"
	"saltbite/calc/field"
	"saltbite/calc/job"
)

// logOf works on a log of finished runs. The first line of the text says what to
// do, in the form of fields, and each other line is a run (job.ReadLog):
//
//	do=fit    what the runs tell, and run by run the last ones, as many as rows says
//	do=csv    the log as a spreadsheet reads it
//	do=merge  the log with a table in it, which stands beside as csv
//	do=strip  a trial on scrap for the job that stands beside
func logOf(text string) string {
	first, rest, _ := strings.Cut(text, "\n")
	asked := map[string]string{"do": "", "rows": "", "csv": ""}
	beside := field.ReadPairs(field.Beside(field.Pairs(first), asked))
	runs := job.ReadLog(rest)
	switch asked["do"] {
	case "strip":
		return stripJSON(advice.Strip(job.PlanStrip(beside)))
	case "csv":
		return csvJSON(job.LogTable(runs).CSV())
	case "merge":
		return mergedJSON(job.MergeLog(runs, asked["csv"]))
	}
	rows, err := strconv.Atoi(asked["rows"])
	if err != nil {
		rows = len(runs)
	}
	return logJSON(advice.Log(job.Log(runs), rows))
}

func stripJSON(r advice.StripReply) string {
	w := writer{}
	w.open('{')
	w.key("strip")
	w.open('{')
	w.string("text", r.Text)
	w.filled(r.Fields)
	w.close('}')
	w.close('}')
	return string(w.out)
}

func csvJSON(csv string) string {
	w := writer{}
	w.open('{')
	w.string("csv", csv)
	w.close('}')
	return string(w.out)
}

func mergedJSON(m job.MergedLog) string {
	w := writer{}
	w.open('{')
	w.number("added", float64(m.Added))
	w.number("changed", float64(m.Changed))
	w.objects("runs", len(m.Runs), func(i int) {
		run := m.Runs[i]
		w.string("run", run.ID)
		w.string("ended", run.Ended)
		w.string("note", run.Note)
		w.key("fields")
		w.open('{')
		for i := range field.Fields {
			w.unlessBlank(field.Fields[i].Name, run.Text(field.Name(i)))
		}
		w.close('}')
	})
	w.texts("faults", advice.Faults(m))
	w.close('}')
	return string(w.out)
}

func logJSON(r advice.LogReply) string {
	w := writer{}
	w.open('{')
	w.objects("runs", len(r.Runs), func(i int) {
		run := r.Runs[i]
		w.string("metal", run.Metal)
		w.string("salt", run.Salt)
		w.string("found", run.Found)
		w.string("wanted", run.Wanted)
		w.string("efficiency", run.Efficiency)
		w.string("range", run.Range)
		w.string("odd", run.Odd)
		w.string("wrong", run.Wrong)
	})
	w.objects("fits", len(r.Fits), func(i int) {
		fit := r.Fits[i]
		w.string("id", fit.ID)
		w.string("metal", fit.Metal)
		w.string("salt", fit.Salt)
		w.number("runs", float64(fit.Runs))
		w.string("text", fit.Text)
		w.string("from", fit.From)
		w.string("undercut", fit.Undercut)
		w.string("ratio", fit.Ratio)
		w.filled(fit.Fields)
	})
	if r.Found != nil {
		w.key("found")
		w.drawing(r.Found)
	}
	if r.Aged != nil {
		w.key("aged")
		w.drawing(r.Aged)
	}
	w.close('}')
	return string(w.out)
}
