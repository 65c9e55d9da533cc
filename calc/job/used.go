package job

import (
	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Used is what a run does to the bath, and how a bath is kept.
type Used struct {
	Run bath.Run // this run's charge in this bath; its Salt is nil if the salt is not known

	Deposit       quantity.Optional  // kg, on the cathode
	MetalLost     quantity.Optional  // kg, of the bath's own
	Drop, DropAll quantity.Optional  // shares of the metal in the bath as mixed
	SaltToAdd     quantity.Optional  // kg, for this run
	SaltToAddAll  quantity.Optional  // kg, for what was etched before as well
	Gained        map[string]float64 // kg, of an element, in one run
	InBath        map[string]float64 // kg/m3, of an element, in all
	Sludge        quantity.Optional  // kg
	Hydrogen      quantity.Optional  // m3
	PiecesToTenth quantity.Optional
	Spent         bool // the bath has no metal left, or this run takes the last

	AddSalt, AddWater quantity.Optional // kg, m3; to strengthen or weaken a bath
	PartA, PartB      quantity.Optional // kg; of two baths in a blend
	VolumeA, VolumeB  quantity.Optional // m3; the same
	ByGravity         quantity.Optional // kg/m3
}

func workUsed(fields *field.Set, salt Salt, b Bite, loss Loss, mix Mix, standing Standing) (Used, []field.Error) {
	var u Used
	if u.Run = standing.Etched; u.Run.Salt != nil {
		u.Run.Charge = loss.Charge.SI
		u = u.withDrift(fields, salt, b, loss, mix, standing)
	}
	if !salt.Known() || !fields.Amount(field.Temperature).Known() {
		return u, nil
	}
	u, errors := u.withStrengthening(fields, salt)
	u, more := u.withBlend(fields, salt, mix)
	errors = append(errors, more...)
	u, more = u.withGravity(fields, salt)
	return u, append(errors, more...)
}

// withDrift adds what all pieces of this run take from a bath as mixed and leave
// in it, and what the bath has lost and gathered in all.
func (u Used) withDrift(fields *field.Set, salt Salt, b Bite, loss Loss, mix Mix, standing Standing) Used {
	if loss.Charge.Known() {
		u = u.withOneRun(fields, salt, b, mix)
	}
	u.Spent = standing.Known && standing.Now.Spent(u.MetalLost.SI)
	etched := fields.Amount(field.Etched).Or(quantity.Known(0))
	if !etched.Known() || !loss.Charge.Known() && etched.SI == 0 {
		return u
	}
	all := u.Run.After(etched.SI)
	if lost := all.Lost(); lost.Known() {
		if inBath := mix.MetalMass(salt); inBath.SI > 0 {
			u.DropAll = quantity.Known(lost.SI / inBath.SI)
		}
		u.SaltToAddAll = saltFor(fields, salt, mix, lost.SI)
	}
	if volume := fields.Amount(field.VolumeNow).Or(mix.Volume); volume.Known() {
		u.InBath = gained(all, volume.SI, "Zn", "Ni", "Cu", "Pb")
	}
	return u
}

// saltFor is the salt that makes good a loss of metal, at most what was mixed, kg.
func saltFor(fields *field.Set, salt Salt, mix Mix, lost float64) quantity.Optional {
	assay := fields.Amount(field.Assay).SI
	if lost == 0 {
		return quantity.Known(0)
	}
	if mix.Ready && mix.Volume.Known() {
		return mix.Solution.SaltToRestore(mix.Volume.SI, lost, assay)
	}
	return salt.SaltToAdd(lost, assay)
}

func (u Used) withOneRun(fields *field.Set, salt Salt, b Bite, mix Mix) Used {
	u.Deposit, u.Hydrogen, u.MetalLost = u.Run.Deposit(), u.Run.Hydrogen(), u.Run.Lost()
	u.Gained = gained(u.Run, 1, "Zn", "Ni", "Cu")
	u.Sludge = quantity.Positive(u.Run.Sludge())
	if !u.MetalLost.Known() {
		return u
	}
	u.SaltToAdd = saltFor(fields, salt, mix, u.MetalLost.SI)
	if inBath := mix.MetalMass(salt); inBath.SI > 0 {
		u.Drop = quantity.Known(u.MetalLost.SI / inBath.SI)
		if b.Count.Known() {
			u.PiecesToTenth = bath.PiecesToTenth(b.Count.SI, u.Drop.SI)
		}
	}
	return u
}

// gained lists what stays in the bath of some elements, by its volume. In common
// salt much of the copper falls or plates again, so that it is not told.
func gained(run bath.Run, volume float64, symbols ...string) map[string]float64 {
	list := map[string]float64{}
	for _, symbol := range symbols {
		if symbol == "Cu" && run.Salt.Metal == "" {
			continue
		}
		if mass := run.Gained(symbol); mass > 0 {
			list[symbol] = mass / volume
		}
	}
	return list
}

// strengthIn makes the solution of a strength field at the bath's temperature.
func strengthIn(fields *field.Set, salt Salt, name field.Name) (made bath.Solution, ok bool, errors []field.Error) {
	v := fields.Value(name)
	if v.State != quantity.Given {
		return made, false, nil
	}
	made, errors = solutionOf(fields, salt, name, v.Q, fields.Amount(field.Temperature).SI)
	return made, errors == nil, errors
}

func (u Used) withStrengthening(fields *field.Set, salt Salt) (Used, []field.Error) {
	volume, assay := fields.Amount(field.HaveVolume), fields.Amount(field.Assay)
	have, ok, errors := strengthIn(fields, salt, field.HaveStrength)
	if !ok || !volume.Known() || !assay.Known() {
		return u, errors
	}
	want, ok, errors := strengthIn(fields, salt, field.WantStrength)
	if !ok {
		return u, append(errors, Missing(fields, field.WantStrength)...)
	}
	add, water, err := have.Toward(want, volume.SI, assay.SI)
	switch {
	case err != nil:
		return u, refusal(fields, field.WantStrength, err)
	case add > 0:
		u.AddSalt = quantity.Known(add)
	default:
		u.AddWater = quantity.Known(water)
	}
	return u, nil
}

func (u Used) withBlend(fields *field.Set, salt Salt, mix Mix) (Used, []field.Error) {
	one, ok, errors := strengthIn(fields, salt, field.StrengthA)
	other, also, more := strengthIn(fields, salt, field.StrengthB)
	errors = append(errors, more...)
	if !ok || !also {
		return u, errors
	}
	want, ok, errors := strengthIn(fields, salt, field.WantStrength)
	switch {
	case !ok:
		return u, append(errors, Missing(fields, field.WantStrength)...)
	case !mix.Volume.Known():
		return u, Missing(fields, field.Volume)
	}
	ofOne, ofOther, err := want.Parts(one, other, mix.Volume.SI)
	if err != nil {
		return u, contradiction(fields, "it lies outside the two baths", field.WantStrength, field.StrengthA, field.StrengthB)
	}
	u.PartA, u.PartB = quantity.Known(ofOne), quantity.Known(ofOther)
	u.VolumeA, u.VolumeB = quantity.Known(ofOne/one.Liquid().Density()), quantity.Known(ofOther/other.Liquid().Density())
	return u, nil
}

func (u Used) withGravity(fields *field.Set, salt Salt) (Used, []field.Error) {
	v := fields.Value(field.Gravity)
	if v.State != quantity.Given {
		return u, nil
	}
	density := v.Q.Value
	switch {
	case v.Q.Unit == field.Baume:
		density = bath.DensityOfGravity(bath.GravityOfBaume(v.Q.Value))
	case v.Q.Kind == quantity.Number:
		density = bath.DensityOfGravity(v.Q.Value)
	}
	made, err := salt.ByDensity(density, bath.Room)
	if err != nil {
		return u, refusal(fields, field.Gravity, err)
	}
	u.ByGravity = quantity.Known(made.In(quantity.Density))
	return u, nil
}
