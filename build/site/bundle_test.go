package site

import (
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/evanw/esbuild/pkg/api"
)

// remembers is what a module keeps that its importers change: a variable, or a
// collection, at the module's own level.
var remembers = regexp.MustCompile(`(?m)^(export )?(let |(const|var) \w+ = (new (Weak)?(Map|Set)\b|\[\]|\{\}))`)

// Each script of the page has a copy of what it imports. A module that remembered
// something would remember it twice.
func TestNothingInTwoScriptsRemembers(t *testing.T) {
	root := filepath.Join("..", "..")
	page, later, closer, along := modulesIn(t, root, pageBundle), modulesIn(t, root, laterBundle), modulesIn(t, root, closerBundle), modulesIn(t, root, alongBundle)
	both := 0
	for _, name := range slices.Concat(slices.Collect(maps.Keys(later)), slices.Collect(maps.Keys(closer)), slices.Collect(maps.Keys(along))) {
		if !page[name] && !(later[name] && closer[name]) && !(closer[name] && along[name]) {
			continue
		}
		both++
		text, err := os.ReadFile(filepath.Join(root, name))
		if err != nil {
			t.Fatal(err)
		}
		for _, found := range remembers.FindAllString(string(text), -1) {
			t.Errorf("%s is in two scripts, and has %q", name, strings.TrimSpace(found))
		}
	}
	if both == 0 {
		t.Error("no module is in two, not even the one that makes elements")
	}
}

// modulesIn are the modules of which something is in a bundle.
func modulesIn(t *testing.T, root string, b bundle) map[string]bool {
	t.Helper()
	root, err := filepath.Abs(root)
	if err != nil {
		t.Fatal(err)
	}
	written := map[string]string{glueModule: wrapGlue(nil), sealModule: writeSeal(nil), vocabularyModule: vocabulary(), sourcedModule: writeSourced(), closerStyleModule: "export const style = ''"}
	made := api.Build(api.BuildOptions{AbsWorkingDir: root, EntryPoints: []string{filepath.Join(root, b.entry)}, Bundle: true, MinifySyntax: true,
		Plugins: []api.Plugin{providing(written)}, TsconfigRaw: modulesAreStrict, Outfile: b.out, Metafile: true})
	if len(made.Errors) > 0 {
		t.Fatal(made.Errors[0].Text)
	}
	var meta struct {
		Outputs map[string]struct {
			Inputs map[string]struct{ BytesInOutput int }
		}
	}
	if err := json.Unmarshal([]byte(made.Metafile), &meta); err != nil {
		t.Fatal(err)
	}
	in := map[string]bool{}
	for _, output := range meta.Outputs {
		for name, input := range output.Inputs {
			if input.BytesInOutput > 0 && !strings.Contains(name, ":") {
				in[name] = true
			}
		}
	}
	return in
}
