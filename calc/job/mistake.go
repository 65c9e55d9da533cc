package job

import (
	"math"

	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Agree says whether two figures agree within 1 %, as two people's roundings do.
func Agree(a, b float64) bool { return math.Abs(a-b) <= 0.01*math.Max(math.Abs(a), math.Abs(b)) }

// contradiction reports that fields can't all be true, at each of them that was
// given: what was typed, why it does not fit, and the way out. No example is
// given, since what would fit depends on the others.
func contradiction(fields *field.Set, why string, names ...field.Name) []field.Error {
	return disagree(fields, why, "Clear one of them.", names...)
}

// disagree is contradiction with a way out of its own.
func disagree(fields *field.Set, why, wayOut string, names ...field.Name) (errors []field.Error) {
	for _, name := range names {
		if text := fields.Text(name); text != "" {
			errors = append(errors, field.Error{Field: name.String(), Code: field.Contradiction,
				Text: quantity.Quote(text) + " doesn't fit: " + why + ". " + wayOut,
				Why:  field.Capital(why) + ". " + wayOut})
		}
	}
	return errors
}

// Missing reports each blank field of those named as needed.
func Missing(fields *field.Set, names ...field.Name) (errors []field.Error) {
	for _, name := range names {
		if fields.Text(name) == "" {
			errors = append(errors, field.Error{Field: name.String(), Code: field.Missing,
				Text: "Needed. " + name.Row().Wanted()})
		}
	}
	return errors
}

// refusal reports why a room can't use what a field says.
func refusal(fields *field.Set, name field.Name, err error) []field.Error {
	return []field.Error{{Field: name.String(), Code: string(quantity.OutOfSize),
		Text: quantity.Quote(fields.Text(name)) + " " + err.Error() + ". " + name.Row().Wanted()}}
}
