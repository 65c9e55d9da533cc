// Package job composes the other rooms: it turns a set of fields into answers,
// a sentence, cautions and errors. Data flows one way, and every answer is
// worked out as soon as the fields it needs are there; a field that can't be
// read blocks only the answers that need it.
package job

import (
	"math"

	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Answer works out all that the fields suffice for. It never fails: what is
// missing or can't be read stands in Errors.
func Answer(s *field.Set) Reply { return work(s).reply }

// work is the bench with all its answers on it.
func work(s *field.Set) *bench {
	b := &bench{fields: s, figures: make(map[string]answered, len(field.Answers))}
	b.us = s.Value("units").Pick == "us"
	b.setAside()
	b.understandMetal()
	b.understandSalt()
	b.workHidden()
	b.workBite()
	b.workMix()
	b.workSheet()
	b.workLimits()
	b.suggest()
	b.suggestStrength()
	b.workSupply()
	b.answerHidden()
	b.workKeep()
	b.workCourse()
	b.warn()
	if b.salt.salt != nil {
		b.reply.Salt = b.salt.salt.Name
	}
	b.reply.Sentence = b.sentence()
	b.reply.Answers = b.answers()
	b.reply.Errors = s.Errors()
	return b
}

// bench is one answer in the making. The rooms below it are pure; it carries
// what they are given from one to the next.
type bench struct {
	fields  *field.Set
	reply   Reply
	us      bool
	figures map[string]answered

	metal  metalUsed
	salt   saltUsed
	hidden hiddenFound
	bite   biteWorked
	mix    mixWorked
	supply supplyWorked
}

// none stands for an end of a range that is not known.
var none = math.NaN()

// answered is a figure in SI with its range.
type answered struct{ si, low, high float64 }

// What puts, reads and prints a figure is called from everywhere. The compiler
// would set it into each caller, for 6 kB of the program (compressed) and no
// time to speak of.

// put records an answer in SI.
//
//go:noinline
func (b *bench) put(name string, si float64) { b.putRange(name, answered{si, none, none}) }

// putRange records an answer with its range. What is not finite is no answer.
//
//go:noinline
func (b *bench) putRange(name string, fig answered) {
	if finite(fig.si) {
		b.figures[name] = fig
	}
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// answers lists the figures in the order of their table, in their fixed units
// and as the page prints them.
func (b *bench) answers() []Figure {
	list := make([]Figure, 0, len(b.figures))
	for _, row := range field.Answers {
		fig, ok := b.figures[row.Name]
		if !ok {
			continue
		}
		a := Figure{Name: row.Name, Value: row.In(fig.si), Unit: row.Unit, Text: b.print(row, fig.si)}
		if !finite(a.Value) {
			continue
		}
		a.Low, a.High = end(fig.low, row), end(fig.high, row)
		if a.Range = b.span(row, fig); a.Range != "" {
			a.By = b.restsOn(row.Name)
		}
		list = append(list, a)
	}
	return list
}

func end(si float64, row field.Answer) *float64 {
	v := row.In(si)
	if !finite(v) {
		return nil
	}
	return &v
}

// span prints a range; an end not known is the value itself.
func (b *bench) span(row field.Answer, fig answered) string {
	low, high := fig.low, fig.high
	if !finite(low) && !finite(high) {
		return ""
	}
	if !finite(low) {
		low = fig.si
	}
	if !finite(high) {
		high = fig.si
	}
	return b.print(row, low) + " to " + b.print(row, high)
}

// restsOn says what a range rests on where the bath makes it another than the
// answer's own words say.
func (b *bench) restsOn(name string) string {
	if b.inCommonSalt() && (name == "depth" || name == "time") {
		return "as copper leaves with one charge or two"
	}
	return ""
}

// print prints a quantity in SI as an answer's row says, in the units asked for.
func (b *bench) print(row field.Answer, si float64) string {
	switch {
	case row.Form == field.ClockTime:
		return clock(si)
	case row.Form == field.GaugeNumber:
		return gauge(si)
	case row.Kind == quantity.Number:
		return quantity.PrintCount(si)
	}
	unit := row.Unit
	if row.Text != "" {
		unit = row.Text
	}
	if b.us && row.US != "" {
		unit = row.US
	}
	return quantity.Print(si, row.Kind, unit)
}

// text prints an answer that is there.
//
//go:noinline
func (b *bench) text(name string) string { return b.say(name, b.figures[name].si) }

// say prints a figure in SI as the answer of that name would be.
func (b *bench) say(name string, si float64) string {
	return b.print(field.AnswerByName(name), si)
}

//go:noinline
func (b *bench) has(name string) bool {
	_, ok := b.figures[name]
	return ok
}

// number is one in SI that may not be there.
type number struct {
	v     float64
	state field.State
}

func known(v float64) number { return number{v, field.Given} }

func (f number) known() bool { return f.state == field.Given || f.state == field.Assumed }

// amount reads a field in SI.
//
//go:noinline
func (b *bench) amount(name string) number {
	v := b.fields.Value(name)
	return number{v.Q.Value, v.State}
}

// orZero reads a field that counts as nothing when blank.
func (b *bench) orZero(name string) number {
	if f := b.amount(name); f.state != field.Blank {
		return f
	}
	return known(0)
}

// worst is the state of what depends on all of these: Bad if one can't be read,
// Blank if one is not there, else Given.
// Kept out of its callers for the size of the program.
//
//go:noinline
func worst(figures ...number) field.State {
	state := field.Given
	for _, f := range figures {
		switch f.state {
		case field.Bad:
			return field.Bad
		case field.Blank:
			state = field.Blank
		}
	}
	return state
}

// within says whether two figures agree within 1 %, as two people's roundings do.
//
//go:noinline
func within(a, b float64) bool { return math.Abs(a-b) <= 0.01*math.Max(math.Abs(a), math.Abs(b)) }

// contradict puts the same contradiction at every field that takes part and was
// given: what was typed, what it disagrees with, what is wanted.
func (b *bench) contradict(why string, names ...string) {
	for _, name := range names {
		v := b.fields.Value(name)
		f, _ := field.ByName(name)
		if v.Text == "" {
			continue
		}
		b.fields.Fail(field.Error{Field: name, Code: field.Contradiction,
			Text: field.Quote(v.Text) + " disagrees: " + why + ". A blank is wanted in one of them, or " + f.Noun + " that agrees, such as " + f.Example + "."})
	}
}

// need puts a quiet "needed" at a blank field.
func (b *bench) need(names ...string) {
	for _, name := range names {
		if b.fields.Value(name).Text != "" {
			continue
		}
		f, _ := field.ByName(name)
		b.fields.Fail(field.Error{Field: name, Code: field.Missing, Text: "Needed here or in another blank row. " + f.Wanted()})
	}
}
