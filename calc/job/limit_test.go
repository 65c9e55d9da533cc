package job

import (
	"math"
	"testing"

	"saltbite/calc/field"
)

// Where the bath stops keeping up. The figures are those of the vocabulary's
// examples, by Wilke, Eisenberg and Tobias (1953), good for an order of magnitude.
func TestLimits(t *testing.T) {
	const tall = cu + "height=30&width=30&open=50&depth=0.1&strength=200&"
	const wilke = vocab + ": by Wilke, Eisenberg and Tobias"
	check(t, []want{
		{tall, "Limits.Film", about{490, 0.05}, wilke},
		{"", "Limits.Film.Low", about{245, 0.05}, choice + ": half"},
		{"", "Limits.Film.High", about{980, 0.05}, choice + ": twice"},
		{"", "Limits.Still", false, "it hangs"},
		{cu + "height=480&width=30&open=50&depth=0.1&strength=200", "Limits.Film", about{245, 0.05}, wilke + ": with the fourth root of the height"},
		{cu + "diameter=480&open=50&depth=0.1&strength=200", "Limits.Film", about{245, 0.05}, "the same for a disc"},
		{cu + "area=9&depth=0.1&strength=200", "Limits.Film", about{490, 0.05}, "the root of 9 cm2 is 30 mm"},
		{cu + "depth=0.1&strength=200", "Limits.Film", about{490, 0.05}, choice + ": 30 mm where nothing is known"},
		{tall + "position=face-up", "Limits.Still", true, vocab + ": nothing moves the heavy liquid away"},
		{"", "Limits.Film", none{}, vocab},
		{tall + "position=sideways", "Limits.Film", none{}, "it can't be read"},
		{tall + "stir=shaken", "Limits.Film", none{}, "it can't be read"},
		{tall + "etched=much", "Limits.Film", none{}, "a bath of which nothing is known"},
		{tall + "salt=silver+nitrate", "Limits.Film", none{}, vocab + ": the wrong bath"},
		{cu + "salt=common+salt&strength=100&area=9&position=face-up", "Limits.Still", false, "it has no metal to be heavy with"},
	})
}

// Half of the limits, and never more than 30 mA/cm2 (common practice, no source).
func TestSuggestion(t *testing.T) {
	const nothing = cu + "area=20&depth=0.1&"
	check(t, []want{
		{nothing, "Suggest.Density", 300.0, choice},
		{"", "Suggest.Current", 0.6, byHand},
		{"", "Suggest.Time", coulombs / 0.3, "Faraday's law"},
		{cu + "depth=0.1", "Suggest.Time", coulombs / 0.3, "Faraday's law; no area is needed"},
		{"", "Suggest.Current", none{}, "an area is"},
		{cu + "depth=0.1&edge=100", "Suggest.Time", none{}, "with an edge the area counts"},
		{nothing + "amps=0.4", "Suggest.Density", 200.0, byHand},
		{nothing + "pieces=some", "Suggest.Current", none{}, "it can't be read"},
		{"area=20&depth=0.1", "Suggest.Density", none{}, "no metal"},
		{nothing + "salt=silver+nitrate", "Suggest.Density", none{}, vocab + ": the wrong bath"},
		{cu + "height=30&width=30&open=50&depth=0.1&strength=200", "Suggest.Density", about{245, 0.05}, "half of the film's 49 mA/cm2"},
	})
}

// The cathode's limit is that of its metal: half the salt left, half the limit
// (diffusion goes with the difference; a little more, as the liquid is thinner).
func TestCathode(t *testing.T) {
	const cell = "metal=fine+silver&area=10&depth=0.05&current=0.1&strength=20&"
	limit := Work(field.Read(cell + "cathode=10")).Limits.Cathode
	check(t, []want{
		{cell + "cathode=10", "Limits.Cathode", about{150, 0.15}, vocab + ": about 15 mA/cm2"},
		{"", "Limits.CathodeNeeded", 2 * 0.1 / limit.SI, "at half of that"},
		{cell + "cathode=160", "Limits.Cathode", limit.SI / math.Sqrt2, "with the fourth root of the height, which is four times"},
		{cell, "Limits.Cathode", about{limit.SI, 0.01}, "as large as the work"},
		{"metal=fine+silver&area=10&depth=0.05&strength=20", "Limits.CathodeNeeded", none{}, "no current"},
		{"metal=C26000&area=10&depth=0.1&density=20&strength=200&volume=1&etched=174", "Limits.Cathode", 0, "spent: no copper is left"},
	})
}
