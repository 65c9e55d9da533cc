package job

import (
	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// workKeep answers what the run does to the bath and how the bath is kept.
func (b *bench) workKeep() {
	b.answerDrift()
	if b.salt.salt == nil || !b.amount("temperature").known() {
		return
	}
	b.answerEvaporation()
	b.answerStrengthening()
	b.answerBlend()
	b.answerGravity()
}

// run is what this charge does to this bath.
func (b *bench) run() (bath.Run, bool) {
	efficiency := b.amount("efficiency")
	if b.metal.state != field.Given || b.salt.salt == nil || b.blocked() || !efficiency.known() {
		return bath.Run{}, false
	}
	charge := b.figures["charge"].si
	return bath.Run{Salt: b.salt.salt, Metal: b.metal.reading.Metal, Charge: charge, Efficiency: efficiency.v}, true
}

func (b *bench) answerDrift() {
	run, ok := b.run()
	if !ok {
		return
	}
	if b.has("charge") {
		b.answerOneRun(run)
	}
	if etched := b.orZero("etched"); etched.known() && (b.has("charge") || etched.v > 0) {
		b.answerAllRuns(run.After(etched.v))
	}
}

// answerOneRun answers what all pieces of one run take from a bath as mixed and
// leave in it.
func (b *bench) answerOneRun(run bath.Run) {
	if deposit, ok := run.Deposit(); ok {
		b.put("cathodeDeposit", deposit)
	}
	if hydrogen, ok := run.Hydrogen(); ok {
		b.put("hydrogen", hydrogen)
	}
	for symbol, name := range map[string]string{"Zn": "zincGained", "Ni": "nickelGained", "Cu": "copperGained"} {
		if gained := b.gained(run, symbol); gained > 0 {
			b.put(name, gained)
		}
	}
	if sludge := run.Sludge(); sludge > 0 {
		b.put("sludge", sludge)
	}
	lost, ok := run.Lost()
	if !ok {
		return
	}
	b.put("bathMetalLost", lost)
	if lost == 0 {
		b.put("saltToAdd", 0)
	} else if add, ok := run.Salt.SaltToAdd(lost, b.amount("assay").v); ok {
		b.put("saltToAdd", add)
	}
	inBath, pieces := b.figures["metalInBath"].si, b.bite.pieces
	if inBath > 0 {
		b.put("bathDrop", lost/inBath)
		if whole, ok := bath.PiecesToTenth(pieces.v, lost/inBath); ok && pieces.known() {
			b.put("piecesToTenth", whole)
		}
	}
}

// gained is what stays in the bath of an element. In common salt much of the
// copper falls or plates again, so that it is not told.
func (b *bench) gained(run bath.Run, symbol string) float64 {
	if symbol == "Cu" && b.inCommonSalt() {
		return 0
	}
	return run.Gained(symbol)
}

// answerAllRuns answers what the bath has lost and gathered with all that was
// etched in it before.
func (b *bench) answerAllRuns(run bath.Run) {
	if lost, ok := run.Lost(); ok && b.figures["metalInBath"].si > 0 {
		b.put("bathDropAll", lost/b.figures["metalInBath"].si)
	}
	volume := b.mix.volume
	if !volume.known() {
		return
	}
	for symbol, name := range map[string]string{"Zn": "zincInBath", "Ni": "nickelInBath", "Cu": "copperInBath", "Pb": "leadInBath"} {
		if gained := b.gained(run, symbol); gained > 0 {
			b.put(name, gained/volume.v)
		}
	}
}

func (b *bench) answerEvaporation() {
	volume, now := b.mix.volume, b.amount("volumeNow")
	if !volume.known() || !now.known() {
		return
	}
	if now.v > volume.v*(1+1e-9) {
		b.contradict("the bath was mixed to "+b.say("volume", volume.v)+", and water only goes", "volumeNow", "volume")
		return
	}
	b.put("waterToAdd", volume.v-now.v)
	if !b.mix.ready {
		return
	}
	if strong, err := b.mix.solution.Concentrated(volume.v, now.v); err == nil {
		b.put("strengthNow", strong.In(quantity.Density))
	}
}

// strengthIn makes the solution of a strength field at the bath's temperature.
func (b *bench) strengthIn(name string) (bath.Solution, bool) {
	v := b.fields.Value(name)
	if v.State != field.Given {
		return bath.Solution{}, false
	}
	return b.solution(name, v.Q, b.amount("temperature").v)
}

func (b *bench) answerStrengthening() {
	volume, assay := b.amount("haveVolume"), b.amount("assay")
	have, ok := b.strengthIn("haveStrength")
	if !ok || !volume.known() || !assay.known() {
		return
	}
	want, ok := b.strengthIn("wantStrength")
	if !ok {
		b.need("wantStrength")
		return
	}
	salt, water, err := have.Toward(want, volume.v, assay.v)
	switch {
	case err != nil:
		b.refuseStrength("wantStrength", err)
	case salt > 0:
		b.put("addSalt", salt)
	default:
		b.put("addWater", water)
	}
}

func (b *bench) answerBlend() {
	volume := b.mix.volume
	one, ok := b.strengthIn("strengthA")
	other, also := b.strengthIn("strengthB")
	if !ok || !also {
		return
	}
	want, ok := b.strengthIn("wantStrength")
	if !ok {
		b.need("wantStrength")
		return
	}
	if !volume.known() {
		b.need("volume")
		return
	}
	ofOne, ofOther, err := want.Parts(one, other, volume.v)
	if err != nil {
		b.contradict("it lies outside the two baths", "wantStrength", "strengthA", "strengthB")
		return
	}
	b.put("partA", ofOne)
	b.put("partB", ofOther)
}

func (b *bench) answerGravity() {
	v := b.fields.Value("gravity")
	if v.State != field.Given {
		return
	}
	density := v.Q.Value
	switch {
	case v.Q.Unit == field.Baume:
		density = bath.DensityOfGravity(bath.GravityOfBaume(v.Q.Value))
	case v.Q.Kind == quantity.Number:
		density = bath.DensityOfGravity(v.Q.Value)
	}
	made, err := b.salt.salt.ByDensity(density, bath.Room)
	if err != nil {
		b.refuseStrength("gravity", err)
		return
	}
	b.put("strengthByGravity", made.In(quantity.Density))
}

// Where a bath has dropped far enough to be said loudly, and where a metal
// counts as the bath's own.
const (
	muchDropped = 0.10
	ownMetal    = 0.99
)

func (b *bench) warnOfDrift() {
	run, ok := b.run()
	if !ok || run.Salt.Metal == "" || run.Metal.Share(run.Salt.Metal) >= ownMetal {
		return
	}
	level, at := Note, "etched"
	for _, name := range []string{"bathDrop", "bathDropAll"} {
		if b.figures[name].si >= muchDropped {
			level, at = Warn, "volume"
		}
	}
	metal, add := b.bathInWords(), ""
	if b.figures["saltToAdd"].si > 0 {
		add = ": add back " + b.text("saltToAdd") + " of " + run.Salt.Name + " after this run"
	}
	b.raise("bath-drifts", level, at,
		field.Capital(b.metalInWords())+" runs the "+metal+" bath down"+add+". What else it holds stays in the bath or falls as sludge, and in the end the bath is waste: "+
			"keep it apart, and have the local authority's word in writing."+b.misled(),
		"The bath runs down: top up its salt, keep its waste apart")
}

// misled warns of a hydrometer in a bath that holds more than its salt.
func (b *bench) misled() string {
	if !b.has("strengthByGravity") {
		return ""
	}
	return " A hydrometer misreads such a bath: zinc sulfate is as heavy as copper sulfate."
}

func (b *bench) warnOfGas() {
	if b.salt.state != field.Given || !b.inCommonSalt() {
		return
	}
	what := "Hydrogen bubbles from the cathode"
	if b.has("hydrogen") {
		what = b.text("hydrogen") + " of hydrogen bubbles from the cathode"
	}
	b.raise("gas", Note, "salt",
		what+", and chlorine comes at higher voltage. Air the room, no flame or spark near, no lid on the bath.",
		"Hydrogen, and chlorine: air the room, no flame")
}
