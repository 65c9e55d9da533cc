package picture

import (
	"strconv"

	"saltbite/calc/advice"
	"saltbite/calc/field"
)

// printed says what was made ready to print, as the footer of the sheet has it too.
func (s Pictured) printed(p picturePrinter) string {
	text := "As drawn, "
	if s.Fields.Pick(field.Mirror) == "yes" {
		text = "Mirrored, "
	}
	text += p.say(field.Width, s.Art.Width) + " by " + p.say(field.Height, s.Art.Height)
	if widened := s.limit() / 2; widened > 0 {
		text += ", lines " + p.say(field.Line, widened) + " wider on each side for an undercut at " + p.say(field.Depth, s.Fields.Amount(field.Depth).SI)
	}
	return text + "."
}

// closing are the cautions on what is printed.
func (s Pictured) closing(p picturePrinter) (list []advice.Caution) {
	if s.Closed > 0 {
		places := strconv.Itoa(s.Closed) + " gaps"
		if s.Closed == 1 {
			places = "1 gap"
		}
		list = append(list, advice.Caution{Code: "gaps-closed", Level: advice.Warn, Field: field.Depth.String(),
			Text: "Widening the lines closes " + places + " narrower than " + p.say(field.Space, s.limit()) + ". Etch less deep, or draw them wider."})
	}
	return list
}
