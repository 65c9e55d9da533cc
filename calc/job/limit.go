package job

import (
	"math"

	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Limits are where the bath stops keeping up with the current, at the work and
// at the cathode.
type Limits struct {
	Film          quantity.Range    // A/m2, at which salt crystallises on the metal
	Cathode       quantity.Range    // A/m2, at which the cathode runs out of metal
	CathodeNeeded quantity.Optional // m2
	Still         bool              // spent liquid stays on work and cathode
}

func findLimits(fields *field.Set, salt Salt, barred Barred, face Face, b Bite, mix Mix, standing Standing, used Used) (l Limits) {
	work := besideWork(fields, face, b)
	if salt.Known() && salt.Salt.Metal != "" {
		l.Still = work.Settles()
	}
	if !mix.Ready || standing.Unclear || barred.Any() || fields.Value(field.Position).State == quantity.Bad || fields.Value(field.Stir).State == quantity.Bad {
		return l
	}
	l.Film = mix.Solution.FilmDensity(work)
	l.Cathode = mix.Solution.CathodeLimit(besideCathode(fields, work))
	if standing.Known {
		l.Film = standing.Now.FilmDensity(work)
		l.Cathode = standing.Now.CathodeLimit(besideCathode(fields, work), used.MetalLost.SI)
	}
	if l.Cathode.Known() {
		l.CathodeNeeded = bath.CathodeNeeded(b.Current.SI, l.Cathode.SI)
	}
	return l
}

// position is how the work is placed.
func position(fields *field.Set) bath.Position {
	switch fields.Pick(field.Position) {
	case "face-down":
		return bath.FaceDown
	case "face-up":
		return bath.FaceUp
	}
	return bath.Hanging
}

// usualLength stands for a face whose size is not known, m.
const usualLength = 0.03

// besideWork is the liquid beside the work: as long as the face's height, else
// its diameter, else the root of the open area.
func besideWork(fields *field.Set, face Face, b Bite) bath.Face {
	beside := bath.Face{Length: usualLength, Position: position(fields), Stirred: fields.Pick(field.Stir) == "stirred"}
	if length := face.Length(); length.Known() {
		beside.Length = length.SI
	} else if b.Area.Known() {
		beside.Length = math.Sqrt(b.Area.SI)
	}
	return beside
}

// besideCathode is the liquid beside the cathode: as long as the root of its
// area, else as the work.
func besideCathode(fields *field.Set, work bath.Face) bath.Face {
	if area := fields.Amount(field.Cathode); area.Known() {
		work.Length = math.Sqrt(area.SI)
	}
	return work
}

// Suggestion is a current density for a job that has none, and what
// follows from it.
type Suggestion struct {
	Density quantity.Optional // A/m2
	Current quantity.Optional // A
	Time    quantity.Optional // s
}

func suggest(fields *field.Set, metal Metal, barred Barred, law Law, b Bite, limits Limits) (s Suggestion) {
	if !metal.Given() || barred.Any() {
		return s
	}
	bare := b.bare()
	s.Density = bath.Suggest{Film: limits.Film.Optional, Cathode: limits.Cathode.Optional, CathodeArea: fields.Amount(field.Cathode),
		TotalArea: bare, Amps: fields.Amount(field.Amps)}.Density()
	switch {
	case !s.Density.Known():
	case bare.Known():
		s.Current = quantity.Known(s.Density.SI * bare.SI)
		if law.Known && b.Depth.Known() {
			s.Time = law.Time(b.Piece(), b.Depth.SI, s.Current.SI)
		}
	case law.Known && b.Depth.Known() && b.Work.Edge == 0:
		s.Time = law.TimeAt(s.Density.SI, b.Depth.SI)
	}
	return s
}
