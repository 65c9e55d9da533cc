package job

import "testing"

// What is blank is said at its field once a metal is there and too little is given
// for any answer (the vocabulary).
func TestMissing(t *testing.T) {
	check(t, []want{
		{"metal=copper&depth=0.2", "Errors.time", "missing", vocab},
		{"", "Errors.current", "missing", vocab},
		{"", "Errors.area", "missing", vocab},
		{"", "Errors.depth", none{}, "it is given"},
		{"metal=copper&depth=0.2&find=time", "Errors.time", none{}, "it is asked for"},
		{"metal=copper&depth=0.2&density=30", "Errors.area", none{}, "a density is enough"},
		{"metal=copper&density=30", "Errors.current", none{}, "a density stands for it"},
		{"", "Errors.time", "missing", vocab},
		{"metal=copper&depth=0.2&area=10", "Errors.area", none{}, "it is given"},
		{"", "Errors.current", "missing", vocab},
		{"metal=copper&depth=0.2&density=30&edge=100", "Errors.area", "missing", "with an edge the area counts"},
		{"metal=copper&depth=0.2&time=60&edge=100&area=10", "Errors.current", none{}, "it is found"},
		{"metal=copper&current=0.3&time=60", "Errors.area", "missing", vocab},
		{"metal=copper&current=0.3&area=10", "Errors.depth", "missing", vocab},
		{"metal=copper&readings=0:00+0.3;+1:00+0.3&area=10", "Errors.depth", "missing", vocab},
		{"", "Errors.time", none{}, "the ammeter stands for it"},
		{"", "Errors.current", none{}, "the ammeter stands for it"},
		{"metal=copper&readings=0:00+0.3;+1:00+0.3&area=10&depth=0.2", "Errors.time", none{}, "nothing is lacking"},

		{"metal=copper&depth=0.2&sheet=1+mm", "Errors.time", none{}, vocab + ": the sheet alone is asked about"},
		{"metal=copper&depth=0.2&line=1", "Errors.time", none{}, vocab + ": the line alone"},
		{"metal=copper&depth=0.2&space=1", "Errors.time", none{}, vocab + ": the space alone"},
		{"metal=copper&depth=0.2&sheet=1+mm&current=0.3", "Errors.time", "missing", "more is asked about"},
		{"metal=copper&depth=0.2&sheet=1+mm&area=10", "Errors.time", "missing", "more is asked about"},
		{"metal=copper&sheet=1+mm", "Errors.depth", "missing", "how deep?"},
		{"metal=copper&bites=0.1+10&current=0.3", "Errors.time", none{}, vocab + ": several bites are the depth and the area"},
		{"metal=copper&bites=0.1+10&density=30", "Errors.area", none{}, vocab},
		{"metal=copper&bites=0.1+10", "Errors.current", "missing", vocab},
		{"", "Errors.depth", none{}, "each step has its own"},
		{"", "Errors.time", none{}, "it is found"},
		{"", "Errors.area", none{}, "each step has its own"},

		{"metal=copper&density=30&current=0.5&area=10", "Errors.depth", none{}, "what contradicts itself is said instead: 0.3 A by hand"},
		{"metal=copper&density=30&current=0.3&area=10", "Errors.depth", "missing", "it agrees, and is not enough"},
		{"metal=copper&strength=200&volume=1", "Errors.depth", none{}, vocab + ": the bath alone is asked about"},
		{"metal=copper&strength=200&fill=100", "Errors.depth", none{}, vocab},
		{"metal=copper&strength=200", "Errors.depth", "missing", "of how much?"},
		{"metal=copper&volume=1", "Errors.depth", "missing", "no strength"},
		{"metal=copper&etched=40", "Errors.depth", none{}, vocab},
		{"metal=copper&volumeNow=1", "Errors.depth", none{}, vocab},
		{"metal=copper&etched=40&time=60", "Errors.depth", "missing", "a bite is asked about too"},
		{"metal=copper&etched=40&density=30", "Errors.depth", "missing", "a bite is asked about too"},
		{"metal=copper&etched=40&area=10", "Errors.depth", "missing", "a bite is asked about too"},

		{"depth=0.2&density=30", "Errors.metal", "missing", vocab + ": all else is there"},
		{"depth=0.2", "Errors.metal", none{}, vocab + ": nothing is missing without a metal"},
		{"area=10&current=0.3&time=60", "Errors.metal", none{}, "the charge is an answer"},
		{"metal=sterling&salt=copper+sulfate&depth=0.2&density=30&edge=100", "Errors.area", none{}, "it can't be etched there anyway"},
		{"metal=copper&ask=supply", "Errors.depth", none{}, vocab + ": the supply needs the area only"},
		{"", "Errors.area", "missing", vocab},
		{"metal=copper&ask=bath", "Errors.current", none{}, vocab},
		{"metal=copper&ask=check", "Errors.current", "missing", vocab},

		{"metal=copper&depth=0.2&width=60", "Errors.height", "missing", "half a face"},
		{"", "Errors.open", "missing", "half a face"},
		{"metal=copper&depth=0.2&height=60", "Errors.width", "missing", "half a face"},
		{"metal=copper&depth=0.2&diameter=60", "Errors.open", "missing", "its share"},
		{"metal=copper&depth=0.2&open=50", "Errors.width", "missing", "of what?"},
		{"", "Errors.height", "missing", "of what?"},
		{"metal=copper&depth=0.2&area=10&open=50", "Errors.width", none{}, "the area is known"},
	})
}
