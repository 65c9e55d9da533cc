package job

import (
	"math"

	"saltbite/calc/bath"
	"saltbite/calc/field"
)

// usualLength stands for a face whose size is not known, m.
const usualLength = 0.03

var positions = map[string]bath.Position{"hanging": bath.Hanging, "face-down": bath.FaceDown, "face-up": bath.FaceUp}

// workLimits answers where the bath stops keeping up with the current, at the
// work and at the cathode.
func (b *bench) workLimits() {
	m := &b.mix
	if s := b.salt.salt; s != nil && s.Metal != "" {
		m.still = b.besideWork().Settles()
	}
	if !m.ready || b.blocked() || b.position().State == field.Bad || b.stir().State == field.Bad {
		return
	}
	if film, ok := m.solution.FilmDensity(b.besideWork()); ok {
		b.putRange("filmDensity", answered{film.Density, film.Low, film.High})
	}
	limit, ok := m.solution.CathodeLimit(b.besideCathode())
	if !ok {
		return
	}
	b.putRange("cathodeLimit", answered{limit.Density, limit.Low, limit.High})
	if current := b.bite.current; current.known() {
		if area, ok := limit.CathodeNeeded(current.v); ok {
			b.put("cathodeNeeded", area)
		}
	}
}

func (b *bench) position() field.Value { return b.fields.Value("position") }
func (b *bench) stir() field.Value     { return b.fields.Value("stir") }

func (b *bench) faceOf(length float64) bath.Face {
	return bath.Face{Length: length, Position: positions[b.position().Pick], Stirred: b.stir().Pick == "stirred"}
}

// besideWork is the work's face: as long as its height, else its diameter, else
// the root of its open area.
func (b *bench) besideWork() bath.Face {
	for _, name := range []string{"height", "diameter"} {
		if f := b.amount(name); f.known() {
			return b.faceOf(f.v)
		}
	}
	if area := b.bite.area; area.known() {
		return b.faceOf(math.Sqrt(area.v))
	}
	return b.faceOf(usualLength)
}

// besideCathode is the cathode's face: the root of its area, else as the work's.
func (b *bench) besideCathode() bath.Face {
	if area := b.amount("cathode"); area.known() {
		return b.faceOf(math.Sqrt(area.v))
	}
	return b.besideWork()
}

// guide is said of every figure that rests on a limit.
const guide = " These limits are an order of magnitude: half to twice."

func (b *bench) warnOfLimits() {
	if b.over("density", "filmDensity", 1) {
		b.raise("salt-film", Warn, b.densityField(),
			b.text("density")+" is more than the "+b.text("filmDensity")+" at which salt crystallises on the metal in this bath and stops the bite. "+
				"Take less current, a weaker bath, or stir."+guide,
			"Salt film: less current, weaker bath, or stir")
	}
	b.warnOfCathode()
	if b.mix.still {
		b.raise("still-layer", Note, "position",
			"Face up and not stirred, the heavy liquid lies on the work and the light one under the cathode: there is no steady limit, and the current must be low. Hang it, turn it over, or stir.",
			"Liquid stands still in this position: stir")
	}
	b.warnOfSuggestion()
}

func (b *bench) warnOfCathode() {
	words := "is over half of the " + b.orText("cathodeLimit") + " at which the cathode runs out of metal"
	level := Note
	switch {
	case b.over("cathodeDensity", "cathodeLimit", 1):
		level, words = Warn, "is more than the "+b.text("cathodeLimit")+" at which the cathode runs out of metal: powder and gas"
	case !b.over("cathodeDensity", "cathodeLimit", 0.5):
		return
	}
	b.raise("cathode-limit", level, "cathode",
		b.text("cathodeDensity")+" at the cathode "+words+". A cathode of "+b.orText("cathodeNeeded")+" would do."+guide,
		"Cathode too small for this current")
}

// warnOfSuggestion says that the least density to suggest is already too much.
func (b *bench) warnOfSuggestion() {
	if !b.has("density") && b.over("suggestedDensity", "filmDensity", 1) {
		b.raise("salt-film", Warn, "strength",
			"Salt would crystallise on the metal in this bath at "+b.text("filmDensity")+", less than any useful current density. Dilute the bath."+guide,
			"Salt film: dilute the bath")
	}
}

// over says whether one answer exceeds so much of another.
func (b *bench) over(name, limit string, share float64) bool {
	is, ok := b.figures[name]
	most, has := b.figures[limit]
	return ok && has && is.si > most.si*share
}

// densityField is the field that a caution about the density stands beside.
func (b *bench) densityField() string {
	if b.fields.Value("density").State == field.Blank {
		return "current"
	}
	return "density"
}
