// Package job works out a set of fields. It is a line of stages; each is a
// function from values to a value and to the mistakes that it found. A stage is
// given what it needs as arguments, so that a wrong order does not compile, and
// it changes nothing that it is given.
//
// All that is worked out stands in Worked, in SI. Package advice turns it into
// words and pictures.
package job

import (
	"slices"

	"saltbite/calc/field"
)

// Worked is all that was worked out of a set of fields, in SI. What can't be
// worked out is not known.
type Worked struct {
	Fields *field.Set // as read; without the text of what is to be found

	Metal    Metal
	Salt     Salt
	Barred   Barred
	Law      Law
	Face     Face
	Hidden   Hidden
	Bite     Bite
	Steps    []Step
	Loss     Loss
	Effects  HiddenEffects
	Mix      Mix
	Standing Standing
	Sheet    Sheet
	Lines    Lines
	Limits   Limits
	Suggest  Suggestion
	Circuit  Circuit
	Supply   Supply
	Used     Used
	Course   Course

	Errors []field.Error
}

// Work works out all that the fields suffice for. It never fails: what is
// missing or can't be read stands in Errors, and blocks only what depends on it.
func Work(read *field.Set) Worked {
	w := workBite(withoutFind(read))
	fields, metal, salt, barred, law, bite := w.Fields, w.Metal, w.Salt, w.Barred, w.Law, w.Bite

	mix, ofMix := workMix(fields, salt, barred)
	standing, ofStanding := findStanding(fields, metal, salt, barred, law, mix)
	w.Loss = findLoss(metal, barred, law, w.Hidden, bite, w.Steps)
	w.Mix, w.Standing = mix, standing
	used, ofUsed := workUsed(fields, salt, bite, w.Loss, mix, standing)
	w.Used = used
	w.Effects = findEffects(fields, barred, w.Hidden, bite)
	w.Limits = findLimits(fields, salt, barred, w.Face, bite, mix, standing, used)
	w.Suggest = suggest(fields, metal, barred, law, bite, w.Limits)
	w.Circuit = workCircuit(fields, salt, barred, law, w.Face, bite, mix, standing)
	w.Supply = judgeSupply(fields, metal, salt, barred, w.Face, bite, mix, standing, w.Suggest, w.Circuit)
	w.Course = workCourse(fields, barred, law, w.Hidden, bite)
	whole := wholeDepth(fields, bite)
	w.Sheet, w.Lines = workSheet(fields, whole), workLines(fields, whole)
	w.Errors = slices.Concat(w.Errors, findMissing(fields, metal, barred, bite, w.Loss), ofMix, ofStanding, ofUsed)
	return w
}

// workBite is the line as far as the bite, with the mistakes found on the way.
func workBite(fields *field.Set) Worked {
	metal, ofMetal := readMetal(fields)
	salt, ofSalt := readSalt(fields, metal)
	barred := findBarred(metal, salt)
	law, ofLaw := findLaw(fields, metal, salt, barred)

	face, ofFace := readFace(fields)
	hidden, ofHidden := findHidden(fields, face, metal, salt)
	work, ofWork := readWork(fields, face, hidden)
	until, ofUntil := readUntil(fields)
	bite, ofBite := solveBite(fields, law, work, until)
	bite, steps := stopOut(fields, law, bite)

	return Worked{
		Fields: fields, Metal: metal, Salt: salt, Barred: barred, Law: law,
		Face: face, Hidden: hidden, Bite: bite, Steps: steps,
		Errors: slices.Concat(fields.Errors(), ofMetal, ofSalt, ofLaw, ofFace, ofHidden, ofWork, ofUntil, ofBite),
	}
}

// faceFields make the open area out of a face and its share.
var faceFields = []field.Name{field.Open, field.Width, field.Height, field.Diameter}

// withoutFind sets the text of the field that find names aside.
func withoutFind(read *field.Set) *field.Set {
	find, ok := field.NameOf(read.Pick(field.Find))
	switch {
	case !ok:
		return read
	case find == field.Area:
		return read.Without(append([]field.Name{field.Area}, faceFields...)...)
	}
	return read.Without(find)
}
