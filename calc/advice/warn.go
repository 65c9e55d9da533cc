package advice

import (
	"strconv"
	"strings"

	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// What this job's figures call for.

// guide is said of every figure that rests on a limit.
const guide = " Rough: the true limit may be half or twice this."

func (v *view) warnOfWeight(to *raised) {
	if v.Course.Heavier {
		to.raise("polarity", Stop, field.After,
			"Switch off and swap the cables: the piece weighs more than before, so it was plated. The work goes to the positive (red), the cathode to the negative (black).",
			"Heavier than before: work to the positive (red)")
	}
	if v.Course.NoLoss {
		to.raise("no-loss", Warn, field.After,
			"Switch off and look: the charge should have taken metal, and next to none is gone. Check the contact, the resist left on the metal, and the bath.",
			"No weight lost: switch off, check contact and film")
	}
	if e := v.Course.EfficiencyNow; isOdd(e) && !v.Course.NoLoss {
		to.raise("efficiency-odd", Warn, field.After,
			"Check the exposed area, other exposed metal, drying and the name of the metal: an efficiency of "+v.text(field.AnswerEfficiencyNow)+" is odd.",
			"Odd efficiency: check area, drying, metal")
	}
}

// warnOfEfficiency is for one that was typed.
func (v *view) warnOfEfficiency(to *raised) {
	if e := v.Fields.Amount(field.Efficiency); e.Typed() && isOdd(e) && !isOdd(v.Course.EfficiencyNow) {
		to.raise("efficiency-odd", Warn, field.Efficiency,
			"Weigh a trial before you trust a current efficiency of "+quantity.Quote(v.Fields.Text(field.Efficiency))+": benches give 85 to 110 %. Much less is gas, a film, or exposed metal that was left out.",
			"Odd efficiency: weigh a trial first")
	}
}

func isOdd(efficiency quantity.Optional) bool {
	return efficiency.Known() && (efficiency.SI < oddlyLow || efficiency.SI > oddlyHigh)
}

// Where an efficiency is odd, and where a run is long; common practice, no source.
const (
	oddlyLow  = 0.85
	oddlyHigh = 1.10
	longRun   = 12 * 3600 // s
)

func (v *view) warnOfReadings(to *raised) {
	if v.Course.Falls {
		to.raise("current-falls", Warn, field.Readings,
			"Switch off and look: the current is under half of where it began. A film on the metal, a lost contact or a spent bath does that.",
			"Current has halved: switch off and look")
	}
}

func (v *view) warnOfLongRun(to *raised) {
	if v.Bite.Time.SI > longRun && !v.Barred.Any() {
		to.raise("long-run", Note, field.Time,
			"Don't leave a first run alone: "+v.text(field.AnswerTime)+" is long, and resist can lift. Think of more current or a shallower etch.",
			"Long run: resist may lift; do not leave it alone")
	}
}

// A sheet this thick, m, is more likely a gauge typed without its word;
// common practice, no source: sheet for this work is up to 4 mm.
const plateThick = 6e-3

func (v *view) warnOfThinSheet(to *raised) {
	s := v.Sheet
	if s.Thickness.Known() && s.Thickness.SI >= plateThick {
		to.raise("gauge-meant", Note, field.Sheet,
			"Is that a gauge? Type it with its word, such as 18 ga: "+v.Say(field.AnswerLeft, s.Thickness.SI)+" is a thick plate.",
			"Is the sheet's thickness a gauge? Type 18 ga")
	}
	advise := "use a sheet of " + v.orText(field.AnswerThinnestSheet, "more") + " or more, or etch less deep"
	switch {
	case s.EatenThrough:
		to.raise("sheet-thin", Stop, field.Sheet,
			"The sheet is eaten through at this depth: "+advise+".", "The sheet is eaten through")
	case s.Left.Known() && s.Least.Known() && s.Left.SI < s.Least.SI*(1-1e-9):
		to.raise("sheet-thin", Warn, field.Sheet,
			field.Capital(advise)+": "+v.text(field.AnswerLeft)+" is left, less than the "+v.Say(field.AnswerLeft, s.Least.SI)+" to leave.",
			"Sheet too thin for this depth")
	}
}

func (v *view) warnOfLines(to *raised) {
	left := v.Lines.Left
	survives := v.Say(field.AnswerNarrowestLine, v.Lines.Narrowest.High.Or(v.Lines.Narrowest.Optional).SI)
	switch {
	case !left.Known():
	case left.SI <= 0:
		to.raise("line-lost", Warn, field.Line,
			"Draw the finest line wider than "+survives+", which survives the worst undercut, or etch less deep than "+
				v.orText(field.AnswerDeepestForLine, "that")+": it is gone at this depth, and the areas beside it run together.",
			"The finest line does not survive this depth")
	case left.Low.Known() && left.Low.SI <= 0:
		to.raise("line-at-risk", Note, field.Line,
			"Try it on a scrap, or draw the finest line wider than "+survives+": it keeps "+v.text(field.AnswerLineLeft)+" at the usual undercut and is gone at the worst.",
			"The finest line may not survive: try a scrap")
	}
}

// orText prints an answer, or other words where it is not there.
func (v *view) orText(name field.AnswerName, other string) string {
	if !v.has(name) {
		return other
	}
	return v.text(name)
}

// rounded forgives what a sum rounds: 35 mA on 0.7 cm2 is not over 50 mA/cm2.
const rounded = 1 + 1e-9

// Where a current density asks for care, A/m2; common practice, no source.
const (
	denseNote = 500  // 50 mA/cm2
	denseWarn = 1000 // 100 mA/cm2
)

func (v *view) warnOfDensity(to *raised) {
	density := v.Bite.Density
	switch {
	case !density.Known() || density.SI <= denseNote*rounded:
	case density.SI <= denseWarn*rounded:
		to.raise("dense", Note, v.densityField(),
			"Watch the first minutes, or use less current for longer: "+v.text(field.AnswerDensity)+" is more than 50 mA/cm², where resist begins to lift.",
			"Dense current: watch resist and gas")
	default:
		to.raise("dense", Warn, v.densityField(),
			"Use less current for longer: "+v.text(field.AnswerDensity)+" is more than 100 mA/cm², where gas lifts the resist and crystals cover the metal.",
			"Dense current: less current for longer")
	}
}

func (v *view) warnOfLimits(to *raised) {
	film := v.Limits.Film
	switch density := v.Bite.Density; {
	case !film.Known():
	case density.Known() && film.SI == 0:
		to.raise("salt-film", Warn, field.Strength,
			"Dilute the bath: it is saturated, so salt crystallises on the metal at any current, and the etch gets rough and no faster.",
			"Salt film: dilute the bath")
	case density.Known() && density.SI > film.SI:
		to.raise("salt-film", Warn, v.densityField(),
			"Use less current, a weaker bath, or stir: above "+v.text(field.AnswerFilmDensity)+" salt crystallises on the metal, and the etch gets rough and no faster."+guide,
			"Salt film: less current, weaker bath, or stir")
	case !density.Known() && v.Suggest.Density.Known() && v.Suggest.Density.SI > film.SI:
		to.raise("salt-film", Warn, field.Strength,
			"Dilute the bath: salt crystallises on the metal at "+v.text(field.AnswerFilmDensity)+", less than any useful current density."+guide,
			"Salt film: dilute the bath")
	}
	if v.Used.Spent {
		to.raise("spent", Warn, field.Etched,
			"Renew the bath's salt before you etch: no metal is left in it at the end of this run, and hydrogen comes at the cathode.",
			"Bath spent: renew its salt first")
	} else {
		v.warnOfCathode(to)
	}
	if v.Limits.Still {
		to.raise("still-layer", Note, field.Position,
			"Hang the work, turn it over, or stir: face up in a still bath the heavy liquid stays on it, and only a low current works.",
			"Liquid stands still in this position: stir")
	}
}

func (v *view) warnOfCathode(to *raised) {
	density, limit := v.Circuit.CathodeDensity, v.Limits.Cathode
	if !density.Known() || !limit.Known() || density.SI <= limit.SI/2 {
		return
	}
	level, words := Note, "is over half of the "+v.text(field.AnswerCathodeLimit)+" that the bath can feed it"
	if density.SI > limit.SI {
		level, words = Warn, "is more than the "+v.text(field.AnswerCathodeLimit)+" that the bath can feed it: powder and gas"
	}
	to.raise("cathode-limit", level, field.Cathode,
		"Use a cathode of "+v.orText(field.AnswerCathodeNeeded, "a larger area")+": "+v.text(field.AnswerCathodeDensity)+" there "+words+"."+guide,
		"Cathode too small for this current")
}

// densityField is the field that a caution about the density stands beside.
func (v *view) densityField() field.Name {
	if v.Fields.Blank(field.Density) {
		return field.Current
	}
	return field.Density
}

func (v *view) warnOfSupply(to *raised) {
	s := v.Supply
	amps, volts := v.Fields.Amount(field.Amps), v.Fields.Amount(field.Volts)
	if v.Barred.Any() || s.Verdict == circuit.Forbidden {
		return
	}
	if v.Bite.Current.Known() && amps.Known() && v.Bite.Current.SI > amps.SI*(1+1e-9) {
		to.raise("supply-weak", Warn, field.Amps,
			v.text(field.AnswerCurrent)+" is more than the supply's "+v.Say(field.AnswerCurrent, amps.SI)+"."+v.insteadSentence(),
			"The supply is too weak: see what fits")
	}
	v.warnOfLackingVolts(to)
	if s.Judged && s.Drives.Known() && volts.Known() {
		v.warnOfStrongSupply(to, s.Drives.SI/s.Current.SI)
	}
	v.warnOfThinWire(to)
	estimated := v.Circuit.Resistance.Known() && !v.Circuit.Solved
	if estimated && v.Circuit.Cell.SquareFace() {
		to.raise("face-estimate", Note, field.Width,
			"Type width and height for a better bath resistance: without them it rests on the exposed area alone.",
			"Resistance by the exposed area only")
	} else if estimated && v.Circuit.Cell.SmallCathode() {
		to.raise("face-estimate", Note, field.Cathode,
			"Check with an ammeter: the cathode is smaller than the work and close to it, and the bath's resistance may be far higher than shown.",
			"Small cathode: resistance may be higher")
	}
}

func (v *view) insteadSentence() string {
	if instead := v.instead(); instead != "" {
		return " Instead: " + instead + "."
	}
	return ""
}

func (v *view) warnOfThinWire(to *raised) {
	if v.Circuit.WireLimit.Known() && v.Bite.Current.SI > v.Circuit.WireLimit.SI {
		to.raise("wire-thin", Warn, field.Wire,
			"Use a thicker cable: this one is for "+v.text(field.AnswerWireLimit)+" at 5 A/mm², and "+v.text(field.AnswerCurrent)+" would heat it. "+
				"Isolated low-voltage supply only, fused; mains wiring is for licensed hands.",
			"Cable too thin for this current")
	}
}

func (v *view) warnOfLackingVolts(to *raised) {
	volts, needed, drop := v.Fields.Amount(field.Volts), v.Circuit.CellVolts, v.Circuit.WireDrop.SI
	if !volts.Known() || !needed.Known() || needed.High.SI+drop <= volts.SI {
		return
	}
	level, high := Note, needed.High.SI+drop
	if needed.SI+drop > volts.SI {
		level, high = Warn, needed.SI+drop
	}
	to.raise("supply-volts", level, field.Volts,
		"Bring the cathode nearer, use a larger one, or less current: the bath may need "+v.Say(field.AnswerCellVolts, high)+", more than "+v.supplyVolts()+".",
		"The supply may lack volts: cathode nearer")
}

// warnOfStrongSupply warns where the volts would drive so many times the current.
func (v *view) warnOfStrongSupply(to *raised, times float64) {
	if times < circuit.Strong*(1-1e-9) {
		return
	}
	level := Note
	if times >= circuit.FarTooStrong {
		level = Warn
	}
	to.raise("supply-strong", level, field.Volts,
		"Set the supply's limit before you switch on, or put a resistor in the red cable: its "+v.supplyVolts()+" would drive "+
			v.Say(field.AnswerCurrentAtVolts, v.Supply.Drives.SI)+", "+strconv.FormatFloat(times, 'g', 2, 64)+" times what this job takes. Fuse a battery.",
		"Set the current limit, or use a series resistor")
}

func (v *view) warnOfMix(to *raised) {
	tooMuch := v.Mix.TooMuch
	if v.Standing.Known && v.Standing.Changed {
		tooMuch = v.Standing.Now.Undissolved > 0
	}
	if tooMuch {
		rest := ""
		if v.figures[field.AnswerUndissolved].SI > 0 {
			rest = " " + v.text(field.AnswerUndissolved) + " stays on the bottom."
		}
		to.raise("salt-undissolved", Warn, field.Strength,
			"Use less salt, or more water: not all of it dissolves at this temperature."+rest,
			"Not all the salt dissolves: less salt or more water")
	}
	if v.Mix.CrystalsEach.SI > 0 || v.Standing.Crystals.SI > 0 {
		drops := "crystals drop"
		if v.has(field.AnswerCrystals) {
			drops = v.text(field.AnswerCrystals) + " of crystals drop"
		}
		to.raise("cold-crystals", Warn, field.Coldest,
			"Keep the bath warmer, or mix it weaker: "+drops+" when it is that cold. They dissolve again when it is warm and stirred.",
			"Crystals drop when cold: keep it warmer or weaker")
	}
	if len(v.Standing.OutsideTables) > 0 {
		to.raise("outside-table", Note, field.Strength,
			"Take these figures as a guide, they lie beyond the tables: "+strings.Join(v.Standing.OutsideTables, "; ")+".",
			"Some figures lie beyond the tables")
	}
}

// Where a bath has dropped far enough to be said, and to be said loudly, and
// where a metal counts as the bath's own. Choices.
const (
	littleDropped = 0.005
	muchDropped   = 0.10
	ownMetal      = 0.99
)

func (v *view) warnOfDrift(to *raised) {
	run, drop := v.Used.Run, max(v.Used.Drop.SI, v.Used.DropAll.SI)
	if run.Salt == nil || run.Salt.Metal == "" || v.Used.Spent {
		return
	}
	level := Note
	switch {
	case drop >= muchDropped:
		level = Warn
	case drop < littleDropped || run.Metal.Share(run.Salt.Metal) >= ownMetal:
		return
	}
	at := field.Volume
	if v.Fields.Given(field.Etched) {
		at = field.Etched
	}
	add, weaker := "Renew the bath in the end", "it gets weaker by "+v.text(field.AnswerBathDrop)
	switch all := v.Used.SaltToAddAll; {
	case v.Used.DropAll.SI > v.Used.Drop.SI:
		weaker = "the bath is weaker by " + v.text(field.AnswerBathDropAll)
		if v.Used.Drop.Known() {
			weaker += " with this run"
		}
		if all.SI > 0 {
			add = "Add " + v.text(field.AnswerSaltToAddAll) + " of " + run.Salt.Name + " in all"
		}
	case v.Used.SaltToAdd.SI > 0:
		add = "Add " + v.text(field.AnswerSaltToAdd) + " of " + run.Salt.Name + " after this run"
	}
	to.raise("bath-drifts", level, at,
		add+": "+weaker+". What else the metal holds stays in the bath or falls as sludge."+v.misled(),
		"The bath gets weaker: top up its salt")
}

// misled warns of a hydrometer in a bath that holds more than its salt.
func (v *view) misled() string {
	if !v.has(field.AnswerStrengthByGravity) {
		return ""
	}
	return " A hydrometer misreads it: zinc sulfate is as heavy as copper sulfate."
}

// What is rarely meant, so that it is asked about; choices, no source.
const (
	hugeVolume  = 0.1        // m3, 100 L
	hugeDepth   = 2e-3       // m
	hugeCurrent = 50         // A
	hugeWarming = 10. / 3600 // K/s, 10 K/h
)

// warnOfUnlikely asks about what is rarely meant.
func (v *view) warnOfUnlikely(to *raised) {
	ask := func(at field.Name, what string) {
		to.raise("unlikely", Note, at, "Is that right? "+what, "Is that right? "+what)
	}
	if v.Mix.Volume.SI > hugeVolume {
		ask(field.Volume, v.text(field.AnswerVolume)+" is a very large bath.")
	}
	if v.Bite.Depth.SI > hugeDepth {
		ask(field.Depth, v.text(field.AnswerDepth)+" is very deep.")
	}
	if v.Bite.Current.SI > hugeCurrent {
		ask(field.Current, v.text(field.AnswerCurrent)+" is a very large current.")
	}
	if v.Circuit.Warming.SI > hugeWarming {
		ask(field.Volume, "The bath warms by "+v.text(field.AnswerWarming)+".")
	}
}
