package job

import "testing"

// What keeps a supply from being judged is told from what is only not typed yet.
func TestUnreadSupply(t *testing.T) {
	check(t, []want{
		{cu + "amps=1", "Supply.Unread", false, vocab + ": an area is only blank"},
		{cu + "area=some&depth=0.1&amps=1", "Supply.Unread", true, vocab},
		{cu + "area=20&current=much&amps=1", "Supply.Unread", true, vocab},
		{cu + "area=20&density=much&amps=1", "Supply.Unread", true, vocab},
		{cu + "width=ells&height=5&open=40&density=20&amps=1", "Supply.Unread", true, vocab},
		{"metal=unobtainium&area=20&amps=1", "Supply.Unread", true, vocab},
		{cu + "area=20&density=20&amps=some", "Supply.Unread", true, vocab},
		{cu + "area=20&density=20&amps=1", "Supply.Unread", false, vocab},
		{inCell + "volts=3", "Supply.Unread", false, vocab},
		{cu + "area=20&density=25&volts=3&gap=far", "Supply.Unread", true, vocab},
		{"", "Supply.Judged", false, vocab},
		{cu + "area=20&density=25&amps=1&gap=far", "Supply.Judged", true, "its amperes are enough, whatever the bath resists"},
		{cu + "area=20&density=25&amps=0.4&volts=3&gap=far", "Supply.Judged", true, "its amperes are not"},
	})
}

// The volts that are needed are the cell's and the cable's; a resistor is chosen with the
// cable in the circuit, and its least current is that of the largest resistance that the
// bath may have, which is more than twice the usual one here.
func TestSupplyCountsTheCable(t *testing.T) {
	const wired = inCell + "volts=3&wire=1+mm&wireLength=2&"
	cell := amps*ohms + 0.2
	const resistor = 5.6 // next of IEC 60063 E12 from 2.8 / 0.5 - 0.54 - 0.04 = 5.02
	if most <= 2*ohms {
		t.Fatalf("%v ohm are not over twice %v", most, ohms)
	}
	check(t, []want{
		{wired, "Supply.Volts", cell + amps*lead, byHand},
		{"", "Supply.Drives", 2.8 / (ohms + lead), byHand},
		{"", "Supply.Resistor.Ohms", resistor, "IEC 60063, series E12"},
		{"", "Supply.Resistor.Current", 2.8 / (ohms + lead + resistor), byHand},
		{"", "Supply.Resistor.Low", 2.8 / (most + lead + resistor), byHand},
		{"", "Supply.Resistor.High", 2.8 / (ohms/2 + lead + resistor), byHand},
		{"", "Supply.Resists", true, byHand},
		{inCell + "volts=31", "Supply.Resists", false, vocab + ": over 30 V none"},
		{inCell + "volts=0.5", "Supply.Resists", false, "it fits"},
	})
}
