package advice

import (
	"slices"

	"saltbite/calc/field"
)

// Level says how grave a caution is.
type Level string

const (
	Note Level = "note"
	Warn Level = "warn"
	Stop Level = "stop" // blocks the answers that would mislead
)

// Caution is a warning beside the number it belongs to.
type Caution struct {
	Code  string
	Level Level
	Field string // the field it stands beside
	Text  string // what to do, and why
	Card  string // at most 60 characters, for the bench card and for a strip
}

// raised are the cautions of one job.
type raised []Caution

func (r *raised) raise(code string, level Level, at field.Name, text, card string) {
	*r = append(*r, Caution{Code: code, Level: level, Field: at.String(), Text: text, Card: card})
}

// cautions lists what the job calls for: stops, then warnings, then notes. Among
// those of one level, what can hurt a person comes first, then what this job's
// figures show, then what always stands.
func (v *view) cautions() []Caution {
	var list raised
	v.warnOfBeryllium(&list)
	v.warnOfVolts(&list)
	v.warnOfWrongBath(&list)
	v.warnOfHanger(&list)
	v.warnOfWeight(&list)
	v.warnOfReadings(&list)
	v.warnOfThinSheet(&list)
	v.warnOfSilverNitrate(&list)
	v.warnOfMetals(&list)
	v.warnOfLimits(&list)
	v.warnOfDensity(&list)
	v.warnOfSupply(&list)
	v.warnOfLines(&list)
	v.warnOfMix(&list)
	v.warnOfGas(&list)
	v.warnOfSalt(&list)
	v.warnOfDrift(&list)
	v.warnOfMetal(&list)
	v.warnOfEfficiency(&list)
	v.warnOfCathodeMetal(&list)
	v.warnOfLongRun(&list)
	v.warnOfUnlikely(&list)
	return gravestFirst(list)
}

// gravestFirst are stops, then warnings, then notes, each text once.
func gravestFirst(list raised) (sorted []Caution) {
	for _, level := range [...]Level{Stop, Warn, Note} {
		for _, c := range list {
			if c.Level == level && !slices.Contains(sorted, c) {
				sorted = append(sorted, c)
			}
		}
	}
	return sorted
}

// gravest is the first of them, nil if the list is empty.
func gravest(cautions []Caution) *Caution {
	if len(cautions) == 0 {
		return nil
	}
	return &cautions[0]
}

// stopped says whether a stop stands.
func stopped(cautions []Caution) bool {
	first := gravest(cautions)
	return first != nil && first.Level == Stop
}
