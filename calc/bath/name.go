package bath

import (
	"slices"
	"strings"
	"sync"

	"github.com/agnivade/levenshtein"

	"saltbite/calc/quantity"
)

// A name is read in three steps: it is folded to small plain letters and
// figures, words that change the form or nothing are taken out, and what is
// left is looked for among the names below, which are folded in the same way: as
// it stands, else a few edits off.

// names are what people call each salt: English, German, French, Spanish,
// Italian, Portuguese, Dutch; formulas. From memory.
var names = [...]struct {
	salt  *Salt
	names []string
}{
	{CopperSulfate, []string{
		"copper sulfate", "copper sulfate pentahydrate", "cupric sulfate", "bluestone", "blue vitriol", "copper vitriol", "vitriol of copper", "blue copperas", "chalcanthite",
		"CuSO4", "CuSO4 5H2O", "Kupfersulfat", "Kupfersulfat Pentahydrat", "Kupfervitriol", "blaues Vitriol", "Blaustein",
		"sulfate de cuivre", "sulfate cuivrique", "sulfate de cuivre pentahydraté", "vitriol bleu", "couperose bleue",
		"sulfato de cobre", "sulfato cúprico", "sulfato de cobre pentahidratado", "vitriolo azul", "piedra azul", "caparrosa azul",
		"solfato di rame", "solfato rameico", "solfato di rame pentaidrato", "vetriolo azzurro", "vetriolo di rame", "kopersulfaat", "blauwe vitriool",
	}},
	{SilverNitrate, []string{
		"silver nitrate", "lunar caustic", "AgNO3", "Silbernitrat", "Höllenstein", "Hoellenstein", "nitrate d'argent", "pierre infernale",
		"nitrato de plata", "piedra infernal", "nitrato d'argento", "pietra infernale", "nitrato de prata", "zilvernitraat",
	}},
	{CommonSalt, []string{
		"common salt", "salt", "table salt", "sodium chloride", "rock salt", "sea salt", "kitchen salt", "cooking salt", "kosher salt", "halite", "NaCl",
		"Kochsalz", "Salz", "Speisesalz", "Tafelsalz", "Natriumchlorid", "Steinsalz", "Meersalz", "sel", "sel de table", "sel de cuisine", "sel commun", "chlorure de sodium",
		"sal", "sal común", "sal de mesa", "cloruro de sodio", "cloruro sódico", "sal marina", "sale", "sale da cucina", "sale comune", "sale da tavola", "cloruro di sodio",
		"sal de cozinha", "cloreto de sódio", "zout", "keukenzout", "natriumchloride",
	}},
}

// products are what shops call goods that may be copper sulfate, or something
// else, or copper sulfate with other things in it. From memory.
var products = [...]string{
	"root killer", "drain root killer", "tree root killer", "sewer root killer", "algaecide", "algicide", "algae killer", "pond algae killer",
	"copper fungicide", "Bordeaux mixture", "bouillie bordelaise", "caldo bordelés", "poltiglia bordolese", "Bordeauxbrühe", "Algizid", "Wurzelkiller",
	"algicida", "alghicida", "fungicida de cobre", "fongicide au cuivre",
}

// waterless are the words, folded, by which copper sulfate is meant without its
// water of crystallisation; as the stem of all its endings.
var waterless = [...]string{"anhydr", "anidr", "anhidr", "wasserfrei", "entwassert", "watervrij"}

// idle are words, folded, that change nothing.
var idle = [...]string{"ii", "crystals", "crystal", "kristalle", "cristaux", "cristales", "cristalli", "cristais", "kristallen", "pure", "the"}

// strangers are parts of the names, folded, of other salts that differ from
// these by a letter or two.
var strangers = [...]string{"sulfit", "sulfid", "sulfur", "solfit", "solfur", "nitrit", "nitrid", "nitrur", "chlorat", "chlorit", "clorat", "clorit", "monohydr", "trihydr", "ammoni"}

const (
	longestName = 80 // bytes; what is longer is no name
	shortestFar = 6  // letters of a folded name that may be an edit off
	longFar     = 9  // letters of one that may be two edits off
)

// FindSalt finds a salt by its name, a few letters wrong or not. Copper sulfate
// means the crystals unless it is called anhydrous. Of two salts equally near it
// is the one whose name stands first above. The error is UnknownSalt, or
// UnlabelledSalt for a product that may be copper sulfate: its label must say so.
func FindSalt(text string) (*Salt, error) {
	if len(text) > longestName {
		return nil, UnknownSalt
	}
	sought, dry := read(text)
	salt, exact := folded().exact[sought]
	if !exact {
		salt = nearest(sought)
	}
	switch {
	case salt == product:
		return nil, UnlabelledSalt
	case salt == nil:
		return nil, UnknownSalt
	case salt == CopperSulfate && dry:
		return CopperSulfateAnhydrous, nil
	}
	return salt, nil
}

// nearest is the salt with the name the fewest edits away, nil if all are too
// far or it is the name of a stranger.
func nearest(sought string) *Salt {
	if slices.ContainsFunc(strangers[:], func(part string) bool { return strings.Contains(sought, part) }) {
		return nil
	}
	var best *Salt
	least := allowed(sought) + 1
	for _, n := range folded().list {
		if d := len(n.name) - len(sought); d >= least || -d >= least {
			continue
		}
		edits := levenshtein.ComputeDistance(n.name, sought)
		if edits < least && (n.salt != product || edits <= 1) { // a rat killer is two edits off
			best, least = n.salt, edits
		}
	}
	return best
}

// foldedName is a name as it is compared.
type foldedName struct {
	name string
	salt *Salt
}

// product stands for what is sold under the name of a use.
var product = new(Salt)

// foldedNames are all of them, in the order above and by themselves.
type foldedNames struct {
	list  []foldedName
	exact map[string]*Salt
}

// folded folds the names, once: it takes longer than to find one among them.
var folded = sync.OnceValue(func() *foldedNames {
	f := &foldedNames{exact: map[string]*Salt{}}
	for _, row := range names {
		f.add(row.names, row.salt)
	}
	f.add(products[:], product)
	return f
})

// add enters the names of a salt; of two salts with one name the first keeps it.
func (f *foldedNames) add(names []string, salt *Salt) {
	for _, name := range names {
		name, _ := read(name)
		if _, had := f.exact[name]; !had {
			f.exact[name] = salt
			f.list = append(f.list, foldedName{name, salt})
		}
	}
}

// allowed is how many edits a folded name may be off. A short one is too soon
// another word.
func allowed(folded string) int {
	switch {
	case len(folded) < shortestFar:
		return 0
	case len(folded) < longFar:
		return 1
	}
	return 2
}

// read folds a name, takes the idle words out and says whether it was called
// waterless. The words are put together, as some write them in one.
func read(text string) (folded string, dry bool) {
	var kept strings.Builder
	for _, word := range strings.Fields(fold(text)) {
		switch {
		case isWaterless(word):
			dry = true
		case !slices.Contains(idle[:], word):
			kept.WriteString(word)
		}
	}
	return kept.String(), dry
}

func isWaterless(word string) bool {
	return slices.ContainsFunc(waterless[:], func(stem string) bool { return strings.HasPrefix(word, stem) })
}

// fold makes a name plain: small letters without accents, "ph" as "f" (sulphate
// is sulfate), figures as figures wherever they stand and a zero as the letter o
// (CuS04 is meant as CuSO4); all else is a blank.
func fold(text string) string {
	var b strings.Builder
	for _, r := range text {
		switch plain := quantity.Plain(r); {
		case plain != "":
			b.WriteString(plain)
		case r >= 'a' && r <= 'z' || r >= '1' && r <= '9':
			b.WriteRune(r)
		case r >= 'A' && r <= 'Z':
			b.WriteRune(r - 'A' + 'a')
		case r == '0' || r == '₀':
			b.WriteByte('o')
		case r >= '₁' && r <= '₉':
			b.WriteRune(r - '₁' + '1')
		default:
			b.WriteByte(' ')
		}
	}
	return strings.ReplaceAll(b.String(), "ph", "f")
}
