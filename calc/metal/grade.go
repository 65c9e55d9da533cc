package metal

import "strings"

// standard is the code by a body whose name before it tells which of two metals
// with the same code is meant.
func standard(word string) (of func(m *Metal) string, ok bool) {
	switch word {
	case "bs", "british":
		return func(m *Metal) string { return m.British }, true
	case "uns", "us", "american", "cda", "astm":
		return func(m *Metal) string { return m.UNS }, true
	}
	return nil, false
}

// graded finds a grade that the words make when run together, after the name of
// its standard if that is there.
func (x *index) graded(list []string) []call {
	of, named := standard(list[0])
	if named && len(list) > 1 {
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
		// A letter is taken for a figure only beside figures.
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

// those are the calls of which something is true.
func those(calls []call, is func(call) bool) (list []call) {
	for _, c := range calls {
		if is(c) {
			list = append(list, c)
		}
	}
	return list
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
