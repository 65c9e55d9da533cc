package job

import "testing"

// A litre of copper sulfate, 200 g/L, that holds 50.903 g of copper, in which 10
// cm2 of brass of 8.5 g/cm3 are etched 0.1 mm: 0.85 g, of which 0.595 g of copper
// come back.
func TestUsed(t *testing.T) {
	const brass = "metal=Cu+70+Zn+30&metalDensity=8.5&area=10&depth=0.1&density=20&"
	const bath = "strength=200&volume=1&"
	const all = 0.85e-3
	ofSalt := pentahydrate / copper
	deposit := all * copper * (0.7/copper + 0.3/zinc)
	lost := deposit - 0.7*all
	check(t, []want{
		{brass + bath, "Used.Deposit", deposit, "Faraday's law"},
		{"", "Used.MetalLost", lost, byHand},
		{"", "Used.Drop", lost / (0.2 / ofSalt), byHand},
		{"", "Used.DropAll", lost / (0.2 / ofSalt), "nothing was etched before"},
		{"", "Used.SaltToAdd", lost * ofSalt, byHand},
		{"", "Used.SaltToAddAll", lost * ofSalt, byHand},
		{"", "Used.PiecesToTenth", 20, byHand + ": 10 / 0.487"},
		{"", "Used.Spent", false, "99.5 % are left"},
		{"", "Used.Hydrogen", none{}, "copper plates"},
		{brass + "strength=200", "Used.SaltToAdd", lost * ofSalt, "the same of a bath of any volume"},
		{brass + "volume=1", "Used.SaltToAdd", lost * ofSalt, "and of any strength"},
		{brass + bath + "pieces=2", "Used.PiecesToTenth", 20, "two at a time, ten times"},
		{brass + bath + "assay=80", "Used.SaltToAdd", lost * ofSalt / 0.8, byHand},
		{"", "Used.SaltToAddAll", lost * ofSalt / 0.8, byHand},
		{brass + bath + "etched=40", "Used.DropAll", lost * (40.85 / 0.85) / (0.2 / ofSalt), byHand},
		{"", "Used.Drop", lost / (0.2 / ofSalt), "of this run alone"},
		{"", "Used.SaltToAddAll", lost * (40.85 / 0.85) * ofSalt, byHand},
		{brass + bath + "etched=1000", "Used.SaltToAddAll", 0.2, vocab + ": at most what was mixed"},
		{"", "Used.Spent", true, byHand + ": 0.29 g of copper a gram"},
		{brass + bath + "etched=much", "Used.DropAll", none{}, "it can't be read"},
		{"", "Used.Drop", lost / (0.2 / ofSalt), "it does not need it"},
		{"metal=Cu+70+Zn+30&" + bath + "etched=40", "Used.DropAll", lost * (40 / 0.85) / (0.2 / ofSalt), "no run is needed"},
		{"metal=Cu+70+Zn+30&" + bath, "Used.DropAll", none{}, "nothing was etched"},
		{brass, "Used.Drop", none{}, "of what?"},
		{"", "Used.SaltToAdd", lost * ofSalt, "no bath is needed"},
		{cu + "area=10&depth=0.1&density=20&" + bath, "Used.MetalLost", 0, "copper comes back whole"},
		{"", "Used.SaltToAdd", 0, "nothing is lost"},
		{"", "Used.SaltToAddAll", 0, "nothing is lost"},
		{"", "Used.PiecesToTenth", none{}, "never"},
		{cu + "salt=common+salt&area=10&current=0.3&time=60", "Used.Hydrogen", 0.3 * 3600 * 8.314462618 * 293.15 / (2 * faraday * 101325), "an ideal gas, CODATA 2018"},
		{"", "Used.Deposit", none{}, "its bath has no metal"},
		{"metal=Cu+91+Sn+9&metalDensity=9&area=10&depth=0.1&density=20", "Used.Sludge", 0.9e-3 * 0.09 * 150.708 / 118.71, byHand + ": SnO2, IUPAC 2021"},
		{brass, "Used.Sludge", none{}, "all of it dissolves"},
	})
	for element, want := range map[string]float64{"Zn": 0.3 * all, "Cu": 0} {
		if got := work(brass + bath).Used.Gained[element]; !near(got, want) {
			t.Errorf("of %s the bath gains %g, want %g", element, got, want)
		}
	}
	if got := work(brass + bath + "etched=40&volumeNow=0.8").Used.InBath["Zn"]; !near(got, 0.3*(all+0.04)/0.8e-3) {
		t.Errorf("in 0.8 L there are %g kg/m3 of zinc", got)
	}
	if got := work("metal=sterling&metalDensity=10&area=10&depth=0.1&density=10&strength=60&volume=1").Used.InBath["Cu"]; !near(got, 0.075*1e-3/1e-3) {
		t.Errorf("of sterling there are %g kg/m3 of copper", got)
	}
	if got := work(cu + "salt=common+salt&area=10&depth=0.1&density=20&volume=1&strength=100").Used; len(got.Gained)+len(got.InBath) > 0 {
		t.Errorf("in common salt the copper falls again, but %v, %v", got.Gained, got.InBath)
	}
}

// Anhydrous copper sulfate: 5 % is 1051.1 and 10 % 1107 kg/m3 (CRC 102, 20 C).
func TestStrengthenAndBlend(t *testing.T) {
	const dry = "salt=copper+sulfate+anhydrous&"
	check(t, []want{
		{dry + "haveStrength=5+%25&haveVolume=1&wantStrength=10+%25", "Used.AddSalt", 1.0511 * 0.05 / 0.9, "CRC 102"},
		{"", "Used.AddWater", none{}, "salt is what it needs"},
		{dry + "haveStrength=5+%25&haveVolume=1&wantStrength=10+%25&assay=80", "Used.AddSalt", 1.0511 * 0.05 / 0.9 / 0.8, byHand},
		{dry + "haveStrength=10+%25&haveVolume=1&wantStrength=5+%25", "Used.AddWater", 1.107 / 998.2, "CRC 102: as much again of water"},
		{"", "Used.AddSalt", none{}, "water is what it needs"},
		{dry + "haveStrength=10+%25&haveVolume=1", "Errors.wantStrength", "missing", vocab},
		{dry + "haveStrength=10+%25&wantStrength=5+%25", "Used.AddWater", none{}, "of how much?"},
		{dry + "strengthA=15+%25&strengthB=5+%25&wantStrength=10+%25&volume=1", "Used.PartA", 0.5535, "CRC 102: half"},
		{"", "Used.PartB", 0.5535, "CRC 102: half"},
		{"", "Used.VolumeB", 0.5535 / 1051.1, "CRC 102"},
		{"", "Used.VolumeA", about{0.5535 / 1167, 2e-3}, "CRC 102, from memory: 15 % is about 1167 kg/m3"},
		{dry + "strengthA=15+%25&strengthB=5+%25&volume=1", "Errors.wantStrength", "missing", vocab},
		{dry + "strengthA=15+%25&strengthB=5+%25&wantStrength=10+%25", "Errors.volume", "missing", vocab},
		{dry + "strengthA=15+%25&strengthB=5+%25&wantStrength=4+%25&volume=1", "Errors.strengthB", "contradiction", "4 lies outside 5 and 15"},
		{dry + "strengthA=15+%25&wantStrength=10+%25&volume=1", "Used.PartA", none{}, "and the other?"},
		{dry + "gravity=1.1090", "Used.ByGravity", about{110.7, 1e-3}, "CRC 102: 1.1090 x 0.9982 is 1107 kg/m3, 10 %"},
		{dry + "gravity=1.107+g/mL", "Used.ByGravity", about{110.7, 1e-3}, "the same"},
		{dry + "gravity=14.25+°Bé", "Used.ByGravity", about{110.7, 3e-3}, "145 / (145 - 14.25) is 1.1090"},
		{dry + "gravity=0.9", "Errors.gravity", "range", "lighter than water"},
		{dry + "temperature=hot&gravity=1.1090", "Used.ByGravity", none{}, "all of the bath waits for its temperature"},
		{"gravity=1.1090", "Used.ByGravity", none{}, "of which salt?"},
	})
}
