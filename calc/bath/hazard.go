package bath

// Hazard is a published hazard statement of the GHS.
type Hazard struct{ Code, Words string }

// Statements are the words of the codes, as GHS and Annex III of Regulation
// (EC) 1272/2008 print them (from memory).
var Statements = [...]Hazard{
	{"H225", "highly flammable liquid and vapour"},
	{"H272", "may intensify fire, oxidiser"},
	{"H302", "harmful if swallowed"},
	{"H314", "causes severe skin burns and eye damage"},
	{"H315", "causes skin irritation"},
	{"H317", "may cause an allergic skin reaction"},
	{"H318", "causes serious eye damage"},
	{"H319", "causes serious eye irritation"},
	{"H332", "harmful if inhaled"},
	{"H334", "may cause allergy or asthma symptoms or breathing difficulties if inhaled"},
	{"H336", "may cause drowsiness or dizziness"},
	{"H341", "suspected of causing genetic defects"},
	{"H350i", "may cause cancer by inhalation"},
	{"H360D", "may damage the unborn child"},
	{"H360Df", "may damage the unborn child, suspected of damaging fertility"},
	{"H372", "causes damage to organs through prolonged or repeated exposure"},
	{"H373", "may cause damage to organs through prolonged or repeated exposure"},
	{"H410", "very toxic to aquatic life with long lasting effects"},
	{"EUH066", "repeated exposure may cause skin dryness or cracking"},
}

// Statement is what a hazard code says; "" for one that is not in use here.
func Statement(code string) string {
	for _, h := range Statements {
		if h.Code == code {
			return h.Words
		}
	}
	return ""
}

// Danger and Warning are the signal words of the GHS.
const Danger, Warning = "Danger", "Warning"

// Hazards are a salt's signal word and the codes of its hazard statements; none
// for common salt, which is not classified. They are those of the solid salt:
// a weak solution may be classified lower. Sources in testdata/ghs.csv.
func (s *Salt) Hazards() (signal string, codes []string) {
	switch s {
	case CopperSulfate:
		return Danger, []string{"H302", "H318", "H410"}
	case CopperSulfateAnhydrous:
		return Warning, []string{"H302", "H315", "H319", "H410"}
	case SilverNitrate:
		return Danger, []string{"H272", "H314", "H410"}
	}
	return "", nil
}
