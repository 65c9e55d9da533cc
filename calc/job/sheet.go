package job

import (
	"math"
	"strconv"

	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// workSheet answers what the bite leaves of the sheet and its lines. A depth
// alone is enough; no metal is needed.
func (b *bench) workSheet() {
	depth := b.wholeDepth()
	b.answerSheet(depth)
	b.answerLines(depth)
}

// wholeDepth is how deep the deepest areas are bitten: the depth, or all bites.
func (b *bench) wholeDepth() number {
	if d := b.bite.depth; d.state != field.Blank {
		return d
	}
	bites := b.fields.Value("bites")
	if bites.State != field.Given {
		return number{state: bites.State}
	}
	var all float64
	for _, pair := range bites.Pairs {
		all += pair.First
	}
	return known(all)
}

// keep is the least of the sheet that is to be left.
func (b *bench) keep() (bite.Keep, field.State) {
	v := b.fields.Value("keep")
	if v.Q.Kind == quantity.Share {
		return bite.Keep{Share: v.Q.Value}, v.State
	}
	return bite.Keep{Thickness: v.Q.Value}, v.State
}

func (b *bench) answerSheet(depth number) {
	sides, thickness := b.amount("sides"), b.amount("sheet")
	keep, state := b.keep()
	keeps := number{state: state}
	sheet := bite.Sheet{Thickness: thickness.v, Sides: sides.v}
	if worst(thickness, sides, depth) == field.Given {
		least, most := sheet.LeftRange(depth.v)
		b.putRange("left", answered{sheet.Left(depth.v), least, most})
		b.put("leftShare", sheet.LeftShare(depth.v))
	}
	if worst(thickness, sides, keeps) == field.Given {
		least, most := sheet.DeepestRange(keep)
		if d := sheet.Deepest(keep); d > 0 {
			b.putRange("deepest", answered{d, least, most})
		}
	}
	if worst(depth, sides, keeps) == field.Given {
		thinnest := bite.ThinnestSheet(depth.v, sides.v, keep)
		if thinnest == 0 {
			return
		}
		b.put("thinnestSheet", thinnest)
		if gauge, ok := bite.ThinnestGauge(thinnest); ok {
			b.put("thinnestGauge", float64(gauge))
		}
	}
}

// answerLines answers what raised lines keep and open spaces become. With an
// undercut that is assumed, the range goes to the worst case.
func (b *bench) answerLines(depth number) {
	undercut, line, space := b.amount("undercut"), b.amount("line"), b.amount("space")
	if !undercut.known() {
		return
	}
	worstCase := undercut.v
	if undercut.state == field.Assumed {
		worstCase = bite.MostUndercut
	}
	u := undercut.v
	low := func(f func(u float64) float64) answered { return answered{f(u), unlessSame(f(worstCase), f(u)), none} }
	high := func(f func(u float64) float64) answered { return answered{f(u), none, unlessSame(f(worstCase), f(u))} }
	if depth.known() {
		b.putRange("narrowestLine", high(func(u float64) float64 { return bite.NarrowestLine(u, depth.v) }))
	}
	if line.known() && depth.known() {
		b.putRange("lineLeft", low(func(u float64) float64 { return bite.LineLeft(line.v, u, depth.v) }))
	}
	if line.known() && u > 0 {
		b.putRange("deepestForLine", low(func(u float64) float64 { return bite.DeepestForLine(line.v, u) }))
	}
	if space.known() && depth.known() {
		b.putRange("spaceBecomes", high(func(u float64) float64 { return bite.SpaceBecomes(space.v, u, depth.v) }))
	}
}

// gauge prints a Brown & Sharpe number, 0 for 0, -1 for 00.
func gauge(n float64) string {
	if n < 0 {
		zeros := "0"
		for ; n < 0; n++ {
			zeros += "0"
		}
		return zeros + " ga"
	}
	return strconv.Itoa(int(n)) + " ga"
}

// A sheet this thick, m, is more likely a gauge typed without its word;
// common practice, no source: sheet for this work is up to 4 mm.
const plateThick = 6e-3

func (b *bench) warnOfSheet() {
	b.warnOfThinSheet()
	if sheet := b.amount("sheet"); sheet.known() && sheet.v >= plateThick {
		b.raise("gauge-meant", Note, "sheet",
			b.say("left", sheet.v)+" is a thick plate. If a gauge is meant, type it with its word, such as 18 ga.",
			"Is the sheet's thickness a gauge? Type 18 ga")
	}
	left, ok := b.figures["lineLeft"]
	switch {
	case !ok:
	case left.si <= 0:
		b.raise("line-lost", Warn, "line",
			"At that depth the undercut meets under the finest line: it is gone, and what it parted runs together. "+
				"Bite less deep than "+b.text("deepestForLine")+", or draw it wider than "+b.text("narrowestLine")+".",
			"The finest line does not survive this depth")
	case left.low <= 0:
		b.raise("line-at-risk", Note, "line",
			"At the usual undercut the finest line keeps "+b.text("lineLeft")+"; at the worst it is gone. Try it on a scrap, or draw it wider.",
			"The finest line may not survive: try a scrap")
	}
}

func (b *bench) warnOfThinSheet() {
	left, ok := b.figures["left"]
	keep, state := b.keep()
	thickness := b.amount("sheet")
	if !ok {
		return
	}
	if left.si <= 0 {
		b.raise("sheet-thin", Stop, "sheet",
			"Nothing is left: the bite goes through the sheet. Take a sheet of "+b.orText("thinnestSheet")+" or more, or bite less.",
			"The bite goes through the sheet")
		return
	}
	least := math.Max(keep.Thickness, keep.Share*thickness.v)
	if state == field.Bad || left.si >= least*(1-1e-9) {
		return
	}
	b.raise("sheet-thin", Warn, "sheet",
		b.text("left")+" of the sheet is left, less than the "+b.say("left", least)+" to keep. Take a sheet of "+
			b.orText("thinnestSheet")+" or more, or bite less.",
		"Sheet too thin for this depth")
}

// orText prints an answer, or says that it is not known.
func (b *bench) orText(name string) string {
	if !b.has(name) {
		return "more"
	}
	return b.text(name)
}
