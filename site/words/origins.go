package words

import "slices"

// Origin says where an answer comes from.
type Origin struct {
	Formula string   // in words, at most 160 characters
	Uses    []string // keys of Sources; none where it is arithmetic on what was typed
	Assumes string   // what it takes for granted, where it stops being true; at most 240 characters
}

// What several answers rest on alike.
var (
	composition = []string{"composition-seen", "composition-computed", "composition-memory"}
	densities   = []string{"density-seen", "density-computed", "density-memory", "mixture"}
	equivalent  = join([]string{"faraday"}, ofBath("molar mass"), []string{"ions", "dust", "tin-iv", "copper-i"}, composition)
	dissolving  = join(equivalent, []string{"efficiency"})
	shape       = []string{"bite-shape", "undercut"}
	law         = join(dissolving, densities, shape)

	weighed    = join(ofBath("density"), ofBath("solubility"), []string{"water", "between-rows"})
	mixed      = join(weighed, ofBath("molar mass"))
	dissolves  = join(ofBath("solubility"), []string{"between-rows"})
	conducts   = join(ofBath("conductivity"), ofBath("conductivity by temperature"), []string{"between-rows"})
	limit      = join([]string{"limit-law", "limit-range"}, ofBath("diffusion layer"), ofBath("diffusion"), ofBath("transference"), ofBath("viscosity"), []string{"thinning", "gravity", "usual-face", "faraday"}, mixed)
	resists    = join([]string{"cone", "spreading", "disc"}, conducts)
	allowances = []string{"allowance", "allowance-gas"}
	wires      = []string{"copper-wire", "aluminium"}
	plated     = join([]string{"faraday"}, ofBath("molar mass"))
	drifts     = join(dissolving, []string{"ends"})
)

// join is all the keys, each once.
func join(lists ...[]string) (keys []string) {
	for _, key := range slices.Concat(lists...) {
		if !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	return keys
}

// Said of several answers.
const (
	equalPieces = "Equal pieces in parallel on one supply."
	unlessTyped = "Range: efficiency from 90 to 105 % unless it is typed; in common salt, copper leaving as copper(II)."
	asMixed     = "Of the bath as mixed, before anything was etched in it."
	keepsVolume = "True where the bite's volume is: straight edges, and no line gone."
	anEstimate  = "An estimate: an ammeter tells better."
	sameSalt    = "The same salt and nothing else in it; the volume grows."
	spentLimit  = "An order of magnitude, half to twice: diffusion and the metal's share of the current are taken as one at all strengths."
)

// Origins are where the answers come from, by the answer's name.
var Origins = map[string]Origin{
	"depth": {"the depth at which the bite takes efficiency × current × time × equivalent ÷ metal's density ÷ pieces; with no edge, current density in place of current", law,
		"A mean over exposed metal, or where it is shallowest if so asked. Straight edges: it counts too much round islands, too little round holes. " + unlessTyped},
	"time": {"pieces × volume of the bite × metal's density ÷ (efficiency × equivalent × current)", law,
		"The current is held. Several bites: the sum of their times. " + unlessTyped},
	"current": {"charge that the depth takes ÷ time, or current density × exposed in all", law,
		equalPieces + " At constant voltage the current wanders, and its mean over the run counts."},
	"area": {"face × exposed share × sides; where it is found: volume each ÷ depth − extra − what lies under the resist, or current ÷ density ÷ pieces − extra", law,
		"Where it is found it is a difference: it grows unsure as it becomes small beside the extra metal and the undercut."},
	"totalArea": {"pieces × (exposed area + other exposed metal)", []string{"hangers"},
		"At the start, before edges are undercut. Extra is as typed, with edges, back and hanger as worked out; a hanger that takes no current is left out."},
	"density": {"current ÷ exposed in all, at the start; or, with no edge, depth × metal's density ÷ (time × efficiency × equivalent)", law,
		"A mean: edges of open fields take more, close hatching less."},
	"charge": {"current × time, or pieces × volume of the bite × metal's density ÷ (efficiency × equivalent)", law,
		keepsVolume + " All current through the bath counts, whatever it does there."},
	"removed": {"efficiency × charge × equivalent", dissolving,
		"All pieces, hidden metal and dissolving hangers included. Hangers are taken to be of the work's own metal."},
	"removedEach": {"metal removed in all ÷ pieces; where a hanger dissolves, metal's density × volume of the bite without the hanger", law,
		"What one piece weighs less by, hanger off. " + keepsVolume},
	"equivalent": {"1 ÷ (Faraday constant × sum over the elements of share by mass × charge of its ion ÷ atomic weight)", equivalent,
		"Elements leave in the proportion they stand in. Untrue where one phase dissolves first, at the start of an alloy, and where the metal passivates. Low end: tin as tin(IV); in common salt, copper as copper(II)."},
	"rate": {"depth ÷ time; before these are known, current density × efficiency × equivalent ÷ metal's density", join(dissolving, densities),
		"At the start where only the current density is known; it falls as undercut walls spread the current."},

	"suggestedDensity": {"the least of 30 mA/cm², half of the salt film's density, half of the cathode's limit, and the supply's amperes ÷ exposed in all; not below 10 mA/cm²", join([]string{"suggestion"}, limit),
		"A start for someone with no current in mind. The limits count where the bath's strength is known."},
	"suggestedCurrent": {"suggested density × exposed in all", []string{"suggestion"},
		"As good as the suggested density and the exposed area."},
	"suggestedTime": {"the time that the depth takes at the suggested current", join([]string{"suggestion"}, law),
		"As good as the suggested current. The current is held."},

	"extraFound": {"π × wire's diameter × length under the surface + exposed edge × sheet + exposed share of the back × face; of one piece", []string{"hangers"},
		"The wire's ends are left out. Aluminium in copper sulfate or silver nitrate adds nothing."},
	"depthIfForgotten": {"the depth at which all exposed metal gives the volume that the design alone would give at the depth asked", shape,
		"The same charge, calculated without the other exposed metal and run with it. " + keepsVolume},
	"hangerLeft": {"wire's diameter − 2 × depth", nil,
		"The wire is bitten as deep as the work, as one of its own metal would be. A mean: a hanger thins most at the bath's surface and parts there sooner."},

	"left": {"thickness − sides × depth", []string{"evenness"},
		"Bites on both sides lie opposite each other; elsewhere more is left. Range: 25 % deeper and shallower than the mean."},
	"leftShare": {"sheet left ÷ thickness", nil,
		"At the mean depth, bites on both sides lying opposite each other."},
	"deepest": {"(thickness − what is to be kept) ÷ sides", []string{"half-sheet", "evenness"},
		"A mean depth. Range: the mean at which the deepest spot, and at which the shallowest, still leaves what is to be kept."},
	"thinnestSheet": {"sides × depth + thickness to keep, or sides × depth ÷ (1 − share to keep)", []string{"half-sheet"},
		"At the mean depth; rolled sheet has a tolerance of its own."},
	"thinnestGauge": {"the largest whole gauge that is at least as thick as the thinnest sheet", []string{"gauge", "half-sheet"},
		"The exact formula, before the table's rounding. Sheet as sold follows the table and the mill's tolerance. From 0000 on."},
	"lineLeft": {"width of the line of resist − 2 × undercut × depth", []string{"undercut", "etch-factors"},
		"At the line's top, bitten from both sides. Nothing or less: it is gone; how far the ridge then sinks is not known here. Low end: undercut 1, unless it is typed."},
	"narrowestLine": {"2 × undercut × depth", []string{"undercut", "etch-factors"},
		"The width of resist whose line is just gone at this depth. High end: undercut 1, unless it is typed."},
	"deepestForLine": {"width of the line of resist ÷ (2 × undercut)", []string{"undercut", "etch-factors"},
		"The depth at which the line is just gone: stay well above it. Low end: undercut 1, unless it is typed."},
	"spaceBecomes": {"width of the space + 2 × undercut × depth", []string{"undercut", "etch-factors"},
		"At the surface, until the neighbour's bite is met. High end: undercut 1, unless it is typed."},

	"filmDensity": {"ion's charge × Faraday constant × diffusion × (saturated − bath's metal) ÷ (layer beside the work × (1 − metal's share of the current))", limit,
		spentLimit + " A bath holds more than saturates it for a while. None in common salt, nor face up and unstirred."},
	"cathodeLimit": {"ion's charge × Faraday constant × diffusion × bath's metal ÷ (layer beside the cathode × (1 − metal's share of the current))", limit,
		spentLimit + " With acid in the bath it is lower. None in common salt, nor under work that lies face up, unstirred."},
	"cathodeNeeded": {"2 × current ÷ cathode's limit", join([]string{"half-limit"}, limit),
		"Brings the cathode's density to half of its limit. As rough as the limit."},
	"bathResistance": {"gap ÷ (2 × conductivity) × (1 ÷ √(face × middle) + 1 ÷ √(middle × cathode)); middle: the face grown by half the gap on every side", resists,
		"Unless a picture gave it. Within 15 % where the cathode covers the work; far too low for a small cathode close to a large face. No face given: the exposed area as a square. High: discs far apart, or 1.6 columns."},
	"cellVolts": {"current × resistance of the bath + allowance", join(allowances, resists),
		"Range: 0.85 of the resistance with the least allowance, to its high end with the most. Near a limit the reactions cost more."},
	"currentAtVolts": {"(supply's volts − allowance) ÷ (resistance of bath and cable)", join(allowances, resists, wires),
		anEstimate + " What would flow if the supply held nothing back; a supply that droops gives less."},
	"supplyWatts": {"supply's volts × current", nil,
		"What the supply delivers, whatever part of it the cell takes."},
	"ballast": {"(supply's volts − volts across the cell − volts lost in the wire) ÷ current", join(allowances, resists, wires),
		"Constant voltage. As good as the cell's volts: set it by the ammeter."},
	"ballastWatts": {"current × current × ballast", join(allowances, resists, wires),
		"Heat for as long as the current runs: the resistor must be rated above it."},
	"wireDrop": {"current × resistivity × length there and back ÷ (π/4 × diameter × diameter)", wires,
		"At 20 °C; it grows by 0.4 % a kelvin. Clips and their contacts are left out."},
	"wireLimit": {"5 A/mm² × π/4 × diameter × diameter", []string{"lead-current"},
		"A cautious habit, whatever the wire's metal; not a limit of any code."},
	"warming": {"current × volts across the cell ÷ (heat capacity of water × mass of water in the bath now)", join([]string{"heat"}, allowances, resists, mixed),
		"No heat is lost: a bath that stands open warms less, the less the longer it runs. The salt's heat and the reactions' are left out."},
	"cathodeDensity": {"current ÷ cathode's facing area", nil,
		"A mean: the cathode's edges take more."},
	"depthThatFits": {"the depth at the supply's amperes in the same time, on all pieces", law,
		"The supply holds its amperes. " + keepsVolume},
	"timeThatFits": {"the time to the same depth at the supply's amperes, on all pieces", law,
		"The supply holds its amperes. " + keepsVolume},
	"piecesThatFit": {"supply's amperes × pieces ÷ current, whole ones", law,
		"Equal pieces at the same depth and time."},

	"saltMass": {"strength × volume ÷ purity", mixed,
		"Salt as it is weighed, impurities included; they change nothing else."},
	"waterVolume": {"the water by weight ÷ the density of water at the bath's temperature", []string{"water"}, "Distilled water; measured at the temperature of the bath."},
	"waterMass": {"mass of the bath − salt dissolved in it", mixed,
		"Water of the crystals counts as salt. Impurities are left out."},
	"solutionMass": {"density of the bath × volume", weighed,
		"The liquid, without impurities or what lies undissolved."},
	"volume": {"as typed; or length × width × height of the bath, or π/4 × diameter × diameter × height; or what the salt and water in hand make", mixed,
		"Straight walls. What lies undissolved takes no room. From what is in hand, the scarcer counts."},
	"saltFraction": {"salt in the form named ÷ mass of the bath", mixed,
		"The liquid only. Crystals count with their water."},
	"anhydrousFraction": {"the share of anhydrous salt at which share × density of the bath is the strength", mixed,
		"The liquid only. Tables are in this share: 1 g of anhydrous copper sulfate is in 1.564 g of crystals."},
	"suggestedStrength": {"by the salt: 150 g/L of copper sulfate crystals, 100 of anhydrous copper sulfate, 40 of silver nitrate, 100 of common salt", []string{"usual-strength"},
		"A start for someone with no strength in mind. No sum stands behind it."},
	"molarity": {"salt per litre of bath ÷ molar mass", mixed,
		"The liquid only, at the bath's temperature."},
	"perLitre": {"density of the bath × share of salt by mass", mixed,
		"The liquid only: stronger than saturated, it is the saturated strength. Per litre of finished bath."},
	"perLitreWater": {"share of salt ÷ (1 − share of salt) × density of water at 20 °C", mixed,
		"Per litre of water measured at 20 °C. The crystals' own water counts as salt."},
	"solutionDensity": {"read from the table by the anhydrous share, × density of water at the bath's temperature ÷ that at 20 °C", weighed,
		"Past the last row the volume of a kilogram goes straight on. For copper sulfate within 0.3 % from 15 to 25 °C, 0.5 % at 40 °C; the other salts were not compared by temperature."},
	"conductivity": {"read from the table at 20 °C by the anhydrous share, × (1 + its share per kelvin × (temperature − 20 °C))", conducts,
		"The line holds from 10 to 30 °C. To 1.1 times the last row it goes straight on; beyond that no figure is given. A bath that has gathered other metals conducts otherwise."},
	"saturation": {"strength, of a used bath the strength now, ÷ saturated strength at the bath's temperature", mixed,
		"In g/L on both sides. Over 100 %, some lies undissolved."},
	"undissolved": {"(strength − saturated strength) × volume", mixed,
		"Pure salt in the form named, in a bath stirred until no more dissolves."},
	"waterToDissolve": {"pure salt × (anhydrous share of the salt ÷ saturated share − 1) ÷ density of water at 20 °C", mixed,
		"All the water that just dissolves the salt at the bath's temperature, not what is to be added."},
	"metalInBath": {"density of the bath × anhydrous share × metal's share in the salt × volume", mixed,
		asMixed + " What lies undissolved is left out."},
	"crystals": {"mass of the bath × (anhydrous share − saturated share in the cold) ÷ (anhydrous share of the crystals − saturated share in the cold)", mixed,
		"Copper sulfate drops as pentahydrate. A bath that has settled; a still one may hold more for days. What lay undissolved before is left out."},
	"saturatesAt": {"the temperature at which the table of solubility gives the anhydrous share of all salt and water", dissolves,
		asMixed + " A still bath may cool further before crystals come. None for a bath that stays clear at 0 °C."},

	"cathodeDeposit": {"charge × atomic weight ÷ (ion's charge × Faraday constant), of the bath's metal", plated,
		"All the charge plates the bath's metal. Over the cathode's limit part of it makes gas and powder. None in common salt."},
	"bathMetalLost": {"metal plated on the cathode − metal removed × share of the bath's metal in the work", drifts,
		"One run of all pieces. Negative: the bath gains. None in common salt."},
	"bathDrop": {"metal the bath loses ÷ metal in the bath", join(drifts, mixed),
		asMixed + " One run of all pieces."},
	"bathDropAll": {"(metal lost in this run + lost by all that was etched before, at the same efficiency) ÷ metal in the bath", join(drifts, mixed),
		asMixed + " All of the same metal, and nothing added back."},
	"saltToAdd": {"metal the bath loses ÷ (metal's share in the salt as named × purity)", drifts,
		"One run of all pieces. It brings the metal back; what else has gathered stays."},
	"saltToAddAll": {"the salt whose metal makes good what this run and all that was etched before took, ÷ purity; at most the salt as mixed", drifts,
		"Nothing was added back since. Zinc, nickel and tin stay in the bath."},
	"zincGained": {"metal removed × share of zinc", drifts,
		"All of it stays dissolved: true in copper sulfate and silver nitrate; in common salt part falls again."},
	"nickelGained": {"metal removed × share of nickel", drifts,
		"All of it stays dissolved: true in copper sulfate and silver nitrate; in common salt part falls again."},
	"copperGained": {"metal removed × share of copper", drifts,
		"In silver nitrate: it stays while the cathode runs below its limit, and comes down in the powder above it."},
	"zincInBath": {"zinc from all that was etched before and from this run ÷ volume", drifts,
		"All of the same metal, at the same efficiency; nothing taken out, nothing falls."},
	"nickelInBath": {"nickel from all that was etched before and from this run ÷ volume", drifts,
		"All of the same metal, at the same efficiency; nothing taken out, nothing falls."},
	"copperInBath": {"copper from all that was etched before and from this run ÷ volume", drifts,
		"In silver nitrate only. All of the same metal, at the same efficiency; the cathode takes none of it."},
	"leadInBath": {"lead from all that was etched before and from this run ÷ volume", drifts,
		"In silver nitrate. In copper sulfate lead falls as sludge; a bath of common salt holds little lead chloride, so there the figure is too high."},
	"sludge": {"metal removed × (share of tin × tin oxide ÷ tin + share of lead × lead sulfate ÷ lead, in copper sulfate only), by molar mass", drifts,
		"Dry. Wet sludge weighs several times as much. The dust of what does not dissolve is left out."},
	"hydrogen": {"charge × gas constant × temperature ÷ (2 × Faraday constant × pressure): 0.449 L per A h", join(ofBath("hydrogen"), []string{"faraday", "gases"}),
		"Common salt only. Dry, at 20 °C and 101.325 kPa; at most, as what has dissolved plates there too."},
	"piecesToTenth": {"a tenth × pieces ÷ drop in one run, whole ones", join(drifts, mixed),
		"From a fresh bath, run by run, nothing added back. Absent where the bath does not drop."},
	"strengthNow": {"(strength × volume as mixed − the salt of the metal that etching took) ÷ volume now, at most saturated", join(drifts, mixed),
		"What is lost with drips and on the work is left out, and so is what was added back."},
	"waterToAdd": {"volume as mixed − volume now", nil,
		"Distilled water, to a mark. By weight it is that within 1.5 % at 20 °C."},
	"addSalt": {"(wanted ratio of salt to water × water in the bath − salt in the bath) ÷ purity", mixed,
		sameSalt},
	"addWater": {"(salt in the bath ÷ wanted ratio of salt to water − water in the bath) ÷ density of water at 20 °C", mixed,
		sameSalt},
	"partA": {"mass of the blend × (wanted share − the other's share) ÷ (the first bath's share − the other's share), of anhydrous salt by mass", mixed,
		"By weight. The same salt, nothing else in either bath."},
	"partB": {"mass of the blend − bath A", mixed,
		"By weight. The same salt, nothing else in either bath."},
	"strengthByGravity": {"the strength whose density at 20 °C is reading × density of water; degrees Baumé: 145 ÷ (145 − degrees)", join(ofBath("hydrometer"), mixed),
		"At 20 °C, and nothing but this salt in it: a bath that has etched brass or nickel silver is misread, as zinc and nickel sulfate are nearly as heavy."},

	"depthNow": {"the depth at which metal's density × volume of the bite is the weight lost", join(densities, shape),
		"No current is needed. Resist on and hanger off both times, the piece dry and free of sludge. A mean over the exposed metal on the scale."},
	"efficiencyNow": {"pieces × metal's density × volume at the depth by weight, hanger included ÷ (charge × equivalent)", join(equivalent, densities, shape),
		"Equal pieces; the hanger is bitten as deep as the rest. As good as the exposed area, the ammeter and the scale."},
	"timeLeft": {"charge so far × (volume at the target ÷ volume at the depth by weight − 1) ÷ current", join(densities, shape),
		"At the efficiency of this run so far, and the current as it is now."},
	"weightAtTarget": {"weight before − metal's density × volume of the bite at the target, without the hanger", join(densities, shape),
		"Resist on and hanger off, dry. " + keepsVolume},
	"chargeSoFar": {"sum over the readings of time between two × mean of their amperes", nil,
		"Straight lines between readings (trapezium rule): the error goes with the square of the time between them. A smaller time is a day later."},
	"depthSoFar": {"the depth that the charge so far gives", law,
		"A mean over the exposed metal, at the efficiency typed, else 100 %. " + keepsVolume},
	"readyIn": {"(charge that the depth takes − charge so far) ÷ last current", law,
		"After the last reading, at its current. High end: the straight line that fits all readings best (least squares), where the current lasts that long."},
	"halfAt": {"time of switching on + half of the time + pause", nil,
		"The current is held, and off for as long as typed."},
	"readyAt": {"time of switching on + time + pause", nil,
		"The current is held, and off for as long as typed."},
	"weightAtHalf": {"weight before − metal's density × volume of the bite after half the time, without the hanger", law,
		"Resist on and hanger off, dry. The current is held."},
}
