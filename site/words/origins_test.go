package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/metal"
)

func TestEveryAnswerHasAnOrigin(t *testing.T) {
	named := map[string]bool{}
	for _, a := range field.Answers {
		named[a.Name] = true
		if o := Origins[a.Name]; o.Formula == "" || o.Assumes == "" {
			t.Errorf("answer %s has no origin", a.Name)
		}
	}
	for name := range Origins {
		if !named[name] {
			t.Errorf("an origin of %s, which is no answer", name)
		}
	}
}

// The codes stand in the calls of raise in calc/advice.
func TestEveryCautionHasAnOrigin(t *testing.T) {
	raised := cautionsRaised(t)
	for code := range raised {
		if CautionOrigins[code].Rests == "" {
			t.Errorf("caution %s has no origin", code)
		}
	}
	for code := range CautionOrigins {
		if _, ok := raised[code]; !ok {
			t.Errorf("an origin of %s, which no job raises", code)
		}
	}
}

// A hazard that a caution words as GHS does must be one of the rows it names.
func TestCautionsSayWhatTheirRowsSay(t *testing.T) {
	rows := map[string]string{}
	for _, h := range hazards {
		rows[h.key] = h.codes
	}
	phrases := 0
	for code, text := range cautionsRaised(t) {
		var allowed string
		for _, key := range CautionOrigins[code].Uses {
			allowed += " " + rows[key]
		}
		for _, h := range bath.Statements {
			statement, words := h.Code, h.Words
			if !strings.Contains(strings.ToLower(text), words) {
				continue
			}
			phrases++
			if !strings.Contains(allowed, statement) {
				t.Errorf("%s says %q, and no row of it holds %s", code, words, statement)
			}
		}
	}
	if phrases < 9 {
		t.Errorf("only %d hazard statements were found in the cautions", phrases)
	}
}

// cautionsRaised are the literal texts of each call of raise, by code.
func cautionsRaised(t *testing.T) map[string]string {
	t.Helper()
	files, err := filepath.Glob("../../calc/advice/*.go")
	if err != nil || len(files) == 0 {
		t.Fatalf("calc/advice is not to be read from here: %v", err)
	}
	raised := map[string]string{}
	for _, name := range files {
		source, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, source, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			call, ok := n.(*ast.CallExpr)
			if !ok {
				return true
			}
			if f, ok := call.Fun.(*ast.SelectorExpr); ok && f.Sel.Name == "raise" {
				raised[literals(call.Args[0])] += literals(call)
			}
			return true
		})
	}
	return raised
}

// literals joins the strings in a piece of code.
func literals(n ast.Node) (text string) {
	ast.Inspect(n, func(n ast.Node) bool {
		if l, ok := n.(*ast.BasicLit); ok && l.Kind == token.STRING {
			s, _ := strconv.Unquote(l.Value)
			text += s
		}
		return true
	})
	return text
}

func TestEverySourceIsThereAndUsed(t *testing.T) {
	used := map[string]bool{}
	uses := func(who string, keys []string) {
		for i, key := range keys {
			used[key] = true
			if _, ok := Sources[key]; !ok {
				t.Errorf("%s rests on %s, which is no source", who, key)
			}
			if slices.Contains(keys[:i], key) {
				t.Errorf("%s names %s twice", who, key)
			}
		}
	}
	for name, o := range Origins {
		uses(name, o.Uses)
	}
	for code, o := range CautionOrigins {
		uses(code, o.Uses)
	}
	rows := 0
	for _, table := range sourceTables() {
		rows += len(table)
	}
	if rows != len(Sources) {
		t.Errorf("%d sources are called like another", rows-len(Sources))
	}
	for key, row := range Sources {
		if !used[key] {
			t.Errorf("nothing rests on %s", key)
		}
		if row.Title == "" || row.Text == "" || !slices.Contains(Confidences, row.Confidence) {
			t.Errorf("%s: %+v", key, row)
		}
	}
}

// Each table that the bath tells a source of must be among the sources as it is
// told, confidence and all.
func TestBathsSourcesAreAllThere(t *testing.T) {
	for _, salt := range []*bath.Salt{bath.CopperSulfate, bath.CopperSulfateAnhydrous, bath.SilverNitrate, bath.CommonSalt} {
		for _, source := range salt.Sources() {
			found := false
			for _, key := range ofBath(source.Figure) {
				row := Sources[key]
				found = found || row.Text == readable(source.Text) && row.Confidence == sureness[source.Confidence]
			}
			if !found || figureTitles[source.Figure] == "" {
				t.Errorf("%s: %s is told otherwise or not at all", salt.Name, source.Figure)
			}
		}
	}
}

// Rows of the catalogue as they stand, and what a reader makes of them.
func TestHowSureTheCatalogueIs(t *testing.T) {
	for confidence, want := range map[string][2]string{ // composition, density
		"seen: codes, comp, ranges, density": {Seen, Seen},
		"memory":                             {Memory, Memory},
		"seen: codes, ranges, density; derived: comp":                         {Computed, Seen},
		"seen: codes, ranges; derived: comp; memory: density":                 {Computed, Memory},
		"seen: codes, ranges, density":                                        {Computed, Seen},
		"seen: Ag and Ge levels, rest copper; calculated: density":            {Seen, Computed},
		"seen: fineness; memory: rest, density":                               {Memory, Memory},
		"seen: UNS, ranges; memory: nominal comp, density":                    {Memory, Memory},
		"memory: density; seen: porosity in general":                          {Memory, Memory},
		"seen: standard; calculated: density":                                 {Seen, Computed},
		"seen: comp; derived: density between 950 (10.40) and 975 (10.42)":    {Seen, Computed},
		"seen: codes, ranges, density 0.316 lb/cu in; memory: nominal":        {Memory, Seen},
		"seen: comp, EN number and symbol; memory: pairing, ranges, density":  {Seen, Memory},
		"seen: codes, ranges, US nominal; derived: comp; memory: density":     {Computed, Memory},
		"seen: codes, comp, density (dataset); memory: ranges":                {Seen, Seen},
		"seen: codes, ranges, density(dataset); derived: comp":                {Computed, Seen},
		"seen: fineness, shrinkage; memory: density":                          {Seen, Memory},
		"seen: Ge 1.2 % replacing copper; calculated: density":                {Seen, Computed},
		"seen: comp, relative density; derived: density":                      {Seen, Seen},
		"seen: comp; calculated: density (source value rejected)":             {Seen, Computed},
		"seen: codes, ranges, comp and density (dataset), hazard":             {Seen, Seen},
		"seen: UNS; memory: comp, ranges, density":                            {Memory, Memory},
		"seen: codes (vendor list), ranges; memory: comp, density, BS number": {Memory, Memory},
	} {
		if got := [2]string{compositionSure(confidence), densitySure(confidence)}; got != want {
			t.Errorf("%q is read as %v, not %v", confidence, got, want)
		}
	}
	for m := range metal.All() {
		for _, key := range []string{"composition-", "density-"} {
			places := 0
			for _, how := range []string{"seen", "computed", "memory"} {
				for name := range strings.SplitSeq(": "+Sources[key+how].Text, ": ") {
					if slices.Contains(strings.Split(name, "; "), m.Name) {
						places++
					}
				}
			}
			if places != 1 {
				t.Errorf("%s stands in %d rows of %s", m.Name, places, key)
			}
		}
	}
}

func TestOriginsFitTheirSpace(t *testing.T) {
	fits := func(who, text string, most int) {
		if n := utf8.RuneCountInString(text); n > most {
			t.Errorf("%s is %d characters long, %d at most", who, n, most)
		}
	}
	for name, o := range Origins {
		fits("formula of "+name, o.Formula, 160)
		fits("what "+name+" assumes", o.Assumes, 240)
	}
	for code, o := range CautionOrigins {
		fits("what "+code+" rests on", o.Rests, 240)
	}
}

// Names that may stand in an origin's own words. Any other word with a capital
// that begins no sentence may be a brand or a person.
var nouns = []string{"Faraday", "Baumé", "Range", "L", "A"}

func TestOriginsNameNoBrandAndPromiseNothing(t *testing.T) {
	check := func(who, text string) {
		for _, word := range []string{"harmless", "safe to", "non-toxic", "nontoxic", "no risk", "™", "®", "www", "http", ".com"} {
			if strings.Contains(strings.ToLower(text), word) {
				t.Errorf("%s says %q: %s", who, word, text)
			}
		}
	}
	own := func(who, text string) {
		check(who, text)
		begins := true
		for word := range strings.FieldsSeq(text) {
			bare := strings.Trim(word, "(),;:.÷×")
			first, _ := utf8.DecodeRuneInString(bare)
			unit := strings.ContainsAny(bare, "/") || len(bare) > 0 && unicode.IsDigit(first)
			if unicode.IsUpper(first) && !begins && !unit && !slices.Contains(nouns, bare) && bare != "C" {
				t.Errorf("%s: what is %q in: %s", who, bare, text)
			}
			begins = strings.HasSuffix(word, ".") || strings.HasSuffix(word, ":")
		}
	}
	for name, o := range Origins {
		own(name, o.Formula)
		own(name, o.Assumes)
		if strings.HasSuffix(o.Formula, ".") || !strings.HasSuffix(o.Assumes, ".") {
			t.Errorf("%s: a formula ends without a full stop, what it assumes with one", name)
		}
	}
	for code, o := range CautionOrigins {
		own(code, o.Rests)
	}
	for key, row := range Sources {
		check(key, row.Title+" "+row.Text)
	}
}
