package advice

import (
	"saltbite/calc/bite"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// curve is depth against time, at the current of the job, or, where none is in
// mind, at the one suggested.
func (v *view) curve() *drawing.Drawing {
	b, why := v.drawnBite()
	if !v.Law.Known || b.Shape == quantity.Bad || !b.Whole() && !b.Uniform() {
		return nil
	}
	law := v.Law.Law
	c := drawing.Curve{US: v.US, Flow: v.drawnFlow(b), Why: why, Sheet: v.size(field.AnswerDeepest), Line: v.size(field.AnswerDeepestForLine)}
	if e := v.Course.EfficiencyNow; e.Known() {
		law.Efficiency = e.SI
		c.RangeWhy = "It is drawn by the " + v.text(field.AnswerEfficiencyNow) + " efficiency that the weighing found."
	} else if v.Law.Slow != v.Law.Fast {
		c.Slow, c.Fast = depthBySeconds(b, v.Law.Slow), depthBySeconds(b, v.Law.Fast)
		c.RangeWhy = v.bandWords()
	}
	c.Depth = depthBySeconds(b, law)
	c = v.aimed(c, b, law)
	c = v.measured(c, b)
	return c.Draw()
}

// bandWords says what the band of the curve rests on.
func (v *view) bandWords() string {
	if v.Salt.Common() {
		return "The band goes down to copper that leaves as copper(II)."
	}
	return "The band is common practice, " + v.Say(field.AnswerEfficiencyNow, v.Law.Efficiency.Low.SI) + " to " +
		v.Say(field.AnswerEfficiencyNow, v.Law.Efficiency.High.SI) + " of the current."
}

func depthBySeconds(b job.Bite, law bite.Law) func(float64) float64 {
	return func(s float64) float64 { return b.DepthAfter(law, s).SI }
}

// drawnBite is the bite with a current to be drawn at where it has none, the
// last reading or else the one suggested, and says which.
func (v *view) drawnBite() (b job.Bite, why string) {
	b = v.Bite
	switch {
	case b.Whole() || b.Uniform() || !v.Fields.Blank(field.Bites):
		return b, ""
	case b.Read != nil:
		b.Current = quantity.Known(b.Read[len(b.Read)-1].Current)
		return b, ", the last reading"
	case v.Suggest.Density.Known() && b.Asked.Current.State == quantity.Blank && b.Asked.Density.State == quantity.Blank:
		b.Density = v.Suggest.Density
		if b.Area.Known() {
			b.Current = v.Suggest.Current
		}
		return b, ", as suggested"
	}
	return b, ""
}

// drawnFlow is the current that is drawn at, or the density where no area tells it.
func (v *view) drawnFlow(b job.Bite) string {
	if !b.Whole() {
		return v.Say(field.AnswerDensity, b.Density.SI)
	}
	return v.Say(field.AnswerCurrent, b.Current.SI) + v.forAll()
}

// aimed marks where the job is to end. Nothing is drawn of a job whose figures
// disagree.
func (v *view) aimed(c drawing.Curve, b job.Bite, law bite.Law) drawing.Curve {
	if !b.Depth.Known() {
		return c
	}
	time := b.Time
	if b.Watched || !time.Known() {
		time = b.TimeBy(law)
	}
	if !job.Agree(b.DepthAfter(law, time.SI).SI, b.Depth.SI) {
		c.Depth = nil
		return c
	}
	c.Target = drawing.Point{Time: v.sized(field.AnswerTime, time.SI), Depth: v.sized(field.AnswerDepth, b.Depth.SI)}
	c.Half = v.sized(field.AnswerTime, time.SI/2)
	return c
}

// measured adds what ammeter and scale showed.
func (v *view) measured(c drawing.Curve, b job.Bite) drawing.Curve {
	list, at := b.Read, b.Asked.Time
	if list != nil {
		at = quantity.Known(list[len(list)-1].Time - list[0].Time)
	}
	if list != nil && v.Course.DepthSoFar.Known() {
		for i, r := range list {
			depth := trial.DepthSoFar(v.Law.Law, b.Piece(), list[:i+1].Charge()).SI
			c.Readings = append(c.Readings, drawing.Point{
				Time: drawing.Size{SI: r.Time - list[0].Time}, Depth: drawing.Size{SI: depth}})
		}
		last := &c.Readings[len(list)-1]
		last.Time.Text, last.Depth.Text = v.Say(field.AnswerTime, last.Time.SI), v.size(field.AnswerDepthSoFar).Text
	}
	if v.Course.DepthNow.Known() && at.Known() {
		c.Weighing = drawing.Point{Time: v.sized(field.AnswerTime, at.SI), Depth: v.size(field.AnswerDepthNow)}
	}
	return c
}
