package job

import "saltbite/calc/field"

// Reply is all that a set of fields answers.
type Reply struct {
	Sentence string
	Found    []string
	Answers  []Figure // in the order of field.Answers
	Metals   []MetalRow
	Salt     string // of the bath: as typed, else the metal's own; "" while it is not known
	Bites    []BiteRow
	Cautions []Caution
	Errors   []field.Error
}

// Figure is one answer.
type Figure struct {
	Name  string
	Value float64 // in Unit, not rounded
	Unit  string
	Text  string // as the page prints it
	Low   *float64
	High  *float64
	Range string // as the page prints Low and High; "" where none is known
	By    string // what the range rests on, where that depends on the bath
}

// MetalRow is a reading of what was typed as the metal: the first is the one
// used, the others are its rivals.
type MetalRow struct {
	ID          string
	Name        string
	Composition string
	Density     float64 // g/cm3
	Family      string
	Why         string
	Remark      string
}

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
	Field string // the field it stands beside; "" for none
	Text  string
	Card  string // at most 60 characters, for the bench card
}
