package words

import (
	"strings"

	"saltbite/calc/bath"
)

// hazard is a row of published hazard statements (GHS).
type hazard struct {
	key, substance string
	cas            string
	signal         string
	codes          string // of the statements, parted by blanks
	source         string
	confidence     string
}

// hazards are the rows that cautions rest on. CLP is Regulation (EC) 1272/2008.
var hazards = []hazard{
	ofSalt(bath.CopperSulfate, "ghs-copper-sulfate", "copper(II) sulfate pentahydrate", "7758-99-8",
		"ILO safety card ICSC 1416 (Nov 2023); harmonised in CLP Annex VI as amended by Regulation (EU) 2016/1179, index 029-023-00-4, whose entry is from memory. One supplier's sheet of 2013 says H301, toxic if swallowed", Seen),
	ofSalt(bath.CopperSulfateAnhydrous, "ghs-copper-sulfate-anhydrous", "copper(II) sulfate, anhydrous", "7758-98-7",
		"ILO safety card ICSC 0751 (Nov 2023)", Seen),
	ofSalt(bath.SilverNitrate, "ghs-silver-nitrate", "silver nitrate", "7761-88-8",
		"a laboratory supplier's safety data sheet (2015), sections 2.1 and 2.2; CLP Annex VI, index 047-001-00-2. H290, may be corrosive to metals, is often added (from memory)", Seen),
	ofSalt(bath.CommonSalt, "ghs-sodium-chloride", "sodium chloride", "7647-14-5",
		"CLP Annex VI has no entry for it. What a bath of it gathers is another matter: see the copper salts", Memory),
	{"ghs-zinc-sulfate", "zinc sulfate heptahydrate", "7446-20-0", "Danger", "H302 H318 H410",
		"CLP Annex VI, index 030-006-00-9", Memory},
	{"ghs-nickel-sulfate", "nickel(II) sulfate", "7786-81-4", "Danger", "H350i H341 H360D H372 H332 H302 H315 H334 H317 H410",
		"CLP Annex VI, index 028-009-00-5", Memory},
	{"ghs-lead", "lead compounds (sulfate as sludge, nitrate dissolved)", "", "Danger", "H360Df H332 H302 H373 H410",
		"CLP Annex VI, index 082-001-00-6, the entry of the group", Memory},
	{"ghs-acetone", "acetone", "67-64-1", "Danger", "H225 H319 H336 EUH066",
		"CLP Annex VI, index 606-001-00-8, as copied in a program's test data", Seen},
	{"ghs-propanol", "propan-2-ol (isopropyl alcohol)", "67-63-0", "Danger", "H225 H319 H336",
		"CLP Annex VI, index 603-117-00-0, as copied in a program's test data", Seen},
}

// ofSalt is the row of a bath's salt, whose signal word and codes the jar's label prints too.
func ofSalt(salt *bath.Salt, key, substance, cas, source, confidence string) hazard {
	signal, codes := salt.Hazards()
	return hazard{key, substance, cas, signal, strings.Join(codes, " "), source, confidence}
}

// ofHazards are the sources of hazard statements.
func ofHazards() map[string]SourceRow {
	rows := map[string]SourceRow{
		"ghs-words": {"Hazard statements", "The words of an H code are those of GHS as Annex III of Regulation (EC) 1272/2008 prints them. What to do about it is the supplier's choice, not harmonised: " +
			"the supplier's data sheet goes before what is said here", Memory},
		"silver-ammonia": {"Silver and ammonia", "Silver nitrate's residues with ammonia form what explodes on standing, also cold and undisturbed: a laboratory's safety page, and a medical journal's case report", Seen},
		"beryllium":      {"Beryllium", "Safety sheets for beryllium materials name chemical etching, pickling and cleaning as ways of exposure", Seen},
	}
	for _, h := range hazards {
		rows[h.key] = SourceRow{"Hazard statements: " + h.substance, h.text(), h.confidence}
	}
	return rows
}

// text is a row as a sentence: CAS number, signal word, each code in words, source.
func (h hazard) text() string {
	var parts []string
	if h.cas != "" {
		parts = append(parts, "CAS "+h.cas)
	}
	if h.signal != "" {
		var said []string
		for code := range strings.FieldsSeq(h.codes) {
			said = append(said, code+" "+bath.Statement(code))
		}
		parts = append(parts, h.signal+": "+strings.Join(said, "; "))
	}
	return strings.Join(append(parts, capital(h.source)), ". ")
}
