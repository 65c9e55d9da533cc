package advice

import (
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/job"
)

// Jobs at a limit, at which nothing is said yet or no longer, and just beyond it.
// The limits are common practice, no source, but where one is named.
func TestCautionsBeginAtTheirLimits(t *testing.T) {
	const copper, brass = "metal=copper&", "metal=Cu+70+Zn+30&"
	const solved = copper + "salt=copper+sulfate&area=40&current=1&depth=0.1&resistance=2&" // ohm, by the solution for a picture
	for _, x := range []struct {
		code           string
		silent, raised string
		level          Level
	}{
		{"efficiency-odd", copper + "efficiency=85", copper + "efficiency=84.9", Warn},
		{"efficiency-odd", copper + "efficiency=110", copper + "efficiency=110.1", Warn},
		{"long-run", copper + "time=12+h", copper + "time=721", Note},
		{"gauge-meant", "sheet=5.99+mm", "sheet=6+mm", Note},
		{"dense", copper + "density=50", copper + "density=50.1", Note},
		{"unlikely", copper + "volume=100&strength=100", copper + "volume=100.1&strength=100", Note},
		{"unlikely", copper + "depth=2", copper + "depth=2.01", Note},
		{"unlikely", copper + "current=50", copper + "current=50.1", Note},
		{"nickel", "metal=Cu+99.91+Ni+0.09&depth=0.1", "metal=Cu+99.9+Ni+0.1&depth=0.1", Warn},
		{"lead", "metal=Cu+99.91+Pb+0.09&depth=0.1", "metal=Cu+99.9+Pb+0.1&depth=0.1", Warn},
		{"two-phase", "metal=Cu+63+Zn+37", "metal=Cu+62+Zn+38", Note},
		{"two-phase", "metal=Cu+91+Sn+9", "metal=Cu+90.9+Sn+9.1", Note},
		{"two-phase", "metal=Cu+96+Al+4", "metal=Cu+95.9+Al+4.1", Note},
		{"two-phase", "metal=Ag+93.5+Cu+6.5", "metal=Ag+93.5+Cu+5.5+Ge+1", Note},
		{"lift-out", "metal=Cu+85+Zn+15&paused=10", "metal=Cu+84+Zn+16&paused=10", Note},
		{"lift-out", brass + "depth=0.1", brass + "paused=10", Note},
		{"volts-high", "volts=30", "volts=30.1", Warn}, // what is touched wet: IEC 60364-4-41, from memory
		{"sheet-thin", "sheet=1+mm&depth=0.5", "sheet=1+mm&depth=0.51", Warn},
		{"sheet-thin", "sheet=1+mm&depth=0.99&keep=0", "sheet=1+mm&depth=1&keep=0", Stop},
		{"supply-weak", copper + "area=10&density=30&amps=0.3", copper + "area=10&density=30&amps=0.29", Warn},
		{"stainless", copper + "hangerMetal=aluminium", copper + "hangerMetal=aluminium&salt=common+salt", Stop},
		{"stainless", copper, copper + "hangerMetal=galvanised", Stop},
		{"stainless", copper + "hangerMetal=copper", copper + "hangerMetal=plated", Stop},
		{"hanger-plates", "metal=sterling&hangerMetal=silver", "metal=sterling&hangerMetal=copper", Warn},
		{"porous", "metal=silver+clay&metalDensity=9", "metal=silver+clay", Note},
		{"slime", "metal=Ag+20+Cu+80&salt=silver+nitrate", "metal=Ag+20+Cu+80&salt=copper+sulfate", Warn},
		{"current-falls", copper + "readings=0:00+0.3;+1:00+0.15", copper + "readings=0:00+0.3;+1:00+0.149", Warn},
		{"polarity", copper + "before=20&after=20", copper + "before=20&after=21", Stop},
		{"still-layer", copper + "depth=0.1&position=face-up&stir=stirred", copper + "depth=0.1&position=face-up", Note},
		{"cathode-metal", copper + "salt=common+salt&gap=50", copper + "gap=50", Note},
		{"cathode-metal", copper, copper + "cathode=50", Note},
		{"gas", copper + "salt=copper+sulfate", copper + "salt=common+salt", Note},
		{"line-lost", "line=0.4&depth=0.19&undercut=1", "line=0.4&depth=0.2&undercut=1", Warn}, // 0.2 mm from each side
		{"supply-strong", solved + "volts=2.79", solved + "volts=2.8", Note},                   // 2.6 V over 2 ohm: 1.3 times 1 A
		{"supply-strong", solved + "volts=6.19", solved + "volts=6.2", Warn},                   // 6 V: three times
		{"supply-volts", solved + "volts=2.3", solved + "volts=2.19", Warn},                    // 2 V and 0.2 V for the reactions
		{"line-at-risk", "line=0.4&depth=0.19", "line=0.4&depth=0.2", Note},
		{"dense", copper + "density=100", copper + "density=100.1", Warn},
		{"dense", copper + "current=0.5&area=10", copper + "current=0.501&area=10", Note},
		{"no-loss", copper + "area=10&depth=0.1&current=0.3&time=60&before=20&after=19.6", copper + "area=10&depth=0.1&current=0.3&time=60&before=20&after=20", Warn},
		{"salt-undissolved", "salt=copper+sulfate&strength=200&volume=1", "salt=copper+sulfate&strength=500&volume=1", Warn},
		{"cold-crystals", "salt=copper+sulfate&strength=200&volume=1&coldest=15", "salt=copper+sulfate&strength=300&volume=1&coldest=0", Warn},
		{"salt-film", copper + "height=30&strength=200&depth=0.2&density=30", copper + "height=30&strength=200&depth=0.2&density=90", Warn},
		{"hanger", copper + "hanger=1&hangerLength=20&depth=0.2&area=10&current=0.2", copper + "hanger=1&hangerLength=20&depth=0.26&area=10&current=0.2", Warn}, // 0.6 and 0.48 of 1 mm
		{"metal-guess", "metal=C26000", "metal=bronze", Note},
		{"spent", "metal=C26000&strength=200&volume=1&etched=100", "metal=C26000&strength=200&volume=1&etched=300", Warn},     // 57 % of its copper; all
		{"bath-drifts", "metal=C26000&strength=200&volume=2&etched=1", "metal=C26000&strength=200&volume=2&etched=10", Note},  // 0.3 and 2.9 %
		{"bath-drifts", "metal=C26000&strength=200&volume=2&etched=34", "metal=C26000&strength=200&volume=2&etched=36", Warn}, // 9.7 and 10.3 %
	} {
		if r := askText(x.silent); raises(r, x.code) && levelOf(r, x.code) == x.level {
			t.Errorf("%s raises %s", x.silent, x.code)
		}
		if got := levelOf(askText(x.raised), x.code); got != x.level {
			t.Errorf("%s raises %s as %q, not %q", x.raised, x.code, got, x.level)
		}
	}
}

// askText asks by the text form.
func askText(text string) Reply { return Answer(job.Work(field.Read(text))) }

func levelOf(r Reply, code string) Level {
	for _, c := range r.Cautions {
		if c.Code == code {
			return c.Level
		}
	}
	return ""
}
