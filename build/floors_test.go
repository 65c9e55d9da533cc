package main

import (
	"encoding/json"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// floors are the packages of the house, ground first. A package imports only
// from floors below its own.
var floors = [][]string{
	{"calc/quantity"},
	{"calc/metal"},
	{"calc/bite", "calc/bath", "calc/artwork"},
	{"calc/circuit", "calc/evenness", "calc/trial"},
	{"calc/batch", "calc/drawing"},
	{"calc/field"},
	{"calc/job"},
	{"wasm"},
}

// lower holds a package to less than its floor: the vocabulary needs only quantities.
var lower = map[string][]string{"calc/field": {"calc/quantity"}}

// allowed is what the shipped program may be made of beside the standard library.
var allowed = []string{"saltbite", "github.com/hack-pad/safejs", "github.com/agnivade/levenshtein"}

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
	cmd.Dir = ".."
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

func floorOf(path string) int {
	name := strings.TrimPrefix(path, "saltbite/")
	return slices.IndexFunc(floors, func(floor []string) bool { return slices.Contains(floor, name) })
}

func TestNoImportClimbs(t *testing.T) {
	for _, p := range list(t, "./calc/...", "./wasm") {
		floor := floorOf(p.ImportPath)
		if floor < 0 {
			t.Errorf("%s stands on no floor", p.ImportPath)
			continue
		}
		name := strings.TrimPrefix(p.ImportPath, "saltbite/")
		for _, imported := range p.Imports {
			if !strings.HasPrefix(imported, "saltbite/") {
				continue
			}
			if below := floorOf(imported); below < 0 || below >= floor {
				t.Errorf("%s imports %s, which is not below it", p.ImportPath, imported)
			}
			if only, held := lower[name]; held && !slices.Contains(only, strings.TrimPrefix(imported, "saltbite/")) {
				t.Errorf("%s imports %s and needs only %v", p.ImportPath, imported, only)
			}
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
	entries, err := os.ReadDir("..")
	if err != nil {
		t.Fatal(err)
	}
	for _, entry := range entries {
		if name := entry.Name(); !strings.HasPrefix(name, ".") && !slices.Contains(topLevel, name) {
			t.Errorf("%s stands at the top of the repository", name)
		}
	}
}
