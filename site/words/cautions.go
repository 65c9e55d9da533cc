package words

// CautionOrigin says what a caution rests on.
type CautionOrigin struct {
	Rests string   // at most 240 characters
	Uses  []string // keys of Sources, hazard statements among them
}

// CautionOrigins are what the cautions rest on, by code.
var CautionOrigins = map[string]CautionOrigin{
	"beryllium":   {"Any beryllium in the metal's composition: no bite is worked out.", []string{"beryllium"}},
	"wrong-bath":  {"Of silver and copper, the one with the larger share is not the salt's metal; or there is any silver in common salt.", []string{"displacement"}},
	"metal-guess": {"What was typed fits more than one metal of the catalogue.", composition},
	"nickel": {"Nickel from 0.1 % of the metal's mass goes into the bath. Who may work with it is a matter of local law.",
		[]string{"traces", "ghs-nickel-sulfate", "ghs-words"}},
	"lead": {"Lead from 0.1 % of the metal's mass goes into sludge or bath. Who may work with it is a matter of local law.",
		[]string{"traces", "ghs-lead", "ends", "ghs-words"}},
	"porous": {"Fired metal clay of no typed density.", []string{"porous-clay"}},

	"hanger":         {"What is left of the hanger is less than half its diameter.", []string{"bands"}},
	"stainless":      {"A hanger of stainless, plated or galvanised metal, or of aluminium in common salt.", []string{"stainless-dissolves", "hangers"}},
	"polarity":       {"The piece weighs more after than before: it was the cathode.", nil},
	"efficiency-odd": {"The efficiency of this run lies outside 85 to 110 %.", []string{"bands"}},
	"long-run":       {"The time is over 12 h.", []string{"bands"}},
	"sheet-thin":     {"What is left, at the mean depth, is less than what is to be kept; or nothing is.", []string{"half-sheet"}},
	"line-at-risk":   {"What the line keeps is nothing or less at the worst undercut, but not at the usual one.", []string{"undercut", "etch-factors"}},
	"gauge-meant":    {"The sheet's thickness is 6 mm or more.", []string{"bands"}},
	"line-lost":      {"What the line keeps is nothing or less.", []string{"undercut", "etch-factors"}},

	"dense":         {"The current density is over 50, or over 100 mA/cm².", []string{"bands"}},
	"salt-film":     {"The current density, or the least worth suggesting, is over the one at which the bath saturates at the metal.", join([]string{"suggestion"}, limit)},
	"cathode-limit": {"The density at the cathode is over its limit, or over half of it.", join([]string{"bands"}, limit)},
	"still-layer":   {"Face up and not stirred, the heavy liquid rests on the work and the light one under the cathode, so that no limit lasts.", ofBath("diffusion layer")},

	"supply-weak":   {"The current is over the supply's amperes.", nil},
	"supply-volts":  {"Current × the high end of the bath's resistance + allowance + wire is over the supply's volts.", join([]string{"allowance", "allowance-gas"}, resists, wires)},
	"wire-thin":     {"The current is over 5 A/mm² of the wire.", []string{"lead-current", "mains"}},
	"face-estimate": {"The resistance of the bath takes the face as the square of the open area, so that it comes out too high.", []string{"cone", "spreading"}},

	"salt-undissolved": {"The strength is over saturation at the bath's temperature.", dissolves},
	"cold-crystals":    {"The bath holds more than saturates it at the coldest it is kept at.", dissolves},
	"outside-table":    {"A figure was read past the last row of its table, or at a temperature that it was not made for.", join(ofBath("density"), conducts)},
	"bath-drifts": {"The metal is less than 99 % the bath's own; it is said louder from a tenth of the bath's metal on. What gathers has hazards of its own.",
		[]string{"bands", "ends", "ghs-zinc-sulfate", "ghs-nickel-sulfate", "ghs-lead", "ghs-copper-sulfate", "ghs-words"}},
	"gas":            {"Common salt was named as the bath.", join([]string{"gases"}, ofBath("hydrogen"))},
	"copper-sulfate": {"Copper sulfate was named as the bath.", []string{"ghs-copper-sulfate", "ghs-copper-sulfate-anhydrous", "ghs-words"}},
	"silver-nitrate": {"Silver nitrate was named as the bath. It meets ammonia and solvents when work is rinsed and resist taken off.",
		[]string{"ghs-silver-nitrate", "silver-ammonia", "ghs-acetone", "ghs-propanol", "ghs-words"}},
	"common-salt": {"Common salt was named as the bath. Its sludge holds copper: the statement on aquatic life is copper sulfate's, the nearest row that was read.",
		[]string{"copper-i", "ghs-sodium-chloride", "ghs-copper-sulfate", "ghs-words"}},
}
