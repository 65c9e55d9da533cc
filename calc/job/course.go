package job

import (
	"strconv"

	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/trial"
)

// monitored says whether the run is under way and watched: then the depth is
// the target, the time the running time so far, and nothing need be blank.
func (b *bench) monitored() bool {
	return b.fields.Value("after").State != field.Blank || b.fields.Value("readings").State != field.Blank
}

// workCourse answers whether the piece is on course: by weight, by the ammeter,
// by the clock.
func (b *bench) workCourse() {
	if b.blocked() {
		return
	}
	b.answerReadings()
	b.answerWeighing()
	b.answerClock()
	b.answerTargets()
}

// readings are the ammeter's, with times that never run back.
func (b *bench) readings() (trial.Readings, bool) {
	v := b.fields.Value("readings")
	if v.State != field.Given {
		return nil, false
	}
	var list trial.Readings
	for _, p := range v.Pairs {
		list = append(list, trial.Reading{Time: p.First, Current: p.Second})
	}
	return list.PastMidnight(), true
}

func (b *bench) answerReadings() {
	w := &b.bite
	list, ok := b.readings()
	if !ok {
		return
	}
	b.put("chargeSoFar", list.Charge())
	law, lawful := b.law()
	if !lawful || !w.area.known() || w.shape == field.Bad {
		return
	}
	b.put("depthSoFar", trial.DepthSoFar(law, b.piece(), list.Charge()))
	if !w.depth.known() {
		return
	}
	target := law.Charge(b.piece(), w.depth.v)
	ready, trend := list.ReadyIn(target), none
	if t, ok := list.ReadyByTrend(target); ok {
		trend = t
	}
	if ready == 0 && list.Charge() < target {
		return // the current is nothing: it is never ready
	}
	b.putRange("readyIn", answered{ready, none, unlessSame(trend, ready)})
}

// weighing is the piece on the scale, if both weights and the piece are known.
func (b *bench) weighing() (trial.Weighing, bool) {
	before, after := b.amount("before"), b.amount("after")
	law, ok := b.law()
	if !ok || worst(before, after) != field.Given || b.bite.shape == field.Bad {
		return trial.Weighing{}, false
	}
	return trial.Weighing{Before: before.v, After: after.v, Law: law, Work: b.onScale(), Hanger: b.hidden.onHanger.v}, true
}

// onScale is the piece without its hanger.
func (b *bench) onScale() (piece bite.Work) {
	piece = b.piece()
	piece.Extra -= b.hidden.onHanger.v
	return piece
}

func (b *bench) answerWeighing() {
	w := &b.bite
	weighed, ok := b.weighing()
	if !ok || weighed.Loss() < 0 {
		return
	}
	if w.area.known() {
		b.put("depthNow", weighed.DepthNow())
	}
	charge := b.chargeSoFar()
	if !charge.known() || !w.area.known() {
		return
	}
	if efficiency := weighed.EfficiencyNow(charge.v); efficiency > 0 {
		b.put("efficiencyNow", efficiency)
	}
	current := b.currentNow()
	if w.depth.known() && current.known() && weighed.Loss() > 0 {
		b.put("timeLeft", weighed.TimeLeft(charge.v, w.depth.v, current.v))
	}
}

// chargeSoFar is what has flowed until the weighing: by the ammeter's readings,
// else the current for the running time so far.
func (b *bench) chargeSoFar() number {
	if list, ok := b.readings(); ok {
		return known(list.Charge())
	}
	given := b.bite.given
	return number{b.bite.current.v * given.time.v, worst(b.bite.current, given.time)}
}

// currentNow is the last reading, else the current.
func (b *bench) currentNow() number {
	if list, ok := b.readings(); ok {
		return known(list[len(list)-1].Current)
	}
	return b.bite.current
}

// answerClock answers when half time and the end are, in time after the
// midnight before the start.
func (b *bench) answerClock() {
	w := &b.bite
	start, paused := b.amount("start"), b.orZero("paused")
	if worst(start, paused, w.time) == field.Given && !b.monitored() {
		b.put("halfAt", start.v+w.time.v/2+paused.v)
		b.put("readyAt", start.v+w.time.v+paused.v)
	}
}

// answerTargets answers what the piece will weigh at half time and at the end.
func (b *bench) answerTargets() {
	w := &b.bite
	before := b.amount("before")
	law, ok := b.law()
	if !ok || !before.known() || !w.area.known() || w.shape == field.Bad {
		return
	}
	scale := trial.Weighing{Before: before.v, Law: law, Work: b.onScale(), Hanger: b.hidden.onHanger.v}
	if w.depth.known() {
		b.put("weightAtTarget", scale.WeightAt(w.depth.v))
	}
	if w.current.known() && w.time.known() && !b.monitored() {
		half := law.Depth(b.piece(), w.current.v, w.time.v/2)
		b.put("weightAtHalf", scale.WeightAt(half))
	}
}

// clock prints a time after midnight as one of the clock: "16:05", "0:30 next
// day", "0:30, 2 days on".
func clock(seconds float64) string {
	const day = 24 * 60
	minutes := int(seconds/60 + 0.5)
	text := strconv.Itoa(minutes%day/60) + ":" + strconv.Itoa(100 + minutes%60)[1:]
	switch days := minutes / day; days {
	case 0:
		return text
	case 1:
		return text + " next day"
	default:
		return text + ", " + strconv.Itoa(days) + " days on"
	}
}

// Where a run is long, and where an efficiency is odd; common practice, no source.
const (
	longRun   = 12 * 3600 // s
	oddlyLow  = 0.85
	oddlyHigh = 1.10
)

// heavier says whether the piece weighs more than before: it was plated.
func (b *bench) heavier() bool {
	before, after := b.amount("before"), b.amount("after")
	return before.known() && after.known() && after.v > before.v
}

func (b *bench) warnOfCourse() {
	if b.heavier() {
		b.raise("polarity", Stop, "after",
			"It weighs more than before: metal was plated on, not taken off. Switch off, and join the work to the positive lead (+), the cathode to the negative.",
			"Heavier than before: work to the positive lead")
	}
	if e, ok := b.figures["efficiencyNow"]; ok && (e.si < oddlyLow || e.si > oddlyHigh) {
		b.raise("efficiency-odd", Warn, "after",
			"An efficiency of "+b.text("efficiencyNow")+" is odd. Is the bare area right, hidden metal counted, the piece dry and free of sludge, the metal what it is called?",
			"Odd efficiency: check area, drying, metal")
	}
	if time, ok := b.figures["time"]; ok && time.si > longRun && !b.blocked() {
		b.raise("long-run", Note, "time",
			b.text("time")+" is a long run: resist lifts, and nobody watches it all. Do not leave a first run alone; think of more current or a shallower bite.",
			"Long run: resist may lift; do not leave it alone")
	}
}
