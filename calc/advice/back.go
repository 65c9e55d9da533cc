package advice

import (
	"saltbite/calc/drawing"
	"saltbite/calc/field"
)

// back is the back of the bench card: the causes of what is seen, once it is said
// what that is.
func (v *view) back() *drawing.Drawing {
	causes := v.causes()
	if len(causes) == 0 {
		return nil
	}
	b := drawing.Back{US: v.US, Seen: field.Capital(seenInWords(v.Fields.Pick(field.Seen)))}
	for _, c := range causes {
		b.Causes = append(b.Causes, drawing.Cause{Text: c.Text, Do: c.Do, Source: c.Source})
	}
	return b.Draw()
}

// seenInWords is a choice in more words, where it has them.
func seenInWords(choice string) string {
	for _, also := range field.Seen.Row().Also {
		if also.Choice == choice {
			return also.Word
		}
	}
	return choice
}
