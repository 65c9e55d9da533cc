package job

import "testing"

// The shallowest part has 80 % of the mean, so that the mean is 1.25 times as deep.
func TestUntil(t *testing.T) {
	const shallowest = "until=least&least=80+%25&"
	check(t, []want{
		{plate + shallowest + "depth=0.1&current=0.3", "Bite.Depth", 0.125e-3, byHand},
		{"", "Bite.Time", 1.25 * coulombs / 0.3, "Faraday's law"},
		{"", "Sheet.Depth", 0.125e-3, "what is left of the sheet is left of the mean"},
		{plate + shallowest + "time=60&current=0.3", "Bite.Depth", 0.1e-3 * 0.3 * 3600 / coulombs, "Faraday's law: a mean is a mean"},
		{plate + shallowest + "depth=0.1&time=60", "Bite.Current", 1.25 * coulombs / 3600, "Faraday's law"},
		{cu + shallowest + "depth=0.1&time=60&current=0.5", "Bite.Area", 10e-4 * 0.5 * 3600 / coulombs / 1.25, "Faraday's law"},
		{plate + shallowest + "depth=0.1&density=30", "Suggest.Time", 1.25 * coulombs / 0.3, "Faraday's law, at 30 mA/cm2"},
		{plate + shallowest + "depth=0.1&time=60&current=0.949", "Bite.Agrees", true, byHand + ": 1.25 x 0.7592 A"},
		{plate + shallowest + "depth=0.1&time=60&current=0.76", "Bite.Agrees", false, "that is for the mean"},
		{plate + "until=mean&least=80+%25&depth=0.1&current=0.3", "Bite.Depth", 0.1e-3, vocab},
		{plate + "least=80+%25&depth=0.1&current=0.3", "Bite.Depth", 0.1e-3, vocab + ": the mean, if blank"},
		{plate + shallowest + "bites=0.1+10&current=0.3", "Bite.Time", coulombs / 0.3, vocab + ": it is `depth` that is reached by the shallowest"},
		{plate + "until=least&depth=0.1&current=0.3", "Errors.least", "missing", vocab},
		{"", "Bite.Depth", bad, "nobody knows the mean"},
		{"", "Bite.Time", none{}, "the same"},
		{plate + "until=least&time=60&current=0.3", "Errors.least", "missing", vocab},
		{"", "Bite.Depth", none{}, "nobody knows that of the shallowest part"},
		{plate + "until=least&least=some&depth=0.1&current=0.3", "Bite.Depth", bad, "it can't be read"},
		{"", "Errors.least", "number", vocab},
		{plate + "until=soon&depth=0.1&current=0.3", "Bite.Depth", bad, "it can't be read"},
	})
}

// What a picture gave stands for the estimate, whatever that rests on.
func TestSolvedResistance(t *testing.T) {
	check(t, []want{
		{inCell + "volts=3&resistance=2", "Circuit.Resistance", 2.0, vocab},
		{"", "Circuit.Resistance.High", none{}, "it is no estimate"},
		{"", "Circuit.CellVolts", amps*2 + 0.2, byHand},
		{"", "Circuit.CellVolts.High", amps*2 + 0.3, byHand},
		{"", "Circuit.CurrentAtVolts", 1.4, byHand},
		{"", "Supply.Drives", 1.4, byHand},
		{plate + "depth=0.1&current=0.5&volts=3&resistance=2", "Circuit.CellVolts", 1.2, byHand},
		{"", "Supply.Assumed", 0, "distance, cathode and strength are not asked for"},
		{plate + "depth=0.1&current=0.5&volts=3&amps=9&pieces=2&resistance=0.25", "Circuit.PiecesThatFit", 36, byHand + ": 9 A, 0.25 A each, and 5.6 A would flow through each one's 0.5 ohm"},
		{plate + "depth=0.1&current=0.5&volts=0.3&amps=9&pieces=2&resistance=0.25", "Circuit.PiecesThatFit", 0, byHand + ": 0.1 V over 0.5 ohm is 0.2 A for each, of the 0.25 it takes"},
		{inCell + "volts=3&resistance=some", "Circuit.Resistance", none{}, "no estimate stands for what can't be read"},
		{"", "Supply.Unread", true, "the same"},
		{inCell + "volts=61&resistance=2", "Circuit.Resistance", none{}, vocab + ": over 60 V all is blocked"},
	})
}
