package words

import (
	"maps"
	"regexp"
	"strconv"
	"strings"

	"saltbite/calc/bath"
	"saltbite/calc/metal"
)

// SourceRow says what stands behind a figure or a caution, and how sure it is.
type SourceRow struct {
	Title      string
	Text       string
	Confidence string // one of Confidences
}

// How sure a source is.
const (
	Seen     = "seen"        // read in the work named
	Computed = "computed"    // worked out from what was read
	Memory   = "from memory" // recalled from the work named, which was not read
	Exact    = "exact"       // by definition
	Practice = "common practice, no source"
)

// Confidences are all the words for how sure a source is.
var Confidences = []string{Seen, Computed, Memory, Exact, Practice}

// Sources are what origins name, by key. What the rooms of calc tell of their
// own tables is taken from there, so that nothing is said twice.
var Sources = sources()

func sources() map[string]SourceRow {
	all := map[string]SourceRow{}
	for _, table := range sourceTables() {
		maps.Copy(all, table)
	}
	return all
}

func sourceTables() []map[string]SourceRow {
	return []map[string]SourceRow{constants, ofElements(), ofCatalogue(), ofSalts(), ofHazards()}
}

// constants are the sources that stand in doc comments, beside the formula that
// uses them.
var constants = map[string]SourceRow{
	"faraday": {"Faraday constant", strconv.FormatFloat(metal.Faraday, 'f', 5, 64) +
		" C/mol: Avogadro constant × elementary charge, SI brochure, 9th ed. 2019", Exact},
	"tin-iv": {"Tin's low end", "Tin leaving as tin(IV), which is what ends up as sludge, takes twice the charge of tin(II)", Practice},
	"copper-i": {"Copper in common salt", "Leaves as copper(I), held in solution by the chloride, with one charge instead of two, below the copper's own limit; the low end is copper(II). " +
		"Textbook electrochemistry, no one work named", Memory},
	"mixture": {"Density of a typed composition", "Elements that keep their volumes (handbook densities, CRC Handbook, those of zinc and silver from the Debian package units, 2.22; those of beryllium, carbon, cobalt, germanium, arsenic and gold from memory), " +
		"times the family's mean ratio of catalogue to ideal density; good to 3 %", Computed},

	"efficiency":     {"Current efficiency", "100 % unless typed. Until a trial tells, it is taken to lie between 90 and 105 %", Practice},
	"bite-shape":     {"Shape of a bite", "Along each resist edge the bite runs under the resist as a quarter ellipse, as deep as the bite and undercut × depth wide. Round islands and spots of resist, counted by a picture, by Steiner’s formula for parallel sets. Geometry", Practice},
	"undercut":       {"Undercut", "Side bite over depth: 0.5 to start with, 1 the worst case", Practice},
	"etch-factors":   {"Published etch factors", "1.5 to 3.5 in photochemical etching (a trade glossary), the inverse of undercuts of 0.67 to 0.29", Seen},
	"evenness":       {"Evenness", "The depth strays from its mean by 25 % either way: edges of open fields go deeper, close hatching less deep", Practice},
	"half-sheet":     {"Least to keep", "Half the sheet unless typed", Practice},
	"gauge":          {"Gauge", "Brown & Sharpe (American) gauge n is 0.005 in × 92^((36 − n) ÷ 39) thick, with 00 as −1: ASTM B258, as published pages quote its formula", Seen},
	"suggestion":     {"Suggested density", "30 mA/cm² to start from, half of each limit, and never below 10 mA/cm²", Practice},
	"usual-strength": {"Suggested strength", "What such baths are commonly made up to: of copper sulfate rather the weaker ones, which bear more current", Practice},
	"hangers":        {"Aluminium hanger", "Takes no current where no chloride breaks its oxide: in copper sulfate and silver nitrate", Practice},

	"limit-law":   {"Limiting current", "Tobias, Eisenberg and Wilke, J. Electrochem. Soc. 99 (1952) 359C, for a salt by itself", Memory},
	"limit-range": {"Range of a limit", "Half to twice the figure", Practice},
	"usual-face":  {"Length of a face", "The height, else the diameter, else the root of the area, else 30 mm. A choice", Practice},
	"half-limit":  {"Half the limit", "A cathode at half of its limit does not yet grow powder. A choice", Practice},
	"thinning":    {"Diffusion by temperature", "As the absolute temperature over water's viscosity: Einstein, Ann. Phys. 17 (1905) 549", Memory},
	"gravity":     {"Standard gravity", "9.80665 m/s², by definition", Exact},

	"cone":          {"Resistance of two truncated cones", "From the face to the middle of the gap and from there to the cathode, each half the gap ÷ (conductivity × root of its two end areas): textbook physics. Within 15 % of sixteen tanks solved in three dimensions", Computed},
	"spreading":     {"Spreading of the current", "At 45 degrees from the face to the middle of the gap; of the cathode, no more counts than reaches a gap beyond the face. A choice", Practice},
	"disc":          {"Resistance of a disc", "1 ÷ (4 × conductivity × radius) to a far plane: Newman, J. Electrochem. Soc. 113 (1966) 501, as quoted by others", Seen},
	"allowance":     {"Allowance of volts", "0.2 V between like electrodes in the metal's own salt, 0.1 to 0.3", Practice},
	"allowance-gas": {"Allowance of volts in common salt", "1.75 V where the cathode gives off hydrogen, 1.5 to 2", Practice},
	"copper-wire":   {"Copper wire", "58 MS/m at 20 °C, the International Annealed Copper Standard, as the Debian package units, 2.22, has it", Seen},
	"aluminium":     {"Aluminium wire", "61 % of copper's conductivity at 20 °C: grade 1350, ASTM B609", Memory},
	"lead-current":  {"What a lead carries", "5 A/mm² for hours. Cautious, and not a limit of any code", Practice},
	"heat":          {"Heat capacity of water", "4182 J/(kg K) at 20 °C: the 20 °C calorie of the Debian package units, 2.22, rounded up", Seen},

	"water":        {"Density of water", "Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16, in programs that use it", Seen},
	"between-rows": {"Reading between a table's rows", "A smooth curve through every row that never overshoots: Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300", Memory},
	"ends":         {"What becomes of each element", "The bath's own metal is given back; tin falls as tin oxide, and lead as lead sulfate in a sulfate bath; what takes no charge is dust; all else stays dissolved. Textbook chemistry", Practice},

	"bands":  {"Where a caution begins", "50 and 100 mA/cm²; a metal under 99 % the bath's own, a tenth of its metal gone; 12 h; efficiency outside 85 to 110 %; half the hanger; half the cathode's limit. Choices", Practice},
	"traces": {"Where nickel and lead begin to count", "From 0.1 % of the metal's mass. A choice", Practice},
	"stainless-dissolves": {"Steel and plating on the positive side", "Stainless steel leaves chromium(VI) and nickel there, plating and zinc dissolve, aluminium dissolves in chloride. " +
		"Known at the bench and in textbooks", Practice},
	"displacement": {"Silver and copper", "Copper takes silver out of its nitrate with no current; silver chloride does not dissolve. Textbook chemistry", Memory},
	"slime":        {"Anode slime", "Copper dissolves before silver, which falls as fine metal. Textbook electrochemistry", Memory},
	"touched":      {"Touch voltages", "30 V wet and 60 V dry, smooth direct current: IEC 60364-4-41", Memory},
	"gases":        {"Gases", "Hydrogen at the cathode and chlorine at higher voltage in common salt. Textbook chemistry", Memory},
	"porous-clay":  {"Fired metal clay", "Always somewhat porous, as a page on sintering says; how porous is the piece's own", Seen},
	"mains":        {"Mains", "An isolated low-voltage supply, fused; mains wiring by those licensed for it", Practice},
}

// ofElements are the sources of what each element does.
func ofElements() map[string]SourceRow {
	var ions, dust []string
	for _, e := range metal.Elements {
		name := e.Name[metal.English][0]
		if e.Charge == 0 {
			dust = append(dust, name)
			continue
		}
		ions = append(ions, name+" "+strconv.Itoa(e.Charge))
	}
	return map[string]SourceRow{
		"ions": {"Charge of each ion", capital(strings.Join(ions, ", ")) + ". Two plating handbooks' tables of equivalents agree within 0.13 % (aluminium's from memory)", Seen},
		"dust": {"What takes no charge", capital(strings.Join(dust, ", ")) + " are taken to stay behind as dust; silicon, germanium, beryllium and cobalt may oxidise after all, " +
			"which takes 6 to 16 % more charge in the alloys that hold most of them", Practice},
	}
}

// ofCatalogue are the sources of the catalogue's compositions and densities, the
// metals sorted by how sure the figure is.
func ofCatalogue() map[string]SourceRow {
	compositions, densities := map[string][]string{}, map[string][]string{}
	for m := range metal.All() {
		source, _ := metal.SourceOf(m.ID)
		c, d := compositionSure(source.Confidence), densitySure(source.Confidence)
		compositions[c] = append(compositions[c], m.Name)
		densities[d] = append(densities[d], m.Name)
	}
	return map[string]SourceRow{
		"composition-seen":     {"Compositions read", "The grade's nominal composition, in standards, data sheets and handbooks: " + list(compositions[Seen]), Seen},
		"composition-computed": {"Compositions worked out", "Reckoned from what is published of the grade, its limits mostly: " + list(compositions[Computed]), Computed},
		"composition-memory":   {"Compositions recalled", "Wholly or in part: " + list(compositions[Memory]), Memory},
		"density-seen":         {"Metal's densities read", "In data sheets and handbooks: " + list(densities[Seen]), Seen},
		"density-computed":     {"Metal's densities worked out", "By mixing, or between neighbours that were read: " + list(densities[Computed]), Computed},
		"density-memory":       {"Metal's densities recalled", list(densities[Memory]), Memory},
	}
}

func list(names []string) string { return strings.Join(names, "; ") }

// densitySure reads off a catalogue row's confidence how sure its density is.
func densitySure(confidence string) string { return sureOf(confidence, "density") }

// compositionSure likewise of its composition, which rows call by several words;
// one that is not named was made of the grade's ranges.
func compositionSure(confidence string) string {
	switch {
	case strings.Contains(confidence, "comp"):
		return sureOf(confidence, "comp")
	case sureOf(confidence, "rest") == Memory:
		return Memory
	}
	for _, word := range []string{"nominal", "fineness", "levels", "standard", "replacing"} {
		if strings.Contains(confidence, word) {
			return sureOf(confidence, word)
		}
	}
	if sureOf(confidence, "ranges") == Seen {
		return Computed
	}
	return Memory
}

// sureOf is how sure a row is of what it calls by a word: rows are clauses such
// as "seen: codes, comp; memory: density", or "memory" for all of it.
func sureOf(confidence, word string) string {
	for clause := range strings.SplitSeq(confidence, ";") {
		how, what, of := strings.Cut(strings.TrimSpace(clause), ":")
		if !of || strings.Contains(what, word) {
			return sureness[how]
		}
	}
	return ""
}

// sureness are the words of the tables in calc.
var sureness = map[string]string{"seen": Seen, "computed": Computed, "calculated": Computed, "derived": Computed, "memory": Memory}

// salts in the order in which their rows are listed.
var salts = []struct {
	name string
	salt *bath.Salt
}{{"copper sulfate", bath.CopperSulfate}, {"silver nitrate", bath.SilverNitrate}, {"common salt", bath.CommonSalt}}

// figureTitles are what the page calls the figures of a salt.
var figureTitles = map[string]string{
	"molar mass":                  "Atomic weights",
	"solubility":                  "Solubility",
	"density":                     "Density of a bath at 20 °C",
	"hydrometer":                  "Hydrometer",
	"hydrogen":                    "Volume of hydrogen",
	"conductivity":                "Conductivity of a bath",
	"conductivity by temperature": "Conductivity by temperature",
	"viscosity":                   "Viscosity of a bath",
	"diffusion layer":             "Layer beside a face",
	"diffusion":                   "Diffusion",
	"transference":                "Share of the current that the metal carries",
}

// ofSalts are the sources of the salts' tables, as the bath tells them.
func ofSalts() map[string]SourceRow {
	rows := map[string]SourceRow{}
	for _, s := range salts {
		for _, source := range s.salt.Sources() {
			key, title := bathKey(source.Figure, ""), figureTitles[source.Figure]
			if differs(source.Figure) {
				key, title = bathKey(source.Figure, s.name), title+", "+s.name
			}
			rows[key] = SourceRow{title, readable(source.Text), sureness[source.Confidence]}
		}
	}
	return rows
}

// ofBath are the keys of a figure's sources: one, or one of each salt that has it.
func ofBath(figure string) []string {
	if !differs(figure) {
		return []string{bathKey(figure, "")}
	}
	var keys []string
	for _, s := range salts {
		if len(told(s.salt, figure)) > 0 {
			keys = append(keys, bathKey(figure, s.name))
		}
	}
	return keys
}

func bathKey(figure, salt string) string {
	return strings.TrimSuffix("bath-"+strings.ReplaceAll(figure+" "+salt, " ", "-"), "-")
}

// differs says whether a figure's source is another in another salt.
func differs(figure string) bool {
	var first []bath.Source
	for _, s := range salts {
		is := told(s.salt, figure)
		switch {
		case first == nil:
			first = is
		case is != nil && is[0] != first[0]:
			return true
		}
	}
	return false
}

// told are the sources of one figure of a salt.
func told(salt *bath.Salt, figure string) []bath.Source {
	for _, source := range salt.Sources() {
		if source.Figure == figure {
			return []bath.Source{source}
		}
	}
	return nil
}

var degrees = regexp.MustCompile(`(\d) C\b`)

// readable sets a text of the code as the page does.
func readable(text string) string {
	text = degrees.ReplaceAllString(text, "$1 °C")
	return capital(strings.NewReplacer("e-10 m2/s", " × 10⁻¹⁰ m²/s", "e-9 m2/s", " × 10⁻⁹ m²/s").Replace(text))
}

func capital(text string) string { return strings.ToUpper(text[:1]) + text[1:] }
