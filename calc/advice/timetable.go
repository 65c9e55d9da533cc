package advice

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"saltbite/calc/batch"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// LoadRow is what hangs on one supply at once, and where it stands in a timetable
// drawn to scale.
type LoadRow struct {
	Load, Round, Supply     int
	Start, Minutes, Amperes Cell
	From, To                float64 // % of the timetable's width
	Text                    string
	Pieces                  []PieceRow
}

// PieceRow are equal pieces of a load that are lifted at one time.
type PieceRow struct {
	Name       string
	Count      int
	Lift, Down Cell    // when, after the beginning, and what the current is turned down to
	To         float64 // % of the timetable's width
	Text       string
}

// ClassStep is something to do at a moment of the class.
type ClassStep struct {
	At           Cell   // after the beginning
	Time         string // by the clock where the start is known, else after the beginning
	Load, Supply int
	Text         string
}

// Tick is a mark on the timetable's scale.
type Tick struct {
	At   float64 // % of its width
	Text string
}

// ClassCard is what a student takes to the bench: pieces of a row that hang in one load.
type ClassCard struct {
	Name  string
	Lines []string
}

// classView is a class with what prints its figures.
type classView struct {
	job.Class
	field.Printer
}

// Class says how a class goes.
func Class(c job.Class) Many {
	m := Many{Errors: c.Errors, Cautions: classCautions(c)}
	if first := gravest(m.Cautions); first != nil && first.Level == Stop {
		m.Sentence = first.Text
		return m
	}
	if !c.Known {
		m.Cautions = nil
		return m
	}
	v := classView{c, c.Fields.Printer()}
	m.Answers = v.answers()
	m.Loads, m.Steps, m.Ticks, m.Cards = v.loads(), v.steps(), v.ticks(), v.cards()
	m.Sentence = v.sentence()
	if c.TooLong {
		m.Instead = v.instead()
	}
	return m
}

func (v classView) answers() (answers []Figure) {
	put := func(name string, like field.AnswerName, x quantity.Optional) {
		if x.Known() {
			answers = append(answers, Figure{Name: name, Value: like.Row().In(x.SI), Unit: like.Row().Unit, Text: v.Say(like, x.SI)})
		}
	}
	count := func(name string, n int) {
		answers = append(answers, Figure{Name: name, Value: float64(n), Text: strconv.Itoa(n)})
	}
	put("totalCurrent", field.AnswerCurrent, quantity.Known(v.Plan.Current))
	count("loads", len(v.Plan.Loads))
	count("rounds", v.Plan.Rounds)
	put("minutes", field.AnswerTime, quantity.Known(v.Plan.End))
	put("deepestThatFits", field.AnswerDepth, v.Deepest)
	put("cathodeNeeded", field.AnswerCathodeNeeded, v.CathodeNeeded)
	put("tankWidth", field.AnswerDepth, v.TankWidth)
	put("cableNeeded", field.AnswerDepth, v.CableNeeded)
	if needs := v.Circuit.Volts; !v.Circuit.Assumed && needs.Known() {
		answers = append(answers, v.ranged("cellVolts", field.AnswerCellVolts, needs))
	}
	put("wireDrop", field.AnswerWireDrop, v.Circuit.Drop)
	put("wireLimit", field.AnswerWireLimit, v.Circuit.Limit)
	put("bathDrop", field.AnswerBathDrop, v.BathDrop)
	put("saltMass", field.AnswerSaltMass, v.SaltMass)
	put("saltToAdd", field.AnswerSaltToAdd, v.SaltToAdd)
	put("removed", field.AnswerRemoved, v.Removed)
	put("readyAt", field.AnswerReadyAt, v.ReadyAt)
	if v.Cost.Known() {
		answers = append(answers, Figure{Name: "cost", Value: v.Cost.SI, Text: quantity.PrintNumber(v.Cost.SI)})
	}
	return answers
}

func (v classView) sentence() string {
	said := "One load takes "
	if n := len(v.Plan.Loads); n > 1 {
		said = countInWords(n) + " loads in " + lower(countInWords(v.Plan.Rounds)) + plural(float64(v.Plan.Rounds), " round") + " take "
	}
	said += v.time(v.Plan.End) + ", at " + v.Say(field.AnswerCurrent, v.Plan.Current) + " at most"
	session := v.Fields.Amount(field.Session)
	switch {
	case v.TooLong:
		return said + ": longer than the " + v.time(session.SI) + " you have."
	case session.Known():
		return said + ". It fits the " + v.time(session.SI) + " you have."
	}
	return said + "."
}

// instead says what fits the session.
func (v classView) instead() (said []string) {
	i := v.Instead
	if i.Supplies > 0 {
		said = append(said, "With "+strconv.Itoa(i.Supplies)+" supplies all of it takes "+v.time(i.End)+".")
	}
	if s := i.Series; s.Cells > 0 {
		said = append(said, "With "+strconv.Itoa(s.Cells)+" cells in series, a tank each, all of it takes "+v.time(s.End)+". It costs volts: about "+
			v.Say(field.AnswerCellVolts, s.Volts)+" in the place of "+v.Say(field.AnswerCellVolts, s.One)+"."+padding(s.Padded))
	}
	if v.Deepest.Known() {
		said = append(said, "All pieces fit at "+v.Say(field.AnswerDepth, v.Deepest.SI)+" deep, in the same loads.")
	}
	if i.InTime > 0 {
		are := " are"
		if i.InTime == 1 {
			are = " is"
		}
		said = append(said, "As it is, "+strconv.Itoa(i.InTime)+" of "+strconv.Itoa(i.Pieces)+plural(float64(i.Pieces), " piece")+are+" done in time. Leave the rest for another day.")
	}
	return said
}

// padding says what hangs where a cell has a piece less than the others.
func padding(padded bool) string {
	if padded {
		return " Where a cell has a piece less, hang scrap with as much exposed metal."
	}
	return ""
}

// ranged is an answer with its range.
func (v classView) ranged(name string, like field.AnswerName, x quantity.Range) Figure {
	low, high := like.Row().In(x.Low.SI), like.Row().In(x.High.SI)
	return Figure{Name: name, Value: like.Row().In(x.SI), Unit: like.Row().Unit, Text: v.Say(like, x.SI), Low: &low, High: &high,
		Range: v.Say(like, x.Low.SI) + " to " + v.Say(like, x.High.SI)}
}

func (v classView) time(si float64) string { return v.Say(field.AnswerTime, si) }

func (v classView) cell(like field.AnswerName, si float64) Cell {
	return Cell{like.Row().In(si), like.Row().Unit, v.Say(like, si)}
}

// moment is a time after the beginning as people look for it: by the clock where
// the start is known.
func (v classView) moment(after float64) string {
	if start := v.Fields.Amount(field.Start); start.Known() {
		return quantity.PrintClock(start.SI + after)
	}
	if after == 0 {
		return "at the start"
	}
	return "after " + v.time(after)
}

// hanging is when a load is hung, with the word that goes before a time of the clock.
func (v classView) hanging(after float64) string {
	if v.Fields.Amount(field.Start).Known() {
		return "by " + v.moment(after)
	}
	return v.moment(after)
}

// share is where a time stands in the timetable, %.
func (v classView) share(after float64) float64 {
	return math.Round(1e4*after/v.Plan.End) / 100
}

func (v classView) loads() (rows []LoadRow) {
	for i, load := range v.Plan.Loads {
		end := load.Start + load.Duration
		row := LoadRow{Load: i + 1, Round: load.Round, Supply: load.Supply, Start: v.cell(field.AnswerTime, load.Start),
			Minutes: v.cell(field.AnswerTime, load.Duration), Amperes: v.cell(field.AnswerCurrent, load.Current),
			From: v.share(load.Start), To: v.share(end), Text: v.loadWords(load)}
		for _, step := range inSteps(load) {
			does := "lift " + v.lifting(step[0].At) + ", " + v.turnedTo(step[len(step)-1].Left)
			for _, lift := range step {
				row.Pieces = append(row.Pieces, PieceRow{v.Names[lift.Row], lift.Count, v.cell(field.AnswerTime, lift.At), v.cell(field.AnswerCurrent, lift.Left),
					v.share(lift.At), does})
			}
		}
		rows = append(rows, row)
	}
	return rows
}

// lifting is when, with the word that goes before a time of the clock.
func (v classView) lifting(after float64) string {
	if v.Fields.Amount(field.Start).Known() {
		return "at " + v.moment(after)
	}
	return v.moment(after)
}

// turnedTo is what is done to a supply as pieces are lifted.
func (v classView) turnedTo(left float64) string {
	if left == 0 {
		return "switch off"
	}
	return "down to " + v.Say(field.AnswerCurrent, left)
}

func (v classView) loadWords(load batch.Load) string {
	of := viewOf(&v.Rows[load.Lifts[0].Row])
	said := v.Say(field.AnswerCurrent, load.Current) + " for " + v.time(load.Duration) + ", in " + of.bathInWords()
	if on := v.supplyOf(load); on != "" {
		said = on + "at " + said
	}
	return said
}

// together is how far apart, as a share of the load's time, lifts may be and still
// be one step: less than a hundredth of the depth.
const together = 0.01

// inSteps are a load's lifts, those of one step together.
func inSteps(load batch.Load) (steps [][]batch.Lift) {
	for lifts := load.Lifts; len(lifts) > 0; {
		n := 1
		for n < len(lifts) && lifts[n].At-lifts[0].At < together*load.Duration {
			n++
		}
		steps = append(steps, lifts[:n])
		lifts = lifts[n:]
	}
	return steps
}

// steps are what is to be done, in its order.
func (v classView) steps() (steps []ClassStep) {
	for i, load := range v.Plan.Loads {
		put := func(at float64, text string) {
			steps = append(steps, ClassStep{v.cell(field.AnswerTime, at), v.moment(at), i + 1, load.Supply, text})
		}
		put(load.Start, "Hang "+v.named(load.Lifts)+". Switch "+v.supplyOf(load)+"on at "+v.Say(field.AnswerCurrent, load.Current))
		for _, step := range inSteps(load) {
			put(step[0].At, "Lift "+v.named(step)+", "+v.turnedDown(load, step[len(step)-1].Left))
		}
	}
	slices.SortStableFunc(steps, func(a, b ClassStep) int { return cmp.Compare(a.At.Value, b.At.Value) })
	return steps
}

func (v classView) turnedDown(load batch.Load, left float64) string {
	if left == 0 {
		return "switch " + v.supplyOf(load) + "off"
	}
	return "turn " + v.supplyOf(load) + "down to " + v.Say(field.AnswerCurrent, left)
}

// onSupply says on which supply a load hangs, where there are several.
func (v classView) onSupply(load batch.Load) string {
	if on := v.supplyOf(load); on != "" {
		return " on " + strings.TrimSpace(on)
	}
	return ""
}

// supplyOf names a load's supply where there are several.
func (v classView) supplyOf(load batch.Load) string {
	if v.Fields.Amount(field.Supplies).SI > 1 {
		return "supply " + strconv.Itoa(load.Supply) + " "
	}
	return ""
}

// named lists pieces by their names.
func (v classView) named(lifts []batch.Lift) string {
	var names []string
	for _, lift := range lifts {
		names = append(names, countedName(v.Names[lift.Row], lift.Count))
	}
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

// countedName is a name with how many pieces of it.
func countedName(name string, count int) string {
	if count == 1 {
		return name
	}
	return name + " × " + strconv.Itoa(count)
}

// mostTicks stand on the timetable's scale, as many as are read on a phone.
const mostTicks = 4

// ticks are the marks of the scale, at whole steps that people count time in. None
// stands so near the end that its text would go over it.
func (v classView) ticks() (ticks []Tick) {
	const minute, day, nearEnd = 60, 24 * 60 * 60, 0.8
	step := 5.0 * minute
	for _, s := range []float64{10, 15, 30, 60, 120, 240, 480, 720, 1440} {
		if v.Plan.End/step > mostTicks {
			step = s * minute
		}
	}
	for v.Plan.End/step > mostTicks {
		step *= 2
	}
	start := v.Fields.Amount(field.Start)
	for at := 0.0; at <= nearEnd*v.Plan.End; at += step {
		text := quantity.PrintClock(start.SI + at)
		if start.Known() {
			text = quantity.PrintClock(math.Mod(start.SI+at, day))
		}
		ticks = append(ticks, Tick{v.share(at), text})
	}
	return ticks
}

// cards are what the students take to the bench.
func (v classView) cards() (cards []ClassCard) {
	for i, load := range v.Plan.Loads {
		for _, lift := range load.Lifts {
			w := viewOf(&v.Rows[lift.Row])
			piece := w.Bite.Piece()
			piece.Pieces = 1
			when, inBath := "after ", v.time(lift.At-load.Start)+" in the bath"
			if load.Start > 0 || v.Fields.Amount(field.Start).Known() {
				when = v.lifting(lift.At) + ": "
			}
			cards = append(cards, ClassCard{countedName(v.Names[lift.Row], lift.Count), []string{
				field.Capital(w.metalInWords()) + ", " + w.said(field.Depth) + " deep, in " + w.bathInWords(),
				"Load " + strconv.Itoa(i+1) + v.onSupply(load) + ": hang it " + v.hanging(load.Start),
				"Lift it " + when + inBath,
				"Each piece loses about " + v.Say(field.AnswerRemoved, w.Law.Removed(w.Law.Charge(piece, w.Bite.Depth.SI).SI).SI),
			}})
		}
	}
	return cards
}

// classCautions are what a class calls for: that it takes too long, then what can
// hurt a person, each once.
func classCautions(c job.Class) []Caution {
	p := c.Fields.Printer()
	var list raised
	own := job.Work(c.Fields)
	own.Circuit.CellVolts, own.Circuit.WireDrop, own.Circuit.WireLimit = c.Circuit.Volts, c.Circuit.Drop, c.Circuit.Limit
	own.Bite.Current = quantity.Positive(c.Plan.Current)
	of := viewOf(&own)
	of.warnOfVolts(&list)
	if c.Known {
		of.warnOfLackingVolts(&list)
		of.warnOfThinWire(&list)
	}
	if c.TooLong {
		list = append(list, Caution{Code: "session-short", Level: Warn, Field: field.Session.String(), Card: "Longer than the time you have",
			Text: "Etch fewer at once, less deep, or add a supply: it takes " + p.Say(field.AnswerTime, c.Plan.End) + ", longer than the time you have."})
	}
	for i := range c.Rows {
		v := viewOf(&c.Rows[i])
		for _, warn := range []func(*raised){v.warnOfHanger, v.warnOfSilverNitrate, v.warnOfMetals, v.warnOfGas, v.warnOfSalt} {
			warn(&list)
		}
	}
	return gravestFirst(list)
}
