package job

import "testing"

func TestMetal(t *testing.T) {
	check(t, []want{
		{"metal=C26000", "Metal.Density", 8530.0, "C26000, 8.53 g/cm3 (CDA, from memory)"},
		{"metal=C26000&metalDensity=8.4", "Metal.Density", 8400.0, "as typed"},
		{"metal=C26000&metalDensity=heavy", "Metal.Density", none{}, vocab + ": what can't be read blocks what needs it"},
		{"", "Law.Known", false, vocab},
		{"metal=zinc", "Errors.metal", "unknown", vocab},
		{"", "Law.Known", false, vocab},
		{"depth=1", "Metal.State", blank, "nothing was typed"},
	})
}

// How much a coulomb dissolves: copper as Cu(II) in its own salt and as Cu(I) in
// common salt; tin with two charges, or four.
func TestLaw(t *testing.T) {
	of := func(shares ...float64) float64 { // pairs of a share over a molar mass, and charges
		var moles float64
		for i := 0; i < len(shares); i += 2 {
			moles += shares[i] * shares[i+1]
		}
		return 1 / moles / faraday
	}
	check(t, []want{
		{"metal=oxygen-free+copper", "Law.Each", cu2, "Faraday's law"},
		{"", "Law.Each.Low", none{}, "one charge only"},
		{"", "Law.Efficiency.Range", 1.0, vocab},
		{"", "Law.Slow.Efficiency", 0.9, choice},
		{"", "Law.Fast.Efficiency", 1.05, choice},
		{"metal=oxygen-free+copper&efficiency=95", "Law.Slow.Efficiency", 0.95, "as typed, and then no range"},
		{"", "Law.Fast.Efficiency", 0.95, "as typed"},
		{"metal=oxygen-free+copper&efficiencyLow=90&efficiencyHigh=98", "Law.Slow.Efficiency", 0.9, "as typed"},
		{"", "Law.Fast.Efficiency", 0.98, "as typed"},
		{"metal=oxygen-free+copper&efficiencyLow=90&efficiencyHigh=98&efficiency=90", "Law.Efficiency.Range", 0.9, "as typed, at an end of the range"},
		{"metal=oxygen-free+copper&efficiencyLow=90&efficiencyHigh=98&efficiency=98", "Law.Efficiency.Range", 0.98, "as typed, at an end of the range"},
		{"metal=oxygen-free+copper&efficiencyLow=90&efficiencyHigh=98&efficiency=89", "Law.Known", false, vocab + ": a contradiction"},
		{"metal=oxygen-free+copper&efficiencyLow=95&efficiencyHigh=95", "Law.Efficiency.Range", 0.95, "a range of nothing is one"},
		{"metal=oxygen-free+copper&efficiencyLow=much&efficiencyHigh=98", "Law.Slow.Efficiency", 1.0, "an end that can't be read is no range"},
		{"", "Errors.efficiencyHigh", none{}, "it was given"},
		{"metal=oxygen-free+copper&efficiencyHigh=98", "Errors.efficiencyLow", "missing", vocab},
		{"metal=oxygen-free+copper&salt=common+salt", "Law.Each", 2 * cu2, "Faraday's law, Cu(I)"},
		{"", "Law.Each.Low", cu2, "Faraday's law, Cu(II)"},
		{"", "Law.Slow.Efficiency", 1.0, vocab + ": the charges are the range"},
		{"", "Law.Slow.Equivalent", cu2, "Faraday's law, Cu(II)"},
		{"", "Law.Fast.Equivalent", 2 * cu2, "Faraday's law, Cu(I)"},
		{"metal=oxygen-free+copper&salt=common+salt&efficiencyLow=90&efficiencyHigh=98", "Law.Slow.Equivalent", 2 * cu2, vocab + ": own runs include it"},
		{"metal=Cu+70+Zn+30", "Law.Each", of(0.7/copper, 2, 0.3/zinc, 2), "Faraday's law"},
		{"metal=Cu+91+Sn+9", "Law.Each", of(0.91/copper, 2, 0.09/tin, 2), "Faraday's law, Sn(II)"},
		{"", "Law.Each.Low", of(0.91/copper, 2, 0.09/tin, 4), "Faraday's law, Sn(IV)"},
		{"metal=Ag+92.5+Cu+7.5", "Law.Each", of(0.925/silver, 1, 0.075/copper, 2), "Faraday's law"},
		{"metal=sterling&salt=copper+sulfate", "Law.Known", false, vocab + ": the wrong bath"},
		{"metal=oxygen-free+copper&salt=lemonade", "Errors.salt", "unknown", vocab},
		{"", "Law.Known", false, "without its bath nothing is known"},
	})
}
