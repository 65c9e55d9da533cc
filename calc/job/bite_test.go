package job

import "testing"

// Copper of 9 g/cm3, 10 cm2: 0.1 mm is 0.9 g, which takes so many coulombs.
const (
	plate    = cu + "area=10&"
	coulombs = 0.9e-3 / cu2
)

// What is blank of depth, time, current and area follows from the others, and a
// density stands for a current or an area.
func TestBiteFindsWhatIsBlank(t *testing.T) {
	check(t, []want{
		{plate + "depth=0.1&current=0.3", "Bite.Time", coulombs / 0.3, "Faraday's law"},
		{"", "Bite.Found", 1, "the blank one"},
		{"", "Loss.Time.Low", coulombs / 0.3 / 1.05, choice},
		{"", "Loss.Time.High", coulombs / 0.3 / 0.9, choice},
		{"", "Loss.Depth.Low", none{}, "it was typed"},
		{plate + "time=60&current=0.3", "Bite.Depth", 0.1e-3 * 0.3 * 3600 / coulombs, "Faraday's law"},
		{"", "Loss.Depth.Low", 0.9 * 0.1e-3 * 0.3 * 3600 / coulombs, choice},
		{"", "Loss.Depth.High", 1.05 * 0.1e-3 * 0.3 * 3600 / coulombs, choice},
		{"", "Loss.Time.Low", none{}, "it was typed"},
		{plate + "depth=0.1&time=60", "Bite.Current", coulombs / 3600, "Faraday's law"},
		{cu + "depth=0.1&time=60&current=0.5", "Bite.Area", 10e-4 * 0.5 * 3600 / coulombs, "Faraday's law"},
		{"", "Bite.Found", 1, "the blank one"},
		{cu + "depth=0.1&time=60&current=0.5&pieces=2&extra=1", "Bite.Area", 5e-4*0.5*3600/coulombs - 1e-4, "Faraday's law"},
		{cu + "depth=0.1&time=60&current=0.5&extra=90", "Bite.Area", bad, byHand + ": the extra metal takes more"},
		{"", "Errors.extra", "contradiction", vocab},
		{plate + "depth=0.1&density=30", "Bite.Current", 0.3, byHand},
		{"", "Bite.Time", coulombs / 0.3, "Faraday's law"},
		{"", "Bite.Found", 1, "time; the current was never asked for"},
		{plate + "depth=0.1&density=30&find=current", "Bite.Found", 2, vocab + ": time, and what find names"},
		{cu + "depth=0.1&current=0.3&density=30", "Bite.Area", 10e-4, byHand},
		{cu + "pieces=2&extra=1&depth=0.1&current=0.3&density=30", "Bite.Area", 4e-4, byHand + ": 0.3 / 0.03 / 2 - 1"},
		{cu + "extra=11&depth=0.1&current=0.3&density=30", "Bite.Area", bad, byHand + ": 10 - 11"},
		{"", "Errors.extra", "contradiction", vocab},
		{cu + "depth=0.1&density=30", "Bite.Time", coulombs / 0.3, "Faraday's law; no area is needed"},
		{cu + "depth=0.1&density=30&edge=100", "Bite.Time", none{}, "with an edge the area counts"},
		{cu + "depth=0.1&time=60", "Bite.Density", coulombs / 3600 / 10e-4, "Faraday's law"},
		{cu + "depth=0.1&time=60&edge=100", "Bite.Density", none{}, "with an edge the area counts"},
		{plate + "current=0.3", "Bite.Density", 300.0, byHand},
		{plate + "extra=5&pieces=2&current=0.3", "Bite.Density", 100.0, byHand + ": 0.3 A on 2 x 15 cm2"},
		{"area=10&depth=0.1&density=30", "Bite.Time", none{}, "it needs the metal"},
		{"", "Bite.Current", 0.3, "and that does not"},
		{plate + "depth=0.1&current=0.3&time=long", "Bite.Time", bad, "it can't be read"},
		{plate + "depth=deep&current=0.3&time=60", "Bite.Depth", bad, "it can't be read"},
		{plate + "depth=0.1&current=much&density=30", "Bite.Current", bad, "it can't be read"},
		{plate + "depth=0.1&current=0.3&pieces=some", "Bite.Time", none{}, "it can't be read"},
		{plate + "depth=0.1&time=60&current=0.5&find=time", "Bite.Time", coulombs / 0.5, vocab + ": find wins"},
	})
}

func TestBiteThatCannotBe(t *testing.T) {
	check(t, []want{
		{plate + "depth=0.1&time=60&current=0.761", "Bite.Agrees", true, "Faraday's law: 0.7592 A, within 1 %"},
		{plate + "depth=0.1&time=60&current=0.77", "Bite.Agrees", false, "1.4 % off"},
		{"", "Errors.depth", "contradiction", vocab},
		{"", "Errors.current", "contradiction", vocab},
		{"", "Loss.Charge", none{}, "blocked"},
		{cu + "width=50&height=40&open=50&depth=0.1&time=60&current=0.77", "Errors.open", "contradiction", vocab + ": where no area is typed"},
		{plate + "depth=0.1&time=60&current=0.77&after=9", "Bite.Agrees", true, vocab + ": a run under way"},

		{plate + "density=30&current=0.302", "Bite.Agrees", true, byHand + ": 30.2, within 1 %"},
		{plate + "density=30&current=0.304", "Bite.Agrees", false, byHand + ": 30.4"},
		{"", "Errors.density", "contradiction", vocab},
		{"", "Errors.pieces", none{}, "it was not typed"},

		{cu + "depth=0.1&time=60&density=76", "Bite.Agrees", true, "Faraday's law: 75.92 mA/cm2"},
		{cu + "depth=0.1&time=60&density=77", "Bite.Agrees", false, "1.4 % off"},
		{"", "Errors.time", "contradiction", vocab},
		{cu + "depth=0.1&time=60&density=77&edge=100", "Bite.Agrees", true, "with an edge and no area nobody can tell"},
		{plate + "extra=5&depth=0.1&time=60&density=76", "Bite.Agrees", true, "the same density on more metal"},
		{plate + "edge=1000&undercut=1&depth=0.1&time=60&density=82", "Bite.Agrees", true, byHand + ": 75.92 x (10 + pi/4 x 0.01 x 100) / 10 is 81.9"},
		{plate + "edge=1000&undercut=1&depth=0.1&time=60&density=76", "Bite.Agrees", false, byHand + ": the edge is undercut"},

		{plate + "readings=0:00+0.3;+1:00+0.3&elapsed=60.5", "Bite.Agrees", true, byHand + ": within 1 %"},
		{plate + "readings=0:00+0.3;+1:00+0.3&elapsed=61", "Bite.Agrees", false, "1.6 % off"},
		{"", "Errors.elapsed", "contradiction", vocab},
	})
}

// Steps of 0.05 mm on 12 cm2 and 0.1 mm on 9 cm2, at one density.
func TestSteps(t *testing.T) {
	const steps = cu + "bites=0.05+12;+0.1+9&"
	each := coulombs / 10e-4 / 0.1e-3 // C/m3
	check(t, []want{
		{steps + "density=20", "Steps", 2, "as typed"},
		{"", "Bite.Time", each * 0.15e-3 / 200, "Faraday's law"},
		{"", "Bite.Area", 12e-4, "that of the first"},
		{"", "Bite.Current", 0.24, byHand},
		{"", "Bite.Found", 1, "time"},
		{"", "Loss.Charge", each * (12e-4*0.05e-3 + 9e-4*0.1e-3), "Faraday's law"},
		{"", "Loss.Removed", 9000 * (12e-4*0.05e-3 + 9e-4*0.1e-3), byHand},
		{"", "Loss.Rate", 200 / each, "Faraday's law"},
		{"", "Loss.Time.Low", none{}, "no range of several steps"},
		{"", "Sheet.Depth", 0.15e-3, byHand},
		{steps + "current=0.24", "Bite.Density", 200.0, byHand},
		{steps + "density=20&area=11.9", "Bite.Agrees", true, vocab + ": that of the first, within 1 %"},
		{steps + "density=20&area=11.8", "Bite.Agrees", false, vocab},
		{"", "Errors.bites", "contradiction", vocab},
		{"", "Steps", 0, "blocked"},
		{steps, "Bite.Time", none{}, "it needs a density or a current"},
		{steps + "density=20&pieces=some", "Steps", 0, "pieces that can't be read"},
		{steps + "density=20&pieces=2&extra=1&hanger=1&hangerLength=0.01", "Loss.RemovedEach", 9000 * (13e-4*0.05e-3 + 10e-4*0.1e-3), byHand + ": without the hanger"},
		{"", "Bite.Current", about{0.52, 1e-3}, byHand + ": 2 x 13 x 0.02"},
		{cu + "bites=deep&depth=0.1", "Sheet.Depth", 0.1e-3, "the depth typed"},
		{cu + "bites=deep", "Sheet.Depth", bad, "it can't be read"},
	})
}

// What the etch takes: 2 pieces of 10 cm2 and 1 cm2 of hidden metal, 0.1 mm deep.
func TestLoss(t *testing.T) {
	const pair = plate + "pieces=2&extra=1&depth=0.1&"
	check(t, []want{
		{pair + "current=0.6", "Loss.Charge", 2.2 * coulombs, "Faraday's law"},
		{"", "Loss.Removed", 2.2 * 0.9e-3, byHand},
		{"", "Loss.RemovedEach", 1.1 * 0.9e-3, byHand},
		{"", "Loss.Rate", 0.1e-3 / (2.2 * coulombs / 0.6), byHand},
		{"", "Loss.Equivalent", cu2, "Faraday's law"},
		{"area=10&current=0.3&time=60", "Loss.RemovedEach", none{}, "of which metal?"},
		{"", "Loss.Charge", 1080.0, "that needs none"},
		{pair, "Loss.Charge", 2.2 * coulombs, "depth and area are enough"},
		{pair + "hanger=1&hangerLength=10", "Loss.RemovedEach", 1.1 * 0.9e-3, byHand + ": the hanger is not weighed"},
		{pair + "hanger=1&hangerLength=10&after=9", "Loss.RemovedEach", none{}, "the depth is a target"},
		{cu + "depth=0.1&time=60&after=9&density=30", "Loss.Rate", 0.1e-3 * 0.3 / coulombs, "the depth is a target: by the density"},
		{pair + "current=0.6&salt=silver+nitrate", "Loss.Charge", none{}, vocab + ": the wrong bath"},
		{"", "Loss.Equivalent", about{cu2, exactly}, "the metal's own"},
		{"metal=C17200&area=10&time=60&current=0.3", "Loss.Equivalent", none{}, vocab + ": beryllium"},
		{"metal=C17200&area=10&time=60&current=0.3", "Loss.Charge", none{}, vocab + ": beryllium"},
	})
}
