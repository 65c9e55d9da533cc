package job

import (
	"math"
	"testing"

	"saltbite/calc/circuit"
)

// A plate of 100 x 50 mm, 40 % exposed, before a cathode as large, 10 mm off, in
// copper sulfate of 32.2 mS/cm (CRC, 10 mass %).
const (
	inCell = cu + "width=100&height=50&open=40&depth=0.1&density=25&salt=copper+sulfate+anhydrous&strength=10+%25&volume=2&gap=10&cathode=50&"
	amps   = 0.5 // 20 cm2 at 25 mA/cm2

	copperWire = 1 / 58e6 // ohm m, IACS
)

// By the formula in the package: 1 cm / (2 kappa) x 2 / root(50 x 11 x 6 cm2), and
// 0.2 V for the reactions, 0.1 to 0.3 (common practice, no source).
var (
	ohms = 0.01 / (2 * 3.22) * 2 / math.Sqrt(50e-4*0.11*0.06)
	most = 1.6 * 0.01 / (3.22 * 20e-4) // as a column before the exposed metal
	lead = copperWire * 2 / (math.Pi / 4 * 1e-6)
)

func TestCircuit(t *testing.T) {
	full := inCell + "volts=3&amps=1&wire=1+mm&wireLength=2&"
	cell := amps*ohms + 0.2
	check(t, []want{
		{full, "Circuit.Resistance", ohms, byHand},
		{"", "Circuit.Resistance.High", most, byHand},
		{"", "Circuit.CellVolts", cell, byHand},
		{"", "Circuit.CellVolts.Low", amps*0.85*ohms + 0.1, byHand},
		{"", "Circuit.CellVolts.High", amps*most + 0.3, byHand},
		{"", "Circuit.CathodeDensity", 100.0, byHand},
		{"", "Circuit.WireLimit", 5e6 * math.Pi / 4 * 1e-6, choice + ": 5 A/mm2"},
		{"", "Circuit.WireDrop", amps * lead, "IACS"},
		{"", "Circuit.SupplyWatts", 1.5, byHand},
		{"", "Circuit.CurrentAtVolts", 2.8 / (ohms + lead), byHand},
		{"", "Circuit.Ballast", (3 - cell - amps*lead) / amps, byHand},
		{"", "Circuit.BallastWatts", (3 - cell - amps*lead) * amps, byHand},
		{"", "Circuit.Warming", amps * cell / 4182 / 1.9926, byHand + ": on 1.9926 kg of water (CRC)"},
		{"", "Circuit.PiecesThatFit", 2, byHand},
		{"", "Circuit.DepthThatFits", 0.2e-3, byHand + ": twice the current"},
		{"", "Circuit.TimeThatFits", 2 * coulombs, "Faraday's law: 20 cm2 at 1 A"},
		{full + "wireMetal=aluminium", "Circuit.WireDrop", amps * lead / 0.61, "ASTM B609, from memory: 61 % of copper"},
		{inCell + "volts=3&wire=1", "Circuit.WireDrop", none{}, "it needs a length"},
		{"", "Circuit.WireLimit", 5e6 * math.Pi / 4 * 1e-6, choice},
		{"", "Circuit.PiecesThatFit", none{}, "without amperes"},
		{inCell + "volts=30", "Circuit.Ballast", (30 - cell) / amps, byHand},
		{inCell + "volts=31", "Circuit.Ballast", none{}, vocab + ": over 30 V none"},
		{inCell + "volts=60", "Circuit.Resistance", ohms, "60 V may be touched dry (IEC 60364-4-41, from memory)"},
		{inCell + "volts=61&wire=1", "Circuit.Resistance", none{}, vocab + ": over 60 V all is blocked"},
		{"", "Circuit.WireLimit", none{}, vocab},
		{"", "Supply.Judged", true, vocab},
		{inCell + "volts=0.4&amps=some", "Circuit.CurrentAtVolts", none{}, "it can't be read"},
		{inCell + "volts=0.15&amps=1", "Circuit.PiecesThatFit", 0, "0.15 V drive nothing against 0.2"},
		{"", "Circuit.DepthThatFits", none{}, "the same"},
		{inCell + "volts=0.4&amps=1&pieces=3", "Circuit.PiecesThatFit", 0, byHand + ": 0.2 V over 0.54 ohm is 0.37 A"},
		{cu + "area=20&depth=0.1&density=25&volts=3&amps=1", "Circuit.PiecesThatFit", 2, byHand + ": what the volts drive is not known without a bath"},
		{cu + "area=20&depth=0.1&density=25&amps=1", "Circuit.PiecesThatFit", 2, byHand},
		{inCell + "amps=1", "Circuit.PiecesThatFit", 2, byHand + ": no volts are named"},
		{full + "after=9&time=60", "Circuit.PiecesThatFit", none{}, "a run under way"},
		{full + "pieces=some", "Circuit.Resistance", none{}, "it can't be read"},
		{full + "vesselWidth=40&fill=100&vesselLength=250", "Circuit.Cell.Section", 40e-4, byHand + ": width x fill"},
		{full + "vesselWidth=40&fill=100&vesselLength=250&position=face-down", "Circuit.Cell.Section", 100e-4, byHand + ": the floor"},
		{full + "vesselDiameter=100&fill=40", "Circuit.Cell.Section", 40e-4, byHand + ": across the middle"},
		{cu + "area=20&density=25&depth=0.1&salt=common+salt&strength=100&gap=10&cathode=50", "Circuit.Allowance.Usual", 1.75, choice + ": with hydrogen"},
		{"metal=sterling&area=20&density=25&depth=0.1&wire=1&cathode=50", "Circuit.CathodeDensity", 100.0, byHand},
		{"metal=sterling&area=20&density=25&depth=0.1&wire=1&cathode=50&salt=copper+sulfate", "Circuit.CathodeDensity", none{}, vocab + ": the wrong bath"},
		{"", "Circuit.WireLimit", 5e6 * math.Pi / 4 * 1e-6, "a cable is a cable in any bath"},
	})
}

// Whether the supply will do, and what stands for a blank to say so.
func TestSupply(t *testing.T) {
	const plain = cu + "area=20&depth=0.1&"
	check(t, []want{
		{inCell, "Supply.Given", false, "no supply is named"},
		{inCell + "volts=3", "Supply.Given", true, "its volts are"},
		{"", "Supply.Verdict", circuit.NeedsALimit, byHand + ": 5.2 A, over 1.3 times 0.5"},
		{"", "Supply.Drives", 2.8 / ohms, byHand},
		{"", "Supply.Volts", amps*ohms + 0.2, byHand},
		{"", "Supply.Resistor.Ohms", 5.6, "next of IEC 60063 E12 from 2.8 / 0.5 - 0.54 = 5.06"},
		{"", "Supply.Assumed", 0, "nothing"},
		{inCell + "volts=0.5", "Supply.Verdict", circuit.Fits, byHand + ": 0.3 / 0.54 is 0.55 A"},
		{inCell + "volts=0.4", "Supply.Verdict", circuit.TooWeak, byHand + ": 0.37 A"},
		{inCell + "amps=0.5", "Supply.Verdict", circuit.Fits, "just enough"},
		{inCell + "amps=0.49", "Supply.Verdict", circuit.TooWeak, "not enough"},
		{"", "Supply.Drives", none{}, "without volts"},
		{inCell + "volts=61", "Supply.Verdict", circuit.Forbidden, vocab},
		{plain + "amps=1", "Supply.Current", 0.6, vocab + ": 30 mA/cm2 where no limit is known"},
		{"", "Supply.Assumed", 1, "the density"},
		{plain + "amps=1&density=much", "Supply.Judged", false, "it can't be read"},
		{"depth=0.1&amps=1", "Supply.Judged", false, "without an area"},
		{plain + "volts=3", "Supply.Assumed", 4, "density, gap, cathode and strength"},
		{plain + "density=25&volts=3&gap=75&cathode=20&strength=150", "Supply.Assumed", 0, "nothing"},
		{"", "Supply.Drives", about{0.583, 0.02}, "as below"},
		{plain + "density=25&volts=3", "Supply.Drives", about{0.583, 0.02}, byHand + ": 2.8 V over 4.8 ohm, 75 mm and 150 g/L of 29.3 mS/cm (CRC) before a cathode of 20 cm2"},
		{plain + "density=25&volts=3&strength=much", "Supply.Drives", none{}, "it can't be read"},
		{plain + "density=25&volts=3&gap=far", "Supply.Drives", none{}, "it can't be read"},
		{plain + "density=25&volts=3&gap=far", "Supply.Unread", true, "the gap can't be"},
		{plain + "density=25&volts=3&temperature=warm", "Supply.Unread", true, "the temperature can't be"},
		{plain + "density=25&volts=3&salt=unobtainium", "Supply.Unread", true, "the salt can't be"},
		{plain + "density=25&volts=3", "Supply.Unread", false, "nothing is unread"},
		{"metal=sterling&salt=copper+sulfate&area=20&density=25&volts=3", "Supply.Judged", false, vocab + ": the wrong bath"},
	})
}
