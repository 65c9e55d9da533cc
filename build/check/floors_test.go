package check

import (
	"encoding/json"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// row is a line of the table of floors in DEVELOPERS.md.
var row = regexp.MustCompile("(?m)^\\| (\\d+) \\| `([a-z/]+)` \\|")

// floors reads the table: on which floor each package stands. A package imports
// only from floors below its own.
func floors(t *testing.T) map[string]int {
	t.Helper()
	text, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	stands := map[string]int{}
	for _, found := range row.FindAllStringSubmatch(string(text), -1) {
		floor, err := strconv.Atoi(found[1])
		if _, twice := stands[found[2]]; err != nil || twice {
			t.Errorf("the table of floors has %s twice, or on no floor", found[2])
		}
		stands[found[2]] = floor
	}
	return stands
}

// lower holds a package to less than its floor: the vocabulary needs only quantities.
var lower = map[string][]string{"calc/field": {"calc/quantity"}}

// allowed is what the shipped program may be made of beside the standard library.
var allowed = []string{"saltbite", "github.com/hack-pad/safejs", "github.com/agnivade/levenshtein", "gonum.org/v1/gonum"}

// tooLarge are parts of the standard library that add a tenth of the program
// each; the shipped program does without.
var tooLarge = []string{"encoding/json", "regexp"}

// topLevel is what may stand in the repository's own folder; names that start
// with a dot and what the build makes don't count.
var topLevel = []string{"wasm", "calc", "site", "build", "testdata", "go.mod", "go.sum", "README.md", "DEVELOPERS.md", "LICENSE", "dist"}

type listed struct {
	ImportPath string
	Standard   bool
	Imports    []string
	Module     *struct{ Path string }
}

// list asks the go command about packages as they are built for the browser.
func list(t *testing.T, args ...string) []listed {
	t.Helper()
	cmd := exec.Command("go", append([]string{"list", "-json=ImportPath,Standard,Imports,Module"}, args...)...)
	cmd.Dir = "../.."
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	out, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	var packages []listed
	for decoder := json.NewDecoder(strings.NewReader(string(out))); decoder.More(); {
		var p listed
		if err := decoder.Decode(&p); err != nil {
			t.Fatal(err)
		}
		packages = append(packages, p)
	}
	return packages
}

func TestNoImportClimbs(t *testing.T) {
	stands := floors(t)
	there := map[string]bool{}
	for _, p := range list(t, "./calc/...", "./wasm") {
		name := strings.TrimPrefix(p.ImportPath, "saltbite/")
		there[name] = true
		floor, known := stands[name]
		if !known {
			t.Errorf("%s stands on no floor; the table in DEVELOPERS.md says on which", name)
			continue
		}
		for _, path := range p.Imports {
			imported, ours := strings.CutPrefix(path, "saltbite/")
			if !ours {
				continue
			}
			if below, known := stands[imported]; !known || below >= floor {
				t.Errorf("%s imports %s, which is not below it", name, imported)
			}
			if only, held := lower[name]; held && !slices.Contains(only, imported) {
				t.Errorf("%s imports %s and needs only %v", name, imported, only)
			}
		}
	}
	for name := range stands {
		if !there[name] {
			t.Errorf("%s has a floor in DEVELOPERS.md and is not there", name)
		}
	}
}

func TestCalculatorIsPure(t *testing.T) {
	impure := []string{"os", "os/exec", "net", "net/http", "time", "math/rand", "math/rand/v2", "crypto/rand", "syscall/js",
		"io/ioutil", "log", "unsafe", "github.com/hack-pad/safejs"}
	for _, p := range list(t, "./calc/...") {
		for _, imported := range p.Imports {
			if slices.Contains(impure, imported) {
				t.Errorf("%s imports %s: the calculator has no clock and no outside", p.ImportPath, imported)
			}
		}
	}
}

func TestShippedProgramIsMadeOfLittle(t *testing.T) {
	for _, p := range list(t, "-deps", "./wasm") {
		if slices.Contains(tooLarge, p.ImportPath) {
			t.Errorf("the shipped program has %s in it", p.ImportPath)
		}
		if !p.Standard && (p.Module == nil || !slices.Contains(allowed, p.Module.Path)) {
			t.Errorf("the shipped program has %s in it", p.ImportPath)
		}
	}
}

func TestTopLevelIsFixed(t *testing.T) {
	entries, err := os.ReadDir("../..")
	if err != nil {
		t.Fatal(err)
	}
	for _, entry := range entries {
		if name := entry.Name(); !strings.HasPrefix(name, ".") && !slices.Contains(topLevel, name) {
			t.Errorf("%s stands at the top of the repository", name)
		}
	}
}
