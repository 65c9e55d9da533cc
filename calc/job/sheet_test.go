package job

import "testing"

// A sheet of 1 mm, and lines of 0.4 mm with spaces of 0.3 mm.
func TestSheet(t *testing.T) {
	const sheet = "sheet=1+mm&depth=0.3&"
	check(t, []want{
		{sheet, "Sheet.Left", 0.7e-3, byHand},
		{"", "Sheet.Left.Low", 0.625e-3, choice + ": 1.25 times the depth"},
		{"", "Sheet.Left.High", 0.775e-3, choice + ": 0.75 times the depth"},
		{"", "Sheet.LeftShare", 0.7, byHand},
		{"", "Sheet.Least", 0.5e-3, choice + ": half of it"},
		{"", "Sheet.Deepest", 0.5e-3, byHand},
		{"", "Sheet.Deepest.Low", 0.4e-3, byHand + ": over 1.25"},
		{"", "Sheet.Thinnest", 0.6e-3, byHand + ": 0.3 / 0.5"},
		{"", "Sheet.Gauge", 22, "ASTM B258: 22 gauge is 0.644 mm, 23 is 0.573"},
		{sheet + "sides=2", "Sheet.Left", 0.4e-3, byHand},
		{sheet + "back=10", "Sheet.Left", 0.4e-3, "a bare back is a second side"},
		{"", "Sheet.Deepest", 0.25e-3, byHand},
		{sheet + "back=bare", "Sheet.Left", none{}, "it can't be read"},
		{sheet + "keep=0.8+mm", "Sheet.Least", 0.8e-3, "as typed"},
		{"", "Sheet.Thinnest", 1.1e-3, byHand},
		{sheet + "keep=80+%25", "Sheet.Least", 0.8e-3, byHand},
		{"", "Sheet.Deepest", 0.2e-3, byHand},
		{sheet + "keep=some", "Sheet.Least", none{}, "it can't be read"},
		{"", "Sheet.Deepest", none{}, "it needs the keep"},
		{"", "Sheet.Thinnest", none{}, "it needs the keep"},
		{"", "Sheet.Left", 0.7e-3, "it does not"},
		{"sheet=1+mm&depth=1", "Sheet.EatenThrough", true, "nothing is left"},
		{"", "Sheet.Left", none{}, "nothing is left"},
		{"sheet=1+mm&depth=0.999", "Sheet.EatenThrough", false, "0.001 mm is left"},
		{"depth=0.3", "Sheet.Thinnest", 0.6e-3, "no sheet is needed"},
		{"depth=9", "Sheet.Gauge", none{}, "ASTM B258: 0000 gauge is 11.7 mm, and 18 are needed"},
		{"sheet=1+mm", "Sheet.Deepest", 0.5e-3, "no depth is needed"},
	})
}

func TestLines(t *testing.T) {
	const art = "depth=0.2&line=0.5&space=0.3&"
	check(t, []want{
		{art, "Lines.Left", 0.3e-3, byHand + ": 0.5 - 2 x 0.5 x 0.2"},
		{"", "Lines.Left.Low", 0.1e-3, choice + ": an undercut of 1 at worst"},
		{"", "Lines.Left.High", none{}, "the usual is the best"},
		{"", "Lines.Narrowest", 0.2e-3, byHand},
		{"", "Lines.Narrowest.High", 0.4e-3, byHand},
		{"", "Lines.Deepest", 0.5e-3, byHand},
		{"", "Lines.Deepest.Low", 0.25e-3, byHand},
		{"", "Lines.Space", 0.5e-3, byHand},
		{"", "Lines.Space.High", 0.7e-3, byHand},
		{art + "undercut=0.25", "Lines.Left", 0.4e-3, byHand},
		{"", "Lines.Left.Low", none{}, "as typed"},
		{art + "undercut=0", "Lines.Deepest", none{}, "no depth takes that line"},
		{"", "Lines.Left", 0.5e-3, "all of it"},
		{art + "undercut=much", "Lines.Left", none{}, "it can't be read"},
		{"depth=0.2", "Lines.Left", none{}, "no line"},
		{"", "Lines.Space", none{}, "no space"},
		{"line=0.5&space=0.3", "Lines.Deepest", 0.5e-3, "no depth is needed"},
		{"", "Lines.Space", none{}, "a depth is"},
	})
}
