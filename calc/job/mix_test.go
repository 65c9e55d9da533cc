package job

import (
	"math"
	"testing"
)

// Molar masses from IUPAC's abridged atomic weights of 2021, kg/mol.
const (
	pentahydrate = 249.677e-3 // CuSO4.5H2O
	lunar        = 169.874e-3 // AgNO3
)

// What makes the bath: a strength, what is in hand, or the salt in a volume.
func TestMix(t *testing.T) {
	const crc = "CRC 102, CuSO4 of 10 mass %: 1107 kg/m3"
	const salt = "salt=copper+sulfate&"
	const dry = "salt=copper+sulfate+anhydrous&"
	check(t, []want{
		{salt + "strength=200&volume=2", "Mix.Weights.SaltMass", 0.4, byHand + ": 200 x 2"},
		{"", "Mix.Suggested", none{}, vocab + ": a strength is in mind"},
		{"", "Mix.TooMuch", false, "310 g/L dissolve at 20 C (CRC 98)"},
		{salt + "strength=200&volume=2&assay=98", "Mix.Weights.SaltMass", 0.4 / 0.98, byHand},
		{salt + "strength=200&volume=2&assay=pure", "Mix.Weighed", false, "it can't be read"},
		{"", "Mix.Ready", true, "and the solution needs none"},
		{dry + "strength=10+%25&volume=1", "Mix.Weights.WaterMass", 0.9963, crc},
		{"", "Mix.Water", 0.9963 / 998.2, "water at 20 C, CRC"},
		{"", "Mix.Conductivity", 3.22, "CRC, Electrical Conductivity of Aqueous Solutions, 20 C"},
		{salt + "strength=400&volume=1", "Mix.TooMuch", true, "310 g/L dissolve at 20 C (CRC 98)"},
		{salt + "strength=100+%25+sat&volume=1", "Mix.TooMuch", false, "just saturated"},
		{salt + "strength=250&volume=1", "Mix.SaturatesAt", about{273.15 + 7.3, 1e-3}, "CRC 98: 12.4 % at 0 C, 14.4 at 10; it has 13.86"},
		{salt + "strength=250&coldest=0", "Mix.CrystalsEach", about{33, 0.03}, "CRC 98: 12.4 % at 0 C"},
		{salt + "strength=250&volume=2&coldest=0", "Standing.Crystals", about{0.066, 0.03}, "the same in 2 L"},
		{salt + "strength=250", "Standing.Crystals", none{}, "it needs a volume and a coldest day"},
		{"salt=silver+nitrate&strength=50+%25", "Mix.OutsideTables", 1, "CRC: its conductivity ends at 40 %"},
		{"salt=silver+nitrate&strength=20+%25+sat", "Mix.OutsideTables", 1, "CRC: its density ends short of saturation"},
		{"salt=silver+nitrate&strength=20", "Mix.OutsideTables", 0, "CRC: within"},

		{salt + "saltInHand=500&waterInHand=5+kg&strength=200", "Mix.Volume", 2.5e-3, byHand + ": 500 / 200"},
		{salt + "saltInHand=2+kg&waterInHand=1+kg&strength=200", "Mix.Volume", about{1 / 0.923e3, 2e-3}, byHand + ": the water is the scarcer; a litre holds 1123 - 200 g (CRC 102)"},
		{salt + "saltInHand=500&strength=200&assay=90", "Mix.Volume", 2.25e-3, byHand + ": 450 / 200"},
		{salt + "saltInHand=500&waterInHand=lots&strength=200", "Mix.Volume", none{}, "it can't be read"},
		{salt + "volume=2", "Mix.SuggestedWeights.SaltMass", 0.3, byHand + ": 150 g/L"},
		{salt + "strength=200&volume=2", "Mix.SuggestedWeights.SaltMass", 0, "another strength is in mind"},
		{salt + "strengthA=100&volume=2", "Mix.SuggestedWeights.SaltMass", 0, "a blend is no new bath"},
		{salt + "saltInHand=500&volume=2", "Mix.Weights.SaltMass", 0.5, "all of it"},
		{salt + "saltInHand=500&volume=2&assay=80", "Mix.Solution.Strength", 200.0, byHand + ": 400 / 2"},
		{dry + "saltInHand=100&waterInHand=900", "Mix.Volume", 1 / 1107.0, crc},
		{"", "Mix.Suggested", none{}, vocab + ": what there is tells it"},
		{dry + "saltInHand=100&waterInHand=901.61+mL", "Mix.Volume", about{1 / 1107.0, 1e-4}, crc + "; water of 0.9982 kg/L"},
		{salt + "saltInHand=5+kg&volume=1", "Mix.TooMuch", true, "310 g/L dissolve at 20 C (CRC 98)"},
		{salt + "saltInHand=500&waterInHand=5+kg&volume=1", "Errors.volume", "contradiction", vocab},
		{salt + "saltInHand=500&strength=200&volume=1", "Errors.saltInHand", "contradiction", vocab},
		{salt + "waterInHand=500&strength=200&volume=1", "Errors.waterInHand", "contradiction", vocab},
		{salt + "waterInHand=500&volume=1", "Errors.waterInHand", none{}, "only a strength is lacking"},
		{"", "Errors.strength", "missing", vocab},
		{salt + "saltInHand=some&volume=1", "Errors.strength", none{}, "it stands in another field, and can't be read"},
		{salt + "volume=1&strength=strong", "Mix.Ready", false, "it can't be read"},
		{salt + "strengthA=100&volume=1", "Errors.strength", none{}, vocab + ": a blend is no new bath"},
		{"strength=200", "Errors.salt", "missing", vocab},
		{"waterInHand=200", "Errors.salt", "missing", vocab},
		{"saltInHand=200", "Errors.salt", "missing", vocab},
		{"volume=2", "Errors.salt", "missing", vocab},
		{"depth=0.1", "Errors.salt", none{}, "no bath is asked about"},
		{"metal=copper&depth=0.1", "Mix.Suggested", 150.0, choice},
		{"metal=sterling&depth=0.1", "Mix.Suggested", 40.0, choice},
		{"metal=sterling&salt=copper+sulfate", "Mix.Suggested", none{}, vocab + ": the wrong bath"},
		{salt + "strength=200&temperature=hot", "Mix.Ready", false, "it can't be read"},
		{salt + "strength=200&volume=1", "Mix.Weights.MetalMass", 0.2 * copper / pentahydrate, byHand},
		{"salt=silver+nitrate&strength=20&volume=1", "Mix.Weights.MetalMass", 0.02 * silver / lunar, byHand},
	})
}

func TestVolume(t *testing.T) {
	const round = "vesselDiameter=20+cm&fill=100&"
	holds := math.Pi * 1e-3
	check(t, []want{
		{round, "Mix.Volume", holds, byHand + ": pi x 1 x 1 x 1 dm"},
		{"vesselLength=250&vesselWidth=150&fill=100", "Mix.Volume", 3.75e-3, byHand},
		{"vesselLength=250&fill=100", "Mix.Volume", blank, "half a tank"},
		{round + "volume=3.16", "Mix.Volume", 3.16e-3, vocab + ": as typed, within 1 %"},
		{round + "volume=3.2", "Mix.Volume", bad, "1.9 % off"},
		{"", "Errors.fill", "contradiction", vocab},
		{"", "Errors.volume", "contradiction", vocab},
		{round + "vesselWidth=150", "Mix.Volume", bad, vocab + ": round, or with a width"},
		{"", "Errors.vesselDiameter", "contradiction", vocab},
		{round + "vesselLength=150", "Errors.vesselLength", "contradiction", vocab},
		{round + "vesselLength=150&volume=2", "Mix.Volume", 2e-3, "as typed"},
	})
}

// The bath as it stands: cartridge brass takes 0.29158 g of copper a gram out of
// copper sulfate (0.7 goes back, and 63.546 x (0.7/63.546 + 0.3/65.38) plate).
func TestStanding(t *testing.T) {
	const bath = "metal=Cu+70+Zn+30&salt=copper+sulfate&strength=200&volume=2&"
	each := copper*(0.7/copper+0.3/zinc) - 0.7
	salt := 0.04 * each * pentahydrate / copper
	check(t, []want{
		{bath, "Standing.Changed", false, "nothing was said of it"},
		{"", "Standing.Now.Strength", 200.0, "as mixed"},
		{bath + "volumeNow=1.8", "Standing.Changed", true, "water has gone"},
		{"", "Standing.Now.Strength", 200 * 2 / 1.8, byHand},
		{"", "Standing.WaterToAdd", 0.2e-3, byHand},
		{"salt=copper+sulfate&strength=250&volume=2&volumeNow=1.75&coldest=0", "Standing.Crystals", about{0.126, 0.04},
			byHand + ": 286 g/L is 15.56 % of 1174 g; (183 - 0.124 x 1174) / (0.639 - 0.124) a litre (CRC 98 and 102)"},
		{bath + "etched=40", "Standing.Changed", true, "metal was etched"},
		{"", "Standing.Now.Strength", 200 - salt/2e-3, byHand},
		{"", "Standing.SaltForEtched", salt, byHand},
		{bath + "etched=40&assay=80", "Standing.SaltForEtched", salt / 0.8, byHand},
		{bath + "volumeNow=2", "Standing.Unclear", false, "as much as was mixed"},
		{bath + "volumeNow=2.1", "Standing.Unclear", true, "water only goes"},
		{"", "Errors.volumeNow", "contradiction", vocab},
		{"", "Standing.Known", false, "it can't be so"},
		{"", "Standing.Conductivity", bad, "it can't be so"},
		{bath + "etched=much", "Standing.Unclear", true, "it can't be read"},
		{bath + "volumeNow=much", "Standing.Unclear", true, "it can't be read"},
		{"salt=copper+sulfate&strength=200&volume=2&etched=40", "Errors.metal", "missing", vocab},
		{"", "Standing.Unclear", true, "etched of what?"},
		{"metal=unobtainium&salt=copper+sulfate&strength=200&volume=2&etched=40", "Standing.Unclear", true, "of which metal?"},
		{"metal=copper&salt=unobtainium&strength=200&volume=2&etched=40", "Standing.Unclear", true, "in which salt?"},
		{"metal=sterling&salt=copper+sulfate&strength=200&volume=2&etched=40", "Standing.Unclear", true, "the wrong bath"},
		{"salt=copper+sulfate&strength=200&volume=2", "Standing.Known", true, "no metal is needed"},
		{"salt=copper+sulfate&strength=200", "Standing.Known", false, "a volume is"},
	})
}
