package metal

import (
	"slices"
	"strings"
)

// standards are the bodies whose name before a code tells which of two metals
// with the same code is meant.
var standards = map[string]func(m *Metal) string{
	"bs":       func(m *Metal) string { return m.British },
	"british":  func(m *Metal) string { return m.British },
	"uns":      func(m *Metal) string { return m.UNS },
	"us":       func(m *Metal) string { return m.UNS },
	"american": func(m *Metal) string { return m.UNS },
	"cda":      func(m *Metal) string { return m.UNS },
	"astm":     func(m *Metal) string { return m.UNS },
}

// graded finds a grade that the words make when run together, after the name of
// its standard if that is there.
func (x *index) graded(list []string) []call {
	of, named := standards[list[0]]
	if named && len(list) > 1 {
		list = list[1:]
	}
	key := code(list)
	calls := x.grades[key]
	if named && calls == nil {
		key = "c" + key // "CDA 360"
		calls = x.grades[key]
	}
	switch {
	case calls == nil:
		return nil
	case isNumber(key) && !strings.Contains(list[0], "."):
		return nil // 20321 is any number; 2.0321 is a brass
	case !strings.ContainsAny(strings.Join(list, ""), "0123456789"):
		// A letter is taken for a figure only beside figures.
		calls = slices.DeleteFunc(slices.Clone(calls), func(c call) bool { return strings.ContainsAny(c.name, "0123456789") })
	case named:
		own := slices.DeleteFunc(slices.Clone(calls), func(c call) bool { return !strings.HasPrefix(code(words(fold(of(c.metal)))), key) })
		if len(own) > 0 {
			calls = own
		}
	}
	if len(calls) == 0 {
		return nil
	}
	return calls
}

// code is a grade as grades are compared: without blanks and marks, and with
// the figures that letters are taken for.
func code(list []string) string {
	var b strings.Builder
	for _, w := range list {
		for _, r := range w {
			switch r {
			case '.', ',':
			case 'o':
				b.WriteByte('0')
			case 'i', 'l':
				b.WriteByte('1')
			default:
				b.WriteRune(r)
			}
		}
	}
	return b.String()
}
