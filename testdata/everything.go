package testdata

// Everything are jobs that between them give every answer; the first alone gives
// most. Invented.
var Everything = []string{
	"metal=C26000&width=90&height=25&open=38&edge=900&extra=1.5&pieces=2&depth=0.2&density=30&" +
		"sheet=18+ga&line=0.6&space=0.4&hanger=16+ga&hangerLength=20&bareEdges=100&" +
		"volts=5&amps=2&gap=60&cathode=80&wire=18+ga&wireLength=2&" +
		"salt=copper+sulfate&strength=250&volume=2&assay=98&temperature=22&coldest=2&" +
		"etched=20&volumeNow=1.9&haveStrength=200&haveVolume=2&wantStrength=220&strengthA=300&strengthB=100&gravity=1.1&" +
		"start=14:05&before=60",
	"metal=C54400&area=10&depth=0.2&density=30&volume=1&strength=150",
	"metal=nickel+silver+12+%25&area=10&depth=0.2&density=30&salt=copper+sulfate&volume=1&strength=200&haveStrength=200&haveVolume=1&wantStrength=150",
	"metal=sterling&area=10&depth=0.2&density=10&volume=1&strength=60",
	"metal=CuZn39Pb2&area=10&depth=0.2&density=20&salt=common+salt&volume=1&strength=100",
	"metal=copper&area=10&depth=0.2&current=0.2&time=1+h&before=20&after=19.8&readings=0:00+0.2;1:00+0.19",
}
