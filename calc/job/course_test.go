package job

import (
	"math"
	"testing"
)

// Copper, 10 cm2, to 0.2 mm, which takes twice the coulombs of 0.1: 1.8 g.
const piece = plate + "depth=0.2&"

func TestCourseByWeight(t *testing.T) {
	const hour = piece + "current=0.5&time=60&before=24.6+g&"
	yields := 1800 * cu2 // kg, of 0.5 A in an hour at 100 %
	check(t, []want{
		{hour + "after=24.06+g", "Course.DepthNow", 0.06e-3, byHand + ": 0.54 g / 9 g/cm3 / 10 cm2"},
		{"", "Course.EfficiencyNow", 0.54e-3 / yields, "Faraday's law"},
		{"", "Course.TimeLeft", 3600 * (1.8 - 0.54) / 0.54, byHand},
		{"", "Course.WeightAtTarget", 22.8e-3, byHand},
		{"", "Course.WeightAtHalf", none{}, "half of what? the run is under way"},
		{"", "Course.Heavier", false, "lighter"},
		{hour + "after=24.6+g", "Course.Heavier", false, "as heavy"},
		{"", "Course.DepthNow", 0, "nothing is gone"},
		{hour + "after=24.61+g", "Course.Heavier", true, "heavier"},
		{"", "Course.EfficiencyNow", none{}, "it was plated"},
		{piece + "current=0.5&elapsed=60&before=24.6+g&after=24.06+g", "Course.TimeLeft", 3600 * (1.8 - 0.54) / 0.54, "the time that it has been on"},
		{plate + "current=0.5&elapsed=60&before=24.6+g&after=24.06+g", "Course.TimeLeft", none{}, "to what depth?"},
		{"after=24.06+g", "Course.Heavier", false, "than what?"},
		{piece + "current=0.5&before=24.6+g&after=24.06+g", "Course.TimeLeft", none{}, "in what time?"},
		{"", "Course.DepthNow", 0.06e-3, "that needs no time"},
		{piece + "before=24.6+g&after=24.06+g&readings=0:00+0.6;+1:00+0.4", "Course.TimeLeft", 1800 * (1.8 - 0.54) / 0.54 / 0.4, "the charge so far at the last current"},
		{piece + "before=24.6+g&after=24.06+g&readings=0:00+0.6;+1:00+0", "Course.TimeLeft", none{}, "no current flows now"},
		{piece + "before=1.7+g", "Course.WeightAtTarget", none{}, byHand + ": 1.8 g of 1.7"},
		{plate + "before=24.6+g&hanger=1&hangerLength=100&extra=1&depth=0.2", "Course.WeightAtTarget", 22.62e-3, byHand + ": 11 cm2; the hanger is not weighed"},
		{cu + "depth=0.2&before=24.6+g&after=24.06+g", "Course.DepthNow", none{}, "on what area?"},
		{plate + "depth=0.2&before=24.6+g&after=24.06+g&salt=silver+nitrate", "Course.DepthNow", none{}, vocab + ": the wrong bath"},
		{plate + "depth=0.2&before=24.6+g&pieces=some", "Course.WeightAtTarget", none{}, "it can't be read"},
		{plate + "current=0.5&time=60&before=24.6+g", "Course.WeightAtHalf", 24.6e-3 - yields/2, "Faraday's law"},
	})
}

// No loss says something where five steps of the balance should be gone, and less
// than one is (common practice, no source).
func TestCourseNoLoss(t *testing.T) {
	const hour = piece + "current=0.2&time=60&before=24.6+g&"
	check(t, []want{
		{hour, "Course.Telling", 0.05e-3, choice + ": 5 x 0.01 g"},
		{hour + "resolution=0.1+g", "Course.Telling", 0.5e-3, byHand},
		{hour + "after=24.591+g", "Course.NoLoss", true, byHand + ": 0.009 g of 0.237"},
		{hour + "after=24.59+g", "Course.NoLoss", false, byHand + ": 0.01 g, which it shows"},
		{hour + "after=24.55+g&resolution=0.1+g", "Course.NoLoss", false, byHand + ": 0.237 g are not over 0.5"},
		{hour + "after=24.591+g", "Course.TimeLeft", none{}, "it does not etch"},
		{plate + "depth=0.2&current=0.0423&time=60&before=24.6+g&after=24.6+g", "Course.NoLoss", true, "Faraday's law: 0.0501 g"},
		{plate + "depth=0.2&current=0.0420&time=60&before=24.6+g&after=24.6+g", "Course.NoLoss", false, "Faraday's law: 0.0498 g"},
		{piece + "before=24.6+g&after=24.6+g", "Course.NoLoss", false, "of what charge?"},
		{hour + "after=24.6+g&resolution=fine", "Course.NoLoss", false, "it can't be read"},
	})
}

func TestCourseByAmmeter(t *testing.T) {
	check(t, []want{
		{piece + "readings=0:00+0.3;+1:00+0.2", "Course.ChargeSoFar", 900.0, byHand + ": an hour at 0.25 A"},
		{"", "Course.DepthSoFar", 0.1e-3 * 900 / coulombs, "Faraday's law"},
		{"", "Course.ReadyIn", (2*coulombs - 900) / 0.2, byHand},
		{"", "Course.Falls", false, "two thirds"},
		{piece + "readings=0:00+0.3;+1:00+0.15", "Course.Falls", false, "half"},
		{piece + "readings=0:00+0.3;+1:00+0.149", "Course.Falls", true, "under half"},
		{"", "Course.ReadyIn", none{}, "never, perhaps"},
		{piece + "readings=0:00+0.3;+1:00+0.3", "Course.ReadyIn.High", none{}, "its line is level"},
		{piece + "readings=0:00+0.3;+1:00+0.29", "Course.ReadyIn.High", trend(0.29, -0.01/3600, 2*coulombs-0.295*3600), "t = 2 Q / (I + root(I^2 + 2 s Q))"},
		{piece + "readings=23:30+0.3;+0:30+0.3", "Course.ChargeSoFar", 1080.0, "over midnight"},
		{plate + "depth=0.03&readings=0:00+0.3;+1:00+0.3", "Course.ReadyIn", 0, "deep enough"},
		{piece + "readings=0:00+0;+1:00+0", "Course.ReadyIn", none{}, "no current, never"},
		{cu + "depth=0.2&readings=0:00+0.3;+1:00+0.3", "Course.DepthSoFar", none{}, "on what area?"},
		{plate + "readings=0:00+0.3;+1:00+0.3", "Course.ReadyIn", none{}, "how deep?"},
		{"", "Course.DepthSoFar", 0.1e-3 * 1080 / coulombs, "Faraday's law"},
		{piece + "readings=0:00+0.3;+1:00+0.3&salt=silver+nitrate", "Course.ChargeSoFar", none{}, vocab + ": the wrong bath"},
	})
}

func trend(current, slope, left float64) float64 {
	return 2 * left / (current + math.Sqrt(current*current+2*slope*left))
}

func TestCourseByClock(t *testing.T) {
	const minute = 60.0
	check(t, []want{
		{plate + "current=0.2&time=3+h&start=22:30&paused=30", "Course.HalfAt", 1470 * minute, byHand + ": half past midnight"},
		{"", "Course.ReadyAt", 1560 * minute, byHand + ": two at night"},
		{plate + "current=0.2&time=3+h&start=22:30", "Course.ReadyAt", 1530 * minute, "without a pause"},
		{plate + "current=0.2&time=3+h&start=22:30&paused=long", "Course.ReadyAt", none{}, "it can't be read"},
		{plate + "current=0.2&time=3+h", "Course.ReadyAt", none{}, "from when?"},
		{plate + "depth=0.03&readings=0:00+0.3;+1:00+0.3&elapsed=60&start=10:00&paused=10", "Course.ReadyAt", 670 * minute, byHand + ": now"},
		{"", "Course.HalfAt", none{}, "it is past"},
		{piece + "current=0.2&time=60&before=24.6+g&after=24.4+g&start=10:00", "Course.ReadyAt", none{}, "the time so far is not the whole"},
	})
}
