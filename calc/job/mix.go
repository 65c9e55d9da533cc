package job

import (
	"math"

	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// mixWorked is what became of the bath.
type mixWorked struct {
	solution bath.Solution
	volume   number
	ready    bool     // the solution is known
	over     bool     // more salt than dissolves
	cold     bool     // crystals drop at the coldest
	outside  []string // what was read past the end of a table
	still    bool     // spent liquid stays on work and cathode
}

// workMix answers the group mix.
func (b *bench) workMix() {
	m := &b.mix
	m.volume = b.bathVolume()
	if m.volume.known() {
		b.put("volume", m.volume.v)
	}
	if b.salt.state == field.Blank && b.mixing() {
		b.need("salt")
	}
	temperature := b.amount("temperature")
	if b.salt.salt == nil || !temperature.known() || !b.handsAgree() {
		return
	}
	b.mixStrength(temperature.v)
	if !m.ready {
		return
	}
	b.answerSolution()
	b.answerCold()
	b.answerWeights()
}

// mixing says whether anything of a new bath was asked; the volume of a blend
// is not.
func (b *bench) mixing() bool {
	if b.fields.Value("strengthA").State != field.Blank {
		return false
	}
	for _, name := range []string{"strength", "saltInHand", "waterInHand"} {
		if b.amount(name).state != field.Blank {
			return true
		}
	}
	return b.mix.volume.state != field.Blank
}

// bathVolume is the finished bath: as typed, or as it stands in the vessel.
func (b *bench) bathVolume() number {
	typed, vessel := b.amount("volume"), b.vessel()
	switch {
	case typed.state == field.Blank:
		return vessel
	case typed.known() && vessel.known() && !within(typed.v, vessel.v):
		b.contradict("the vessel holds "+b.say("volume", vessel.v)+" to that height",
			"volume", "vesselLength", "vesselWidth", "vesselDiameter", "fill")
		return number{state: field.Bad}
	}
	return typed
}

// vessel is what a vessel holds up to where it is filled.
func (b *bench) vessel() number {
	length, width, diameter, fill := b.amount("vesselLength"), b.amount("vesselWidth"), b.amount("vesselDiameter"), b.amount("fill")
	if diameter.state == field.Blank {
		return number{length.v * width.v * fill.v, worst(length, width, fill)}
	}
	if length.state != field.Blank || width.state != field.Blank {
		b.contradict("a vessel is either round or has a length and a width", "vesselLength", "vesselWidth", "vesselDiameter")
		return number{state: field.Bad}
	}
	return number{math.Pi / 4 * diameter.v * diameter.v * fill.v, worst(diameter, fill)}
}

// suggestStrength answers what to start from for someone who has no strength in
// mind and no salt in hand that makes it.
func (b *bench) suggestStrength() {
	blank := b.fields.Value("strength").State == field.Blank && b.amount("saltInHand").state == field.Blank
	if blank && b.salt.salt != nil && !b.blocked() {
		b.put("suggestedStrength", b.salt.salt.Usual)
	}
}

// handsAgree refuses what is in hand beside a volume that it can't both make.
func (b *bench) handsAgree() bool {
	salt, water, strength := b.amount("saltInHand"), b.amount("waterInHand"), b.amount("strength")
	volume := b.mix.volume
	both := salt.state != field.Blank && water.state != field.Blank
	either := salt.state != field.Blank || water.state != field.Blank
	if volume.state == field.Blank || !both && !(either && strength.state != field.Blank) {
		return true
	}
	b.contradict("what is in hand makes its own volume", "saltInHand", "waterInHand", "volume",
		"vesselLength", "vesselWidth", "vesselDiameter", "fill")
	return false
}

// mixStrength makes the solution: of the strength typed, of all that is in hand,
// or of the salt in hand in the volume.
func (b *bench) mixStrength(kelvin float64) {
	m := &b.mix
	salt, water, assay := b.amount("saltInHand"), b.amount("waterInHand"), b.amount("assay")
	strength := b.fields.Value("strength")
	switch {
	case strength.State == field.Given:
		if m.solution, m.ready = b.solution("strength", strength.Q, kelvin); m.ready && m.volume.state == field.Blank {
			b.volumeFromHand(salt, water, assay)
		}
	case strength.State == field.Bad:
	case salt.known() && water.known() && assay.known():
		var volume float64
		var err error
		if m.solution, volume, err = b.salt.salt.FromHand(salt.v, water.v, assay.v, kelvin); err != nil {
			b.refuseStrength("saltInHand", err)
			return
		}
		m.volume, m.ready = known(volume), true
	case salt.known() && m.volume.known() && assay.known():
		made := quantity.Quantity{Value: salt.v * assay.v / m.volume.v, Kind: quantity.Density}
		m.solution, m.ready = b.solution("saltInHand", made, kelvin)
	case b.mixing() && worst(salt, water) != field.Bad:
		b.need("strength")
	}
}

// solution makes the solution of a strength, or says at a field why there is none.
func (b *bench) solution(name string, strength quantity.Quantity, kelvin float64) (bath.Solution, bool) {
	made, err := b.salt.salt.Solution(strength, kelvin)
	if err != nil {
		b.refuseStrength(name, err)
	}
	return made, err == nil
}

func (b *bench) refuseStrength(name string, err error) {
	f, _ := field.ByName(name)
	b.fields.Fail(field.Error{Field: name, Code: string(quantity.OutOfSize),
		Text: field.Quote(b.fields.Value(name).Text) + " " + err.Error() + ". " + f.Wanted()})
}

// volumeFromHand is what the scarcer of salt and water in hand makes.
func (b *bench) volumeFromHand(salt, water, assay number) {
	m := &b.mix
	least := number{math.Inf(1), field.Blank}
	if salt.known() && assay.known() {
		least = known(m.solution.VolumeOfSalt(salt.v, assay.v))
	}
	if water.known() {
		least = known(math.Min(least.v, m.solution.VolumeOfWater(water.v)))
	}
	if worst(salt, water, assay) != field.Bad {
		m.volume = least
	}
}

// answerSolution answers what the liquid is, whatever its volume.
func (b *bench) answerSolution() {
	m := &b.mix
	liquid := m.solution.Liquid()
	b.put("saltFraction", liquid.In(quantity.Share))
	b.put("anhydrousFraction", liquid.Anhydrous)
	b.put("molarity", liquid.In(quantity.Molarity))
	b.put("perLitre", liquid.In(quantity.Density))
	b.put("perLitreWater", liquid.In(quantity.PerWater))
	b.put("solutionDensity", liquid.Density())
	b.put("saturation", m.solution.In(quantity.Saturation))
	if siemens, ok := liquid.Conductivity(); ok {
		b.put("conductivity", siemens)
	}
	m.over = m.solution.In(quantity.Saturation) > 1
	m.outside = b.outsideTables()
}

// outsideTables says what of the bath was read past the end of a table: of a
// saturated one too, where the strength is a share of it.
func (b *bench) outsideTables() []string {
	clauses := b.mix.solution.Outside()
	if strength := b.fields.Value("strength"); strength.State == field.Given && strength.Q.Kind == quantity.Saturation {
		if clause, ok := b.mix.solution.SaturationOutside(); ok {
			clauses = append(clauses, clause)
		}
	}
	return clauses
}

// answerCold answers what the cold does.
func (b *bench) answerCold() {
	m := &b.mix
	if kelvin, ok := m.solution.SaturatesAt(); ok {
		b.put("saturatesAt", kelvin)
	}
	coldest := b.amount("coldest")
	if !coldest.known() {
		return
	}
	each, ok := m.solution.Crystals(coldest.v)
	m.cold = ok && each > 0
	if ok && m.volume.known() {
		b.put("crystals", each*m.volume.v)
	}
}

// answerWeights answers what to weigh for the volume.
func (b *bench) answerWeights() {
	m := &b.mix
	assay := b.amount("assay")
	if !m.volume.known() || !assay.known() {
		return
	}
	weighed := m.solution.Mix(m.volume.v, assay.v)
	b.put("volume", m.volume.v)
	b.put("saltMass", weighed.SaltMass)
	b.put("waterMass", weighed.WaterMass)
	b.put("solutionMass", weighed.SolutionMass)
	b.put("undissolved", weighed.Undissolved)
	b.put("waterToDissolve", weighed.WaterToDissolve)
	if b.salt.salt.Metal != "" {
		b.put("metalInBath", weighed.MetalMass)
	}
}
