package job

import (
	"saltbite/calc/field"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// RowError is a mistake in one of many rows.
type RowError struct {
	Row int // from 0; -1 for the fields that stand beside the rows
	field.Error
}

// Tried is what the finished runs of a log say of a bench.
type Tried struct {
	Fit    trial.Fit
	Rows   []int // which row each of Fit.Runs was
	Errors []RowError
}

// Try fits a log. The fields beside the rows say how finely the balance reads,
// and, if a metal or a salt is named, which runs count.
func Try(rows []*field.Set, fields *field.Set) Tried {
	var t Tried
	t.Errors = ofRow(-1, fields.Errors())
	metal, errors := readMetal(fields)
	t.Errors = append(t.Errors, ofRow(-1, errors)...)
	salt, errors := readSalt(fields, metal)
	t.Errors = append(t.Errors, ofRow(-1, errors)...)
	var runs []trial.Run
	for i, row := range rows {
		w, run, errors := finished(row, fields)
		if errors != nil {
			t.Errors = append(t.Errors, ofRow(i, errors)...)
			continue
		}
		other := metal.Given() && w.Metal.Reading.Metal.ID != metal.Reading.Metal.ID ||
			fields.Given(field.Salt) && w.Salt.Salt != salt.Salt
		if other {
			continue
		}
		runs = append(runs, run)
		t.Rows = append(t.Rows, i)
	}
	t.Fit = trial.Bench(runs)
	return t
}

func ofRow(row int, errors []field.Error) (list []RowError) {
	for _, e := range errors {
		list = append(list, RowError{row, e})
	}
	return list
}

// finished works a finished run out as far as its bite: what comes after that, and
// the depth that was wanted, teach nothing.
func finished(row, fields *field.Set) (Worked, trial.Run, []field.Error) {
	w := workBite(row.Without(field.Depth, field.Until, field.Find, field.Start))
	run, errors := runOf(w, fields)
	return w, run, errors
}

// runOf is what a finished run teaches, by its weights or by a measured depth.
func runOf(w Worked, fields *field.Set) (trial.Run, []field.Error) {
	var run trial.Run
	if barred := w.Barred.mistakes(w.Fields, w.Salt); barred != nil {
		return run, barred // no weight or time that is filled in helps it
	}
	charge, errors := finishedCharge(w)
	switch {
	case errors != nil:
		return run, errors
	case !w.Law.Known || !w.Bite.Area.Known() || w.Bite.Shape == quantity.Bad:
		return run, append(unreadable(w), Missing(w.Fields, field.Metal, field.Area)...)
	}
	onScale := onScale(w.Bite, w.Hidden)
	before, after := w.Fields.Amount(field.Before), w.Fields.Amount(field.After)
	depth := w.Fields.Amount(field.DepthFound)
	weighed := trial.Weighing{Before: before.SI, After: after.SI, Law: w.Law.Law, Work: onScale, Hanger: w.Hidden.OnHanger.SI}
	switch {
	case before.Known() && after.Known():
		run = weighed.Run(charge, resolution(w.Fields, fields))
		depth = depth.Or(quantity.Positive(weighed.DepthNow().SI))
	case depth.Known():
		run = trial.Gauging{Depth: depth.SI, Law: w.Law.Law, Work: onScale, Hanger: w.Hidden.OnHanger.SI}.Run(charge)
	default:
		return run, Missing(w.Fields, field.Before, field.After)
	}
	run.Undercuts = undercuts(w.Fields, depth)
	run.Skip = w.Fields.Pick(field.Use) == "no"
	return run, nil
}

// unreadable are the mistakes of a row that keep it from being used, those of what
// comes after the bite among them.
func unreadable(w Worked) (errors []field.Error) {
	for _, e := range Work(w.Fields).Errors {
		if e.Code != field.Missing {
			errors = append(errors, e)
		}
	}
	return errors
}

// finishedCharge is what flowed in a finished run, C.
func finishedCharge(w Worked) (float64, []field.Error) {
	charge := w.Bite.ChargeSoFar()
	switch {
	case charge.Known() && charge.SI > 0:
		return charge.SI, nil
	case charge.State == quantity.Bad:
		return 0, unreadable(w)
	}
	return 0, Missing(w.Fields, field.Current, field.Time)
}

// resolution is the balance's smallest step, kg: the row's own, else that of all.
func resolution(row, all *field.Set) float64 {
	return row.Amount(field.Resolution).Or(all.Amount(field.Resolution)).Or(quantity.Known(usualResolution)).SI
}

// undercuts are what the lines and the spaces of a run showed.
func undercuts(row *field.Set, depth quantity.Optional) (list []float64) {
	add := func(drawn, found field.Name, of func(drawn, found, depth float64) quantity.Optional) {
		d, f := row.Amount(drawn), row.Amount(found)
		if !d.Known() || !f.Known() || !depth.Known() {
			return
		}
		if u := of(d.SI, f.SI, depth.SI); u.Known() {
			list = append(list, u.SI)
		}
	}
	add(field.Line, field.LineFound, trial.UndercutOfLine)
	add(field.Space, field.SpaceFound, trial.UndercutOfSpace)
	return list
}
