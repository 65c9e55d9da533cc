package job

import (
	"cmp"
	"iter"
	"maps"
	"slices"
	"strings"

	"saltbite/calc/field"
	"saltbite/calc/metal"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// LogRun is a finished run as a log keeps it: its fields, and what is no field.
type LogRun struct {
	ID    string // the same in each copy of the log
	Ended string // when, such as 2026-11-27 14:05
	Note  string
	*field.Set
}

// Names of what is no field, in a log's text and over the columns of its table.
const (
	logRun   = "run"
	logEnded = "ended"
	logNote  = "note"
)

// ReadLog reads runs from their text form, each on a line of its own, in which its
// number, its time and its note stand among the fields.
func ReadLog(text string) (runs []LogRun) {
	memory := field.Memory{}
	for line := range strings.SplitSeq(text, "\n") {
		if line != "" {
			runs = append(runs, logRunOf(field.Pairs(line), memory))
		}
	}
	return runs
}

// logRunOf takes out what is no field.
func logRunOf(cells iter.Seq2[string, string], memory field.Memory) LogRun {
	own := map[string]string{logRun: "", logEnded: "", logNote: ""}
	set := memory.ReadPairs(field.Beside(cells, own))
	return LogRun{ID: own[logRun], Ended: own[logEnded], Note: own[logNote], Set: set}
}

// LogTable is a log as a spreadsheet has it: the columns are those of the fields
// that some run has, in the order of their table.
func LogTable(runs []LogRun) trial.Table {
	table := trial.Table{Columns: []string{logRun, logEnded, logNote}}
	var names []field.Name
	for i := range field.Fields {
		name := field.Name(i)
		if slices.ContainsFunc(runs, func(r LogRun) bool { return r.Text(name) != "" }) {
			names = append(names, name)
			table.Columns = append(table.Columns, name.String())
		}
	}
	for _, run := range runs {
		row := []string{run.ID, run.Ended, run.Note}
		for _, name := range names {
			row = append(row, run.Text(name))
		}
		table.Rows = append(table.Rows, row)
	}
	return table
}

// MergedLog is a log with a table in it.
type MergedLog struct {
	Runs           []LogRun
	Added, Changed int
	Damaged        []trial.Damage
	Strange        []string // columns that no field has: they are left out
}

// MergeLog puts the runs of a table, as a spreadsheet wrote it, into a log, each
// once.
func MergeLog(runs []LogRun, csv string) MergedLog {
	table, damaged := trial.ReadCSV(csv)
	table, strange := ofFields(table)
	merged := LogTable(runs).Merge(table, logRun)
	m := MergedLog{Added: merged.Added, Changed: merged.Changed, Damaged: damaged, Strange: strange}
	for _, row := range merged.Rows {
		cells := func(yield func(name, text string) bool) {
			for i, name := range merged.Columns {
				if !yield(name, row[i]) {
					return
				}
			}
		}
		m.Runs = append(m.Runs, logRunOf(cells, nil))
	}
	return m
}

// ofFields is a table without the columns that no field has, and their names.
// Rows that then hold nothing of a run are left out.
func ofFields(table trial.Table) (known trial.Table, strange []string) {
	var places []int
	for i, name := range table.Columns {
		if _, isField := field.NameOf(name); isField || name == logRun || name == logEnded || name == logNote {
			places = append(places, i)
			known.Columns = append(known.Columns, name)
			continue
		}
		strange = append(strange, name)
	}
	for _, row := range table.Rows {
		var cells []string
		for _, i := range places {
			cells = append(cells, strings.TrimSpace(row[i]))
		}
		if strings.Join(cells, "") != "" {
			known.Rows = append(known.Rows, cells)
		}
	}
	return known, strange
}

// Logged is what a log tells, run by run and of the bench.
type Logged struct {
	Runs []LoggedRun
	Fits []LogFit // that of the most runs first
	Pool []LogPool
}

// LoggedRun is a run beside the others of its metal and salt.
type LoggedRun struct {
	LogRun
	Metal  *metal.Metal // nil where it is not known
	Salt   string
	Run    trial.Run
	Judged trial.Judged
	Errors []field.Error // what keeps it from being used
}

// LogFit is what the runs of one metal in one salt say.
type LogFit struct {
	trial.Fit
	Metal *metal.Metal
	Salt  string
	Drift quantity.Range // change of the efficiency from run to run
	Told  []trial.Run    // its runs, in their order
}

// LogPool is what the runs of all metals in one salt say: it stands for a metal that
// has too few of its own.
type LogPool struct {
	trial.Fit
	Salt string
	From []PooledRuns // in the order of their names
}

// PooledRuns are how many runs a metal gave.
type PooledRuns struct {
	Metal string
	Runs  int
}

// Log works a log out. Its runs are in the order of their times.
func Log(runs []LogRun) Logged {
	logged := Logged{Runs: make([]LoggedRun, len(runs))}
	of := map[[2]string][]int{} // places of the runs of a metal and a salt
	for i, run := range runs {
		w, told, errors := finished(run.Set, noFields)
		logged.Runs[i] = LoggedRun{LogRun: run, Run: told, Errors: errors, Metal: w.Metal.Reading.Metal}
		if w.Salt.Known() {
			logged.Runs[i].Salt = w.Salt.Name
		}
		if errors == nil {
			key := [2]string{w.Metal.Reading.Metal.ID, w.Salt.Name}
			of[key] = append(of[key], i)
		}
	}
	for _, places := range of {
		told := make([]trial.Run, len(places))
		for i, place := range places {
			told[i] = logged.Runs[place].Run
		}
		first := logged.Runs[places[0]]
		fit := LogFit{Fit: trial.Bench(told), Metal: first.Metal, Salt: first.Salt, Drift: trial.Drift(told), Told: told}
		for i, place := range places {
			logged.Runs[place].Judged = fit.Runs[i]
		}
		logged.Fits = append(logged.Fits, fit)
	}
	slices.SortFunc(logged.Fits, func(a, b LogFit) int {
		return cmp.Or(cmp.Compare(b.Used, a.Used), cmp.Compare(a.Metal.Name, b.Metal.Name), cmp.Compare(a.Salt, b.Salt))
	})
	logged.Pool = pools(logged)
	return logged
}

// pools puts the runs of each salt together, whatever their metal.
func pools(logged Logged) (list []LogPool) {
	told := map[string][]trial.Run{}
	from := map[string]map[string]int{}
	for _, run := range logged.Runs {
		if run.Errors != nil || run.Run.Skip {
			continue
		}
		told[run.Salt] = append(told[run.Salt], run.Run)
		if from[run.Salt] == nil {
			from[run.Salt] = map[string]int{}
		}
		from[run.Salt][run.Metal.Name]++
	}
	for _, salt := range slices.Sorted(maps.Keys(told)) {
		pool := LogPool{Fit: trial.Bench(told[salt]), Salt: salt}
		for _, name := range slices.Sorted(maps.Keys(from[salt])) {
			pool.From = append(pool.From, PooledRuns{name, from[salt][name]})
		}
		list = append(list, pool)
	}
	return list
}

// noFields stand beside the runs of a log: each says itself what its balance reads to.
var noFields = field.Read("")
