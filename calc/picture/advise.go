package picture

import (
	"strconv"

	"saltbite/calc/advice"
	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Shares of a picture from which something is said.
const (
	someGrey = 0.001
	muchGrey = 0.01
	nothing  = 0.0005
	// toneGrey is more than a drawing leaves by mistake: a photograph, or a scan on grey
	// paper. Common practice, no source.
	toneGrey = 0.25
)

// usualDensity is what the balance is told for while no current density is typed,
// A/m2: common practice, no source.
const usualDensity = 300.0

// cautions are what the picture calls for, the graver first.
func (s Pictured) cautions(p picturePrinter) (list []advice.Caution) {
	say := func(code string, level advice.Level, at field.Name, text string) {
		list = append(list, advice.Caution{Code: code, Level: level, Field: at.String(), Text: text})
	}
	art := s.Art
	if art.Open < nothing || art.Open > 1-nothing {
		of := map[bool]string{true: "Nothing", false: "All"}[art.Open < nothing]
		say("one-tone", advice.Warn, field.Black, of+" of the picture is exposed. Check whether black is resist or etched.")
	}
	s.warnOfLines(p, say)
	if art.Grey >= someGrey {
		level := map[bool]advice.Level{true: advice.Warn, false: advice.Note}[art.Grey >= muchGrey]
		mend := " is grey and won't transfer. Make it black or white."
		if art.Grey >= toneGrey {
			mend = " is grey, as in a photograph. If it is one, or a scan on grey paper, choose “A photograph”: it is then read by its light and dark."
		}
		say("grey", level, field.Black, p.say(field.Open, art.Grey)+mend)
	}
	if !s.Fields.Blank(field.Diameter) {
		say("round", advice.Note, field.Diameter, "The corners beside the round piece count too. Draw them as resist.")
	}
	if f := s.Fields; !f.Blank(field.Ruler) && !(f.Blank(field.Width) && f.Blank(field.Height) && f.Blank(field.Diameter)) {
		say("ruler-aside", advice.Note, field.Ruler, "The size that is typed counts, not the ruler. Blank width and height to use the ruler.")
	}
	s.tellBalance(p, say)
	return list
}

type say func(code string, level advice.Level, at field.Name, text string)

// warnOfLines says which lines survive the depth: those of twice the undercut times
// the depth are just gone.
func (s Pictured) warnOfLines(p picturePrinter, say say) {
	depth, undercut := s.Fields.Amount(field.Depth), s.Fields.Amount(field.Undercut)
	limit := s.limit()
	if s.Art.Line == 0 || limit == 0 {
		return
	}
	deep := "a depth of " + p.say(field.Depth, depth.SI)
	if s.Art.Line >= limit {
		left := bite.LineLeft(s.Art.Line, undercut.SI, depth.SI)
		say("lines-survive", advice.Note, field.Line, "All lines survive "+deep+": the finest, "+p.say(field.Line, s.Art.Line)+", keeps "+p.say(field.Line, left.SI)+".")
		return
	}
	places := strconv.Itoa(s.Art.Lost) + " places"
	if s.Art.Lost == 1 {
		places = "1 place"
	}
	text := "Lines under " + p.say(field.Line, limit) + " don't survive " + deep + "; the finest has " + p.say(field.Line, s.Art.Line)
	if s.Art.Kept > 0 {
		text = p.say(field.Line, s.Art.Kept) + " lines survive " + deep + ", " + p.say(field.Line, s.Art.Line) + " ones don't"
	}
	say("lines-lost", advice.Warn, field.Line, text+": "+places+".")
}

// limit is the width of a line, m, that is just gone at the depth; 0: it is not known.
func (s Pictured) limit() float64 {
	return bite.NarrowestLine(s.Fields.Amount(field.Undercut).SI, s.Fields.Amount(field.Depth).SI).SI
}

// tellBalance says how much current so much exposed metal takes.
func (s Pictured) tellBalance(p picturePrinter, say say) {
	sides, pieces, density := s.Fields.Amount(field.Sides), s.Fields.Amount(field.Pieces), s.Fields.Amount(field.Density)
	if density.State == quantity.Blank {
		density = quantity.Known(usualDensity)
	}
	current := quantity.If(s.Art.Area*sides.SI*pieces.SI*density.SI, sides, pieces, density)
	if !(current.SI > 0) {
		return
	}
	say("balance", advice.Note, field.Open, p.say(field.Open, s.Art.Open)+" exposed: at "+p.say(field.Density, density.SI)+
		" it needs "+p.say(field.Current, current.SI)+".")
}
