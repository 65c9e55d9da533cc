package bath

import (
	"errors"
	"strings"
	"testing"
)

// Names as people type them: those of the table, other spellings and slips.
// Collected from memory.
var typed = []struct {
	salt  *Salt
	names []string
}{
	{CopperSulfate, []string{
		"copper sulfate", "copper sulphate", "Copper Sulphate Crystals", "COPPER SULFATE PENTAHYDRATE", "copper(II) sulfate", "copper (ii) sulphate pentahydrate", "cupric sulphate",
		"bluestone", "blue stone", "Blue Vitriol", "CuSO4", "cuso4", "CuS04", "CuSO₄", "CuSO4.5H2O", "CuSO4·5H2O", "CuSO₄·5H₂O", "CuSO4 * 5 H2O", "CuSO4x5H2O",
		"Kupfersulfat", "Kupfer-Sulfat", "Kupfersulfat-Pentahydrat", "Kupfer(II)-sulfat-Pentahydrat", "Kupfervitriol", "Blaues Vitriol",
		"sulfate de cuivre", "sulfate de cuivre pentahydrate", "vitriol bleu", "sulfato de cobre", "sulfato cúprico", "solfato di rame", "solfato rameico",
		"coper sulfate", "copper sulfat", "copper sulpahte", "cooper sulphate", "copersulfate", "blustone", "blue vitriole", "kupfersulphat", "sulfate du cuivre", "solfatto di rame",
	}},
	{CopperSulfateAnhydrous, []string{
		"copper sulfate anhydrous", "anhydrous copper sulphate", "copper sulfate, anhydrous", "CuSO4 anhydrous", "wasserfreies Kupfersulfat", "Kupfersulfat wasserfrei",
		"sulfate de cuivre anhydre", "sulfato de cobre anhidro", "solfato di rame anidro",
	}},
	{SilverNitrate, []string{
		"silver nitrate", "Silver Nitrate Crystals", "silver(I) nitrate", "silver nitrate anhydrous", "AgNO3", "AgN03", "agno₃", "lunar caustic", "Silbernitrat", "Höllenstein", "hollenstein",
		"nitrate d'argent", "nitrate d’argent", "nitrato de plata", "nitrato d'argento", "silver nitrat", "sliver nitrate", "silvernitrate", "sivler nitrate",
	}},
	{CommonSalt, []string{
		"salt", "Salt", "table salt", "common salt", "sodium chloride", "NaCl", "nacl", "Kochsalz", "Salz", "sel", "sel de table", "sal", "sal común", "sale", "sale da cucina",
		"chlorure de sodium", "cloruro de sodio", "cloruro di sodio", "Natriumchlorid", "sodium cloride", "sodum chloride", "sea salt", "kitchen salt", "tabel salt",
	}},
}

// What is no salt of these, or is another: from memory.
var strangersTyped = []string{
	"", " ", "?", "copper", "silver", "sulfate", "nitrate", "vitriol", "copper sulfite", "copper sulfide", "copper sulphide", "cuprous sulfate", "copper nitrate", "copper chloride",
	"copper sulfate monohydrate", "copper ammonium sulfate", "silver nitrite", "silver chloride", "silver sulfate", "silver nitride", "sodium chlorate", "sodium chlorite", "sodium hypochlorite",
	"sodium nitrate", "sodium sulfate", "sodium carbonate", "zinc sulfate", "nickel sulfate", "iron sulfate", "green vitriol", "white vitriol", "oil of vitriol", "Epsom salt",
	"potassium chloride", "potassium nitrate", "calcium chloride", "ferric chloride", "ammonium chloride", "sal ammoniac", "saltpetre", "lead nitrate", "malt", "silt", "sell", "sail",
	"Kupfersulfid", "Kupfersulfit", "Kupferchlorid", "Natriumchlorat", "Silbernitrit", "nitrito de plata", "sulfuro de cobre", "clorato de sodio", "vinegar", "sugar", "water", "acid", "hello", "12 g", "xyzzy",
}

func TestFindSalt(t *testing.T) {
	for _, row := range typed {
		for _, name := range row.names {
			if salt, err := FindSalt(name); err != nil || salt != row.salt {
				t.Errorf("%q: %v, want %s", name, found(salt), row.salt.Name)
			}
		}
	}
	for _, row := range names {
		for _, name := range row.names {
			if salt, err := FindSalt(name); err != nil || salt != row.salt {
				t.Errorf("%q: %v, want %s", name, found(salt), row.salt.Name)
			}
		}
	}
	for _, salt := range salts {
		for _, name := range []string{salt.Name, salt.Formula} {
			if got, _ := FindSalt(name); got != salt && !(name == "CuSO4") {
				t.Errorf("%q: %v, want %s", name, found(got), salt.Name)
			}
		}
	}
}

func TestNoSuchSalt(t *testing.T) {
	for _, name := range strangersTyped {
		salt, err := FindSalt(name)
		if salt != nil || !errors.Is(err, UnknownSalt) {
			t.Errorf("%q: %s", name, found(salt))
		}
	}
	for _, name := range []string{"copper sulfate", "silver nitrate", "common salt"} {
		if !strings.Contains(UnknownSalt.Error(), name) {
			t.Errorf("%q does not name %s", UnknownSalt, name)
		}
	}
}

// Goods that may hold anything are no salt, and their label decides; slips or not.
// From memory.
func TestProductsAskForTheirLabel(t *testing.T) {
	for _, name := range []string{"root killer", "Root Killer crystals", "rootkiller", "root kiler", "sewer root killer", "algaecide", "algicide", "Bordeaux mixture", "bouillie bordelaise", "Bordeauxbrühe"} {
		salt, err := FindSalt(name)
		if salt != nil || !errors.Is(err, UnlabelledSalt) {
			t.Errorf("%q: %s, %v", name, found(salt), err)
		}
	}
	for _, words := range []string{"label", "99 %", "copper sulfate pentahydrate"} {
		if !strings.Contains(UnlabelledSalt.Error(), words) {
			t.Errorf("%q does not say %q", UnlabelledSalt, words)
		}
	}
	for _, name := range []string{"weed killer", "root beer", "moss killer", "root", "killer", "rat killer"} {
		if _, err := FindSalt(name); !errors.Is(err, UnknownSalt) {
			t.Errorf("%q: %v", name, err)
		}
	}
}

func found(salt *Salt) string {
	if salt == nil {
		return "none"
	}
	return salt.Name
}

// A long text is refused, whatever it holds.
func TestLongName(t *testing.T) {
	for _, text := range []string{strings.Repeat("sülphat ", 12500), "salt" + strings.Repeat(" ", 100000)} {
		if salt, err := FindSalt(text); err == nil {
			t.Errorf("%d bytes are %s", len(text), found(salt))
		}
	}
}

// One slip in a long name, whichever, finds the same salt.
func TestOneSlip(t *testing.T) {
	for _, name := range []string{"copper sulfate", "silver nitrate", "sodium chloride", "Kupfersulfat", "table salt"} {
		want, _ := FindSalt(name)
		for i := range name {
			for _, slip := range []string{name[:i] + name[i+1:], name[:i] + "q" + name[i+1:], name[:i] + "q" + name[i:]} {
				if salt, _ := FindSalt(slip); salt != want {
					t.Errorf("%q: %s, want %s", slip, found(salt), want.Name)
				}
			}
		}
	}
}

// Whatever is typed, it is a salt or the one error, the same each time, and
// blanks and case change nothing.
func FuzzFindSalt(f *testing.F) {
	for _, row := range typed {
		for _, name := range row.names {
			f.Add(name)
		}
	}
	for _, name := range strangersTyped {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, text string) {
		salt, err := FindSalt(text)
		if (salt == nil) != (errors.Is(err, UnknownSalt) || errors.Is(err, UnlabelledSalt)) {
			t.Fatalf("%q: %v, %v", text, found(salt), err)
		}
		if again, _ := FindSalt(" " + text + " "); salt != again && len(text) < longestName-2 {
			t.Fatalf("%q: %s, with blanks round it %s", text, found(salt), found(again))
		}
	})
}

func BenchmarkFindSalt(b *testing.B) {
	for _, name := range []string{"copper sulfate", "Höllenstein", "salt", "coper sulfat", "xyzzy"} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				_, _ = FindSalt(name)
			}
		})
	}
}
