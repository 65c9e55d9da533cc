package job

import (
	"saltbite/calc/bite"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/trial"
)

// curve is depth against time, at the current of the job, or, where none is in
// mind, at the one suggested.
func (b *bench) curve() *drawing.Drawing {
	law, ok := b.law()
	why := b.takeFlow()
	w := &b.bite
	if !ok || w.shape == field.Bad || !w.whole() && !w.uniform() {
		return nil
	}
	c := drawing.Curve{US: b.us, Flow: b.drawnFlow(), Why: why, Sheet: b.size("deepest"), Line: b.size("deepestForLine")}
	if e, ok := b.figures["efficiencyNow"]; ok {
		law.Efficiency = e.si
		c.RangeWhy = "It is drawn by the " + b.text("efficiencyNow") + " efficiency that the weighing found."
	} else if slow, fast, ok := b.likely(law); ok {
		c.Slow, c.Fast = b.depthBySeconds(slow), b.depthBySeconds(fast)
		c.RangeWhy = "The band is common practice, " + b.say("efficiencyNow", leastEfficiency) + " to " + b.say("efficiencyNow", mostEfficiency) + " of the current."
		if b.inCommonSalt() {
			c.RangeWhy = "The band goes down to copper that leaves as copper(II)."
		}
	}
	c.Depth = b.depthBySeconds(law)
	b.aim(&c, law)
	b.measured(&c)
	return c.Draw()
}

func (b *bench) depthBySeconds(law bite.Law) func(float64) float64 {
	return func(s float64) float64 { return b.depthAfter(law, s) }
}

// takeFlow gives the bite a current to be drawn at where it has none, the last
// reading or else the one suggested, and says which.
func (b *bench) takeFlow() (why string) {
	w := &b.bite
	if w.whole() || w.uniform() || b.fields.Value("bites").State != field.Blank {
		return ""
	}
	if read, ok := b.readings(); ok {
		w.current = known(read[len(read)-1].Current)
		return ", the last reading"
	}
	if f, ok := b.figures["suggestedDensity"]; ok && w.given.current.state == field.Blank && w.given.density.state == field.Blank {
		w.density = known(f.si)
		if w.area.known() {
			w.current = known(b.figures["suggestedCurrent"].si)
		}
		return ", as suggested"
	}
	return ""
}

// drawnFlow is the current that is drawn at, or the density where no area tells it.
func (b *bench) drawnFlow() string {
	w := &b.bite
	if !w.whole() {
		return b.say("density", w.density.v)
	}
	return b.say("current", w.current.v) + b.forAll()
}

// aim marks where the job is to end. Nothing is drawn of a job whose figures
// disagree.
func (b *bench) aim(c *drawing.Curve, law bite.Law) {
	w := &b.bite
	if !w.depth.known() {
		return
	}
	time := w.time
	if b.monitored() || !time.known() {
		time = known(b.timeBy(law))
	}
	if !within(b.depthAfter(law, time.v), w.depth.v) {
		c.Depth = nil
		return
	}
	c.Target = drawing.Point{Time: b.sized("time", time.v), Depth: b.sized("depth", w.depth.v)}
	c.Half = b.sized("time", time.v/2)
}

// measured adds what ammeter and scale showed.
func (b *bench) measured(c *drawing.Curve) {
	law, _ := b.law()
	list, read := b.readings()
	if read && b.has("depthSoFar") {
		for i, r := range list {
			depth := trial.DepthSoFar(law, b.piece(), list[:i+1].Charge())
			c.Readings = append(c.Readings, drawing.Point{
				Time: drawing.Size{SI: r.Time - list[0].Time}, Depth: drawing.Size{SI: depth}})
		}
		last := &c.Readings[len(list)-1]
		last.Time.Text, last.Depth.Text = b.say("time", last.Time.SI), b.size("depthSoFar").Text
	}
	if !b.has("depthNow") {
		return
	}
	at := b.bite.given.time
	if read {
		at = known(list[len(list)-1].Time - list[0].Time)
	}
	if at.known() {
		c.Weighing = drawing.Point{Time: b.sized("time", at.v), Depth: b.size("depthNow")}
	}
}
