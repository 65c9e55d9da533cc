package job

import (
	"math"
	"slices"

	"saltbite/calc/bite"
	"saltbite/calc/field"
)

// four is what the law ties together, with the density that may stand for the
// current. Each is in SI and of all pieces or one, as the field means it.
type four struct{ depth, time, current, area, density number }

// biteWorked is what the law was given and what it gave.
type biteWorked struct {
	four
	given  four      // as they were before any was found
	work   bite.Work // one piece, its area left out
	pieces number
	shape  field.State // of all that work holds
}

// faceFields make the open area out of a face and its share.
var faceFields = []string{"open", "width", "height", "diameter"}

// setAside leaves out the text of what is sought.
func (b *bench) setAside() {
	switch sought := b.fields.Value("find").Pick; sought {
	case "":
	case "area":
		b.fields.SetAside(append([]string{"area"}, faceFields...)...)
	default:
		b.fields.SetAside(sought)
	}
}

// workBite answers the group bite.
func (b *bench) workBite() {
	w := &b.bite
	w.four = four{b.amount("depth"), b.amount("time"), b.amount("current"), b.openArea(), b.amount("density")}
	w.given = w.four
	b.readShape()
	b.echo()
	if !b.agree() {
		return
	}
	if b.fields.Value("bites").State == field.Blank {
		b.joinDensity()
		b.solve()
	}
	b.answerBite()
	b.workBites()
	b.askForMore()
}

// readShape reads what else takes or spreads current.
func (b *bench) readShape() {
	w := &b.bite
	w.pieces = b.amount("pieces")
	edge, undercut := b.orZero("edge"), b.amount("undercut")
	extra := sum(known(0), b.amount("extra"), b.hidden.onPiece, b.hidden.onHanger)
	if edge.known() && edge.v == 0 {
		undercut = known(0) // no edge, no undercut to know
	}
	w.shape = worst(edge, extra, undercut, w.pieces)
	w.work = bite.Work{Edge: edge.v, Extra: extra.v, Undercut: undercut.v, Pieces: w.pieces.v}
}

// echo answers what was given, and the bare metal in all.
func (b *bench) echo() {
	w := &b.bite
	for name, f := range map[string]number{"depth": w.depth, "time": w.time, "current": w.current, "area": w.area, "density": w.density} {
		if f.known() {
			b.put(name, f.v)
		}
	}
}

// openArea is the open area of one piece: as typed, or the share of its face
// that is bare, on each side.
func (b *bench) openArea() number {
	area, face, share := b.amount("area"), b.face(), b.amount("open")
	if area.state == field.Blank {
		sides := b.amount("sides")
		return number{face.v * share.v * sides.v, worst(face, share, sides)}
	}
	if sides := b.amount("sides"); area.known() && share.known() && face.known() && sides.known() {
		if made := face.v * share.v * sides.v; !within(area.v, made) {
			b.contradict("the share of the face makes "+b.say("area", made)+" and the open area is typed as "+b.say("area", area.v),
				append([]string{"area"}, faceFields...)...)
			return number{state: field.Bad}
		}
	}
	return area
}

// face is the area of one side of one piece.
func (b *bench) face() number {
	width, height, diameter := b.amount("width"), b.amount("height"), b.amount("diameter")
	if diameter.state == field.Blank {
		return number{width.v * height.v, worst(width, height)}
	}
	if width.state != field.Blank || height.state != field.Blank {
		b.contradict("a face is either round or has a width and a height", "width", "height", "diameter")
		return number{state: field.Bad}
	}
	return number{math.Pi / 4 * diameter.v * diameter.v, diameter.state}
}

// agree says whether what was given can all be true at once. It reports each
// contradiction at every field that takes part.
func (b *bench) agree() bool {
	w := &b.bite
	if b.monitored() {
		return b.densityAgrees()
	}
	if w.depth.known() && w.time.known() && w.current.known() && w.area.known() {
		b.contradict("depth, time, current and area are all given, and any three make the fourth",
			"depth", "time", "current", "area")
		if b.fields.Value("area").Text == "" {
			b.contradict("depth, time, current and area are all given, and any three make the fourth", faceFields...)
		}
		return false
	}
	return b.densityAgrees() && b.depthAgrees()
}

// densityAgrees holds the density against the current over all bare metal.
func (b *bench) densityAgrees() bool {
	w := &b.bite
	if !w.density.known() || !w.current.known() || !w.area.known() || w.shape == field.Bad {
		return true
	}
	made := w.current.v / b.piece().Bare()
	if within(made, w.density.v) {
		return true
	}
	b.contradict("the current over the bare metal is "+b.say("density", made), "density", "current", "area", "extra", "pieces")
	return false
}

// depthAgrees holds the density and the time against the depth.
func (b *bench) depthAgrees() bool {
	w := &b.bite
	law, ok := b.law()
	if !ok || !w.depth.known() || !w.time.known() || !w.density.known() || w.shape == field.Bad {
		return true
	}
	made := law.DensityFor(w.depth.v, w.time.v)
	if w.work.Edge > 0 && w.area.known() {
		made = law.Current(b.piece(), w.depth.v, w.time.v) / b.piece().Bare()
	}
	if w.work.Edge > 0 && !w.area.known() || within(made, w.density.v) {
		return true
	}
	b.contradict("that depth in that time takes "+b.say("density", made), "depth", "time", "density")
	return false
}

// piece is one piece with its area.
// Kept out of its callers for the size of the program.
//
//go:noinline
func (b *bench) piece() bite.Work {
	p := b.bite.work
	p.Area = b.bite.area.v
	return p
}

// joinDensity makes the current out of the density and the area, or the area
// out of the density and the current.
func (b *bench) joinDensity() {
	w := &b.bite
	if !w.density.known() || w.shape == field.Bad {
		return
	}
	switch {
	case w.current.state == field.Blank && w.area.known():
		w.current = known(w.density.v * b.piece().Bare())
	case w.area.state == field.Blank && w.current.known():
		b.takeArea(w.current.v/w.density.v/w.pieces.v - w.work.Extra)
	}
}

// takeArea takes an area found, or says why there can be none.
func (b *bench) takeArea(area float64) {
	if !(area > 0) {
		b.contradict("the extra bare metal and the undercut alone take more than this current gives", "current", "extra", "edge", "time", "density")
		b.bite.area = number{state: field.Bad}
		return
	}
	b.bite.area = known(area)
}

// solve finds what is not given of depth, time, current and area.
func (b *bench) solve() {
	w := &b.bite
	defer b.sought()
	law, ok := b.law()
	if !ok || w.shape == field.Bad {
		return
	}
	switch {
	case w.depth.known() && w.time.known():
		if !b.monitored() {
			b.solveAround(law)
		}
	case w.depth.known() && w.time.state == field.Blank:
		b.found("time", &w.time, b.timeBy(law))
	case w.time.known() && w.depth.state == field.Blank:
		b.found("depth", &w.depth, b.depthBy(law))
	}
}

// whole says whether the current and all that it flows through are known;
// uniform, whether a density alone tells the depth: with no edge the bare metal
// stays what it is, whatever its area.
func (w *biteWorked) whole() bool   { return w.current.known() && w.area.known() }
func (w *biteWorked) uniform() bool { return w.density.known() && w.work.Edge == 0 }

// timeBy is the time that the depth takes by a law, in s; none if it can't be told.
func (b *bench) timeBy(law bite.Law) float64 {
	switch w := &b.bite; {
	case w.whole():
		return law.Time(b.piece(), w.depth.v, w.current.v)
	case w.uniform():
		return law.TimeAt(w.density.v, w.depth.v)
	}
	return none
}

// depthBy is the depth that the time gives by a law, in m; none if it can't be told.
func (b *bench) depthBy(law bite.Law) float64 { return b.depthAfter(law, b.bite.time.v) }

// depthAfter is the depth that so many seconds give.
func (b *bench) depthAfter(law bite.Law, time float64) float64 {
	switch w := &b.bite; {
	case w.whole():
		return law.Depth(b.piece(), w.current.v, time)
	case w.uniform():
		return law.DepthAt(w.density.v, time)
	}
	return none
}

// solveAround finds current, area or density when depth and time are given.
func (b *bench) solveAround(law bite.Law) {
	w := &b.bite
	switch {
	case w.area.known() && w.current.state == field.Blank:
		b.found("current", &w.current, law.Current(b.piece(), w.depth.v, w.time.v))
	case w.current.known() && w.area.state == field.Blank:
		if b.takeArea(law.Area(w.work, w.depth.v, w.current.v, w.time.v)); w.area.known() {
			b.reply.Found = append(b.reply.Found, "area")
		}
	case w.density.state == field.Blank && w.work.Edge == 0:
		b.found("density", &w.density, law.DensityFor(w.depth.v, w.time.v))
	}
}

// found takes what the law found, if it is a number at all.
func (b *bench) found(name string, f *number, si float64) {
	if !finite(si) || si <= 0 {
		return
	}
	*f = known(si)
	b.reply.Found = append(b.reply.Found, name)
}

// sought adds to what the law found what the density gave without it: the
// current or the area, where it is asked for by name or is all that was left
// blank.
func (b *bench) sought() {
	w := &b.bite
	asked := b.fields.Value("find").Pick
	left := w.given.depth.known() && w.given.time.known() && !b.monitored()
	note := func(name string, before, after number) {
		if before.state == field.Blank && after.known() && (left || asked == name) && !slices.Contains(b.reply.Found, name) {
			b.reply.Found = append(b.reply.Found, name)
		}
	}
	note("current", w.given.current, w.current)
	note("area", w.given.area, w.area)
}

// answerBite answers all that follows from the law.
func (b *bench) answerBite() {
	w := &b.bite
	if w.area.known() && w.shape != field.Bad {
		b.put("totalArea", b.piece().Bare())
		if w.density.state == field.Blank && w.current.known() {
			w.density = known(w.current.v / b.piece().Bare())
		}
	}
	b.echo()
	if b.metal.state == field.Given && !b.hasBeryllium() {
		b.putRange("equivalent", b.equivalent())
	}
	if b.blocked() {
		return
	}
	b.answerRanges()
	b.answerRemoved()
	b.answerRate()
}

// Common practice, no source: the efficiency of the dissolution where no trial
// tells it.
const leastEfficiency, mostEfficiency = 0.90, 1.05

// answerRanges gives what was found its range.
func (b *bench) answerRanges() {
	law, ok := b.law()
	if !ok || len(b.reply.Found) == 0 {
		return
	}
	slow, fast, ok := b.likely(law)
	if !ok {
		return
	}
	w := &b.bite
	switch b.reply.Found[0] {
	case "depth":
		b.putRange("depth", answered{w.depth.v, b.depthBy(slow), unlessSame(b.depthBy(fast), w.depth.v)})
	case "time":
		b.putRange("time", answered{w.time.v, unlessSame(b.timeBy(fast), w.time.v), b.timeBy(slow)})
	}
}

// likely are the ends of a law's range: in common salt that of copper leaving
// as Cu(II), elsewhere those of common practice, unless an efficiency is given.
func (b *bench) likely(law bite.Law) (slow, fast bite.Law, ok bool) {
	slow, fast = law, law
	switch {
	case b.inCommonSalt():
		slow.Equivalent = b.equivalent().low
	case b.fields.Value("efficiency").State == field.Assumed:
		slow.Efficiency, fast.Efficiency = leastEfficiency, mostEfficiency
	default:
		return slow, fast, false
	}
	return slow, fast, true
}

// unlessSame is an end of a range, none where it is the value itself.
func unlessSame(end, value float64) float64 {
	if end == value {
		return none
	}
	return end
}

// answerRemoved answers the charge and the metal that it takes.
func (b *bench) answerRemoved() {
	w := &b.bite
	law, ok := b.law()
	charge := number{w.current.v * w.time.v, worst(w.current, w.time)}
	if !charge.known() && ok && w.area.known() && w.depth.known() && w.shape != field.Bad {
		charge = known(law.Charge(b.piece(), w.depth.v))
	}
	if !charge.known() {
		return
	}
	b.put("charge", charge.v)
	if !ok {
		return
	}
	removed := law.Removed(charge.v)
	b.put("removed", removed)
	switch {
	case b.hidden.onHanger.v == 0 && w.pieces.known():
		b.put("removedEach", removed/w.pieces.v)
	case w.area.known() && w.depth.known() && w.shape != field.Bad && !b.monitored():
		b.put("removedEach", law.Density*b.onScale().Volume(w.depth.v))
	}
}

// answerRate answers how fast the bite goes: over the whole bite where its
// depth and time are known, else at the start.
func (b *bench) answerRate() {
	w := &b.bite
	if w.depth.known() && w.time.known() && !b.monitored() {
		b.put("rate", w.depth.v/w.time.v)
	} else if law, ok := b.law(); ok && w.density.known() {
		b.put("rate", law.DepthAt(w.density.v, 1))
	}
}

// askForMore puts "needed" at what is blank where too little is given.
func (b *bench) askForMore() {
	w := &b.bite
	given := func(f number) bool { return f.state != field.Blank }
	_, read := b.readings()
	if b.bitten() || b.depthAlone() {
		return
	}
	speed := given(w.density) || (given(w.current) || read) && given(w.area)
	enough := read && given(w.depth) && given(w.area) || given(w.depth) && given(w.time) || speed && (given(w.depth) || given(w.time))
	switch {
	case b.metal.state == field.Blank:
		if enough && !b.has("charge") && !b.has("rate") {
			b.need("metal")
		}
	case enough && (w.work.Edge == 0 || given(w.area)) || b.metal.state == field.Bad || b.blocked():
	default:
		b.needFour()
	}
}

// bitten says whether several bites are given with what they need.
func (b *bench) bitten() bool {
	w := &b.bite
	return b.fields.Value("bites").State != field.Blank && (w.density.state != field.Blank || w.current.state != field.Blank)
}

// depthAlone says whether a depth is asked about for its sheet and lines only.
func (b *bench) depthAlone() bool {
	g := b.bite.given
	for _, f := range []number{g.time, g.current, g.area, g.density} {
		if f.state != field.Blank {
			return false
		}
	}
	for _, name := range []string{"sheet", "line", "space", "bites"} {
		if b.fields.Value(name).State != field.Blank {
			return g.depth.state != field.Blank
		}
	}
	return false
}

// needFour puts "needed" at each blank of the four that is not the one sought.
func (b *bench) needFour() {
	w := &b.bite
	for _, name := range []string{"depth", "time", "current", "area"} {
		sought := b.fields.Value("find").Pick == name
		_, read := b.readings()
		stands := read && (name == "current" || name == "time") || name == "current" && w.density.state != field.Blank || name == "area" && w.area.state != field.Blank
		if !sought && !stands {
			b.need(name)
		}
	}
	b.needFace()
}

// needFace puts "needed" at what a half-typed face lacks.
func (b *bench) needFace() {
	if b.bite.area.state != field.Blank {
		return
	}
	width, height, diameter, open := b.amount("width"), b.amount("height"), b.amount("diameter"), b.amount("open")
	if width.state != field.Blank || height.state != field.Blank {
		b.need("width", "height", "open")
	} else if diameter.state != field.Blank {
		b.need("open")
	} else if open.state != field.Blank {
		b.need("width", "height")
	}
}
