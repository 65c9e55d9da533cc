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

	"slime":     {"Silver in a metal that is mostly copper, in copper sulfate: copper dissolves before silver does.", []string{"slime"}},
	"two-phase": {"Over 37 % zinc, over 9 % tin, over 4 % aluminium, or any germanium.", []string{"bands"}},
	"lift-out":  {"Over 15 % zinc, with a pause or a weighing.", []string{"displacement"}},

	"hanger":         {"What is left of the hanging wire is less than half its diameter.", []string{"bands"}},
	"hanger-plates":  {"A wire of copper, brass, bronze or aluminium in silver nitrate.", []string{"displacement"}},
	"no-loss":        {"A loss under the balance's step, where the charge should have taken over five times that.", []string{"bands"}},
	"current-falls":  {"The last reading is under half of the first.", []string{"bands"}},
	"volts-high":     {"Over 30 volts, and over 60 volts, of direct current: what may be touched wet, and dry.", []string{"touched"}},
	"supply-strong":  {"The volts would drive 1.3 times, or 3 times, the current wanted if nothing held them back.", join([]string{"bands"}, resists)},
	"cathode-metal":  {"A cathode, a distance or a supply is typed.", []string{"displacement"}},
	"spent":          {"What was etched before, or this run as well, takes all of the bath's metal.", []string{"ends"}},
	"unlikely":       {"Over 100 L, 2 mm, 50 A or 10 K/h of warming: choices, to catch a slip of the finger.", []string{"bands"}},
	"stainless":      {"A hanger of stainless, plated or galvanised metal, or of aluminium in common salt.", []string{"stainless-dissolves", "hangers"}},
	"polarity":       {"The piece weighs more after than before: it was the cathode.", nil},
	"efficiency-odd": {"The efficiency of this run lies outside 85 to 110 %.", []string{"bands"}},
	"long-run":       {"The time is over 12 h.", []string{"bands"}},
	"sheet-thin":     {"What is left, at the mean depth, is less than what is to be left; or nothing is.", []string{"half-sheet"}},
	"line-at-risk":   {"What the line keeps is nothing or less at the worst undercut, but not at the usual one.", []string{"undercut", "etch-factors"}},
	"gauge-meant":    {"The sheet's thickness is 6 mm or more.", []string{"bands"}},
	"line-lost":      {"What the line keeps is nothing or less.", []string{"undercut", "etch-factors"}},

	"dense":         {"The current density is over 50, or over 100 mA/cm².", []string{"bands"}},
	"salt-film":     {"The current density, or the least worth suggesting, is over the one at which the bath saturates at the metal.", join([]string{"suggestion"}, limit)},
	"cathode-limit": {"The density at the cathode is over its limit, or over half of it.", join([]string{"bands"}, limit)},
	"still-layer":   {"Face up and not stirred, the heavy liquid rests on the work and the light one under the cathode, so that no limit lasts.", ofBath("diffusion layer")},

	"supply-weak":   {"The current is over the supply's amperes.", nil},
	"supply-volts":  {"The volts needed, or only their high end, and what the cable loses are over the supply's volts.", join([]string{"allowance", "allowance-gas"}, resists, wires)},
	"wire-thin":     {"The current is over 5 A/mm² of the wire.", []string{"lead-current", "mains"}},
	"face-estimate": {"No face is given, so the exposed area stands for it; or the cathode is smaller than the work and close to it.", []string{"cone", "spreading"}},

	"salt-undissolved": {"The strength is over saturation at the bath's temperature.", dissolves},
	"cold-crystals":    {"The bath holds more than saturates it at the coldest it is kept at.", dissolves},
	"outside-table":    {"A figure was read past the last row of its table, or at a temperature that it was not made for.", join(ofBath("density"), conducts)},
	"bath-drifts": {"The metal is less than 99 % the bath's own and the bath gets weaker by 0.5 % or more; a warning from 10 % on. What gathers has hazards of its own.",
		[]string{"bands", "ends", "ghs-zinc-sulfate", "ghs-nickel-sulfate", "ghs-lead", "ghs-copper-sulfate", "ghs-words"}},
	"gas":            {"The bath is one of common salt.", join([]string{"gases"}, ofBath("hydrogen"))},
	"copper-sulfate": {"The bath is one of copper sulfate, named or assumed.", []string{"ghs-copper-sulfate", "ghs-copper-sulfate-anhydrous", "ghs-words"}},
	"silver-nitrate": {"The bath is one of silver nitrate, named or assumed. It meets ammonia and solvents when work is rinsed and resist taken off.",
		[]string{"ghs-silver-nitrate", "silver-ammonia", "ghs-acetone", "ghs-propanol", "ghs-words"}},
	"common-salt": {"The bath is one of common salt. Its sludge holds copper: the statement on aquatic life is copper sulfate's, the nearest row that was read.",
		[]string{"copper-i", "ghs-sodium-chloride", "ghs-copper-sulfate", "ghs-words"}},
}
