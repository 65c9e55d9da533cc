package metal

import "strings"

// standard is the code of a metal by the standard that a word names. Before a code
// it says which of two metals with that code is meant.
func standard(word string) (of func(m *Metal) string, ok bool) {
	switch word {
	case "bs", "british":
		return func(m *Metal) string { return m.British }, true
	case "uns", "us", "american", "cda", "astm":
		return func(m *Metal) string { return m.UNS }, true
	}
	return nil, false
}

// graded finds the grade that the words make without the blanks between them; the
// first word may name its standard.
func (x *index) graded(list []string) []call {
	of, named := standard(list[0])
	if named {
		list = list[1:]
	}
	key := code(list)
	calls := x.grades.at[key]
	if named && calls == nil {
		key = "c" + key // "CDA 360"
		calls = x.grades.at[key]
	}
	switch {
	case calls == nil:
		return nil
	case isNumber(key) && !strings.Contains(list[0], "."):
		return nil // 20321 is any number; 2.0321 is a brass
	case !strings.ContainsAny(strings.Join(list, ""), "0123456789"):
		// Letters stand for figures only beside figures.
		calls = those(calls, func(c call) bool { return !strings.ContainsAny(c.name, "0123456789") })
	case named:
		own := those(calls, func(c call) bool { return strings.HasPrefix(code(words(fold(of(c.metal)))), key) })
		if len(own) > 0 {
			calls = own
		}
	}
	if len(calls) == 0 {
		return nil
	}
	return calls
}

// those are the calls for which is returns true.
func those(calls []call, is func(call) bool) (list []call) {
	for _, c := range calls {
		if is(c) {
			list = append(list, c)
		}
	}
	return list
}

// code is the form in which grades are compared: no blanks and marks, and figures
// for the letters that look like them (o, i, l).
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
