package field

import (
	"strings"
)

// Named is one of many sets of fields.
type Named struct {
	Name string // "" for what stands before the first name
	Line int    // where it begins, 1 for the first line
	Set  *Set
}

// mostSets is how many sets are read of one text.
const mostSets = 10_000

// ReadMany reads many sets of fields from a plain text:
//
//	Saltbite jobs
//	[Garden shed nameplate]
//	# saved 2026-11-25T14:05:00.000Z
//	metal=brass
//	depth=0.25+mm
//
// A line in square brackets begins a set and names it, "#" begins a remark, and
// the other lines are the one text form of a set, with a line break for each
// "&". Like Read it never fails: what can't be read stands in the Errors of its
// set, and what is beyond 10,000 sets is left out.
func ReadMany(text string) (sets []Named) {
	var name string
	var lines []string
	var begun int
	var heading bool
	flush := func() {
		if heading || len(lines) > 0 {
			sets = append(sets, Named{name, begun, Read(strings.Join(lines, "&"))})
		}
	}
	for i, line := range strings.Split(strings.ReplaceAll(text, "\r", "\n"), "\n") {
		line = strings.TrimSpace(strings.TrimPrefix(line, "\ufeff"))
		switch {
		case line == "" || line[0] == '#' || line == manyHeading:
		case line[0] == '[':
			flush()
			if len(sets) >= mostSets {
				return sets
			}
			name, begun, heading, lines = strings.Trim(line, "[] "), i+1, true, nil
		default:
			if len(lines) == 0 && !heading {
				begun = i + 1
			}
			lines = append(lines, line)
		}
	}
	flush()
	return sets
}

// manyHeading is the first line of such a text.
const manyHeading = "Saltbite jobs"
