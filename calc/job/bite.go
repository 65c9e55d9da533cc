package job

import (
	"slices"

	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// Four is what the law ties together, with the density that may stand for the
// current. Each is in SI and of all pieces or one, as the field means it.
type Four struct{ Depth, Time, Current, Area, Density quantity.Optional }

// Bite is what the law was given and what it found. Its depths are means.
type Bite struct {
	Four
	Asked   Four              // as they were given
	Until   Until             // what the depth that was asked for is reached by
	Found   []field.Name      // what was found, the main one first
	Watched bool              // the run is under way, and the time is the time so far; the depth is the target
	Elapsed quantity.Optional // s, that the current has been on, if it is given apart from the time
	Stepped bool              // in several bites; Current and Area are those of the first
	Agrees  bool              // what was given can all be true
	Count   quantity.Optional
	Shape   quantity.State // Bad if a part of Work but its area can't be used
	Work    bite.Work      // without the area
	Read    trial.Readings // the ammeter's, with times that never run back
}

// Piece returns one piece with its area.
func (b Bite) Piece() bite.Work {
	piece := b.Work
	piece.Area = b.Area.SI
	return piece
}

// bare returns what takes current at the start, of all pieces, m2.
func (b Bite) bare() quantity.Optional {
	if b.Shape == quantity.Bad {
		return quantity.Optional{State: quantity.Bad}
	}
	return quantity.If(b.Piece().Bare().SI, b.Area)
}

// Whole says whether the current and all that it flows through are known.
func (b Bite) Whole() bool { return b.Current.Known() && b.Area.Known() }

// Uniform says whether a density alone tells the depth: with no edge the bare
// metal stays what it is, whatever its area.
func (b Bite) Uniform() bool { return b.Density.Known() && b.Work.Edge == 0 }

// DepthAfter returns the depth, m, that so many seconds give by a law.
func (b Bite) DepthAfter(law bite.Law, time float64) quantity.Optional {
	switch {
	case b.Whole():
		return law.Depth(b.Piece(), b.Current.SI, time)
	case b.Uniform():
		return law.DepthAt(b.Density.SI, time)
	}
	return quantity.Optional{}
}

// TimeBy returns the time, s, that the depth takes by a law.
func (b Bite) TimeBy(law bite.Law) quantity.Optional {
	switch {
	case b.Whole():
		return law.Time(b.Piece(), b.Depth.SI, b.Current.SI)
	case b.Uniform():
		return law.TimeAt(b.Density.SI, b.Depth.SI)
	}
	return quantity.Optional{}
}

// solveBite finds what is not given of depth, time, current and area.
func solveBite(fields *field.Set, law Law, work Pieces, until Until) (Bite, []field.Error) {
	asked := Four{until.Mean(fields.Amount(field.Depth)), fields.Amount(field.Time), fields.Amount(field.Current), work.Area, fields.Amount(field.Density)}
	b := Bite{Four: asked, Asked: asked, Until: until, Count: work.Count, Shape: work.Shape, Work: work.Work,
		Elapsed: fields.Amount(field.Elapsed), Read: readings(fields)}
	b.Watched = (!fields.Blank(field.After) || !fields.Blank(field.Readings)) && !b.Elapsed.Typed()
	if fields.Given(field.Bites) {
		b.Area = quantity.Known(fields.Value(field.Bites).Pairs[0].Second)
	}
	b.Stepped = !fields.Blank(field.Bites)
	if errors := disagreement(fields, law, b); errors != nil {
		return b, errors
	}
	b.Agrees = true
	var errors []field.Error
	if fields.Blank(field.Bites) {
		b, errors = joinDensity(fields, b)
		var more []field.Error
		b, more = solve(fields, law, b)
		errors = append(errors, more...)
		b.Found = append(b.Found, alsoFound(fields, b)...)
	}
	if b.Area.Known() && b.Shape != quantity.Bad && b.Density.State == quantity.Blank && b.Current.Known() {
		b.Density = quantity.Known(b.Current.SI / b.Piece().Bare().SI)
	}
	if b.Stepped && b.Area.Known() && b.Shape != quantity.Bad && b.Density.Known() && b.Current.State == quantity.Blank {
		b.Current = quantity.Known(b.Density.SI * b.Piece().Bare().SI)
	}
	return b, errors
}

// disagreement reports what can't all be true of what was given.
func disagreement(fields *field.Set, law Law, b Bite) []field.Error {
	if errors := append(areaDisagrees(fields, b), readingsDisagree(fields, b)...); errors != nil {
		return errors
	}
	if !b.Watched && b.Depth.Known() && b.Time.Known() && b.Whole() && fields.Blank(field.Bites) && !fourAgree(law, b) {
		const why = "depth, time, current and area are all filled in, and they don't fit together"
		const wayOut = "Clear the one to find."
		errors := disagree(fields, why, wayOut, field.Depth, field.Time, field.Current, field.Area)
		if fields.Text(field.Area) == "" {
			errors = append(errors, disagree(fields, why, wayOut, faceFields...)...)
		}
		return errors
	}
	if errors := densityDisagrees(fields, b); errors != nil || b.Watched {
		return errors
	}
	return depthDisagrees(fields, law, b)
}

// fourAgree says whether all four, given, obey the law.
func fourAgree(law Law, b Bite) bool {
	return law.Known && b.Shape != quantity.Bad && Agree(law.Current(b.Piece(), b.Depth.SI, b.Time.SI).SI, b.Current.SI)
}

// areaDisagrees holds a typed area against that of the first of several bites.
func areaDisagrees(fields *field.Set, b Bite) []field.Error {
	if !fields.Given(field.Bites) || !fields.Given(field.Area) || Agree(b.Area.SI, fields.Amount(field.Area).SI) {
		return nil
	}
	return contradiction(fields, "the first step starts with "+fields.Printer().Say(field.AnswerArea, b.Area.SI), field.Area, field.Bites)
}

// readingsDisagree holds the time that the current has been on against the
// ammeter's first and last reading.
func readingsDisagree(fields *field.Set, b Bite) []field.Error {
	if !b.Elapsed.Known() || b.Read == nil || Agree(b.span(), b.Elapsed.SI) {
		return nil
	}
	return contradiction(fields, "the readings go over "+fields.Printer().Say(field.AnswerTime, b.span()), field.Elapsed, field.Readings)
}

// span is the time from the first reading to the last, s.
func (b Bite) span() float64 { return b.Read[len(b.Read)-1].Time - b.Read[0].Time }

// densityDisagrees holds the density against the current over all bare metal.
func densityDisagrees(fields *field.Set, b Bite) []field.Error {
	if !b.Density.Known() || !b.Current.Known() || !b.Area.Known() || b.Shape == quantity.Bad {
		return nil
	}
	made := b.Current.SI / b.Piece().Bare().SI
	if Agree(made, b.Density.SI) {
		return nil
	}
	return contradiction(fields, "the current over the exposed metal makes "+fields.Printer().Say(field.AnswerDensity, made),
		field.Density, field.Current, field.Area, field.Extra, field.Pieces)
}

// depthDisagrees holds the density and the time against the depth.
func depthDisagrees(fields *field.Set, law Law, b Bite) []field.Error {
	if !law.Known || !b.Depth.Known() || !b.Time.Known() || !b.Density.Known() || b.Shape == quantity.Bad {
		return nil
	}
	made := law.DensityFor(b.Depth.SI, b.Time.SI).SI
	if b.Work.Edge > 0 && b.Area.Known() {
		made = law.Current(b.Piece(), b.Depth.SI, b.Time.SI).SI / b.Piece().Bare().SI
	}
	if b.Work.Edge > 0 && !b.Area.Known() || Agree(made, b.Density.SI) {
		return nil
	}
	return contradiction(fields, "that depth in that time needs "+fields.Printer().Say(field.AnswerDensity, made),
		field.Depth, field.Time, field.Density)
}

// joinDensity makes the current out of the density and the area, or the area
// out of the density and the current.
func joinDensity(fields *field.Set, b Bite) (Bite, []field.Error) {
	if !b.Density.Known() || b.Shape == quantity.Bad {
		return b, nil
	}
	switch {
	case b.Current.State == quantity.Blank && b.Area.Known():
		b.Current = quantity.Known(b.Density.SI * b.Piece().Bare().SI)
	case b.Area.State == quantity.Blank && b.Current.Known():
		var errors []field.Error
		b.Area, errors = areaFound(fields, b.Current.SI/b.Density.SI/b.Count.SI-b.Work.Extra)
		return b, errors
	}
	return b, nil
}

// areaFound takes an area that was found, or says why there can be none.
func areaFound(fields *field.Set, area float64) (quantity.Optional, []field.Error) {
	if area > 0 {
		return quantity.Known(area), nil
	}
	return quantity.Optional{State: quantity.Bad}, contradiction(fields, "the other exposed metal and the undercut alone take more than this current gives",
		field.Current, field.Extra, field.Edge, field.Time, field.Density)
}

// solve finds by the law what is not given.
func solve(fields *field.Set, law Law, b Bite) (Bite, []field.Error) {
	if !law.Known || b.Shape == quantity.Bad {
		return b, nil
	}
	switch {
	case b.Depth.Known() && b.Time.Known():
		if !b.Watched {
			return solveAround(fields, law, b)
		}
	case b.Depth.Known() && b.Time.State == quantity.Blank:
		b.Time = b.found(field.Time, b.TimeBy(law.Law))
	case b.Time.Known() && b.Depth.State == quantity.Blank && b.Until.Tells():
		b.Depth = b.found(field.Depth, b.DepthAfter(law.Law, b.Time.SI))
	}
	return b, nil
}

// solveAround finds current, area or density when depth and time are given.
func solveAround(fields *field.Set, law Law, b Bite) (Bite, []field.Error) {
	switch {
	case b.Area.Known() && b.Current.State == quantity.Blank:
		b.Current = b.found(field.Current, law.Current(b.Piece(), b.Depth.SI, b.Time.SI))
	case b.Current.Known() && b.Area.State == quantity.Blank:
		var errors []field.Error
		b.Area, errors = areaFound(fields, law.Area(b.Work, b.Depth.SI, b.Current.SI, b.Time.SI).SI)
		if errors == nil {
			b.Found = []field.Name{field.Area}
		}
		return b, errors
	case b.Density.State == quantity.Blank && b.Work.Edge == 0 && !b.Whole():
		b.Density = b.found(field.Density, law.DensityFor(b.Depth.SI, b.Time.SI))
	}
	return b, nil
}

// found notes that the law found a figure, if it did.
func (b *Bite) found(name field.Name, x quantity.Optional) quantity.Optional {
	if !(x.SI > 0) {
		return quantity.Optional{}
	}
	b.Found = []field.Name{name}
	return x
}

// alsoFound lists a current or an area that follows from the density: it
// counts as found if find names it, or if it was the only blank of the four.
func alsoFound(fields *field.Set, b Bite) (found []field.Name) {
	only := b.Asked.Depth.Known() && b.Asked.Time.Known() && !b.Watched
	for _, one := range []struct {
		name       field.Name
		asked, now quantity.Optional
	}{{field.Current, b.Asked.Current, b.Current}, {field.Area, b.Asked.Area, b.Area}} {
		follows := one.asked.State == quantity.Blank && one.now.Known()
		if follows && (only || fields.Pick(field.Find) == one.name.String()) && !slices.Contains(b.Found, one.name) {
			found = append(found, one.name)
		}
	}
	return found
}

// readings are the ammeter's.
func readings(fields *field.Set) trial.Readings {
	if !fields.Given(field.Readings) {
		return nil
	}
	var list trial.Readings
	for _, p := range fields.Value(field.Readings).Pairs {
		list = append(list, trial.Reading{Time: p.First, Current: p.Second})
	}
	return list.PastMidnight()
}

// Step is one of several bites, with areas stopped out between them.
type Step = bite.Bitten

// stopOut works successive bites, each with the open area it starts with, at
// one density: that given, or what the current makes on the first.
func stopOut(fields *field.Set, law Law, b Bite) (Bite, []Step) {
	if !fields.Given(field.Bites) || !b.Agrees || !law.Known || b.Shape == quantity.Bad {
		return b, nil
	}
	var bites []bite.Bite
	for _, p := range fields.Value(field.Bites).Pairs {
		bites = append(bites, bite.Bite{Depth: p.First, Area: p.Second})
	}
	if !b.Density.Known() {
		return b, nil
	}
	steps := law.Bites(b.Work, b.Density.SI, bites)
	b.Time = bite.InAll(steps).Time
	b.Found = append(b.Found, field.Time)
	return b, steps
}

// wholeDepth is how deep the deepest areas are etched: the depth, or all bites.
func wholeDepth(fields *field.Set, b Bite) quantity.Optional {
	bites := fields.Value(field.Bites)
	switch {
	case b.Depth.State != quantity.Blank:
		return b.Depth
	case bites.State != quantity.Given:
		return quantity.Optional{State: bites.State}
	}
	var all float64
	for _, pair := range bites.Pairs {
		all += pair.First
	}
	return quantity.Known(all)
}
